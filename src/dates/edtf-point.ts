import { type Day, daysInMonth, FURTHEST_YEAR, isDay, toDay } from './calendar.ts';
import { seasonMonths } from './seasons.ts';

/** ISO 8601-2, 8.4: `?` uncertain, `~` approximate, `%` both. */
export type Mark = '' | '?' | '~' | '%';

/** A year, month or day with the digits as written; `X` stands for one that is not specified (ISO 8601-2, 8.3). */
export interface Component {
  readonly text: string;
  readonly low: number;
  readonly high: number;
  readonly mark: Mark;
}

/** One date of a calendar year, month (or season: ISO 8601-2, 4.8), or day. */
export interface Point {
  readonly kind: 'point';
  readonly text: string;
  readonly year: Component;
  readonly month?: Component;
  readonly day?: Component;
  /** The marks of all components together. */
  readonly mark: Mark;
  /** Whether every component bears the same mark. */
  readonly even: boolean;
  readonly earliest: Day;
  readonly latest: Day;
}

/** Two marks on the same thing. */
export function joinMarks(one: Mark, other: Mark): Mark {
  if (one === other || other === '') return one;
  return one === '' ? other : '%';
}

const isMark = (character: string | undefined): character is '?' | '~' | '%' =>
  character === '?' || character === '~' || character === '%';

/** Whether the point names a season, quarter or other part of a year in place of a month. */
export const isSeason = (point: Point): boolean => point.month !== undefined && point.month.low >= 21;

/** Whether some digit of the point is not specified. */
export const isUnspecified = ({ year, month, day }: Point): boolean =>
  year.text.includes('X') || month?.text.includes('X') === true || day?.text.includes('X') === true;

const lowest = (digits: string) => Number(digits.replaceAll('X', '0'));
const highest = (digits: string) => Number(digits.replaceAll('X', '9'));

/** Whether a number can be what the digits stand for: 1952 can be `195X`. */
function allows(digits: string, value: number): boolean {
  const text = String(Math.abs(value)).padStart(digits.length, '0');
  if (text.length !== digits.length) return false;
  for (let at = 0; at < digits.length; at++) {
    if (digits[at] !== 'X' && digits[at] !== text[at]) return false;
  }
  return true;
}

interface Span {
  low: number;
  high: number;
}

const PLAIN_YEAR = /^(-?)([\dX]{4})(?:S(\d{1,2}))?$/;
const LONG_YEAR = /^Y(-?)(\d{4,12})(?:E(\d{1,2}))?(?:S(\d{1,2}))?$/;

/** What a year stands for: ISO 8601-2, 4.7.2 (`Y`, exponent) and 4.7.3 (significant digits). */
function yearSpan(text: string): Span | undefined {
  const plain = PLAIN_YEAR.exec(text);
  const long = plain ? null : LONG_YEAR.exec(text);
  const [sign, digits, exponent, significant] = plain
    ? [plain[1], plain[2] ?? '', undefined, plain[3]]
    : [long?.[1], long?.[2] ?? '', long?.[3], long?.[4]];
  if (digits === '' || text === '-0000') return undefined;
  if (digits.includes('X')) {
    if (significant !== undefined) return undefined;
    return sign === '-'
      ? { low: -highest(digits), high: Math.min(-1, -lowest(digits)) }
      : { low: lowest(digits), high: highest(digits) };
  }
  const size = Number(digits) * 10 ** Number(exponent ?? 0);
  if (size > FURTHEST_YEAR) return undefined;
  if (significant === undefined)
    return sign === '-' ? { low: -size, high: -size } : { low: size, high: size };
  const grain = 10 ** Math.max(0, String(size).length - Number(significant));
  if (significant === '0' || Number(significant) > 12) return undefined;
  const floor = Math.floor(size / grain) * grain;
  const ceiling = floor + grain - 1;
  return sign === '-' ? { low: -ceiling, high: -floor } : { low: floor, high: ceiling };
}

const pair = (digits: string, low: number, high: number): Span | undefined => {
  const span = { low: Math.max(low, lowest(digits)), high: Math.min(high, highest(digits)) };
  return span.low <= span.high ? span : undefined;
};

