import { csvRecord } from './csv-cell.ts';
import type { Settled } from './settled.ts';

/** The numbers that are settled, and perhaps in pencil on the folders; kept by the program. */
export const NUMBERS_FILE = 'numbers.csv';

/** The columns of `numbers.csv`, by the headings that stand over them. */
export const NUMBER_COLUMNS = [
  'number',
  'title',
  'reference code',
  'place',
  'groups',
  'filed under',
  'folder',
  'folder kind',
  'box',
  'box kind',
  'gone',
] as const;

export type NumberColumn = (typeof NUMBER_COLUMNS)[number];

/**
 * The content of `numbers.csv`: RFC 4180, with a byte order mark for spreadsheets. No cell of a place or of several
 * folders looks like a date, for a spreadsheet makes one of `2/5/13` or `3-5` and saves it so.
 * @param codeOf the reference code of a place; for the people who read the file, and compared with the place when it
 * is read again
 */
export function numbersToCsv(
  rows: readonly Settled[],
  codeOf: (place: readonly number[]) => string = () => '',
): string {
  const records = rows.map((row) =>
    csvRecord([
      row.number,
      row.title,
      codeOf(row.place),
      placeText(row.place),
      joinTitles(row.groups),
      row.filedUnder,
      foldersText(row),
      row.folderKind,
      row.box,
      row.boxKind,
      row.gone,
    ]),
  );
  return `\uFEFF${csvRecord(NUMBER_COLUMNS)}${records.join('')}`;
}

/** A place as the file writes it: `/2/5/13`, what the reference code has after its prefix. */
export const placeText = (place: readonly number[]): string => `/${place.join('/')}`;

/** The folder, or the first and the last of several: `3 to 5`. */
export function foldersText({ folder, lastFolder }: Pick<Settled, 'folder' | 'lastFolder'>): string {
  if (folder === undefined) return '';
  return lastFolder === undefined ? String(folder) : `${folder} to ${lastFolder}`;
}

const BETWEEN = ' > ';

/** The titles of groups in one cell. A `>` of a title's own gets a backslash before it, as `\` before a `\>` does. */
export const joinTitles = (titles: readonly string[]): string =>
  titles.map((title) => title.replace(/(\\*)>/g, '$1$1\\>')).join(BETWEEN);

/** The titles that `joinTitles` put into one cell. */
export function splitTitles(cell: string): string[] {
  if (cell === '') return [];
  const titles = cell.split(BETWEEN);
  return cell.includes('\\') ? titles.map((title) => title.replace(/(\\*)\\>/g, halved)) : titles;
}

const halved = (_: string, slashes: string) => `${slashes.slice(slashes.length / 2)}>`;
