import { type CellReader, cellReader, type OdsCell, odsCellPutter } from './ods-cell.ts';
import { MOST, refuseSize } from './refuse.ts';
import { attribute, type Listener } from './scan-xml.ts';
import type { Grain, Merged, RowMaker, Sheet } from './sheet.ts';

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

/** Reads one sheet; cells and rows that stand for many alike are written out (ODF 1.3 part 3, 19.675 and 19.678). */
export function tableReader(
  attributes: string,
  styles: OdsStyles,
  rows: RowMaker,
  file: string,
): TableReader {
  const merged: Merged[] = [];
  const hiddenColumns = new Set<number>();
  // Cells without a style of their own have that of their column.
  const columnStyles: { upTo: number; style: string }[] = [];
  let columns = 0;
  let row = 1;
  let repeat = 1;
  let hidden = false;
  let column = 0;
  let filled: { index: number; times: number; cell: OdsCell }[] = [];
  let cell: CellReader | undefined;
  let cellRepeat = 1;
  let inside = 0;

  const finishCell = () => {
    if (cell === undefined) return;
    const { attributes: raw, text, comment } = cell.cell;
    const down = times(raw, 'number-rows-spanned');
    const across = times(raw, 'number-columns-spanned');
    if (down > 1 || across > 1)
      merged.push({ row, column, lastRow: row + down - 1, lastColumn: column + across - 1 });
    if (text !== '' || comment !== '' || /\s[\w-]+:(?:formula|value|date-value)=/.test(raw))
      filled.push({ index: column, times: cellRepeat, cell: cell.cell });
    column += cellRepeat;
    cell = undefined;
  };
  const addColumns = (raw: string) => {
    const many = times(raw, 'number-columns-repeated');
    const shown = attribute(raw, 'visibility') ?? 'visible';
    const end = Math.min(columns + many, columns + 256);
    for (let at = columns; shown !== 'visible' && at < end; at++) hiddenColumns.add(at);
    columns += many;
    const style = attribute(raw, 'default-cell-style-name');
    if (style !== undefined) columnStyles.push({ upTo: columns, style });
  };
  const grainOf = (raw: string, index: number) => {
    const style = attribute(raw, 'style-name') ?? columnStyles.find(({ upTo }) => index < upTo)?.style;
    return style === undefined ? undefined : styles.grains.get(style);
  };
  const finishRow = () => {
    const last = filled.at(-1);
    if (last !== undefined) {
      refuseLarger(file, row + repeat - 1, last.index + last.times, repeat);
      const cells = filled.flatMap(({ index, times: many, cell: one }) => {
        // Columns of several styles may lie under cells that stand for many; the first one's tells.
        const put = odsCellPutter(one, grainOf(one.attributes, index));
        return Array.from({ length: many }, (_, at) => ({ index: index + at, put }));
      });
      for (let time = 0; time < repeat; time++) {
        rows.begin(row + time, hidden);
        for (const { index, put } of cells) put(rows, index);
      }
    }
    row += repeat;
    filled = [];
  };

  const sheet: Sheet = {
    name: attribute(attributes, 'name') ?? '',
    hidden: styles.hidden.has(attribute(attributes, 'style-name') ?? ''),
    rows: [],
    merged,
    hiddenColumns,
  };
  return {
    sheet,
    open(element, raw, empty) {
      if (inside > 0 || (cell !== undefined && element === 'table')) {
        // A table inside a cell.
        if (!empty) inside++;
      } else if (cell !== undefined) cell.open(element, raw, empty);
      else if (element === 'table-column') addColumns(raw);
      else if (element === 'table-row') {
        repeat = times(raw, 'number-rows-repeated');
        hidden = (attribute(raw, 'visibility') ?? 'visible') !== 'visible';
        column = 0;
        if (empty) finishRow();
      } else if (element === 'table-cell' || element === 'covered-table-cell') {
        cellRepeat = times(raw, 'number-columns-repeated');
        cell = cellReader(raw);
        if (empty) finishCell();
      }
    },
    close(element) {
      if (inside > 0) inside--;
      else if (element === 'table-cell' || element === 'covered-table-cell') finishCell();
      else if (element === 'table-row') finishRow();
      else if (element === 'table') sheet.rows = rows.end();
      else cell?.close(element);
    },
    text(piece) {
      if (inside === 0) cell?.text(piece);
    },
  };
}

/** @param width of the row, in columns; as many rows as are repeated are written out, up to the last one */
function refuseLarger(file: string, lastRow: number, width: number, repeated: number): void {
  if (lastRow > MOST.rows) refuseSize(file, `has over ${MOST.rows} rows in a sheet`);
  if (width > MOST.columns) refuseSize(file, `has over ${MOST.columns} columns in a sheet`);
  if (repeated * width > MOST.cells) refuseSize(file, `has over ${MOST.cells / 1e6} million cells`);
}

function times(attributes: string, name: string): number {
  const number = Number(attribute(attributes, name) ?? 1);
  return Number.isInteger(number) && number > 0 ? number : 1;
}
