import { KEPT, type ListSettings } from '../catalogue/list-settings.ts';
import { COLUMNS, type Column } from '../catalogue/thing.ts';
import { columnLetters } from './column-letters.ts';
import { EVERYDAY_HEADINGS } from './headings.ts';
import { HEADINGS_ABROAD } from './headings-abroad.ts';

/** A heading without what people write now one way, now another: capitals, accents, punctuation, blanks. */
export function comparable(heading: string): string {
  return heading
    .toLowerCase()
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replaceAll('ß', 'ss')
    .replace(/\bn(?:[or][.º°]?|[º°])(?=\P{L}|$)|№|#/gu, ' no ')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

const MEANING = new Map<string, Column>();
for (const headings of Object.values(HEADINGS_ABROAD)) {
  for (const column of COLUMNS) for (const word of headings[column] ?? []) MEANING.set(word, column);
}
for (const column of COLUMNS) {
  for (const word of [column, ...EVERYDAY_HEADINGS[column]]) MEANING.set(word, column);
}

/** The column that a heading means, or undefined: `Date (about)` and `When?` both mean `date`. */
export function columnOf(heading: string): Column | undefined {
  return MEANING.get(comparable(heading)) ?? MEANING.get(comparable(heading.replace(/\([^)]*\)/g, ' ')));
}

/** What the headings of a list mean. */
export interface Meanings {
  columnOf(heading: string): Column | undefined;
  /** Whether collection.yaml says what a heading means; then nothing is to be said of it. */
  isSettled(heading: string): boolean;
}

/** What headings mean by themselves. */
export const BY_THEMSELVES: Meanings = { columnOf, isSettled: () => false };

/** What headings mean where collection.yaml says it of some of them, however those are written. */
export function meaningsOf(columns: ListSettings['columns']): Meanings {
  const entries = Object.entries(columns);
  if (entries.length === 0) return BY_THEMSELVES;
  const settled = new Map(entries.map(([heading, column]) => [keyOf(heading), column]));
  return {
    columnOf(heading) {
      const column = settled.get(keyOf(heading));
      return column === undefined ? columnOf(heading) : column === KEPT ? undefined : column;
    },
    isSettled: (heading) => settled.has(keyOf(heading)),
  };
}

// A heading of signs alone (§) has nothing to compare but itself.
const keyOf = (heading: string) => comparable(heading) || heading.trim();

/** What to call a column that has no heading. */
export function nameByLetters(index: number): string {
  return `Column ${columnLetters(index)}`;
}
