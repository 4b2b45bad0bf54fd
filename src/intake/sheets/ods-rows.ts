import { type OdsCell, odsCellPutter } from './ods-cell.ts';
import { times } from './ods-times.ts';
import { MOST, refuseSize } from './refuse.ts';
import { attribute } from './scan-xml.ts';
import type { Grain, Merged, RowMaker } from './sheet.ts';

/** The rows of a sheet while its content is gone through. */
interface OdsRows {
  /** Cells that span several. */
  merged: Merged[];
  /** Begins the next row, or as many as it stands for. */
  begin(attributes: string): void;
  /** Adds the next cell of the row, or as many as it stands for. */
  add(cell: OdsCell, many: number): void;
  finish(): void;
}

/**
 * Writes out the rows of one sheet; cells and rows that stand for many alike are written out (ODF 1.3 part 3, 19.675
 * and 19.678).
 * @param grainOf how far a cell shows a date, by its attributes and its column
 * @param file its name, for the messages
 */
export function odsRows(
  rows: RowMaker,
  grainOf: (attributes: string, column: number) => Grain | undefined,
  file: string,
): OdsRows {
  const merged: Merged[] = [];
  let row = 1;
  let repeat = 1;
  let hidden = false;
  let column = 0;
  let filled: { index: number; times: number; cell: OdsCell }[] = [];
  return {
    merged,
    begin(attributes) {
      repeat = times(attributes, 'number-rows-repeated');
      hidden = (attribute(attributes, 'visibility') ?? 'visible') !== 'visible';
      column = 0;
    },
    add(cell, many) {
      const { attributes, text, comment } = cell;
      const down = times(attributes, 'number-rows-spanned');
      const across = times(attributes, 'number-columns-spanned');
      if (down > 1 || across > 1)
        merged.push({ row, column, lastRow: row + down - 1, lastColumn: column + across - 1 });
      if (text !== '' || comment !== '' || /\s[\w-]+:(?:formula|value|date-value)=/.test(attributes))
        filled.push({ index: column, times: many, cell });
      column += many;
    },
    finish() {
      const last = filled.at(-1);
      if (last !== undefined) {
        refuseLarger(file, row + repeat - 1, last.index + last.times, repeat);
        const cells = filled.flatMap(({ index, times: many, cell }) => {
          // Columns of several styles may lie under cells that stand for many; the first one's tells.
          const put = odsCellPutter(cell, grainOf(cell.attributes, index));
          return Array.from({ length: many }, (_, at) => ({ index: index + at, put }));
        });
        for (let time = 0; time < repeat; time++) {
          rows.begin(row + time, hidden);
          for (const { index, put } of cells) put(rows, index);
        }
      }
      row += repeat;
      filled = [];
    },
  };
}

/** @param width of the row, in columns; as many rows as are repeated are written out, up to the last one */
function refuseLarger(file: string, lastRow: number, width: number, repeated: number): void {
  if (lastRow > MOST.rows) refuseSize(file, `has over ${MOST.rows} rows in a sheet`);
  if (width > MOST.columns) refuseSize(file, `has over ${MOST.columns} columns in a sheet`);
  if (repeated * width > MOST.cells) refuseSize(file, `has over ${MOST.cells / 1e6} million cells`);
}
