import type { WordRow } from './word-row.ts';
import { DECADE_WORDS } from './words-decades.ts';
import { DOUBT_WORDS } from './words-doubt.ts';
import { JOINING_WORDS } from './words-joining.ts';
import { NTH_WORDS } from './words-nth.ts';
import { SEASON_WORDS } from './words-seasons.ts';

/**
 * The words a phrase may hold beside months and days of the week, which come from `Intl`, and feasts. Where two rows
 * of a language claim a word, the first has it.
 */
export const WORDS: readonly WordRow[] = [
  ...DOUBT_WORDS,
  ...JOINING_WORDS,
  ...SEASON_WORDS,
  ...NTH_WORDS,
  ...DECADE_WORDS,
];
