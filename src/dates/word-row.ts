import type { Sense, Simple } from './senses.ts';

/** Words of one sense, by language (ISO 639-1), parted by `|`; each is a word or several, folded as `fold` does. */
export interface WordRow {
  readonly sense: Sense;
  readonly words: Readonly<Record<string, string>>;
  readonly source: string;
}

/** What speakers of the language say; no single source. */
export const USAGE = 'common usage';

/** A sense that needs no more than its name. */
export const simple = (is: Simple): Sense => ({ is });
