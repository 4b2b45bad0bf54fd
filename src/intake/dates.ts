import type { Finding } from '../catalogue/finding.ts';
import { languageUse } from '../catalogue/languages.ts';
import { once } from '../catalogue/once.ts';
import type { Column, Thing } from '../catalogue/thing.ts';
import { type DateContext, hasAgeWord, readDate } from '../dates/index.ts';
import { languageFinder } from './date-languages.ts';
import { sayReading } from './say-reading.ts';
import { whoseAge } from './whose-age.ts';

/** A date as the list writes it, with its reading. */
type WrittenDate = NonNullable<Thing['date']>;

const ACCEPTED =
  'Write it like 1962, 1962-05-14, 1958-1963, c. 1950 or 1950s, or write undated; or leave it as it is.';

/** A cell with a date, and the thing that it is of. */
export interface DateCell {
  thing: Thing;
  column: 'date' | 'until';
  cell: string;
}

/**
 * Reads the dates of all things, in the languages of the settings and of the list.
 * @returns what was found in doing so
 */
export function readDates(dated: readonly DateCell[], context: DateContext, file: string): Finding[] {
  const words = new Set(dated.flatMap(({ thing }) => thing.languages));
  const spoken = [...words].map((word) => languageUse(word)?.code).filter((code) => code !== undefined);
  const languages = [...new Set([...(context.languages ?? []), ...spoken])];
  // A thing cannot be from tomorrow, but a restriction ends there.
  const { today: _, earliestYear: __, latestYear: ___, ...ahead } = context;
  const readers = {
    date: ageReader({ ...context, languages }),
    // What else may be said of the end of a restriction must not be passed over.
    until: dateReader({ ...ahead, languages, whole: true }),
  };
  const languagesOf = languageFinder({ ...context, languages });
  return dated.flatMap(({ thing, column, cell }) => {
    const date = readers[column](cell, thing);
    thing[column] = date;
    return dateFindings(date, column, file, thing.row, languagesOf);
  });
}

/** A reader of dates that takes an age without a name as that of whom its row names. */
function ageReader(context: DateContext): (written: string, thing: Thing) => WrittenDate {
  const read = dateReader(context);
  const standIn = dateReader({ ...context, ageOf: { name: 'somebody', born: '1900-01-01' } });
  const readerOf = once((ageOf: NonNullable<DateContext['ageOf']>) => dateReader({ ...context, ageOf }));
  return (written, thing) => {
    const date = read(written);
    // Few lists tell ages, and few rows of those: nothing else goes beyond the first reading.
    if (date.reading.kind !== 'unreadable' || !hasAgeWord(written)) return date;
    if (standIn(written).reading.kind !== 'date') return date;
    const whose = whoseAge(thing, context.people ?? []);
    if ('reason' in whose) return { written, reading: { kind: 'unreadable', reason: whose.reason } };
    return readerOf(whose)(written);
  };
}

/** A reader of dates that reads each phrase once, however often the list repeats it. */
function dateReader(context: DateContext): (written: string) => WrittenDate {
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
function dateFindings(
  { written, reading }: WrittenDate,
  column: Column,
  file: string,
  row: number,
  languagesOf: (written: string) => readonly string[],
): Finding[] {
  const place = { file, row, column };
  if (reading.kind === 'unreadable') {
    const found = `The date “${written}” is kept in words only: ${reading.reason}`;
    const others = languagesOf(written);
    const advice =
      others.length === 0
        ? ACCEPTED
        : `It is a date in ${others.join(', or ')}: name the language under “languages” in collection.yaml, or in the column “language” of a row, and it is read.`;
    return [{ rule: 'list.date-unreadable', weight: 'should', place, found, advice }];
  }
  if (column === 'until' && reading.kind === 'date' && reading.alternatives !== undefined) {
    const found = `The end of the restriction, “${written}”, must be one certain date: ${reading.assumed.join(' ')}`;
    return [
      { rule: 'list.end-uncertain', weight: 'must', place, found, advice: 'Write it as 2050 or 2050-05-14.' },
    ];
  }
  if (reading.kind === 'undated' || reading.assumed.length === 0) return [];
  const { assumed, alternatives, edtf } = reading;
  const said = alternatives === undefined ? sayReading(edtf, assumed) : `is in doubt: ${assumed.join(' ')}`;
  const found = `The date “${written}” ${said}`;
  // What was assumed says itself how to write it without a doubt.
  return [{ rule: 'list.date-assumed', weight: 'consider', place, found }];
}
