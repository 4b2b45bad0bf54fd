import type { Finding, Place } from '../catalogue/finding.ts';
import { forbiddenCharacter } from '../catalogue/text.ts';
import { type Oddities, type Row, readRows } from './csv-rows.ts';
import { decodeText } from './decode.ts';

/** A list as a table. */
export interface Table {
  /** The headings as written. */
  headings: readonly string[];
  headingRow: number;
  /** Every row below them that holds something; to be read once. */
  rows: Iterable<Row>;
  /** What was odd in the rows; complete once the last has been read. */
  oddities(): Finding[];
}

const SAVE_AS = 'Open it in a spreadsheet program and save it as “CSV UTF-8” under the name list.csv.';
const SEPARATORS = [',', ';', '\t'] as const;
// Rows looked at to recognise the separator.
const SAMPLE = 20;

/**
 * Reads a list in comma-separated values; semicolons and tabs serve as well.
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
  // Some spreadsheet programs put the separator into a line of its own, which they do not count as a row.
  const named = /^sep=([,;\t])\r?\n/i.exec(decoded.text);
  const text = named === null ? decoded.text : decoded.text.slice(named[0].length);
  const separator = named?.[1] ?? recognise(text, isHeading);
  const found: Oddities = { stray: [] };
  const rows = readRows(text, separator, found);
  const oddities = () => sayOddities(found, text, named === null ? 0 : 1, file);

  const { value: head, done } = rows.next();
  if (done === true) return { findings: found.unclosed === undefined ? [empty(file)] : oddities() };
  const headings = head.cells.map(tidyHeading);
  const clean = forbiddenCharacter(text) === undefined;
  const findings = clean ? [] : forbidden(readRows(text, separator), headings, file);
  return { table: { headings, headingRow: head.row, rows, oddities }, findings };
}

function sayOddities(
  { stray, unclosed }: Oddities,
  text: string,
  linesBefore: number,
  file: string,
): Finding[] {
  const findings = stray.map((row) => strayText({ file, row }));
  if (unclosed === undefined) return findings;
  const line = text.slice(0, unclosed.at).split(/\r\n|\r|\n/).length + linesBefore;
  return [...findings, openQuote({ file, row: unclosed.row, line })];
}

function openQuote(place: Place): Finding {
  return {
    rule: 'list.unclosed-quote',
    weight: 'must',
    place,
    found: 'A quotation mark (") opens a cell here, and none closes it before the file ends.',
    advice: 'Put one at the end of that cell; where a cell itself holds a quotation mark, write it twice.',
  };
}

function tidyHeading(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}

/** The separator that gives the most known headings, then the most even rows, then the most columns. */
function recognise(text: string, isHeading: (text: string) => boolean): string | undefined {
  let best: { separator: string; score: readonly number[] } | undefined;
  for (const separator of SEPARATORS) {
    const rows = firstOf(readRows(text, separator), SAMPLE);
    const head = rows[0]?.cells;
    // Nothing but separators: the list is empty.
    if (head === undefined) return separator;
    if (head.length < 2) continue;
    const even = rows.filter(({ cells }) => cells.length === head.length).length;
    const score = [head.filter(isHeading).length, even, head.length];
    if (best === undefined || higher(score, best.score)) best = { separator, score };
  }
  return best?.separator;
}

function firstOf<Item>(items: Iterable<Item>, most: number): Item[] {
  const first: Item[] = [];
  for (const item of items) if (first.push(item) === most) break;
  return first;
}

function higher(one: readonly number[], other: readonly number[]): boolean {
  const at = one.findIndex((value, index) => value !== other[index]);
  return at >= 0 && (one[at] ?? 0) > (other[at] ?? 0);
}

function strayText(place: Place): Finding {
  return {
    rule: 'list.stray-quote',
    weight: 'should',
    place,
    found: 'Text follows the quotation mark (") that closes a cell; both were read as one cell.',
    advice: 'Put the whole cell between quotation marks, and write every quotation mark inside it twice.',
  };
}

/** A list in which there is nothing at all. */
function empty(file: string): Finding {
  const advice =
    'Write the headings in its first row (title is the one that must be there) and one thing a row below.';
  return { rule: 'list.empty', weight: 'must', place: { file }, found: 'The list is empty.', advice };
}

function forbidden(rows: Iterable<Row>, headings: readonly string[], file: string): Finding[] {
  return [...rows].flatMap(({ row, cells }) =>
    cells.flatMap((cell, at): Finding[] => {
      const character = forbiddenCharacter(cell);
      if (character === undefined) return [];
      const code = character.codePoint.toString(16).toUpperCase().padStart(4, '0');
      const before = cell.slice(0, character.at).slice(-30);
      const where = before === '' ? 'begins with' : `holds, after “${before}”,`;
      const column = headings[at] || columnLetters(at);
      const found = `The cell ${where} the control character U+${code}, which no XML document can hold.`;
      const advice = 'Delete it in the list: it is invisible, so retype the words around it.';
      return [
        { rule: 'list.forbidden-character', weight: 'must', place: { file, row, column }, found, advice },
      ];
    }),
  );
}

/** The letters over a spreadsheet's column: A for 0, AA for 26. */
export function columnLetters(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : columnLetters(Math.floor(index / 26) - 1) + last;
}
