import { attribute, scanXml } from './scan-xml.ts';
import type { Merged, RowMaker, Sheet } from './sheet.ts';
import { columnOfCell, putCell, type Shared, troublesOf } from './xlsx-cell.ts';

/** Reads a sheet (ECMA-376 Part 1, 18.3.1). Of a formula, only the value that was kept with it is read. */
export function readSheet(
  bytes: Uint8Array,
  part: string,
  shared: Shared,
  rows: RowMaker,
): Pick<Sheet, 'rows' | 'merged' | 'hiddenColumns'> {
  const merged: Merged[] = [];
  const hiddenColumns = new Set<number>();
  let row = 0;
  let column = -1;
  let type = 'n';
  let style = 0;
  let value = '';
  let formula = false;
  let listening = false;
  let aloud = false;

  const finishCell = () => {
    if (value !== '') putCell(rows, column, value, type, style, shared);
    else if (formula && type !== 'str') {
      troublesOf(rows.put(column, '')).push({ index: column, what: 'no value', text: '' });
    }
  };

  scanXml(bytes, shared.file, part, {
    open(element, attributes, empty) {
      switch (element) {
        case 'c': {
          const at = attribute(attributes, 'r');
          column = named(at) ?? column + 1;
          type = attribute(attributes, 't') ?? 'n';
          style = Number(attribute(attributes, 's') ?? 0);
          value = '';
          formula = false;
          break;
        }
        case 'v':
        case 't':
          listening = !empty && !aloud;
          break;
        case 'f':
          formula = true;
          break;
        case 'rPh':
          aloud = !empty;
          break;
        case 'row':
          row = whole(attribute(attributes, 'r')) ?? row + 1;
          column = -1;
          rows.begin(row, isTrue(attribute(attributes, 'hidden')));
          break;
        case 'mergeCell': {
          const range = readRange(attribute(attributes, 'ref') ?? '');
          if (range !== undefined) merged.push(range);
          break;
        }
        case 'col':
          if (isTrue(attribute(attributes, 'hidden'))) hide(hiddenColumns, attributes);
          break;
      }
    },
    close(element) {
      if (element === 'v' || element === 't') listening = false;
      else if (element === 'c') finishCell();
      else if (element === 'rPh') aloud = false;
    },
    text(piece) {
      if (listening) value = value === '' ? piece : value + piece;
    },
  });
  return { rows: rows.end(), merged, hiddenColumns };
}

function named(cell: string | undefined): number | undefined {
  const column = cell === undefined ? -1 : columnOfCell(cell);
  return column < 0 ? undefined : column;
}

function whole(written: string | undefined): number | undefined {
  const number = Number(written);
  return Number.isInteger(number) && number > 0 ? number : undefined;
}

const isTrue = (value: string | undefined) => value === '1' || value === 'true';

function hide(columns: Set<number>, attributes: string): void {
  const from = Number(attribute(attributes, 'min'));
  // Beyond the columns that hold something nobody asks.
  const to = Math.min(Number(attribute(attributes, 'max')), from + 255);
  for (let column = from; column <= to; column++) columns.add(column - 1);
}

function readRange(range: string): Merged | undefined {
  const found = /^([A-Z]{1,3})(\d{1,7}):([A-Z]{1,3})(\d{1,7})$/.exec(range);
  if (found === null) return undefined;
  const [, from = '', row, to = '', lastRow] = found;
  return {
    row: Number(row),
    column: columnOfCell(from),
    lastRow: Number(lastRow),
    lastColumn: columnOfCell(to),
  };
}
