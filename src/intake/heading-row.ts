import type { Column } from '../catalogue/thing.ts';
import type { Row } from './csv-rows.ts';

/** Rows among which the headings are looked for: above them, people write what the list is, and of when. */
export const HEADINGS_WITHIN = 25;

/**
 * Which of the first rows of a list holds its headings: the first, unless a later one says which column is the title
 * and has more words that are known.
 * @returns its position among `rows`
 */
export function headingRowAmong(
  rows: readonly Row[],
  columnOf: (heading: string) => Column | undefined,
): number {
  const known = rows.map(({ cells }) => {
    const filled = cells.filter((cell) => cell.trim() !== '');
    const columns = new Set(filled.map(columnOf).filter((column) => column !== undefined));
    return { columns, all: columns.size === filled.length };
  });
  const first = known[0]?.columns;
  if (first === undefined || (first.has('title') && first.size > 1)) return 0;
  const later = known.findIndex(
    ({ columns, all }, at) =>
      at > 0 && columns.has('title') && columns.size > first.size && (columns.size > 1 || all),
  );
  return Math.max(later, 0);
}
