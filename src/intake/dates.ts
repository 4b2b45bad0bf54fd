import type { Finding } from '../catalogue/finding.ts';
import type { Column } from '../catalogue/thing.ts';
import { type DateContext, type DateReading, displayDate, readDate } from '../dates/index.ts';

/** A date as the list writes it, with its reading. */
export interface WrittenDate {
  written: string;
  reading: DateReading;
}

const ACCEPTED =
  'Write it like 1962, 1962-05-14, 1958-1963, c. 1950 or 1950s, or write undated; or leave it as it is.';

/** A reader of dates that reads each phrase once, however often the list repeats it. */
export function dateReader(context: DateContext): (written: string) => WrittenDate {
  const known = new Map<string, WrittenDate>();
  return (written) => {
    let date = known.get(written);
    if (date === undefined) {
      date = { written, reading: readDate(written, context) };
      known.set(written, date);
    }
    return date;
  };
}

/** What to say of a date in the list that could not be read, or was read on an assumption. */
export function dateFindings(
  { written, reading }: WrittenDate,
  column: Column,
  file: string,
  row: number,
): Finding[] {
  const place = { file, row, column };
  if (reading.kind === 'unreadable') {
    const found = `The date “${written}” is kept in words only: ${reading.reason}`;
    return [{ rule: 'list.date-unreadable', weight: 'should', place, found, advice: ACCEPTED }];
  }
  if (column === 'until' && reading.kind === 'date' && reading.alternatives !== undefined) {
    const found = `The end of the restriction, “${written}”, must be one certain date: ${reading.assumed.join(' ')}`;
    return [
      { rule: 'list.end-uncertain', weight: 'must', place, found, advice: 'Write it as 2050 or 2050-05-14.' },
    ];
  }
  if (reading.kind === 'undated' || reading.assumed.length === 0) return [];
  const { assumed, alternatives, edtf } = reading;
  const read = alternatives === undefined ? ` was read as ${displayDate(edtf)}` : ' is in doubt';
  const found = `The date “${written}”${read}: ${assumed.join(' ')}`;
  // What was assumed says itself how to write it without a doubt.
  return [{ rule: 'list.date-assumed', weight: 'consider', place, found }];
}
