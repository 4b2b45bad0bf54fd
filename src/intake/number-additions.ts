import { readRows } from './csv-rows.ts';
import { type RowSpan, rowSpans } from './row-spans.ts';

/** Text to be put in at a position. */
interface Addition {
  at: number;
  text: string;
}

/** A cell more at the start of every row that holds something, so that the others stay below their headings. */
export function newColumn(
  text: string,
  separator: string | undefined,
  between: string,
  cells: ReadonlyMap<number, string>,
): Addition[] {
  return filledRows(text, separator).map(({ span: { row, starts, end } }) => ({
    at: starts[0] ?? end,
    text: `${cellText(cells.get(row) ?? '')}${between}`,
  }));
}

/** The numbers in the cells of a column that is there. */
export function inColumn(
  text: string,
  separator: string | undefined,
  column: number,
  numbers: ReadonlyMap<number, string>,
): Addition[] {
  return filledRows(text, separator).flatMap(({ span: { row, starts, end }, cells }) => {
    const number = numbers.get(row);
    const start = starts[column];
    if (number === undefined || (cells[column] ?? '').trim() !== '') return [];
    if (start === undefined) {
      const missing = (separator ?? '').repeat(column + 1 - starts.length);
      return [{ at: end, text: missing + cellText(number) }];
    }
    const quote = /^ *"/.exec(text.slice(start, starts[column + 1] ?? end));
    return quote === null
      ? [{ at: start, text: cellText(number) }]
      : [{ at: start + quote[0].length, text: number.replaceAll('"', '""') }];
  });
}

/** The rows that hold something, with what their cells say. */
function filledRows(
  text: string,
  separator: string | undefined,
): { span: RowSpan; cells: readonly string[] }[] {
  const cellsOf = new Map<number, readonly string[]>();
  for (const { row, cells } of readRows(text, separator)) cellsOf.set(row, cells);
  return [...rowSpans(text, separator)].flatMap((span) => {
    const cells = cellsOf.get(span.row);
    return cells === undefined ? [] : [{ span, cells }];
  });
}

// Whichever separator the list has.
const cellText = (text: string) =>
  /[",;\t\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;

/** A text with everything put in at its position. */
export function putIn(text: string, additions: readonly Addition[]): string {
  let done = 0;
  const parts = additions.flatMap(({ at, text: added }) => {
    const kept = text.slice(done, at);
    done = at;
    return [kept, added];
  });
  return [...parts, text.slice(done)].join('');
}
