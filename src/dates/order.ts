import { parseEdtf } from './edtf.ts';

/** Where a date stands among others. */
export interface DateRank {
  /** The earliest and the latest day, as numbers that go up from day to day. */
  first: number;
  last: number;
  edtf: string;
}

/** Where a date stands, for `compareRanks`; worked out beforehand where many are sorted. */
export function dateRank(edtf: string): DateRank {
  const date = parseEdtf(edtf);
  if (!date) return { first: Infinity, last: Infinity, edtf };
  return { first: date.earliest ?? date.latest ?? 0, last: date.latest ?? Infinity, edtf };
}

/**
 * Total order of dates, earliest first; 0 only for the same text.
 *
 * The rule: by the earliest day; of those that begin together the one that ends first, so `1950-01`, `1950`, `195X`,
 * `1951`; a date whose start is open ("before 1867") stands by its last day; an open end is the longest. Dates that
 * cover the same days go by their text. What is no EDTF follows all dates.
 */
export function compareRanks(one: DateRank, other: DateRank): number {
  if (one.first !== other.first) return one.first < other.first ? -1 : 1;
  if (one.last !== other.last) return one.last < other.last ? -1 : 1;
  return one.edtf === other.edtf ? 0 : one.edtf < other.edtf ? -1 : 1;
}
