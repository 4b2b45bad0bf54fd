import { dayText, yearOfDay } from './calendar.ts';
import { parseEdtf } from './edtf.ts';

/**
 * The earliest and the latest day that a date can be, as YYYY-MM-DD; left out where that side is open, unknown,
 * or the text is no EDTF. "Circa" and "probably" move no bound.
 */
export function bounds(edtf: string): { earliest?: string; latest?: string } {
  const { earliest, latest } = parseEdtf(edtf) ?? {};
  return {
    ...(earliest !== undefined && { earliest: dayText(earliest) }),
    ...(latest !== undefined && { latest: dayText(latest) }),
  };
}

/** The year in which the date begins; undefined where its start is open or unknown. */
export function firstYear(edtf: string): number | undefined {
  const first = parseEdtf(edtf)?.earliest;
  return first === undefined ? undefined : yearOfDay(first);
}

/** The last year that the date touches; undefined where its end is open or unknown. */
export function lastYear(edtf: string): number | undefined {
  const last = parseEdtf(edtf)?.latest;
  return last === undefined ? undefined : yearOfDay(last);
}

/** The year of a date that lies wholly in one year; else undefined (a decade, a span of years). */
export function yearOf(edtf: string): number | undefined {
  const year = firstYear(edtf);
  return year !== undefined && year === lastYear(edtf) ? year : undefined;
}

/** The first year of the decade that a date lies wholly in (1950 for `195X`); else undefined. */
export function decadeOf(edtf: string): number | undefined {
  const [first, last] = [firstYear(edtf), lastYear(edtf)];
  if (first === undefined || last === undefined) return undefined;
  const decade = Math.floor(first / 10) * 10;
  return decade === Math.floor(last / 10) * 10 ? decade : undefined;
}

/**
 * Whether a part's dates fall within its whole's (DACS 2.4.9). A side that is open in the part must be open in
 * the whole. False where either text is no EDTF.
 */
export function isWithin(part: string, whole: string): boolean {
  const [inner, outer] = [parseEdtf(part), parseEdtf(whole)];
  if (!inner || !outer) return false;
  const startsWithin =
    outer.earliest === undefined || (inner.earliest !== undefined && inner.earliest >= outer.earliest);
  const endsWithin =
    outer.latest === undefined || (inner.latest !== undefined && inner.latest <= outer.latest);
  return startsWithin && endsWithin;
}