/** The first (or, with `step` -1, the last) day that the digits allow; undefined where there is none. */
function edgeDay(year: Component, month: Component | undefined, day: Component | undefined, step: 1 | -1) {
  const order = (span: Span): [number, number] =>
    step === 1 ? [span.low, span.high] : [span.high, span.low];
  const digitsOfYear = year.text.startsWith('-') ? year.text.slice(1) : year.text;
  const [firstYear, lastYear] = order(year);
  const [firstMonth, lastMonth] = order(month ?? { low: 1, high: 12 });
  const [firstOf, lastOf] = order(day ?? { low: 1, high: 31 });
  for (let y = firstYear; step * (lastYear - y) >= 0; y += step) {
    if (year.text.includes('X') && !allows(digitsOfYear, y)) continue;
    for (let m = firstMonth; step * (lastMonth - m) >= 0; m += step) {
      if (month && !allows(month.text, m)) continue;
      for (let d = firstOf; step * (lastOf - d) >= 0; d += step) {
        if ((!day || allows(day.text, d)) && isDay(y, m, d)) return toDay(y, m, d);
      }
    }
  }
  return undefined;
}

const POINT =
  /^([?~%]?)(Y?-?[\dX]{4,12}(?:E\d{1,2})?(?:S\d{1,2})?)([?~%]?)(?:-([?~%]?)([\dX]{2})([?~%]?)(?:-([?~%]?)([\dX]{2})([?~%]?))?)?$/;

// ISO 8601-2, level 0: a day with a time of day, by the local clock, in UTC or with the difference from it.
const INSTANT = /^(\d{4}-\d\d-\d\d)T(?:[01]\d|2[0-3]):[0-5]\d:(?:[0-5]\d|60)(?:Z|[+-]\d\d(?::[0-5]\d)?)?$/;

/** An instant counts as the day it lies in; its text keeps the time. */
function parseInstant(text: string): Point | undefined {
  const day = parsePoint(INSTANT.exec(text)?.[1] ?? '');
  return day && { ...day, text };
}

const mark = (text: string | undefined): Mark => (isMark(text) ? text : '');

/**
 * Reads one date of EDTF, levels 0 to 2 (ISO 8601-2; no interval, no set).
 * @returns undefined where the text is no such date, or no such day is in the calendar
 */
export function parsePoint(text: string): Point | undefined {
  if (text[10] === 'T') return parseInstant(text);
  const parts = POINT.exec(text);
  if (!parts) return undefined;
  const [, beforeYear, yearDigits = '', afterYear, beforeMonth, monthDigits, afterMonth] = parts;
  const [, , , , , , , beforeDay, dayDigits, afterDay] = parts;
  // ISO 8601-2, 8.4.3: a mark to the right of a component holds for it and all to its left, one to the left for it alone.
  const onDay = mark(afterDay);
  const onMonth = joinMarks(mark(afterMonth), onDay);
  const onYear = joinMarks(mark(afterYear), onMonth);
  const years = yearSpan(yearDigits);
  if (!years) return undefined;
  const year: Component = { text: yearDigits, ...years, mark: joinMarks(mark(beforeYear), onYear) };
  if (monthDigits === undefined) {
    const [earliest, latest] = [toDay(year.low, 1, 1), toDay(year.high, 12, 31)];
    return { kind: 'point', text, year, mark: year.mark, even: true, earliest, latest };
  }
  if (/[YS]/.test(yearDigits)) return undefined;
  const season = dayDigits === undefined ? seasonMonths(Number(monthDigits)) : undefined;
  const months = season ? { low: Number(monthDigits), high: Number(monthDigits) } : pair(monthDigits, 1, 12);
  if (!months) return undefined;
  const month: Component = { text: monthDigits, ...months, mark: joinMarks(mark(beforeMonth), onMonth) };
  if (season) {
    const earliest = toDay(year.low, season.first, 1);
    const latest = toDay(year.high, season.last, daysInMonth(year.high, season.last));
    return pointOf(text, year, month, undefined, earliest, latest);
  }
  const days = dayDigits === undefined ? undefined : pair(dayDigits, 1, 31);
  if (dayDigits !== undefined && !days) return undefined;
  const day: Component | undefined =
    dayDigits !== undefined && days
      ? { text: dayDigits, ...days, mark: joinMarks(mark(beforeDay), onDay) }
      : undefined;
  const earliest = edgeDay(year, month, day, 1);
  const latest = edgeDay(year, month, day, -1);
  return earliest === undefined || latest === undefined
    ? undefined
    : pointOf(text, year, month, day, earliest, latest);
}

function pointOf(
  text: string,
  year: Component,
  month: Component,
  day: Component | undefined,
  earliest: Day,
  latest: Day,
): Point {
  const together = joinMarks(joinMarks(year.mark, month.mark), day?.mark ?? '');
  const even = year.mark === month.mark && (day === undefined || day.mark === month.mark);
  const base = { kind: 'point' as const, text, year, month, mark: together, even, earliest, latest };
  return day === undefined ? base : { ...base, day };
}
