import { readKind } from '../arrange/index.ts';
import { dateContextOf } from '../catalogue/date-context.ts';
import type { Finding } from '../catalogue/finding.ts';
import type { Thing } from '../catalogue/thing.ts';
import { bounds, type DateContext, lastYear, readDate } from '../dates/index.ts';
import { EARLIEST_YEARS } from './earliest-years.ts';
import type { Rules } from './index.ts';

const EARLIEST = new Map(EARLIEST_YEARS.map((row) => [row.kind, row]));

/** Dates that can be read and yet cannot be right. What could not be read is found when the list is. */
export const reviewDates: Rules = ({ settings, things }) => [
  ...things.flatMap(beforeItsKind),
  ...(settings.dates === undefined ? [] : outsideTheWhole(things, settings.dates, dateContextOf(settings))),
];

function beforeItsKind({ row, title, kind, date }: Thing): Finding[] {
  const known = kind === undefined ? undefined : EARLIEST.get(readKind(kind)?.kind.one ?? '');
  if (known === undefined || date?.reading.kind !== 'date') return [];
  const last = lastYear(date.reading.edtf);
  if (last === undefined || last >= known.year) return [];
  return [
    {
      rule: 'dates.before-its-kind',
      weight: 'should',
      place: { file: 'list.csv', row, column: 'date' },
      found: `“${title}” is dated “${date.written}”, but a ${known.kind} cannot be older than ${known.year} (${known.because}).`,
      advice: 'Look at the date and at the kind again; a copy is dated by when it was made.',
      source: `${known.year}: ${known.source}`,
    },
  ];
}

function outsideTheWhole(things: readonly Thing[], written: string, context: DateContext): Finding[] {
  const whole = readDate(written, context);
  if (whole.kind !== 'date') return [];
  const { earliest = '', latest = '9999' } = bounds(whole.edtf);
  const isOutside = ({ date }: Thing) => {
    if (date?.reading.kind !== 'date') return false;
    const part = bounds(date.reading.edtf);
    // "Before 1900" may lie within 1880-1950: only what is certainly outside is found.
    return (part.earliest ?? earliest) < earliest || (part.latest ?? latest) > latest;
  };
  return things.filter(isOutside).map(({ row, title, date }) => ({
    rule: 'dates.outside-the-whole',
    weight: 'should',
    place: { file: 'list.csv', row, column: 'date' },
    found: `“${title}” is dated “${date?.written}”, which is not within the dates of the collection, “${written}”.`,
    advice:
      'Mend the one or the other; without "dates" in collection.yaml, those of the collection are worked out.',
    source: 'DACS 2.4.9',
  }));
}
