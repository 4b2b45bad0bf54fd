import type { Finding } from '../catalogue/finding.ts';
import type { Encoding } from '../catalogue/list-settings.ts';
import { forbiddenCharacter } from '../catalogue/text.ts';
import type { Column } from '../catalogue/thing.ts';
import { type Oddities, type Row, readRows } from './csv-rows.ts';
import { decodeText } from './decode.ts';
import { decodeList } from './decode-list.ts';
import { HEADINGS_WITHIN, headingRowAmong } from './heading-row.ts';
import { recogniseSeparator } from './separator.ts';
import { empty, forbidden, noSuchRow, sayOddities } from './table-findings.ts';

/** A list as a table. */
export interface Table {
  /** The headings as written. */
  headings: readonly string[];
  headingRow: number;
  /** Every row below them that holds something; to be read once. */
  rows: Iterable<Row>;
  /** What stands above the headings. */
  above?: readonly Row[];
  /** What was odd in the rows; complete once the last has been read. */
  oddities(): Finding[];
}

/** How a list is to be read that its owner keeps, not the program. */
export interface HowToRead {
  columnOf(heading: string): Column | undefined;
  encoding?: Encoding | undefined;
  /** The row in which the headings stand; looked for among the first rows if not given. */
  headingRow?: number | undefined;
}

const SAVE_AS = 'Open it in a spreadsheet program and save it as “CSV UTF-8” under the name list.csv.';

/**
 * Reads a table in comma-separated values in UTF-8 or UTF-16, its headings in its first row; semicolons and tabs serve
 * as well.
 * @param file the name for messages
 * @param isHeading whether a text is known as the heading of a column; helps to recognise the separator
 * @returns the table (undefined where the bytes hold none) and what was found on the way
 */
export function readTable(
  bytes: Uint8Array,
  file: string,
  isHeading: (text: string) => boolean,
): { table?: Table; findings: Finding[] } {
  const decoded = decodeText(bytes, file, SAVE_AS);
  if ('trouble' in decoded) return { findings: [decoded.trouble] };
  return tableIn(decoded.text, file, isHeading, () => 0);
}

/**
 * Reads a list in comma-separated values as people keep it: in the encodings of old programs too, and with words above
 * its headings.
 * @param file the name for messages
 * @returns the table (undefined where the bytes hold none), its text and encoding, and what was found on the way
 */
export function readTextList(
  bytes: Uint8Array,
  file: string,
  { columnOf, encoding, headingRow }: HowToRead,
): { table?: Table; findings: Finding[]; decoded?: { text: string; encoding: Encoding } } {
  const decoded = decodeList(bytes, file, SAVE_AS, encoding);
  if ('trouble' in decoded) return { findings: [decoded.trouble] };
  const isHeading = (heading: string) => columnOf(heading) !== undefined;
  const headAmong = (rows: readonly Row[]) => {
    if (headingRow === undefined) return headingRowAmong(rows, columnOf);
    return rows.findIndex(({ row }) => row >= headingRow);
  };
  const within = headingRow ?? HEADINGS_WITHIN;
  const { table, findings } = tableIn(decoded.text, file, isHeading, headAmong, within);
  return { ...(table !== undefined && { table }), findings: [...decoded.findings, ...findings], decoded };
}

/** @param headAmong which of the first rows holds the headings; below 0 where none of them does */
function tableIn(
  content: string,
  file: string,
  isHeading: (text: string) => boolean,
  headAmong: (rows: readonly Row[]) => number,
  within = 1,
): { table?: Table; findings: Finding[] } {
  // Some spreadsheet programs put the separator into a line of its own, which they do not count as a row.
  const named = /^sep=([,;\t])\r?\n/i.exec(content);
  const text = named === null ? content : content.slice(named[0].length);
  const separator = named?.[1] ?? recogniseSeparator(text, isHeading, within);
  const found: Oddities = { stray: [] };
  const rows = readRows(text, separator, found);
  const oddities = () => sayOddities(found, text, named === null ? 0 : 1, file);

  const first: Row[] = [];
  while (first.length < within) {
    const { value, done } = rows.next();
    if (done === true) break;
    first.push(value);
  }
  if (first.length === 0) return { findings: found.unclosed === undefined ? [empty(file)] : oddities() };
  const at = headAmong(first);
  const head = first[at];
  if (head === undefined) return { findings: [...oddities(), noSuchRow(file)] };
  const headings = head.cells.map(tidyHeading);
  const clean = forbiddenCharacter(text) === undefined;
  const findings = clean ? [] : forbidden(readRows(text, separator), headings, file);
  const below = joined(first.slice(at + 1), rows);
  const above = at === 0 ? {} : { above: first.slice(0, at) };
  return { table: { headings, headingRow: head.row, rows: below, oddities, ...above }, findings };
}

/** To be read once. A generator that hands on to another takes as long for each row as it takes to read its cells. */
function joined(first: readonly Row[], others: Iterator<Row>): Iterable<Row> {
  const before = first.values();
  const rows = {
    next() {
      const one = before.next();
      return one.done === true ? others.next() : one;
    },
  };
  return { [Symbol.iterator]: () => rows };
}

/** A heading on one line. */
export function tidyHeading(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}
