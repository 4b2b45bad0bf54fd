import type { Row } from '../csv-rows.ts';
import { MOST, refuseSize } from './refuse.ts';

/** How far a spreadsheet's format shows a date: a mere time of day, and a date without its year, are kinds of their own. */
export type Grain = 'day' | 'month' | 'year' | 'no year' | 'time';

/** A cell that holds a real date, of which the text in `cells` is the ISO form. */
interface DateCell {
  index: number;
  grain: Grain;
  /** The number under the date, in days; undefined where the file keeps the date itself. */
  serial?: number;
}

/** A cell that a formula fills, or should. */
export type CellTrouble = { index: number; what: 'error' | 'no value'; text: string };

/** A row of a sheet; rows that hold nothing are left out. */
export interface SheetRow extends Row {
  hidden?: true;
  dates?: DateCell[];
  troubles?: CellTrouble[];
}

/** Cells joined into one: the first row and column and the last, rows from 1 and columns from 0. */
export interface Merged {
  row: number;
  column: number;
  lastRow: number;
  lastColumn: number;
}

/** A sheet of a workbook, whichever format it came in. */
export interface Sheet {
  name: string;
  hidden: boolean;
  rows: SheetRow[];
  merged: readonly Merged[];
  /** Positions of columns that are not shown. */
  hiddenColumns: ReadonlySet<number>;
}

/** Makes the rows of the sheets of one workbook, and keeps count of them. */
export interface RowMaker {
  /** Begins a row; the one before it is kept if it holds something. */
  begin(row: number, hidden: boolean): void;
  put(index: number, text: string): SheetRow;
  end(): SheetRow[];
}

/** @returns a maker of rows for each sheet in turn; together they stay within what is read of a workbook */
export function rowMakers(file: string): () => RowMaker {
  let cells = 0;
  return () => {
    const rows: SheetRow[] = [];
    let current: SheetRow | undefined;
    const keep = () => {
      if (current === undefined || current.cells.length === 0) return;
      cells += current.cells.length;
      if (cells > MOST.cells) refuseSize(file, `has over ${MOST.cells / 1e6} million cells`);
      rows.push(current);
    };
    return {
      begin(row, hidden) {
        keep();
        if (row > MOST.rows) refuseSize(file, `has over ${MOST.rows} rows in a sheet`);
        current = hidden ? { row, cells: [], hidden } : { row, cells: [] };
      },
      put(index, text) {
        current ??= { row: 1, cells: [] };
        if (index >= MOST.columns) refuseSize(file, `has over ${MOST.columns} columns in a sheet`);
        const { cells } = current;
        while (cells.length < index) cells.push('');
        cells[index] = text;
        return current;
      },
      end() {
        keep();
        current = undefined;
        return inOrder(rows);
      },
    };
  };
}

// A program may write rows in any order, and one in two parts.
function inOrder(rows: SheetRow[]): SheetRow[] {
  const sorted = rows.every(({ row }, at) => at === 0 || row > (rows[at - 1]?.row ?? 0));
  return sorted ? rows : rows.sort((one, other) => one.row - other.row);
}
