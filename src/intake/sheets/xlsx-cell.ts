import type { NumberFormat } from './number-format.ts';
import { plainNumber } from './plain-number.ts';
import { type Epoch, fromSerial, timeOf } from './serial.ts';
import type { CellTrouble, RowMaker, SheetRow } from './sheet.ts';
import { unescaped } from './xlsx-strings.ts';

/** What the cells of a sheet refer to. */
export interface Shared {
  file: string;
  strings: readonly string[];
  styles: readonly NumberFormat[];
  epoch: Epoch;
}

/**
 * Puts a cell into its row.
 * @param value as the file keeps it
 * @param type ST_CellType (ECMA-376 Part 1, 18.18.11)
 */
export function putCell(
  rows: RowMaker,
  index: number,
  value: string,
  type: string,
  style: number,
  { strings, styles, epoch }: Shared,
): void {
  switch (type) {
    case 's':
      rows.put(index, strings[Number(value)] ?? '');
      break;
    case 'n':
      putNumber(rows, index, value, styles[style], epoch);
      break;
    case 'b':
      rows.put(index, value === '1' ? 'TRUE' : 'FALSE');
      break;
    case 'e':
      troublesOf(rows.put(index, '')).push({ index, what: 'error', text: value });
      break;
    case 'd': {
      const row = rows.put(index, value.slice(0, 10));
      row.dates = [...(row.dates ?? []), { index, grain: 'day' }];
      break;
    }
    default:
      rows.put(index, unescaped(value));
  }
}

/** What is wrong in a row, to be added to. */
export function troublesOf(row: SheetRow): CellTrouble[] {
  row.troubles ??= [];
  return row.troubles;
}

function putNumber(rows: RowMaker, index: number, value: string, format: NumberFormat, epoch: Epoch): void {
  if (format === undefined) return void rows.put(index, plainNumber(value));
  const number = Number(value);
  if ('zeros' in format) {
    const whole = Number.isInteger(number) && number >= 0;
    return void rows.put(index, whole ? String(number).padStart(format.zeros, '0') : plainNumber(value));
  }
  if (format.date === 'time' && number >= 0 && number < 1)
    return void rows.put(index, timeOf(Math.round(number * 86_400) % 86_400));
  const read = fromSerial(number, epoch);
  if (read === undefined) return void rows.put(index, plainNumber(value));
  const length = format.date === 'month' ? 7 : format.date === 'year' ? 4 : 10;
  const row = rows.put(index, read.date.slice(0, length));
  row.dates ??= [];
  row.dates.push({ index, grain: format.date, serial: number });
  if (read.time !== undefined) {
    row.remarks ??= [];
    row.remarks.push({ index, what: 'time of day', text: read.time });
  }
}

/** The position of the column in the name of a cell: 1 for `B4`. */
export function columnOfCell(cell: string): number {
  let column = 0;
  for (let at = 0; at < cell.length; at++) {
    const letter = (cell.charCodeAt(at) & ~32) - 64;
    if (letter < 1 || letter > 26) break;
    column = column * 26 + letter;
  }
  return column - 1;
}
