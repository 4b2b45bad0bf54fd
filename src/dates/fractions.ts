import { daysInMonth, two } from './calendar.ts';
import type { Draft } from './draft.ts';
import { SEASONS } from './seasons.ts';
import type { Fraction } from './senses.ts';

/** The first and last date of a part. */
interface FractionSpan {
  readonly from: string;
  readonly to: string;
}

// "Early", "mid" and "late" are thirds as near as whole years, months or days allow: of ten years 4, 3 and 3.
const bounds = (length: number, { nth, of }: Fraction): [number, number] => [
  Math.ceil(((nth - 1) * length) / of),
  Math.ceil((nth * length) / of) - 1,
];

// ISO 8601-2, 4.8: quarters 33 to 36, thirds 37 to 39, halves 40 and 41 of a year have codes of their own.
const FIRST_CODE = { 4: 33, 3: 37, 2: 40 } as const;

/** Where a part of a month, season, year, decade or century begins and ends; undefined where it has no such parts. */
export function fractionSpan(draft: Draft, year: string, fraction: Fraction): FractionSpan | undefined {
  const span = (from: string, to: string): FractionSpan => ({ from, to });
  if (draft.day !== undefined) return undefined;
  if (draft.season !== undefined) {
    const season = SEASONS[draft.season - 21];
    if (!fraction.rough || !season || season.last - season.first !== 2) return undefined;
    const month = `${year}-${two(season.first + fraction.nth - 1)}`;
    return span(month, month);
  }
  if (year.includes('X')) {
    const size = year.endsWith('XX') ? 100 : 10;
    const first = Number(year.replaceAll('X', '0'));
    const [from, to] = bounds(size, fraction);
    const text = (value: number) => String(value).padStart(4, '0');
    return Number.isNaN(first) || !/^\d{2,3}X{1,2}$/.test(year)
      ? undefined
      : span(text(first + from), text(first + to));
  }
  if (draft.month !== undefined) {
    const length = daysInMonth(Number(year), draft.month);
    // Thirds of a month are days 1-10, 11-20 and 21 to its end.
    const [from, to] =
      fraction.of === 3
        ? [10 * fraction.nth - 10, fraction.nth === 3 ? length - 1 : 10 * fraction.nth - 1]
        : bounds(fraction.of === 2 ? 30 : 28, fraction);
    const last = fraction.nth === fraction.of ? length : to + 1;
    return span(`${year}-${two(draft.month)}-${two(from + 1)}`, `${year}-${two(draft.month)}-${two(last)}`);
  }
  if (!fraction.rough) {
    const season = `${year}-${FIRST_CODE[fraction.of] + fraction.nth - 1}`;
    return span(season, season);
  }
  const [from, to] = bounds(12, fraction);
  return span(`${year}-${two(from + 1)}`, `${year}-${two(to + 1)}`);
}
