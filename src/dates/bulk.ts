import { yearOfDay, yearText } from './calendar.ts';
import type { Edtf } from './edtf.ts';

/**
 * DACS 2.4.10 gives bulk dates "when the dates of the materials differ significantly"; the numbers are this project's:
 * bulk dates are the shortest run of years that holds four fifths of the dated parts, widened by the years next to it
 * that hold at least half as many as its average year. They are told only where there are ten parts or more, the whole
 * spans twenty years or more, and the run is at most half of that.
 */
const RULE = { share: 0.8, neighbour: 0.5, leastParts: 10, leastYears: 20, mostOfSpan: 0.5 };

/** The years a part covers, and how many parts cover just these. */
interface Years {
  readonly first: number;
  readonly last: number;
  count: number;
}

function tally(dates: readonly Edtf[], counts: readonly number[]): Years[] {
  const byText = new Map<string, Years>();
  for (const [index, { earliest, latest }] of dates.entries()) {
    if (earliest === undefined || latest === undefined) continue;
    const [first, last] = [yearOfDay(earliest), yearOfDay(latest)];
    const key = `${first} ${last}`;
    const years = byText.get(key);
    const count = counts[index] ?? 0;
    if (years) years.count += count;
    else byText.set(key, { first, last, count });
  }
  return [...byText.values()].sort((one, other) => one.last - other.last);
}

/** The whole of the parts with a known start and end, and how many those are. */
function wholeOf(dates: readonly Edtf[], counts: readonly number[]): { whole: Run; total: number } {
  let [start, end, total] = [Infinity, -Infinity, 0];
  for (const [index, { earliest, latest }] of dates.entries()) {
    if (earliest === undefined || latest === undefined) continue;
    start = Math.min(start, earliest);
    end = Math.max(end, latest);
    total += counts[index] ?? 0;
  }
  return { whole: { start: yearOfDay(start), end: yearOfDay(end) }, total };
}

/** The last year of the shortest run from a year that holds as many parts as needed; undefined where none does. */
function endFrom(years: readonly Years[], start: number, needed: number): number | undefined {
  let held = 0;
  for (const { first, last, count } of years) {
    if (first < start) continue;
    held += count;
    if (held >= needed) return last;
  }
  return undefined;
}

interface Run {
  start: number;
  end: number;
}

const held = (years: readonly Years[], { start, end }: Run) =>
  years.reduce((sum, { first, last, count }) => (first >= start && last <= end ? sum + count : sum), 0);

/** Takes in years at either end as long as they are not much thinner than the run. */
function widen(years: readonly Years[], run: Run, whole: Run): Run {
  let [widened, count] = [run, held(years, run)];
  for (;;) {
    const least = (RULE.neighbour * count) / (widened.end - widened.start + 1);
    const wider = [
      { ...widened, start: widened.start - 1 },
      { ...widened, end: widened.end + 1 },
    ].find(
      ({ start, end }) =>
        start >= whole.start && end <= whole.end && held(years, { start, end }) - count >= least,
    );
    if (!wider) return widened;
    [widened, count] = [wider, held(years, wider)];
  }
}

/**
 * Bulk dates of a whole: the years into which most of its parts fall (DACS 2.4.10; the threshold stands at the top of
 * this file). Parts with an open end do not count.
 * @param dates of the parts, each once
 * @param counts how many parts have each
 * @returns EDTF; undefined where bulk dates would say nothing
 */
export function bulkDates(dates: readonly Edtf[], counts: readonly number[]): string | undefined {
  const { whole, total } = wholeOf(dates, counts);
  if (total < RULE.leastParts) return undefined;
  const span = whole.end - whole.start + 1;
  if (span < RULE.leastYears) return undefined;
  const years = tally(dates, counts);
  const starts = [...new Set(years.map(({ first }) => first))].sort((one, other) => one - other);
  let best: Run | undefined;
  for (const start of starts) {
    const end = endFrom(years, start, Math.ceil(RULE.share * total));
    if (end !== undefined && (!best || end - start < best.end - best.start)) best = { start, end };
  }
  const bulk = best && widen(years, best, whole);
  if (!bulk || bulk.end - bulk.start + 1 > RULE.mostOfSpan * span) return undefined;
  const [from, to] = [yearText(bulk.start), yearText(bulk.end)];
  return from === to ? from : `${from}/${to}`;
}
