import { dayOfDay, daysInMonth, monthOfDay, weekdayOf } from './calendar.ts';
import { MONTHS } from './display-point.ts';
import type { Draft } from './draft.ts';
import { nthWeekday } from './feasts.ts';
import { fail, type Scanner } from './scanner.ts';

const WEEKDAYS = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'] as const;

const NTH = ['', 'first', 'second', 'third', 'fourth', 'fifth'] as const;

/**
 * Works out the day of "second Sunday in June 1950", and says so.
 * @returns the date with that day; undefined, with the reason noted, where the month has none or more is said than that
 */
export function placeNth(s: Scanner, draft: Draft, year: string): Draft | undefined {
  const { nth = 0, weekday, ...rest } = draft;
  const { month, day, dayText, fraction } = rest;
  if (weekday === undefined || month === undefined)
    return fail(s, 'It names a day of the week, but not of which month.');
  if (day !== undefined || dayText !== undefined || fraction)
    return fail(s, 'It names a day of the week and another part of the month.');
  if (year.includes('X')) return fail(s, 'Which day it was can only be found for a year that is known.');
  const found = nth === -1 || (nth >= 1 && nth <= 5) ? nthWeekday(Number(year), month, weekday, nth) : 0;
  const [name, of] = [WEEKDAYS[weekday] ?? '', `${MONTHS[month - 1] ?? ''} ${year}`];
  if (monthOfDay(found) !== month || dayOfDay(found) > daysInMonth(Number(year), month))
    return fail(s, `${of} has not so many ${name}s.`);
  s.notes.push(`The day is worked out: the ${nth === -1 ? 'last' : (NTH[nth] ?? '')} ${name} of ${of}.`);
  return { ...rest, day: dayOfDay(found) };
}

/** Whether the month has that day; a day of the week that is not the one it was is said. */
export function checkDay(s: Scanner, draft: Draft, year: string): boolean {
  const { month, day } = draft;
  if (month === undefined || day === undefined) return true;
  const isKnown = !year.includes('X');
  // A leap year stands in for a year that is not known: 29 February may well be in the decade.
  const length = daysInMonth(isKnown ? Number(year) : 2000, month);
  if (day < 1 || day > length) {
    const name = MONTHS[month - 1] ?? '';
    const which = month === 2 && isKnown ? `${name} ${year}` : name;
    fail(s, `${which} has ${length} days, so there is no ${day} ${name}${month === 2 ? ` ${year}` : ''}.`);
    return false;
  }
  if (isKnown && draft.weekday !== undefined) {
    const real = weekdayOf(Number(year), month, day);
    if (real !== draft.weekday) {
      const said = WEEKDAYS[draft.weekday] ?? '';
      s.notes.push(`${day} ${MONTHS[month - 1] ?? ''} ${year} was a ${WEEKDAYS[real] ?? ''}, not a ${said}.`);
    }
  }
  return true;
}
