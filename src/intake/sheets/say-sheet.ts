import type { Finding, Weight } from '../../catalogue/finding.ts';
import { columnLetters } from '../column-letters.ts';
import type { SheetTable } from './sheet-table.ts';

/** Where something was found several times. */
interface Met {
  row: number;
  index?: number;
  text?: string;
}

/** What only a spreadsheet has and a list does not show: hidden and merged cells, formulas, comments beside the list. */
export function saySheet(table: SheetTable, file: string): Finding[] {
  const { rows, filled, remarked, hiddenColumns, headings } = table;
  const troubles = rows.flatMap(({ row, troubles = [] }) => troubles.map((trouble) => ({ row, ...trouble })));
  const say = (
    rule: string,
    weight: Weight,
    met: readonly Met[],
    found: (first: Met, more: string) => string,
    advice?: string,
  ): Finding[] => {
    const [first] = met;
    if (first === undefined) return [];
    const more =
      met.length === 1
        ? ''
        : ` So it is in ${met.length - 1} more ${met.length === 2 ? 'place' : 'places'}, the last of them in row ${met.at(-1)?.row}.`;
    const column =
      first.index === undefined ? undefined : headings[first.index] || columnLetters(first.index);
    const place = { file, row: first.row, ...(column !== undefined && { column }) };
    const advised = advice === undefined ? {} : { advice };
    return [{ rule, weight, place, found: found(first, more), ...advised }];
  };
  const unseen = rows.filter(({ hidden }) => hidden);
  const hiddenHeadings = headings.filter((heading, index) => heading !== '' && hiddenColumns.has(index));
  return [
    ...say(
      'list.row-hidden',
      'consider',
      unseen,
      () =>
        `The spreadsheet does not show this row${unseen.length === 1 ? '' : ` and ${unseen.length - 1} more`}; hidden rows were read like the others.`,
      'If a hidden row is not to be part of the list, delete it.',
    ),
    ...(hiddenHeadings.length === 0 ? [] : [columnsHidden(file, table.headingRow, hiddenHeadings)]),
    ...say(
      'list.merged',
      'consider',
      filled.map(({ row, column, lastRow }) => ({ row, index: column, text: String(lastRow) })),
      ({ row, text }, more) =>
        `Cells are merged here: what they say was read for each row from ${row} to ${text}.${more}`,
    ),
    ...say(
      'list.cell-error',
      'should',
      troubles.filter(({ what }) => what === 'error'),
      ({ text }, more) => `The cell holds an error, ${text}, and was read as if it were empty.${more}`,
      'Mend its formula, or write in what it should say.',
    ),
    ...say(
      'list.formula-without-value',
      'should',
      troubles.filter(({ what }) => what === 'no value'),
      (_, more) =>
        `The cell holds a formula whose value is not kept in the file, so it was read as if it were empty.${more}`,
      'Open the workbook in a spreadsheet program and save it; that keeps the values.',
    ),
    ...remarked.flatMap(({ row, remarks = [] }) =>
      remarks
        .filter(({ what }) => what === 'comment')
        .map(({ text }) => commentBeside(file, row, row <= table.headingRow, text)),
    ),
  ];
}

function columnsHidden(file: string, row: number, headings: readonly string[]): Finding {
  const names = headings.map((heading) => `“${heading}”`).join(', ');
  const found = `The spreadsheet does not show ${headings.length === 1 ? 'the column' : 'the columns'} ${names}; they were read like the others.`;
  return { rule: 'list.column-hidden', weight: 'consider', place: { file, row }, found };
}

function commentBeside(file: string, row: number, above: boolean, text: string): Finding {
  const where = above ? 'on or above the headings' : 'on a row without a thing';
  return {
    rule: 'list.comment-beside',
    weight: 'consider',
    place: { file, row },
    found: `A comment stands ${where} and was not taken over: “${text.replace(/\s+/g, ' ')}”.`,
    advice:
      'If it is about a thing, move it to a cell of that row; if about all of them, to collection.yaml.',
  };
}
