import { type Draft, hasMonth, isEmpty } from './draft.ts';
import type { Mark } from './edtf-point.ts';
import { takeNumber } from './read-number.ts';
import { isSign, numberAt, peek, type Scanner, senseAt } from './scanner.ts';
import { shortYear } from './years.ts';

/** Whether a year stands at a place: four figures, or two after an apostrophe. */
const isYearAt = (s: Scanner, ahead: number): boolean =>
  numberAt(s, ahead, 4) !== undefined ||
  (isSign(s, "'", ahead) && numberAt(s, ahead + 1, 2) !== undefined) ||
  (isSign(s, '[', ahead) && numberAt(s, ahead + 1, 4) !== undefined);

const LISTS = new Set([',', '&', '-', '–']);

/** Whether the figures after a comma are another day, for their year comes later: "May 10, 11, 12, 1950". */
function listsDays(s: Scanner): boolean {
  if (Number(numberAt(s, 1, 2)) > 31) return false;
  for (let ahead = 2; ; ahead++) {
    if (isYearAt(s, ahead)) return true;
    const piece = peek(s, ahead);
    const joins = piece?.kind === 'sign' ? LISTS.has(piece.text) : JOINTS.has(piece?.sense?.is ?? '');
    if (!joins && numberAt(s, ahead, 1, 2) === undefined) return false;
  }
}

const JOINTS = new Set(['and', 'or', 'to', 'until']);
const IN_YEAR = new Set(['month', 'season', 'feast']);

/** A comma belongs to the date where it parts the day from the year, or a year from the month after it. */
function commaIsInside(s: Scanner, draft: Draft, before: Draft | undefined): boolean {
  if (isEmpty(draft)) return draft.weekday !== undefined;
  if (draft.year === undefined) {
    const placed =
      hasMonth(draft) ||
      draft.feast !== undefined ||
      (draft.day !== undefined && before?.month !== undefined);
    if (placed && draft.day !== undefined && numberAt(s, 1, 2) !== undefined)
      return peek(s, 2)?.kind !== 'word' && !listsDays(s);
    return placed && isYearAt(s, 1);
  }
  if (hasMonth(draft) || draft.day !== undefined) return false;
  const next = senseAt(s, 1)?.is ?? '';
  // "1962, 14 May"
  if (numberAt(s, 1, 1, 2) !== undefined) return senseAt(s, 2)?.is === 'month' && !isYearAt(s, 3);
  const ownYear =
    isYearAt(s, 2) ||
    (numberAt(s, 2, 1, 2) !== undefined && (isYearAt(s, 3) || (isSign(s, ',', 3) && isYearAt(s, 4))));
  return IN_YEAR.has(next) && !ownYear;
}

/** `14 May [1962?]`: what the cataloguer supplied stands in brackets. */
function takeBracketedYear(s: Scanner, draft: Draft): boolean {
  const circa = senseAt(s, 1);
  const marked = circa?.is === 'mark' ? 1 : 0;
  const year = numberAt(s, 1 + marked, 4);
  if (draft.year !== undefined || isEmpty(draft) || year === undefined) return false;
  const doubt = isSign(s, '?', 2 + marked) ? 1 : 0;
  if (!isSign(s, ']', 2 + marked + doubt)) return false;
  s.at += 3 + marked + doubt;
  draft.year = year;
  const mark: Mark = circa?.is === 'mark' ? circa.mark : '';
  draft.yearMark = doubt ? '?' : mark;
  return true;
}

const AFTER_POINT = new Set([...JOINTS, 'month', 'weekday']);

/** Whether a point after a day ends its ordinal, as in German and Norwegian, and no phrase. */
const isAfterPoint = (s: Scanner) =>
  isSign(s, '-', 1) || isSign(s, '–', 1) || AFTER_POINT.has(senseAt(s, 1)?.is ?? '');

/** Whether a hyphen or stroke joins a month in letters to its day or year: 17-Mar-1906, Mar-1906. */
function joinsMonth(s: Scanner, draft: Draft): boolean {
  const sign = peek(s);
  if (!sign?.glued || (sign.text !== '-' && sign.text !== '/') || peek(s, 1)?.glued !== true) return false;
  const [before, after] = [peek(s, -1), peek(s, 1)];
  if (after?.sense?.is === 'month') {
    return (
      !hasMonth(draft) &&
      before?.kind === 'number' &&
      isSign(s, sign.text, 2) &&
      peek(s, 3)?.kind === 'number'
    );
  }
  if (before?.sense?.is !== 'month' || after?.kind !== 'number') return false;
  if (isSign(s, sign.text, -2) && peek(s, -3)?.kind === 'number') return true;
  const isYear = after.text.length === 4 || (after.text.length === 2 && Number(after.text) > 31);
  return draft.day === undefined && draft.year === undefined && isYear && senseAt(s, 2)?.is !== 'month';
}

/** Takes a sign that belongs inside a date. */
export function takeSignPart(s: Scanner, draft: Draft, before: Draft | undefined): boolean {
  if (isSign(s, ',')) {
    if (!commaIsInside(s, draft, before)) return false;
    s.at++;
    return true;
  }
  if (isSign(s, "'")) {
    const digits = numberAt(s, 1, 2);
    if (digits === undefined || draft.year !== undefined || peek(s, 1)?.glued === false) return false;
    s.at++;
    if (peek(s, 1)?.text === 's' || senseAt(s, 1)?.is === 'decadeTail') return takeNumber(s, draft, before);
    s.at++;
    draft.year = shortYear(s, digits, before);
    return true;
  }
  if (isSign(s, '[')) return takeBracketedYear(s, draft);
  if (joinsMonth(s, draft)) {
    s.at++;
    return true;
  }
  // "14. May 1962", "14.-16. May 1962"
  if (!isSign(s, '.') || draft.day === undefined || hasMonth(draft) || !isAfterPoint(s)) return false;
  draft.ordinal = true;
  s.at++;
  return true;
}
