import { stat } from 'node:fs/promises';
import { relative, resolve, sep } from 'node:path';
import { type CopyFacts, filesBelow, gatherCopies } from '../copies/index.ts';
import { listsIn, makeCatalogue } from './begin.ts';
import type { Start } from './begin-template.ts';
import { csvCell } from './csv-cell.ts';
import { CatalogueError, type Finding } from './finding.ts';
import { COLUMNS, type Column } from './thing.ts';

/** What stands with a date that a camera wrote. */
export const BY_THE_CAMERA =
  'The date is what the camera recorded; of a picture of an older thing, it is not the date of that thing.';

/**
 * Makes a catalogue folder whose list has a row for each file in a folder of digital copies, which lies in it: the name
 * of the file as title, its path, and where the picture tells it the day on which it was taken, marked as the camera's
 * word.
 * @param copies the folder of copies, inside `folder`
 * @param step told of each file that was looked at
 * @returns the paths of the files made, and how many rows the list has, and how many of them a date
 * @throws CatalogueError, with nothing changed, where the copies lie elsewhere or there are none, or as `beginCatalogue`
 */
export async function beginWithCopies(
  folder: string,
  copies: string,
  start: Start = {},
  step?: (path: string) => void,
): Promise<{ files: string[]; rows: number; dated: number }> {
  const way = relative(resolve(folder), resolve(copies)).split(sep).join('/');
  if (way === '' || way === '..' || way.startsWith('../') || /^[a-z]:/i.test(way))
    throw new CatalogueError([elsewhere(folder, copies)]);
  const isFolder = await stat(copies).then(
    (there) => there.isDirectory(),
    () => false,
  );
  const files = isFolder ? await filesBelow(folder, [`${way}/x`]) : [];
  const inside = files.filter((path) => path.startsWith(`${way}/`));
  if (inside.length === 0) throw new CatalogueError([noCopies(copies)]);
  let rows: NewRow[] = [];
  const made = await makeCatalogue(folder, start, async (there) => {
    const lists = listsIn(there);
    if (lists.length > 0) throw new CatalogueError([listThere(folder, lists)]);
    // Only now, since what is gathered is kept in the folder for the next time.
    const facts = await gatherCopies(folder, inside, { hash: false, ...(step !== undefined && { step }) });
    rows = inside.map((path) => rowOf(path, facts.get(path)));
    return [['list.csv', listOf(rows)]];
  });
  return { files: made, rows: rows.length, dated: rows.filter(({ date }) => date !== undefined).length };
}

type NewRow = Partial<Record<Column, string>>;

function rowOf(path: string, facts: CopyFacts | undefined): NewRow {
  const row: NewRow = { title: titleOf(path), copy: path };
  return facts?.madeAt === undefined ? row : { ...row, date: facts.madeAt, note: BY_THE_CAMERA };
}

/** The name of a file as a title: without its ending, and with blanks where file names have none. */
function titleOf(path: string): string {
  const name = path.slice(path.lastIndexOf('/') + 1).replace(/(?<=.)\.[^.]*$/, '');
  return name.replace(/[_\s]+/g, ' ').trim() || path;
}

function listOf(rows: readonly NewRow[]): string {
  const lines = rows.map((row) => COLUMNS.map((column) => csvCell(row[column] ?? '')).join(','));
  // With a byte order mark, by which spreadsheet programs know that letters beyond English are in UTF-8.
  return `\uFEFF${[COLUMNS.join(','), ...lines].join('\r\n')}\r\n`;
}

function elsewhere(folder: string, copies: string): Finding {
  return {
    rule: 'begin.copies-elsewhere',
    weight: 'must',
    place: { file: copies },
    found: 'The copies lie outside the new catalogue folder, which must be complete in itself.',
    advice: `Put their folder into ${folder}, best under the name copies, and name it there.`,
  };
}

function noCopies(copies: string): Finding {
  const found = 'There is no such folder, or it holds no files.';
  return {
    rule: 'begin.no-copies',
    weight: 'must',
    place: { file: copies },
    found,
    advice: 'Check the path.',
  };
}

function listThere(folder: string, lists: readonly string[]): Finding {
  return {
    rule: 'begin.list-there',
    weight: 'must',
    place: { file: folder },
    found: `The folder has a list already, ${lists.join(' and ')}, so none was made of the copies.`,
    advice: 'Take it out of the folder first.',
  };
}
