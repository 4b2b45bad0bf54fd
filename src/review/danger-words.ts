import type { Column } from '../catalogue/thing.ts';
import type { HazardName } from './danger-hazards.ts';
import { THING_WORDS_ABROAD } from './danger-words-abroad.ts';
import { STATE_WORDS_ABROAD } from './danger-words-abroad-state.ts';
import { STATE_WORDS } from './danger-words-state.ts';
import { THING_WORDS } from './danger-words-things.ts';
import type { Material } from './material.ts';

/** The columns in which somebody says that a thing is dangerous or decays. */
export type DangerColumn = Extract<Column, 'kind' | 'title' | 'description' | 'size' | 'condition' | 'note'>;

/** Words that point to a hazard. */
export interface DangerWord {
  hazard: HazardName;
  /** Whole words in lower case; a blank stands for a hyphen too. */
  words: readonly string[];
  /** In which columns they count. */
  columns: readonly DangerColumn[];
  /** Of which materials they count; of all where it is left out. */
  of?: readonly Material[];
  /** Words of which one must stand beside them, with two words between at most. */
  beside?: readonly string[];
  /** Words that make them harmless, beside them with two words between at most. */
  unless?: readonly string[];
  /** Whether they are said of the thing itself even in the title of a picture, which tells what it shows. */
  ofItself?: true;
  source: string;
}

/** All words that point to a hazard. */
export const DANGER_WORDS: readonly DangerWord[] = [
  ...STATE_WORDS,
  ...THING_WORDS,
  ...STATE_WORDS_ABROAD,
  ...THING_WORDS_ABROAD,
];
