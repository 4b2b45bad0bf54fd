import { type Day, dayAfter, dayBefore, daysInMonth, toDay, weekdayOf } from './calendar.ts';
import { easterSunday, FIRST_GREGORIAN_YEAR } from './easter.ts';
import type { Feast, FeastRule } from './feast-days.ts';

function shift(day: Day, by: number): Day {
  let shifted = day;
  for (let count = Math.abs(by); count > 0; count--)
    shifted = by > 0 ? dayAfter(shifted) : dayBefore(shifted);
  return shifted;
}

/** The nth day of that name in a month, counted from its end where n is negative; it may lie beyond the month. */
export function nthWeekday(year: number, month: number, weekday: number, nth: number): Day {
  const first = 1 + ((weekday - weekdayOf(year, month, 1) + 7) % 7);
  const count = Math.floor((daysInMonth(year, month) - first) / 7) + 1;
  return toDay(year, month, first + 7 * (nth > 0 ? nth - 1 : count + nth));
}

function dayOfRule(rule: FeastRule, year: number): Day {
  if ('easter' in rule) return shift(easterSunday(year), rule.easter);
  if ('weekday' in rule) return nthWeekday(year, rule.month, rule.weekday, rule.nth);
  if ('day' in rule) return toDay(year, rule.month, rule.day);
  // The fourth Sunday before Christmas; Christmas Day itself never counts.
  const sinceSunday = weekdayOf(year, 12, 25) || 7;
  return shift(toDay(year, 12, 25), -sinceSunday - 21);
}

const nameOf = (feast: Feast | undefined) =>
  (feast?.names.en?.split('|')[0] ?? 'the feast').replaceAll(/(^|\s)\p{L}/gu, (letter) =>
    letter.toUpperCase(),
  );

const firstYear = ({ rule, since }: Feast) =>
  since ?? ('easter' in rule || 'advent' in rule ? FIRST_GREGORIAN_YEAR : Number.NEGATIVE_INFINITY);

/**
 * The days on which a feast fell in a year, from the rows that share its name; more than one where it was kept on
 * different days.
 * @param country code of ISO 3166; without it a feast of some countries only may be any of theirs
 * @returns the days, or why there are none, as a sentence
 */
export function feastDays(
  rows: readonly Feast[],
  year: number,
  country: string | undefined,
): [Day, ...Day[]] | string {
  const name = nameOf(rows[0]);
  const here = rows.filter(
    (row) => row.country === undefined || country === undefined || row.country === country,
  );
  const countries = new Set(rows.map((row) => row.country));
  if (here.length === 0 || (country === undefined && countries.size === 1 && !countries.has(undefined))) {
    return `${name} falls on different days in different countries; name the country in collection.yaml, or write the day.`;
  }
  const valid = here.filter((row) => year >= firstYear(row) && year <= (row.until ?? year));
  const [first, ...rest] = new Set(valid.map(({ rule }) => dayOfRule(rule, year)));
  return first === undefined
    ? `The day of ${name} in ${year} follows no rule known here; write the day.`
    : [first, ...rest];
}
