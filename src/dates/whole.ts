import { bulkDates } from './bulk.ts';
import { type Edtf, parseEdtf } from './edtf.ts';
import { inclusiveWithGaps } from './gaps.ts';

/**
 * The dates of a whole from those of its parts, as EDTF: the inclusive dates with large gaps shown, and the bulk dates
 * where they say more (DACS 2.4.7, 2.4.10, 2.4.11).
 * @param parts their dates, each with how many parts have it; what is no EDTF is passed over
 */
export function datesOfWhole(parts: ReadonlyMap<string, number>): {
  inclusive: string | undefined;
  bulk: string | undefined;
} {
  const dates: Edtf[] = [];
  const counts: number[] = [];
  for (const [edtf, count] of parts) {
    const date = parseEdtf(edtf);
    if (date === undefined) continue;
    dates.push(date);
    counts.push(count);
  }
  return { inclusive: inclusiveWithGaps(dates), bulk: bulkDates(dates, counts) };
}
