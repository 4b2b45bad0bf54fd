import { CatalogueError, type Finding } from '../catalogue/finding.ts';
import { fold } from '../catalogue/fold.ts';
import type { Encoding, ListSettings } from '../catalogue/list-settings.ts';
import { meaningsOf } from './columns.ts';
import { readTextList, type Table } from './csv.ts';
import { type Layout, layoutOf } from './layout.ts';
import { chooseSheets } from './sheets/choose.ts';
import { dateCells } from './sheets/date-cells.ts';
import { saySheet } from './sheets/say-sheet.ts';
import { type SheetTable, sheetTable } from './sheets/sheet-table.ts';
import { readWorkbook } from './sheets/workbook.ts';

/** One table of a list, understood: a workbook may have several, one a sheet. */
export interface ListTable {
  table: Table;
  layout: Layout;
  /** The name for messages: of the file, and of the sheet where several are read. */
  file: string;
  /** The sheet's name, in a workbook. */
  sheet?: string;
}

/** A list, opened: its tables, whose rows are still to be read, and what was found so far. */
export interface OpenList {
  tables: readonly ListTable[];
  findings: readonly Finding[];
  /** The encoding of a text. */
  encoding?: Encoding;
}

const WORKBOOK = /\.(?:xlsx|xlsm|xltx|ods|ots|xls)$/i;

/** Whether a file of this name is to be read as a workbook, and not as text. */
const isWorkbook = (file: string): boolean => WORKBOOK.test(file);

/**
 * Opens a list in whichever form: comma-separated values, XLSX or ODS, by the name of its file.
 * @param file the name for messages
 */
export function openList(bytes: Uint8Array, file: string, settings: ListSettings): OpenList {
  try {
    return isWorkbook(file) ? openWorkbook(bytes, file, settings) : openText(bytes, file, settings);
  } catch (error) {
    if (!(error instanceof CatalogueError)) throw error;
    return { tables: [], findings: error.findings };
  }
}

function openText(bytes: Uint8Array, file: string, settings: ListSettings): OpenList {
  const { encoding, headings, columns } = settings;
  const meanings = meaningsOf(columns);
  const how = { columnOf: meanings.columnOf, encoding, headingRow: headings };
  const { table, findings, decoded } = readTextList(bytes, file, how);
  const read = decoded === undefined ? {} : { encoding: decoded.encoding };
  if (table === undefined) return { tables: [], findings, ...read };
  const layout = layoutOf(table.headings, { file, row: table.headingRow }, meanings);
  const tables = [{ table, layout, file }];
  return {
    tables,
    findings: [...findings, ...sayAbove(table, file), ...notThere(settings, tables)],
    ...read,
  };
}

function openWorkbook(bytes: Uint8Array, file: string, settings: ListSettings): OpenList {
  const meanings = meaningsOf(settings.columns);
  const sheets = readWorkbook(bytes, file);
  const { chosen, findings: ofChoice } = chooseSheets(sheets, file, settings.sheets, meanings.columnOf);
  const findings: Finding[] = [...ofChoice];
  if (chosen.length === 0) findings.push(nothing(file));
  const how = { columnOf: meanings.columnOf, headingRow: settings.headings };
  const tables = chosen.flatMap((sheet): ListTable[] => {
    const name = chosen.length > 1 ? `${file}, sheet ${sheet.name}` : file;
    const { table, findings: ofTable } = sheetTable(sheet, name, how);
    findings.push(...ofTable);
    if (table === undefined) return [];
    const layout = layoutOf(table.headings, { file: name, row: table.headingRow }, meanings);
    findings.push(...sayTable(table, layout, name));
    return [{ table, layout, file: name, sheet: sheet.name }];
  });
  return { tables, findings: [...findings, ...notThere(settings, tables)] };
}

const sayTable = (table: SheetTable, layout: Layout, file: string): Finding[] => [
  ...sayAbove(table, file),
  ...saySheet(table, file),
  ...dateCells(table.rows, layout, file),
];

function sayAbove({ above = [], headingRow }: Table, file: string): Finding[] {
  const [first] = above;
  if (first === undefined) return [];
  const words = first.cells
    .filter((cell) => cell.trim() !== '')
    .join(' ')
    .replace(/\s+/g, ' ')
    .trim();
  const count = above.length === 1 ? 'One row stands' : `${above.length} rows stand`;
  const found = `${count} above the headings in row ${headingRow}, beginning “${words.slice(0, 60)}”; they were not read as things.`;
  const place = { file, row: first.row };
  const advice = 'What they say of the list as a whole belongs into collection.yaml.';
  return [{ rule: 'list.above-headings', weight: 'consider', place, found, advice }];
}

/** Headings of which collection.yaml says something, and which the list does not have. */
function notThere({ columns }: ListSettings, tables: readonly ListTable[]): Finding[] {
  const there = new Set(tables.flatMap(({ table }) => table.headings.map(fold)));
  const { isSettled } = meaningsOf(columns);
  const settled = tables.flatMap(({ table }) => table.headings.filter(isSettled));
  if (settled.length >= Object.keys(columns).length) return [];
  return Object.keys(columns).flatMap((heading): Finding[] => {
    const alike = meaningsOf({ [heading]: 'kept' });
    if (there.has(fold(heading)) || settled.some(alike.isSettled)) return [];
    const found = `The list has no heading “${heading}”, of which “columns” under “list” says what it means.`;
    const advice = 'Write the heading there as it stands in the list.';
    const place = { file: 'collection.yaml' };
    return [{ rule: 'list.no-such-heading', weight: 'should', place, found, advice }];
  });
}

function nothing(file: string): Finding {
  const advice = 'Write the headings into its first row, title above all, and one thing a row below.';
  const found = 'The workbook holds nothing in a sheet that is shown.';
  return { rule: 'list.empty', weight: 'must', place: { file }, found, advice };
}
