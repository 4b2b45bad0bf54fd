import { yearText } from './calendar.ts';
import type { Draft } from './draft.ts';
import { choose, type Scanner } from './scanner.ts';

/** The year of a text of figures, where all are known; else undefined. */
export const knownYear = (draft: Draft | undefined): number | undefined =>
  draft?.year === undefined || draft.year.includes('X') ? undefined : Number(draft.year);

/** The year that a short second year means beside the first one, in the same century or decade: 62 or 9 after 1958. */
function followingYear(first: number, digits: string): number {
  const unit = 10 ** digits.length;
  return Math.floor(first / unit) * unit + Number(digits);
}

/** The centuries a year of two figures may belong to; which of them can be is settled by the years to be expected. */
function centuryOf(s: Scanner, value: number): number {
  const { earliestYear, latestYear, today } = s.context;
  const latest = latestYear ?? (today === undefined ? undefined : Number(today.slice(0, 4)));
  // With nothing known of the present a year of the 2000s is thought of only for its first half.
  const within = [1900, 1800, 2000, 1700, 1600].filter((century) => {
    const year = century + value;
    if (earliestYear === undefined && century < 1800) return false;
    if (earliestYear !== undefined && year < earliestYear) return false;
    return latest === undefined ? century < 2000 || value < 50 : year <= latest;
  });
  const [first, ...rest] = within;
  return first === undefined ? 1900 : choose(s, 'century', [first, ...rest]);
}

/** Four figures for a year of two, after the year before it in a range where there is one, else by choice. */
export function shortYear(s: Scanner, digits: string, before: Draft | undefined): string {
  const first = knownYear(before);
  if (first !== undefined) return yearText(followingYear(first, digits));
  return yearText(centuryOf(s, Number(digits)) + Number(digits));
}

/** A decade from its tens ("fifties", '50s), in the century of the year before it or by choice. */
export function decadeOfTens(s: Scanner, tens: number, before: Draft | undefined): string {
  const century = before?.year === undefined ? undefined : Number(before.year.slice(0, 2)) * 100;
  const found = century === undefined || Number.isNaN(century) ? centuryOf(s, tens * 10) : century;
  return `${found / 100}${tens}X`;
}

/** "1800s" may be ten years or a hundred. The hundred holds the ten, so it goes first. */
export function hundreds(s: Scanner, digits: string): string {
  const century = digits.slice(0, 2);
  if (isSaid(s, 'decade')) return `${century}0X`;
  return isSaid(s, 'century') ? `${century}XX` : choose(s, 'hundreds', [`${century}XX`, `${century}0X`]);
}

/** Whether the next pieces are this word in round brackets; goes past them if so. */
function isSaid(s: Scanner, word: string): boolean {
  const [open, said, close] = s.pieces.slice(s.at, s.at + 3);
  if (open?.text !== '(' || said?.text !== word || close?.text !== ')') return false;
  s.at += 3;
  return true;
}
