import { type CellReader, cellReader } from './ods-cell.ts';
import { odsColumns } from './ods-columns.ts';
import { odsRows } from './ods-rows.ts';
import { times } from './ods-times.ts';
import { attribute, type Listener } from './scan-xml.ts';
import type { Grain, RowMaker, Sheet } from './sheet.ts';

/** What the cells of a sheet refer to. */
export interface OdsStyles {
  /** How far a style of cells shows a date. */
  grains: ReadonlyMap<string, Grain>;
  /** Styles of sheets that are not shown. */
  hidden: ReadonlySet<string>;
}

/** A sheet while its content is gone through; `sheet` is complete once its end has been told. */
export interface TableReader extends Listener {
  sheet: Sheet;
}

/** Reads one sheet. */
export function tableReader(
  attributes: string,
  styles: OdsStyles,
  maker: RowMaker,
  file: string,
): TableReader {
  const columns = odsColumns();
  // Cells without a style of their own have that of their column.
  const grainOf = (raw: string, column: number) => {
    const style = attribute(raw, 'style-name') ?? columns.styleAt(column);
    return style === undefined ? undefined : styles.grains.get(style);
  };
  const rows = odsRows(maker, grainOf, file);
  let cell: CellReader | undefined;
  let cellRepeat = 1;
  let inside = 0;

  const finishCell = () => {
    if (cell !== undefined) rows.add(cell.cell, cellRepeat);
    cell = undefined;
  };

  const sheet: Sheet = {
    name: attribute(attributes, 'name') ?? '',
    hidden: styles.hidden.has(attribute(attributes, 'style-name') ?? ''),
    rows: [],
    merged: rows.merged,
    hiddenColumns: columns.hidden,
  };
  return {
    sheet,
    open(element, raw, empty) {
      if (inside > 0 || (cell !== undefined && element === 'table')) {
        // A table inside a cell.
        if (!empty) inside++;
      } else if (cell !== undefined) cell.open(element, raw, empty);
      else if (element === 'table-column') columns.add(raw);
      else if (element === 'table-row') {
        rows.begin(raw);
        if (empty) rows.finish();
      } else if (element === 'table-cell' || element === 'covered-table-cell') {
        cellRepeat = times(raw, 'number-columns-repeated');
        cell = cellReader(raw);
        if (empty) finishCell();
      }
    },
    close(element) {
      if (inside > 0) inside--;
      else if (element === 'table-cell' || element === 'covered-table-cell') finishCell();
      else if (element === 'table-row') rows.finish();
      else if (element === 'table') sheet.rows = maker.end();
      else cell?.close(element);
    },
    text(piece) {
      if (inside === 0) cell?.text(piece);
    },
  };
}
