import { CatalogueError } from '../catalogue/finding.ts';
import { type Encoding, type ListSettings, listSettings } from '../catalogue/list-settings.ts';
import { LIST_FILE } from '../catalogue/load-findings.ts';
import { meaningsOf } from './columns.ts';
import { readTextList, type Table } from './csv.ts';
import { readRows } from './csv-rows.ts';
import { encodeLike } from './encode.ts';
import { layoutOf } from './layout.ts';
import { inColumn, newColumn, putIn } from './number-additions.ts';
import { numbersNotWritten } from './numbers-not-written.ts';
import { NUMBER_HEADING, sameButNumbers } from './same-but-numbers.ts';

const SEPARATORS = [',', ';', '\t'] as const;

const AS_IT_IS = listSettings.parse({});

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
  const column = layoutOf(table.headings, { file: LIST_FILE }, meaningsOf(settings.columns)).at.get('number');
  const named = /^sep=([,;\t])\r?\n/i.exec(decoded.text);
  const before = named?.[0] ?? '';
  const text = decoded.text.slice(before.length);
  const separator = named?.[1] ?? separatorOf(text, table);
  const cells = new Map([[table.headingRow, NUMBER_HEADING], ...numbers]);
  const ways =
    column === undefined
      ? betweens(separator).map((between) => newColumn(text, separator, between, cells))
      : [inColumn(text, separator, column, numbers)];
  for (const additions of ways) {
    const written = encodeLike(bytes, before + putIn(text, additions), decoded.encoding);
    const read = written === undefined ? undefined : tableOf(written, settings);
    if (written === undefined || read?.decoded.encoding !== decoded.encoding) continue;
    if (sameButNumbers(tableOf(bytes, settings).table, read.table, column, numbers)) return written;
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
  const { table, decoded, findings } = readTextList(bytes, LIST_FILE, {
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
