import { describe, expect, it } from 'vitest';
import { dayText } from '../../src/dates/calendar.ts';
import { easterSunday } from '../../src/dates/easter.ts';

/**
 * Another way to Easter: the tables of Clavius, as the Book of Common Prayer (1662) has them in "Tables and rules",
 * carried out literally. The golden number and the century's corrections give the epact, the epact the paschal moon,
 * and Easter is the Sunday after it, found by walking the calendar. No formula of it is shared with the reader's.
 */
function easterByTables(year: number): string {
  const golden = (year % 19) + 1;
  // The solar equation takes a day off the epact in every century year that is no leap year.
  let shift = 0;
  for (let century = 16; century <= Math.floor(year / 100); century++) {
    if (century % 4 !== 0) shift--;
    // The lunar equation adds one every 300 years from 1800, the eighth time after 400 years.
    if (
      (century - 18) % 25 >= 0 &&
      century >= 18 &&
      ((century - 18) % 25) % 3 === 0 &&
      (century - 18) % 25 < 24
    )
      shift++;
  }
  // After ten days were dropped in 1582, the epact of golden number 1 was 1.
  let epact = (((1 + 11 * (golden - 1) + shift) % 30) + 30) % 30;
  // Two golden numbers more than eleven years apart never share a moon: epact 24 counts as 25, 25 beside 24 as 26.
  if (epact === 24 || (epact === 25 && golden > 11)) epact++;
  // The paschal moon is the fourteenth day of the moon that begins with the epact; epact 0 stands at 13 April.
  const moon = new Date(Date.UTC(year, 2, 21));
  const target = epact <= 23 ? 44 - epact : 74 - epact;
  moon.setUTCDate(target);
  do moon.setUTCDate(moon.getUTCDate() + 1);
  while (moon.getUTCDay() !== 0);
  return moon.toISOString().slice(0, 10);
}

describe('Easter', () => {
  // Known from memory: the earliest and the latest day of recent centuries, and two more.
  it.each(['1818-03-22', '1943-04-25', '1961-04-02', '2000-04-23'])('fell on %s', (day) => {
    expect(dayText(easterSunday(Number(day.slice(0, 4))))).toBe(day);
    expect(easterByTables(Number(day.slice(0, 4)))).toBe(day);
  });

  it('agrees with the tables of Clavius from 1583 to 2299', () => {
    for (let year = 1583; year <= 2299; year++) {
      expect(dayText(easterSunday(year)), String(year)).toBe(easterByTables(year));
    }
  });
});
