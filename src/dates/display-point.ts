import type { Component, Mark, Point } from './edtf-point.ts';
import { seasonMonths } from './seasons.ts';

/** Months as DACS 2.4.14 shows them: in full, in the language of the description. */
export const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** DACS 2.4.15: `probably` for what is uncertain, `circa` for what is approximate. */
const BEFORE: Record<Mark, string> = { '': '', '?': 'probably ', '~': 'circa ', '%': 'probably circa ' };
const AFTER: Record<Mark, string> = {
  '': '',
  '?': 'uncertain',
  '~': 'approximate',
  '%': 'uncertain and approximate',
};

function ordinal(value: number): string {
  const teens = value % 100 >= 11 && value % 100 <= 13;
  const ending = teens ? 'th' : (['th', 'st', 'nd', 'rd'][value % 10] ?? 'th');
  return `${value}${ending}`;
}

function yearWords({ text, low }: Component): string {
  if (low < 0 && !text.includes('X')) return `${1 - low} BC`;
  if (/^\d{3}X$/.test(text)) return `${text.slice(0, 3)}0s${text[2] === '0' ? ' (decade)' : ''}`;
  if (/^\d\dXX$/.test(text)) return `${ordinal(Number(text.slice(0, 2)) + 1)} century`;
  return text;
}

function monthWords({ text, low }: Component): string {
  return text.includes('X') ? `month ${text}` : (seasonMonths(low)?.name ?? MONTHS[low - 1] ?? text);
}

const dayWords = ({ text, low }: Component) => (text.includes('X') ? `day ${text}` : String(low));

/** Which of year, month and day a point names, in words and without any mark; for joining to a range. */
export function pointWords({ text, year, month, day }: Point): {
  year: string;
  month?: string;
  day?: string;
} {
  if (/[YSE]/.test(year.text)) return { year: text.replaceAll(/[?~%]/g, '') };
  const shownMonth = month && (month.text !== 'XX' || (day && day.text !== 'XX')) ? month : undefined;
  const shownDay = shownMonth && day && day.text !== 'XX' ? day : undefined;
  return {
    year: yearWords(year),
    ...(shownMonth && { month: monthWords(shownMonth) }),
    ...(shownDay && { day: dayWords(shownDay) }),
  };
}

/** The words before a date or a range that hold for all of it. */
export const markWords = (mark: Mark): string => BEFORE[mark];

/** A date of year, month and day in the order of DACS 2.4.14, without its marks: `1906 March 17`. */
export function plainPoint(point: Point): string {
  const { year, month, day } = pointWords(point);
  return [year, month, day].filter((part) => part !== undefined).join(' ');
}

/** The same with its marks: `circa 1975 August`, `1984 June 2 (year uncertain)`. */
export function displayPoint(point: Point): string {
  if (point.even) return `${markWords(point.mark)}${plainPoint(point)}`;
  const { year, month, day } = point;
  const doubts = [
    ['year', year.mark],
    ['month', month?.mark ?? ''],
    ['day', day?.mark ?? ''],
  ] as const;
  const said = doubts.filter(([, mark]) => mark !== '').map(([name, mark]) => `${name} ${AFTER[mark]}`);
  return `${plainPoint(point)} (${said.join(', ')})`;
}
