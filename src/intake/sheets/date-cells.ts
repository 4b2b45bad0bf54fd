import type { Finding, Weight } from '../../catalogue/finding.ts';
import type { Column } from '../../catalogue/thing.ts';
import type { Layout } from '../layout.ts';
import { fromSerial } from './serial.ts';
import type { SheetRow } from './sheet.ts';

/** Columns in which a date is no answer: what was typed there looked like one to the spreadsheet. */
const NEVER_DATES: readonly Column[] = ['number', 'quantity', 'size', 'folder', 'box', 'series', 'copy'];
// Years that somebody may have typed into a cell that was set to show dates, as numbers of days.
const YEARS = { from: 1400, to: 2100 };
// Numbers of days that are dates from 1910 to 2064, and no years.
const DAYS = { from: 3653, to: 60_000 };

/** What was found of one kind in one column. */
interface Met {
  row: number;
  text: string;
  count: number;
  serial?: number;
}

/**
 * Dates that a spreadsheet made of something else, and numbers that it should have shown as dates. None is undone: the
 * program cannot know what was typed.
 */
export function dateCells(rows: readonly SheetRow[], { at }: Pick<Layout, 'at'>, file: string): Finding[] {
  const columns = new Map([...at].map(([column, index]) => [index, column]));
  const met = new Map<string, Met>();
  const meet = (rule: string, column: Column, row: number, text: string, serial?: number) => {
    const key = `${rule} ${column}`;
    const before = met.get(key);
    if (before === undefined) met.set(key, { row, text, count: 1, ...(serial !== undefined && { serial }) });
    else before.count++;
  };
  const dateColumns = (['date', 'until'] as const).flatMap((column) => {
    const index = at.get(column);
    return index === undefined ? [] : [{ column, index }];
  });
  for (const { row, cells, dates } of rows) {
    for (const { index, grain, serial } of dates ?? []) {
      const column = columns.get(index);
      const text = cells[index] ?? '';
      if (column === undefined) continue;
      if (NEVER_DATES.includes(column)) meet('made', column, row, text);
      else if (column !== 'date' && column !== 'until') continue;
      else if (grain === 'no year') meet('year', column, row, text);
      else if (serial !== undefined && Number.isInteger(serial) && serial >= YEARS.from && serial <= YEARS.to)
        meet('typed', column, row, text, serial);
    }
    for (const { column, index } of dateColumns) {
      const text = cells[index] ?? '';
      if (/^\d{4,5}$/.test(text) && Number(text) >= DAYS.from && Number(text) <= DAYS.to)
        meet('days', column, row, text, Number(text));
    }
  }
  return [...met].map(([key, found]) => say(key, found, file));
}

function say(key: string, { row, text, count, serial = 0 }: Met, file: string): Finding {
  const [rule = '', column = ''] = key.split(' ');
  const more =
    count === 1 ? '' : ` So it is in ${count - 1} more ${count === 2 ? 'row' : 'rows'} of this column.`;
  const finding = (name: string, found: string, advice: string, weight: Weight = 'should'): Finding => ({
    rule: name,
    weight,
    place: { file, row, column },
    found: found + more,
    advice,
  });
  switch (rule) {
    case 'made':
      return finding(
        'list.made-a-date',
        `The cell holds the date ${text}: a spreadsheet makes a date of what looks like one, such as 3-4 or 5/6. It was read as it stands.`,
        'Set the column to text in the spreadsheet, and write again what was meant.',
      );
    case 'year':
      return finding(
        'list.year-added',
        `The spreadsheet shows a day and a month here, and has added the year itself: ${text}. It was read with that year.`,
        'Set the column to text, and write the year that is meant, or the date without one.',
      );
    case 'typed':
      return finding(
        'list.year-as-days',
        `The spreadsheet shows the date ${text} here, which is what it makes of the number ${serial}. If the year ${serial} was typed, it was read wrongly.`,
        `Set the cell to text, and write ${serial}.`,
      );
    default:
      return finding(
        'list.days-as-number',
        `The number ${text} may be how a spreadsheet keeps a date: ${fromSerial(serial, 1900)?.date}. It was read as it stands.`,
        'Set the column to show dates as year, month and day, or write the dates as text.',
      );
  }
}
