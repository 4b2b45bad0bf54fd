import { type Day, toDay } from './calendar.ts';

/** The Gregorian computus has no meaning before the calendar was made (bull Inter gravissimas, 1582). */
export const FIRST_GREGORIAN_YEAR = 1583;

/**
 * Easter Sunday by the Gregorian computus, in the anonymous form printed in Meeus, Astronomical Algorithms
 * (2nd ed., chapter 8), where every step is a whole division.
 * @param year 1583 or later
 */
export function easterSunday(year: number): Day {
  const golden = year % 19;
  const century = Math.floor(year / 100);
  const ofCentury = year % 100;
  const [leapCenturies, centuryRest] = [Math.floor(century / 4), century % 4];
  const lunarShift = Math.floor((century - Math.floor((century + 8) / 25) + 1) / 3);
  const epact = (19 * golden + century - leapCenturies - lunarShift + 15) % 30;
  const weekday = (32 + 2 * centuryRest + 2 * Math.floor(ofCentury / 4) - epact - (ofCentury % 4)) % 7;
  const correction = Math.floor((golden + 11 * epact + 22 * weekday) / 451);
  const sum = epact + weekday - 7 * correction + 114;
  return toDay(year, Math.floor(sum / 31), (sum % 31) + 1);
}
