import { type Draft, hasMonth } from './draft.ts';
import { isSign, numberAt, peek, type Scanner, senseAt } from './scanner.ts';
import { decadeOfTens, hundreds, shortYear } from './years.ts';

const ORDINALS = new Set(['st', 'nd', 'rd', 'th', 'e', 'er', 'eme', 'ste', 'de', 'a', 'o', 'ta', 'n']);

/** How many pieces after a number make it a decade: `s`, `'s`, `-tallet`, `er`; 0 where none do. */
function decadeEnding(s: Scanner): number {
  const sign = isSign(s, "'", 1) || isSign(s, '-', 1) ? 1 : 0;
  const piece = peek(s, 1 + sign);
  if (piece?.kind !== 'word') return 0;
  const isTail = piece.sense?.is === 'decadeTail' && (piece.glued || piece.text.length > 2);
  return isTail || (piece.text === 's' && piece.glued) ? 1 + sign : 0;
}

/** A number as the name of a decade: 1890s, 1900s, 50s. */
function takeDecade(
  s: Scanner,
  draft: Draft,
  digits: string,
  length: number,
  before: Draft | undefined,
): boolean {
  const isCentury = senseAt(s, length)?.is === 'decadeTail' && peek(s, length)?.text === 'tallet';
  if (!digits.endsWith('0') || (digits.length !== 4 && digits.length !== 2) || draft.year !== undefined)
    return false;
  s.at += 1 + length;
  if (digits.length === 2) {
    draft.year = decadeOfTens(s, Number(digits[0]), before);
    draft.shortDecade = true;
  } else if (!digits.endsWith('00')) draft.year = `${digits.slice(0, 3)}X`;
  else draft.year = isCentury ? `${digits.slice(0, 2)}XX` : hundreds(s, digits);
  return true;
}

/** Figures left open with a hyphen, question mark or underline: `195-`, `19--`, `195?`. */
function takeOpenFigures(s: Scanner, draft: Draft, digits: string): boolean {
  const missing = 4 - digits.length;
  if ((missing !== 1 && missing !== 2) || draft.year !== undefined) return false;
  const sign = peek(s, 1)?.text ?? '';
  if (!'-–?_'.includes(sign) || sign === '') return false;
  for (let ahead = 1; ahead <= missing; ahead++) {
    if (!isSign(s, sign, ahead) || peek(s, ahead)?.glued === false) return false;
  }
  const next = peek(s, 1 + missing);
  if (next?.glued === true && (next.kind === 'number' || next.kind === 'word')) return false;
  s.at += 1 + missing;
  draft.year = `${digits}${'X'.repeat(missing)}`;
  return true;
}

/** `19th century`, `19e siècle`, `19. Jahrhundert`, `5th`; with how many pieces belong to it. */
function takeOrdinalNumber(s: Scanner, draft: Draft, digits: string): boolean {
  const suffix = peek(s, 1);
  const hasSuffix = suffix?.kind === 'word' && suffix.glued && ORDINALS.has(suffix.text);
  const hasPoint = isSign(s, '.', 1);
  const after = hasSuffix || hasPoint ? 2 : 1;
  const hyphen = isSign(s, '-', after) ? 1 : 0;
  const isCentury =
    senseAt(s, after + hyphen)?.is === 'century' || (hasSuffix && peek(s, after)?.text === 'c');
  if (isCentury && draft.year === undefined && digits.length <= 2 && Number(digits) > 0) {
    draft.year = `${String(Number(digits) - 1).padStart(2, '0')}XX`;
    s.at += after + hyphen + 1;
    return true;
  }
  if (senseAt(s, after)?.is === 'quarterWord' && (hasSuffix || hasPoint) && !draft.fraction) {
    const nth = Number(digits);
    if (nth < 1 || nth > 4) return false;
    draft.fraction = { nth, of: 4, rough: false };
    s.at += after + 1;
    return true;
  }
  if (!hasSuffix || draft.day !== undefined || digits.length > 2) return false;
  draft.ordinal = true;
  draft.day = Number(digits);
  s.at += 2;
  return true;
}

/** Eight figures in a row: year, month and day (ISO 8601-1, 5.2.2.1, basic format). */
function takeEight(s: Scanner, draft: Draft, digits: string): boolean {
  const month = Number(digits.slice(4, 6));
  if (draft.year !== undefined || month < 1 || month > 12) return false;
  Object.assign(draft, { year: digits.slice(0, 4), month, day: Number(digits.slice(6)) });
  s.at++;
  return true;
}

/**
 * Takes a number as what it must be at this place: a year, a day, a decade, a century.
 * @param isDecade whether a word before it said that it names a decade ("années 50")
 */
export function takeNumber(s: Scanner, draft: Draft, before: Draft | undefined, isDecade = false): boolean {
  const digits = numberAt(s, 0, 1, 2, 3, 4, 8);
  if (digits === undefined) return false;
  const ending = decadeEnding(s);
  if (ending > 0 || isDecade) return takeDecade(s, draft, digits, ending, before);
  if (takeOpenFigures(s, draft, digits) || takeOrdinalNumber(s, draft, digits)) return true;
  if (digits.length === 8) return takeEight(s, draft, digits);
  if (senseAt(s, 1)?.is === 'era' && draft.year === undefined) {
    draft.year = digits.padStart(4, '0');
    s.at++;
    return true;
  }
  if (digits.length === 4) {
    if (draft.year !== undefined) return false;
    draft.year = digits;
    s.at++;
    return true;
  }
  if (digits.length === 3 || digits.includes('X')) return false;
  return takeShort(s, draft, digits, before);
}

/** One or two figures: a day, or a year without its century. */
function takeShort(s: Scanner, draft: Draft, digits: string, before: Draft | undefined): boolean {
  const value = Number(digits);
  const mayBeYear = draft.year === undefined && digits.length === 2;
  const afterYearAlone = before?.year !== undefined && before.day === undefined;
  const secondYear =
    draft.year === undefined && afterYearAlone && before.month === undefined && !hasMonth(draft);
  // After a day and month, a season or a feast only the year can follow; so it is where no month has that many days.
  const needsYear =
    (draft.month !== undefined && draft.day !== undefined) ||
    draft.season !== undefined ||
    draft.feast !== undefined;
  if (secondYear && senseAt(s, 1)?.is !== 'month') draft.year = shortYear(s, digits, before);
  else if (mayBeYear && (needsYear || value > 31 || value === 0)) draft.year = shortYear(s, digits, before);
  else if (draft.day === undefined && draft.season === undefined && draft.feast === undefined && value >= 1) {
    if (draft.year !== undefined && !hasMonth(draft) && senseAt(s, 1)?.is !== 'month') return false;
    draft.day = value;
  } else return false;
  s.at++;
  return true;
}
