import { dayText } from './calendar.ts';
import { parseEdtf } from './edtf.ts';
import type { DateContext } from './reading.ts';

/** Whether a date begins after today; always false where today is not given. */
export function isFuture(edtf: string, { today }: DateContext): boolean {
  const first = parseEdtf(edtf)?.earliest;
  return first !== undefined && today !== undefined && first >= 0 && dayText(first) > today;
}

/** Why a date lies outside the years to be expected, as a sentence; undefined where it does not. */
export function outOfRange(edtf: string, { earliestYear, latestYear }: DateContext): string | undefined {
  const { earliest: first, latest: last } = parseEdtf(edtf) ?? {};
  if (earliestYear !== undefined && last !== undefined && last < earliestYear * 10000) {
    return `It lies before ${earliestYear}, the earliest year to be expected.`;
  }
  if (latestYear !== undefined && first !== undefined && first > latestYear * 10000 + 1231) {
    return `It lies after ${latestYear}, the latest year to be expected.`;
  }
  return undefined;
}
