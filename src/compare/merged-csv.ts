import { CatalogueError } from '../catalogue/finding.ts';
import { columnOf } from '../intake/columns.ts';
import { readTable } from '../intake/csv.ts';
import type { MergedLists } from './merge-lists.ts';

/**
 * A merged list as comma-separated values (RFC 4180), with a byte order mark, by which spreadsheet programs know that it
 * is UTF-8. It is read again and held against what it should say.
 * @param file the name for messages
 * @throws CatalogueError where it would not be read as it was meant
 */
export function mergedCsv(
  { headings, rows }: Pick<MergedLists, 'headings' | 'rows'>,
  file: string,
): Uint8Array {
  const lines = [headings, ...rows].map((cells) => `${cells.map(csvCell).join(',')}\r\n`);
  const bytes = Buffer.from(`\uFEFF${lines.join('')}`);
  const { table } = readTable(bytes, file, (heading) => columnOf(heading) !== undefined);
  const read = table === undefined ? [] : [table.headings, ...[...table.rows].map(({ cells }) => cells)];
  const meant = [headings, ...rows];
  const isSame =
    read.length === meant.length &&
    read.every((cells, row) => cells.every((cell, at) => cell === (meant[row]?.[at] ?? '')));
  if (!isSame) throw new CatalogueError([unreadable(file)]);
  return bytes;
}

// The list is to be read by this program again, so a cell stays as it was written, even one that looks like a formula.
const csvCell = (text: string) =>
  /[",;\t\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;

const unreadable = (file: string) => ({
  rule: 'merge.not-written',
  weight: 'must' as const,
  place: { file },
  found: 'The merged list could not be written so that it says what both lists say.',
  advice: 'Save both lists once more as “CSV UTF-8” from a spreadsheet program, and merge them then.',
});
