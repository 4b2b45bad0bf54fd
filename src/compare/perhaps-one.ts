import { addTo } from '../catalogue/add-to.ts';
import { fold } from '../catalogue/fold.ts';
import { wordsInCommon } from '../review/plain-words.ts';

/** A row of a merged list that only one of the two lists has. */
export interface LoneRow {
  /** In the merged list, as a spreadsheet counts it. */
  row: number;
  title: string;
  /** In EDTF, where it has a date that could be read. */
  date?: string | undefined;
}

/** Two rows, one of each list, that may be of one thing. */
export interface PerhapsOne {
  a: LoneRow;
  b: LoneRow;
}

/** Of many rows with one date, so many are held against one. */
const HELD = 50;

/**
 * Rows that were not taken for one and yet may be: with the same title, or with the same date and half of the words of
 * their titles in common. Each row is named once.
 */
export function perhapsOne(onlyA: readonly LoneRow[], onlyB: readonly LoneRow[]): PerhapsOne[] {
  const named = new Set<LoneRow>();
  const byTitle = gathered(onlyA, ({ title }) => fold(title));
  const byDate = gathered(onlyA, ({ date }) => date);
  return onlyB.flatMap((b): PerhapsOne[] => {
    if (b.title === '') return [];
    const free = (rows: readonly LoneRow[] | undefined) =>
      rows?.slice(0, HELD).filter((row) => !named.has(row)) ?? [];
    const a =
      free(byTitle.get(fold(b.title)))[0] ??
      free(byDate.get(b.date)).find(
        ({ title }) => b.date !== undefined && wordsInCommon(title, b.title) >= 0.5,
      );
    if (a === undefined) return [];
    named.add(a);
    return [{ a, b }];
  });
}

function gathered<Key>(rows: readonly LoneRow[], keyOf: (row: LoneRow) => Key): Map<Key, LoneRow[]> {
  const found = new Map<Key, LoneRow[]>();
  for (const row of rows) addTo(found, keyOf(row), row);
  return found;
}
