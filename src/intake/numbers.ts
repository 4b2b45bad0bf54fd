import { asWritten } from '../catalogue/csv-cell.ts';
import type { Finding } from '../catalogue/finding.ts';
import { fold } from '../catalogue/fold.ts';
import { NUMBER_COLUMNS, type NumberColumn, placeText, splitTitles } from '../catalogue/numbers-file.ts';
import { once } from '../catalogue/once.ts';
import type { Settled } from '../catalogue/settled.ts';
import { readTable } from './csv.ts';
import type { Row } from './csv-rows.ts';
import { contradictions, type SettledRow } from './numbers-agree.ts';
import * as say from './numbers-findings.ts';

/** The settled numbers in the order of their rows, and everything that was found in reading them. */
export interface Numbers {
  rows: Settled[];
  findings: Finding[];
}

/**
 * Reads the settled numbers, which somebody may have edited by hand. Where a finding weighs `must`, the rows are not
 * to be used: a number is in pencil on a folder, so nothing is guessed.
 * @param bytes the content of numbers.csv
 * @param file the name for messages
 */
export function readNumbers(bytes: Uint8Array, file: string): Numbers {
  const { table, findings: ofTable } = readTable(bytes, file, (heading) => columnOf(heading) !== undefined);
  if (table === undefined) return { rows: [], findings: ofTable.map(say.aboutNumbers) };
  const { headings, headingRow, rows } = table;
  const findings: Finding[] = [];
  const at = positions(headings, { file, row: headingRow }, findings);
  const read: SettledRow[] = [];
  // A spreadsheet may save empty columns behind the last.
  const width = headings.findLastIndex((heading) => heading !== '') + 1;
  const reader = rowReader(at, width, file, findings);
  for (const row of rows) {
    const settled = reader(row);
    if (settled !== undefined) read.push(settled);
  }
  const all = [...ofTable, ...table.oddities()].map(say.aboutNumbers);
  all.push(...findings, ...contradictions(read, file));
  // The order in which a person goes down the file.
  all.sort((one, other) => (one.place.row ?? 0) - (other.place.row ?? 0));
  return { rows: read.map(({ settled }) => settled), findings: all };
}

const COLUMN_OF = new Map<string, NumberColumn>(NUMBER_COLUMNS.map((column) => [column, column]));
const columnOf = (heading: string) => COLUMN_OF.get(fold(heading));

type Positions = Readonly<Record<NumberColumn, number>>;

function positions(headings: readonly string[], place: Finding['place'], findings: Finding[]): Positions {
  const read = headings.map(columnOf);
  // What stands in the column of reference codes follows from the place.
  const missing = NUMBER_COLUMNS.filter((column) => column !== 'reference code' && !read.includes(column));
  if (missing.length > 0) findings.push(say.missingColumns(place, missing));
  headings.forEach((heading, index) => {
    const column = read[index];
    if (column === undefined && heading !== '') findings.push(say.unknownColumn(place, heading));
    else if (column !== undefined && read.indexOf(column) < index)
      findings.push(say.columnTwice(place, column));
  });
  return Object.fromEntries(NUMBER_COLUMNS.map((column) => [column, read.indexOf(column)])) as Positions;
}

/** Reads one row after the other; undefined for one that cannot be understood. */
function rowReader(at: Positions, width: number, file: string, findings: Finding[]) {
  // One list for all cells that hold the same: whole runs of rows lie in one folder.
  const titles = once(splitTitles);
  const folders = once(readFolders);
  return ({ row, cells }: Row): SettledRow | undefined => {
    const cell = (column: NumberColumn) => {
      const written = cells[at[column]] ?? '';
      return written.startsWith("'") ? asWritten(written) : written;
    };
    const word = (column: NumberColumn) => cell(column).trim();
    const where = (column: NumberColumn) => ({ file, row, column });

    const number = word('number');
    if (number === '' && at.number >= 0) findings.push(say.noNumber(where('number')));
    const written = word('place');
    const place = readPlace(written);
    const groups = titles(cell('groups'));
    if (at.place < 0) return undefined;
    if (place === undefined) findings.push(say.noPlace(where('place'), written));
    else if (at.groups >= 0 && place.length !== groups.length + 2)
      findings.push(say.groupsAndPlace(where('groups'), groups.length, written));
    const code = word('reference code');
    if (place !== undefined && !code.endsWith(placeText(place)) && !endsLike(code, place))
      findings.push(say.placeAndCode(where('place'), written, code));
    const held = folders(word('folder'));
    if (held === undefined) findings.push(say.noFolder(where('folder'), word('folder')));
    if (cells.length > width && cells.slice(width).some((extra) => extra.trim() !== ''))
      findings.push(say.rowTooLong({ file, row }, width));
    // The rest of a row in which something is wrong is still held against the others.
    if (place === undefined) return undefined;

    const settled: Settled = { number, title: cell('title'), place, groups, ...held };
    const filedUnder = cell('filed under');
    if (filedUnder.trim() !== '') settled.filedUnder = filedUnder;
    const [folderKind, box, boxKind, gone] = [
      word('folder kind'),
      word('box'),
      word('box kind'),
      word('gone'),
    ];
    if (folderKind !== '') settled.folderKind = folderKind;
    if (box !== '') settled.box = box;
    if (boxKind !== '') settled.boxKind = boxKind;
    if (gone !== '') settled.gone = gone;
    return { row, settled };
  };
}

// Up to nine figures: no collection needs more, and a number of that length is exact.
const PLACE = /^\/?0*[1-9]\d{0,8}(?: *\/ *0*[1-9]\d{0,8}){2,}$/;

/** `/2/5/13`: group, (further groups,) folder, thing, each from 1. */
function readPlace(written: string): number[] | undefined {
  if (!PLACE.test(written)) return undefined;
  return written
    .slice(written.startsWith('/') ? 1 : 0)
    .split('/')
    .map(Number);
}

/** A folder, the first and the last of several (`3 to 5`), or none; undefined where it cannot be read. */
function readFolders(written: string): Pick<Settled, 'folder' | 'lastFolder'> | undefined {
  if (written === '') return {};
  const [, first, last] = /^0*([1-9]\d{0,8})(?:\s*(?:to|-|–)\s*0*([1-9]\d{0,8}))?$/.exec(written) ?? [];
  if (first === undefined) return undefined;
  const folder = Number(first);
  const lastFolder = Number(last ?? first);
  if (lastFolder < folder) return undefined;
  return lastFolder === folder ? { folder } : { folder, lastFolder };
}

/** Whether the numbers at the end of a reference code, whatever parts them, are those of the place. */
function endsLike(code: string, place: readonly number[]): boolean {
  if (code === '') return true;
  const numbers = code.match(/\d+/g) ?? [];
  const end = numbers.slice(-place.length);
  return end.length === place.length && end.every((number, index) => Number(number) === place[index]);
}
