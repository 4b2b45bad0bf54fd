import { FURTHEST_YEAR } from './calendar.ts';
import { parseEdtf } from './edtf.ts';

const SHIFT = (FURTHEST_YEAR + 1) * 10000;
const KEPT = 50_000;
const keys = new Map<string, string>();
const NO_DATE = '~';
const UNDATED = '\uFFFF';

function keyOf(edtf: string): string {
  const date = parseEdtf(edtf);
  if (!date) return `${NO_DATE}${edtf}`;
  const first = date.earliest ?? date.latest ?? 0;
  const last = date.latest ?? SHIFT - 1;
  return `${String(first + SHIFT).padStart(16, '0')} ${String(last + SHIFT).padStart(16, '0')} ${edtf}`;
}

/**
 * A text that sorts as the date does, by plain comparison of code units; for sorting many.
 *
 * The rule: by the earliest day; of those that begin together the one that ends first, so `1950-01`, `1950`, `195X`,
 * `1951`; a date whose start is open ("before 1867") stands by its last day; an open end is the longest. Dates that
 * cover the same days go by their text. What is no EDTF follows all dates, and what has no date comes last.
 */
export function dateSortKey(edtf: string | undefined): string {
  if (edtf === undefined) return UNDATED;
  const known = keys.get(edtf);
  if (known !== undefined) return known;
  if (keys.size >= KEPT) keys.clear();
  const key = keyOf(edtf);
  if (edtf.length <= 100) keys.set(edtf, key);
  return key;
}

/** Total order of dates, earliest first, undated last; the rule is at `dateSortKey`. 0 only for the same text. */
export function compareDates(a: string | undefined, b: string | undefined): number {
  if (a === b) return 0;
  if (a === undefined) return 1;
  if (b === undefined) return -1;
  const [one, other] = [dateSortKey(a), dateSortKey(b)];
  return one < other ? -1 : one > other ? 1 : 0;
}
