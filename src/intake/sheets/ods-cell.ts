import { plainNumber } from './plain-number.ts';
import { attribute } from './scan-xml.ts';
import type { Grain, RowMaker } from './sheet.ts';

/** A cell as it stands in a sheet of the Open Document Format. */
export interface OdsCell {
  attributes: string;
  text: string;
  comment: string;
}

/** Gathers what stands inside a cell: its paragraphs, and those of a comment on it. */
export interface CellReader {
  cell: OdsCell;
  open(element: string, attributes: string, empty: boolean): void;
  close(element: string): void;
  text(piece: string): void;
}

export function cellReader(attributes: string): CellReader {
  const cell: OdsCell = { attributes, text: '', comment: '' };
  const begun = { text: false, comment: false };
  let into: 'text' | 'comment' = 'text';
  let paragraphs = 0;
  const text = (piece: string) => {
    if (paragraphs > 0) cell[into] += piece;
  };
  return {
    cell,
    text,
    open(element, raw, empty) {
      if (element === 'annotation' && !empty) into = 'comment';
      else if (element === 'p') {
        if (begun[into]) cell[into] += '\n';
        begun[into] = true;
        if (!empty) paragraphs++;
      } else if (element === 's') text(' '.repeat(Math.min(Number(attribute(raw, 'c') ?? 1) || 1, 1000)));
      else if (element === 'tab') text(' ');
      else if (element === 'line-break') text('\n');
    },
    close(element) {
      if (element === 'annotation') into = 'text';
      else if (element === 'p') paragraphs--;
    },
  };
}

/**
 * A cell, understood once, to be put into as many rows and columns as it stands for: dates as ISO dates, numbers as they
 * are, everything else as it is shown.
 */
export function odsCellPutter(cell: OdsCell, grain: Grain = 'day'): (rows: RowMaker, index: number) => void {
  const { attributes, text, comment } = cell;
  // Beside office:value-type, some programs write a finer one of their own.
  const isError = /value-type\s*=\s*["']error/.test(attributes);
  const isDate = !isError && attribute(attributes, 'value-type') === 'date';
  const time = isDate ? timeIn(attribute(attributes, 'date-value') ?? '') : undefined;
  const said = comment.trim();
  const shown = isError ? '' : shownIn(cell, grain);
  if (!isError && !isDate && said === '') return (rows, index) => void rows.put(index, shown);
  return (rows, index) => {
    const row = rows.put(index, shown);
    if (isError) row.troubles = [...(row.troubles ?? []), { index, what: 'error', text }];
    if (isDate) row.dates = [...(row.dates ?? []), { index, grain }];
    const remarks = [
      ...(time === undefined ? [] : [{ index, what: 'time of day' as const, text: time }]),
      ...(said === '' ? [] : [{ index, what: 'comment' as const, text: said }]),
    ];
    if (remarks.length > 0) row.remarks = [...(row.remarks ?? []), ...remarks];
  };
}

function timeIn(date: string): string | undefined {
  const time = /T(\d\d:\d\d(?::\d\d)?)/.exec(date)?.[1];
  return time === undefined || /^00:00(:00)?$/.test(time) ? undefined : time;
}

const LENGTHS: Readonly<Record<Grain, number>> = { day: 10, 'no year': 10, time: 10, month: 7, year: 4 };

function shownIn({ attributes, text }: OdsCell, grain: Grain): string {
  switch (attribute(attributes, 'value-type')) {
    case 'date':
      return (attribute(attributes, 'date-value') ?? text).slice(0, LENGTHS[grain]);
    case 'boolean':
      return attribute(attributes, 'boolean-value') === 'true' ? 'TRUE' : 'FALSE';
    case 'float':
      // Shown with zeros before it, a number is a name: 007.
      return /^0\d+$/.test(text) ? text : plainNumber(attribute(attributes, 'value') ?? text);
    case 'string':
      return text === '' ? (attribute(attributes, 'string-value') ?? '') : text;
    default:
      return text;
  }
}
