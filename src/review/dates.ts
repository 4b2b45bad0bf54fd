import { readKind } from '../arrange/index.ts';
import { dateContextOf } from '../catalogue/date-context.ts';
import type { Finding } from '../catalogue/finding.ts';
import type { Thing } from '../catalogue/thing.ts';
import { type DateContext, isWithin, lastYear, readDate } from '../dates/index.ts';
import { endsOf, isCertainlyBefore, reviewLives } from './dates-of-lives.ts';
import { EARLIEST_YEARS } from './earliest-years.ts';
import type { Rules } from './index.ts';
import { maskNumbers } from './private-numbers.ts';

const EARLIEST = new Map(EARLIEST_YEARS.map((row) => [row.kind, row]));

/** Dates that can be read and yet cannot be right. What could not be read is found when the list is. */
export const reviewDates: Rules = (catalogue, aid) => {
  const { settings, things } = catalogue;
  const findings = [
    ...(settings.dates === undefined ? [] : ofTheWhole(things, settings.dates, dateContextOf(settings))),
    ...reviewLives(catalogue, aid),
  ];
  for (const thing of things) {
    const { date, row } = thing;
    if (date?.reading.kind !== 'date') continue;
    findings.push(...beforeItsKind(thing));
    findings.push(...bulkOutside(date, { file: 'list.csv', row, column: 'date' }));
    findings.push(...endsBeforeItBegan(thing));
  }
  return findings;
};

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
      found: `“${maskNumbers(title)}” is dated “${date.written}”, but a ${known.kind} cannot be older than ${known.year} (${known.because}).`,
      advice: 'Look at the date and at the kind again; a copy is dated by when it was made.',
      source: `${known.year}: ${known.source}`,
    },
  ];
}

function ofTheWhole(things: readonly Thing[], written: string, context: DateContext): Finding[] {
  const reading = readDate(written, context);
  if (reading.kind !== 'date') return [];
  const whole = reading.edtf;
  const isOutside = ({ date }: Thing) => {
    if (date?.reading.kind !== 'date') return false;
    const { edtf, alternatives = [edtf] } = date.reading;
    // "Before 1900" or "1930s" may lie within 1934-1950: only what is certainly outside is found.
    return alternatives.every((each) =>
      endsOf(each).some((end) => isCertainlyBefore(end, whole) || isCertainlyBefore(whole, end)),
    );
  };
  const outside = things.filter(isOutside).map(
    ({ row, title, date }): Finding => ({
      rule: 'dates.outside-the-whole',
      weight: 'should',
      place: { file: 'list.csv', row, column: 'date' },
      found: `“${maskNumbers(title)}” is dated “${date?.written}”, which is not within the dates of the collection, “${written}”.`,
      advice:
        'Mend the one or the other; without “dates” in collection.yaml, those of the collection are worked out.',
      source: 'DACS 2.4.9',
    }),
  );
  return [...outside, ...bulkOutside({ written, reading }, { file: 'collection.yaml' })];
}

/** Bulk dates are those within the inclusive dates from which most of the material is. */
function bulkOutside({ written, reading }: NonNullable<Thing['date']>, place: Finding['place']): Finding[] {
  if (reading.kind !== 'date' || reading.bulk === undefined || isWithin(reading.bulk, reading.edtf))
    return [];
  const found = `The bulk dates in “${written}” are not within the inclusive dates before them.`;
  const advice = 'Mend the one or the other: bulk dates are those of most of the material.';
  return [{ rule: 'dates.bulk-outside', weight: 'should', place, found, advice, source: 'DACS 2.4.10' }];
}

/** A restriction that is over before there was the thing it is for. */
function endsBeforeItBegan({ row, title, date, until }: Thing): Finding[] {
  if (date?.reading.kind !== 'date' || until?.reading.kind !== 'date') return [];
  if (date.reading.alternatives !== undefined) return [];
  if (!isCertainlyBefore(until.reading.edtf, date.reading.edtf)) return [];
  return [
    {
      rule: 'dates.restriction-before-the-thing',
      weight: 'should',
      place: { file: 'list.csv', row, column: 'until' },
      found: `“${maskNumbers(title)}” is dated “${date.written}”, and its restriction ends before that, “${until.written}”.`,
      advice: 'Mend the one or the other.',
      source: 'arithmetic',
    },
  ];
}
