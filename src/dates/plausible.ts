import { dayText } from './calendar.ts';
import { parseEdtf, spanOf } from './edtf.ts';
import type { DateContext } from './reading.ts';

/** Whether a date begins after today; always false where today is not given. */
export function isFuture(edtf: string, { today }: DateContext): boolean {
  const date = parseEdtf(edtf);
  const first = date && spanOf(date).first;
  return first !== undefined && today !== undefined && first >= 0 && dayText(first) > today;
}

/** Why a date lies outside the years to be expected, as a sentence; undefined where it does not. */
export function outOfRange(edtf: string, { earliestYear, latestYear }: DateContext): string | undefined {
  const date = parseEdtf(edtf);
  const { first, last } = date ? spanOf(date) : { first: undefined, last: undefined };
  if (earliestYear !== undefined && last !== undefined && last < earliestYear * 10000) {
    return `It lies before ${earliestYear}, the earliest year to be expected.`;
  }
  if (latestYear !== undefined && first !== undefined && first > latestYear * 10000 + 1231) {
    return `It lies after ${latestYear}, the latest year to be expected.`;
  }
  return undefined;
}
