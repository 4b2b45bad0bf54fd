import { type Day, dayOfDay, daysInMonth, monthOfDay, two, yearOfDay } from './calendar.ts';
import { isSeason, isUnspecified, type Point } from './edtf-point.ts';

export type Grain = 'year' | 'month' | 'day';

/** The coarsest grain in which a span still begins and ends exactly where it does. */
export function grainOf(first: Day, last: Day): Grain {
  const wholeMonths =
    dayOfDay(first) === 1 && dayOfDay(last) === daysInMonth(yearOfDay(last), monthOfDay(last));
  if (!wholeMonths) return 'day';
  return monthOfDay(first) === 1 && monthOfDay(last) === 12 ? 'year' : 'month';
}

/** Whether a date is exactly one year, month or day, marks aside. */
export const isPlain = (point: Point): boolean =>
  !isSeason(point) && !isUnspecified(point) && point.year.low === point.year.high;

export const grainOfPoint = ({ month, day }: Point): Grain => (day ? 'day' : month ? 'month' : 'year');

/**
 * A day at a grain, as EAD 2002 `@normal` and EAD3 `@standarddate` allow it: YYYY, YYYY-MM or YYYY-MM-DD.
 * @returns undefined outside the years 0000 to 2999, which those attributes cannot hold
 */
export function standardText(day: Day, grain: Grain): string | undefined {
  const year = yearOfDay(day);
  if (year < 0 || year > 2999) return undefined;
  const digits = String(year).padStart(4, '0');
  if (grain === 'year') return digits;
  const month = `${digits}-${two(monthOfDay(day))}`;
  return grain === 'month' ? month : `${month}-${two(dayOfDay(day))}`;
}

/** A plain date without its marks, in the same forms. */
export const plainText = (point: Point): string | undefined =>
  standardText(point.earliest, grainOfPoint(point));
