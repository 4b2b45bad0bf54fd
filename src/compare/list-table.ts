import type { Catalogue } from '../catalogue/catalogue.ts';
import { CatalogueError } from '../catalogue/finding.ts';
import type { Thing } from '../catalogue/thing.ts';
import { type OpenList, openList } from '../intake/open-list.ts';
import { type ListColumn, unitedColumns } from './list-columns.ts';
import { sayBeside } from './say-left-out.ts';
import { type SheetAsTable, sheetAsTable } from './sheet-rows.ts';

/** A row of a list. */
export interface ListRow {
  /** As a spreadsheet counts it, from 1; where the list has several sheets, two rows may have the same. */
  row: number;
  /** A cell for each column; blank ones may be missing at the end. */
  cells: readonly string[];
  /** Its date in EDTF, where it has one that could be read. */
  date?: string;
}

/** A list as it is merged with another. */
export interface ListTable {
  /** How it is called where one must be told from the other. */
  name: string;
  columns: readonly ListColumn[];
  rows: readonly ListRow[];
  /** What of the file is no row of the list and so is not merged, as sentences. */
  leftOut: readonly string[];
}

/**
 * The list of a catalogue with its cells as they were written, in whichever form it is: comma-separated values, XLSX or
 * ODS. The sheets of a workbook follow one another; comments and times of day, which only a workbook has beside its
 * cells, stand in columns of their own, under the headings by which they are read.
 * @throws CatalogueError where it cannot be read
 */
export function listTable(
  {
    list,
    listFile,
    things,
    sheets,
    settings,
  }: Pick<Catalogue, 'list' | 'listFile' | 'things' | 'sheets'> & {
    settings: Pick<Catalogue['settings'], 'list'>;
  },
  name: string,
): ListTable {
  const opened = openList(list, listFile, settings.list);
  const musts = opened.findings.filter(({ weight }) => weight === 'must');
  if (opened.tables.length === 0 || musts.length > 0) throw new CatalogueError(musts);
  const parts = inSheets(opened, things, sheets).map(({ table, here }) => sheetAsTable(table, here));
  const [first, ...others] = parts;
  const columns = others.reduce(
    (all, part) => unitedColumns(all, part.columns, part.sheet),
    first?.columns ?? [],
  );
  return {
    name,
    columns,
    rows: parts.flatMap((part) => part.rows.map((row) => ({ ...row, cells: inOrder(row, part, columns) }))),
    leftOut: [...sayBeside(opened), ...parts.flatMap((part) => part.leftOut)],
  };
}

/** Each table with its own things. */
function inSheets({ tables }: OpenList, things: readonly Thing[], sheets: Catalogue['sheets']) {
  let from = 0;
  return tables.map((table, at) => {
    const count = sheets[at]?.things ?? things.length;
    from += count;
    return { table, here: things.slice(from - count, from) };
  });
}

/** The cells of a row below the columns of the whole list. */
function inOrder(
  { cells }: ListRow,
  { columns: own }: SheetAsTable,
  columns: readonly ListColumn[],
): string[] {
  const at = new Map(own.map(({ key }, index) => [key, index]));
  return columns.map(({ key }) => cells[at.get(key) ?? -1] ?? '');
}

/** What a cell says, without blanks around it. */
export const cellText = (cells: readonly string[], index: number | undefined): string =>
  index === undefined ? '' : (cells[index] ?? '').trim();
