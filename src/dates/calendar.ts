/**
 * A day as one number that sorts: year × 10000 + month × 100 + day. Years before 1 are negative or 0, as in
 * ISO 8601 (year 0 is 1 BC); the Gregorian calendar is carried back before 1582, as that standard does.
 */
export type Day = number;

/** Years beyond this (either way) are no dates of things; the limit keeps every Day an exact number. */
export const FURTHEST_YEAR = 99_999_999_999;

const LENGTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/** Whether a year has a 29 February (Gregorian rule: ISO 8601-1, 4.2.1). */
const isLeapYear = (year: number): boolean => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);

/** Days in a month of the Gregorian calendar; 0 where there is no such month. */
export const daysInMonth = (year: number, month: number): number =>
  month === 2 && isLeapYear(year) ? 29 : (LENGTHS[month - 1] ?? 0);

/** Whether the calendar has such a day. */
export const isDay = (year: number, month: number, day: number): boolean =>
  Number.isInteger(day) && day >= 1 && day <= daysInMonth(year, month);

export const toDay = (year: number, month: number, day: number): Day => year * 10000 + month * 100 + day;

export const yearOfDay = (day: Day): number => Math.floor(day / 10000);
export const monthOfDay = (day: Day): number => Math.floor((day - yearOfDay(day) * 10000) / 100);
export const dayOfDay = (day: Day): number => (day - yearOfDay(day) * 10000) % 100;

/** The day after. */
export function dayAfter(day: Day): Day {
  const [year, month, of] = [yearOfDay(day), monthOfDay(day), dayOfDay(day)];
  if (of < daysInMonth(year, month)) return day + 1;
  return month < 12 ? toDay(year, month + 1, 1) : toDay(year + 1, 1, 1);
}

/** The day before. */
export function dayBefore(day: Day): Day {
  const [year, month, of] = [yearOfDay(day), monthOfDay(day), dayOfDay(day)];
  if (of > 1) return day - 1;
  return month > 1 ? toDay(year, month - 1, daysInMonth(year, month - 1)) : toDay(year - 1, 12, 31);
}

/** Day of the week, 0 for Sunday to 6 for Saturday (Zeller's congruence, 1882, Gregorian form). */
export function weekdayOf(year: number, month: number, day: number): number {
  const shifted = month < 3 ? year - 1 : year;
  const shiftedMonth = month < 3 ? month + 12 : month;
  const century = Math.floor(shifted / 100);
  const ofCentury = shifted - century * 100;
  const sum =
    day +
    Math.floor((13 * (shiftedMonth + 1)) / 5) +
    ofCentury +
    Math.floor(ofCentury / 4) +
    Math.floor(century / 4) +
    5 * century;
  return (((sum + 6) % 7) + 7) % 7;
}

/** A year as EDTF writes it: four digits with a sign where negative, `Y` before longer ones. */
export function yearText(year: number): string {
  const digits = String(Math.abs(year)).padStart(4, '0');
  const sign = year < 0 ? '-' : '';
  return digits.length > 4 ? `Y${sign}${digits}` : `${sign}${digits}`;
}

export const two = (value: number): string => (value < 10 ? `0${value}` : String(value));

/** A day as `YYYY-MM-DD` (ISO 8601-1, 5.2.2.1), with a sign before years that need more than four digits. */
export function dayText(day: Day): string {
  const year = yearOfDay(day);
  const digits = String(Math.abs(year)).padStart(4, '0');
  const sign = year < 0 ? '-' : digits.length > 4 ? '+' : '';
  return `${sign}${digits}-${two(monthOfDay(day))}-${two(dayOfDay(day))}`;
}
