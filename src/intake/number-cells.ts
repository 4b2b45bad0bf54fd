import { CatalogueError } from '../catalogue/finding.ts';
import { type Encoding, type ListSettings, listSettings } from '../catalogue/list-settings.ts';
import { layoutOf, meaningsOf } from './columns.ts';
import { readTextList, type Table } from './csv.ts';
import { type Row, readRows } from './csv-rows.ts';
import { encodeLike } from './encode.ts';
import { numbersNotWritten } from './numbers-not-written.ts';
import { type RowSpan, rowSpans } from './row-spans.ts';

const FILE = 'list.csv';
const HEADING = 'number';
const SEPARATORS = [',', ';', '\t'] as const;

const AS_IT_IS = listSettings.parse({});

/** Text to be put in at a position. */
interface Addition {
  at: number;
  text: string;
}

/**
 * Writes numbers into the number column of a list, or into a new first column where it has none. Nothing is taken
 * away: without what is put in, the bytes are those that were there. The result is read again and held against them.
 * @param bytes the content of list.csv, in which nothing was found that must be put right
 * @param numbers for rows, as a spreadsheet counts them, that have no number yet
 * @throws CatalogueError where the list cannot take the numbers without saying something else than before
 */
export function withNumbers(
  bytes: Uint8Array,
  numbers: ReadonlyMap<number, string>,
  settings: ListSettings = AS_IT_IS,
): Uint8Array {
  const { table, decoded } = tableOf(bytes, settings);
  const column = layoutOf(table.headings, { file: FILE }, meaningsOf(settings.columns)).at.get('number');
  const named = /^sep=([,;\t])\r?\n/i.exec(decoded.text);
  const before = named?.[0] ?? '';
  const text = decoded.text.slice(before.length);
  const separator = named?.[1] ?? separatorOf(text, table);
  const cells = new Map([[table.headingRow, HEADING], ...numbers]);
  const ways =
    column === undefined
      ? betweens(separator).map((between) => newColumn(text, separator, between, cells))
      : [inColumn(text, separator, column, numbers)];
  for (const additions of ways) {
    const written = encodeLike(bytes, before + putIn(text, additions), decoded.encoding);
    const read = written === undefined ? undefined : tableOf(written, settings);
    if (written === undefined || read?.decoded.encoding !== decoded.encoding) continue;
    if (saysTheSame(tableOf(bytes, settings).table, read.table, column, numbers)) return written;
  }
  throw new CatalogueError([numbersNotWritten()]);
}

// Where a line is a cell, what is written there may hold one separator or another, and must stay whole.
const betweens = (separator: string | undefined) => (separator === undefined ? SEPARATORS : [separator]);

function tableOf(
  bytes: Uint8Array,
  { encoding, headings, columns }: ListSettings,
): { table: Table; decoded: { text: string; encoding: Encoding } } {
  const { columnOf } = meaningsOf(columns);
  const { table, decoded, findings } = readTextList(bytes, FILE, {
    columnOf,
    encoding,
    headingRow: headings,
  });
  if (table === undefined || decoded === undefined) throw new CatalogueError(findings);
  return { table, decoded };
}

/** The separator with which the headings read as they do; undefined for a list of one column. */
function separatorOf(text: string, { headings, headingRow }: Table): string | undefined {
  if (headings.length < 2) return undefined;
  return SEPARATORS.find((separator) => {
    for (const { row, cells } of readRows(text, separator)) {
      if (row > headingRow) return false;
      const read = row < headingRow ? [] : cells.map((cell) => cell.replace(/\s+/g, ' ').trim());
      if (read.length === headings.length && read.every((heading, index) => heading === headings[index]))
        return true;
    }
    return false;
  });
}

/** A cell more at the start of every row that holds something, so that the others stay below their headings. */
function newColumn(
  text: string,
  separator: string | undefined,
  between: string,
  cells: ReadonlyMap<number, string>,
): Addition[] {
  return filledRows(text, separator).map(({ span: { row, starts, end } }) => ({
    at: starts[0] ?? end,
    text: `${cellText(cells.get(row) ?? '')}${between}`,
  }));
}

function inColumn(
  text: string,
  separator: string | undefined,
  column: number,
  numbers: ReadonlyMap<number, string>,
): Addition[] {
  return filledRows(text, separator).flatMap(({ span: { row, starts, end }, cells }) => {
    const number = numbers.get(row);
    const start = starts[column];
    if (number === undefined || (cells[column] ?? '').trim() !== '') return [];
    if (start === undefined) {
      const missing = (separator ?? '').repeat(column + 1 - starts.length);
      return [{ at: end, text: missing + cellText(number) }];
    }
    const quote = /^ *"/.exec(text.slice(start, starts[column + 1] ?? end));
    return quote === null
      ? [{ at: start, text: cellText(number) }]
      : [{ at: start + quote[0].length, text: number.replaceAll('"', '""') }];
  });
}

/** The rows that hold something, with what their cells say. */
function filledRows(
  text: string,
  separator: string | undefined,
): { span: RowSpan; cells: readonly string[] }[] {
  const cellsOf = new Map<number, readonly string[]>();
  for (const { row, cells } of readRows(text, separator)) cellsOf.set(row, cells);
  return [...rowSpans(text, separator)].flatMap((span) => {
    const cells = cellsOf.get(span.row);
    return cells === undefined ? [] : [{ span, cells }];
  });
}

// Whichever separator the list has.
const cellText = (text: string) =>
  /[",;\t\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;

function putIn(text: string, additions: readonly Addition[]): string {
  let done = 0;
  const parts = additions.flatMap(({ at, text: added }) => {
    const kept = text.slice(done, at);
    done = at;
    return [kept, added];
  });
  return [...parts, text.slice(done)].join('');
}

/** Whether a list reads as before, save for the numbers, which are all there. */
function saysTheSame(
  before: Table,
  after: Table,
  column: number | undefined,
  numbers: ReadonlyMap<number, string>,
): boolean {
  const moved = column === undefined ? 1 : 0;
  const at = column ?? 0;
  const alike = (one: readonly string[], other: readonly string[], number: string | undefined) => {
    for (let index = 0; index < Math.max(one.length + moved, other.length); index++) {
      const was = moved === 1 && index === 0 ? '' : (one[index - moved] ?? '');
      const is = other[index] ?? '';
      if (index === at && number !== undefined ? is.trim() !== number : is !== was) return false;
    }
    return true;
  };
  if (!alike(before.headings, after.headings, moved === 1 ? HEADING : undefined)) return false;
  const left = after.rows[Symbol.iterator]();
  let given = 0;
  for (const { row, cells } of before.rows) {
    const { value, done }: IteratorResult<Row, undefined> = left.next();
    const number = numbers.get(row);
    if (done === true || value.row !== row || !alike(cells, value.cells, number)) return false;
    if (number !== undefined) given++;
  }
  return left.next().done === true && given === numbers.size;
}
