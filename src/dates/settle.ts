import { parseEdtf } from './edtf.ts';
import { isFuture, outOfRange } from './plausible.ts';
import type { DateContext, DateReading } from './reading.ts';

export const unreadable = (reason: string): DateReading => ({ kind: 'unreadable', reason });

/** Checks a date against today and the years to be expected, and makes the reading of it. */
export function settle(
  edtf: string,
  notes: readonly string[],
  context: DateContext,
  alternatives: readonly string[],
  bulk?: string,
): DateReading {
  const date = parseEdtf(edtf);
  if (!date) return unreadable('It is not understood.');
  const { earliest: first, latest: last } = date;
  if (isNoYear(first) || isNoYear(last)) return unreadable('No thing is dated so.');
  const beyond = isFuture(edtf, context) ? 'It lies in the future.' : outOfRange(edtf, context);
  const assumed = beyond === undefined ? [...notes] : [...notes, beyond];
  return {
    kind: 'date',
    edtf,
    assumed,
    ...(alternatives.length > 1 && { alternatives }),
    ...(bulk !== undefined && { bulk }),
  };
}

// Years of more than four figures, and dates of which no figure of the year is known.
const isNoYear = (day: number | undefined) => day !== undefined && Math.abs(day) >= 99_990_000;
