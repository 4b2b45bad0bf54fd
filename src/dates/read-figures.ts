import { MONTHS } from './display-point.ts';
import type { Draft } from './draft.ts';
import { choose, fail, isSign, numberAt, peek, type Scanner } from './scanner.ts';
import { shortYear } from './years.ts';

const ROMAN = ['i', 'ii', 'iii', 'iv', 'v', 'vi', 'vii', 'viii', 'ix', 'x', 'xi', 'xii'];
const SEPARATORS = new Set(['/', '.', '-', '–', ':']);

/** A separator between figures and where the figures after it stand; "14. 5. 1962" has a space after it. */
function separatorAt(s: Scanner, ahead: number): string | undefined {
  const piece = peek(s, ahead);
  return piece?.kind === 'sign' && piece.glued && SEPARATORS.has(piece.text) ? piece.text : undefined;
}

/** Day and month from two figures. Which is which may be open: then both orders are tried. */
function dayAndMonth(s: Scanner, first: number, second: number): { day: number; month: number } | undefined {
  const dayFirst = { day: first, month: second };
  const monthFirst = { day: second, month: first };
  const { dateOrder } = s.context;
  if (first > 12 && second > 12) return fail(s, `There is no month ${Math.min(first, second)}.`);
  if (first > 12 || second > 12) {
    const only = first > 12 ? dayFirst : monthFirst;
    const order = first > 12 ? 'day-month' : 'month-day';
    if (dateOrder !== undefined && dateOrder !== order) {
      s.notes.push(
        `Day and month stand in the other order than the rest of the list, taken as ${only.day} ${MONTHS[only.month - 1] ?? ''}.`,
      );
    }
    return only;
  }
  if (first === second) return dayFirst;
  if (dateOrder !== undefined) return dateOrder === 'day-month' ? dayFirst : monthFirst;
  return choose(s, 'order', [dayFirst, monthFirst]);
}

const monthOf = (s: Scanner, month: number): number | undefined =>
  month >= 1 && month <= 12 ? month : fail(s, `There is no month ${month}.`);

/** Three figures: 14/5/1962, 5/14/62, 1962/5/14. */
function three(
  s: Scanner,
  draft: Draft,
  one: string,
  two: string,
  last: string,
  before: Draft | undefined,
): boolean {
  if (one.length === 4 || (Number(one) > 31 && last.length < 4)) {
    if (last.length > 2) return false;
    const month = monthOf(s, Number(two));
    if (month === undefined) return true;
    Object.assign(draft, {
      year: one.length === 4 ? one : shortYear(s, one, before),
      month,
      day: Number(last),
    });
    return true;
  }
  if (last.length !== 4 && last.length !== 2) {
    fail(s, 'It names no year of two or four figures.');
    return true;
  }
  if (Number(one) > 31 || Number(two) > 31) {
    fail(s, `There is no day ${Math.max(Number(one), Number(two))}.`);
    return true;
  }
  const found = dayAndMonth(s, Number(one), Number(two));
  if (found) Object.assign(draft, found, { year: last.length === 4 ? last : shortYear(s, last, before) });
  return true;
}

/** A day, a month in Roman figures and a year: 14.V.1962, 14/V/62. */
function roman(s: Scanner, draft: Draft, before: Draft | undefined): boolean {
  const separator = separatorAt(s, 1);
  const month = ROMAN.indexOf(peek(s, 2)?.text ?? '') + 1;
  if ((separator === undefined && peek(s, 1)?.text !== '.') || month === 0) return false;
  const ahead = separatorAt(s, 3) === undefined ? 3 : 4;
  const year = numberAt(s, ahead, 2, 4);
  const day = numberAt(s, 0, 1, 2);
  if (day === undefined || year === undefined) return false;
  s.at += ahead + 1;
  Object.assign(draft, {
    day: Number(day),
    month,
    year: year.length === 4 ? year : shortYear(s, year, before),
  });
  return true;
}

/** Whether figures after a year may as well be the year in which a span ends: 1905-06, but not 1962-05. */
export const mayBeSecondYear = (year: string, digits: string): boolean =>
  !year.includes('X') && Number(year.slice(-digits.length)) < Number(digits);

/** A year and a month in figures, in either order: 5/1962, 1962/5, 1962.05; and 5/62. */
function twoFigures(s: Scanner, draft: Draft, one: string, two: string, before: Draft | undefined): boolean {
  if (one.length === 4 && two.length <= 2 && !one.includes('X')) {
    const isMonth = Number(two) >= 1 && Number(two) <= 12;
    if (!isMonth) return false;
    if (mayBeSecondYear(one, two)) {
      // One figure after a hyphen is a year more often than a month: 1958-9.
      const spanFirst = two.length === 1;
      // A dash, which is no hyphen, parts the years of a span.
      const isSpan = isSign(s, '–', 1) || choose(s, 'second', spanFirst ? [true, false] : [false, true]);
      if (isSpan) return false;
    }
    Object.assign(draft, { year: one, month: Number(two) });
    return true;
  }
  if (one.length > 2 || (two.length !== 4 && !(two.length === 2 && Number(two) > 31))) return false;
  const month = Number(one) <= 31 && Number(one) > 12 ? monthOf(s, Number(one)) : Number(one);
  if (month !== undefined && month > 12) return false;
  if (month !== undefined)
    Object.assign(draft, {
      month: monthOf(s, month),
      year: two.length === 4 ? two : shortYear(s, two, before),
    });
  return true;
}

/**
 * Takes a date written in figures and separators alone, if one begins here.
 * @returns whether it did; a reason is noted where the figures are no date
 */
export function takeFigures(s: Scanner, draft: Draft, before: Draft | undefined): boolean {
  const one = numberAt(s, 0, 1, 2, 4);
  if (one === undefined) return false;
  if (roman(s, draft, before)) return true;
  const separator = separatorAt(s, 1);
  const two = numberAt(s, 2, 1, 2, 4);
  if (separator === undefined || two === undefined) return false;
  const last = separatorAt(s, 3) === separator ? numberAt(s, 4, 1, 2, 4) : undefined;
  const startsWord = peek(s, 5)?.kind === 'word' && peek(s, 5)?.glued === true;
  if (last !== undefined && !startsWord && two.length <= 2 && three(s, draft, one, two, last, before)) {
    s.at += 5;
    return s.reason === undefined;
  }
  if (separator === ':' || peek(s, 3)?.kind === 'word') {
    // "14-16 May", "1958-9s": what follows decides.
    if (peek(s, 3)?.sense?.is === 'month' || peek(s, 3)?.glued === true || separator === ':') return false;
  }
  if (!twoFigures(s, draft, one, two, before)) return false;
  s.at += 3;
  return s.reason === undefined;
}
