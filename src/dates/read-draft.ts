import { type Draft, emptyDraft, hasMonth, isEmpty, isYearOnly } from './draft.ts';
import type { Piece } from './pieces.ts';
import { takeFigures } from './read-figures.ts';
import { takeNumber } from './read-number.ts';
import { takeSignPart } from './read-signs.ts';
import { takeRoman, takeRomanCentury } from './roman.ts';
import { choose, fail, isSign, numberAt, peek, type Scanner, senseAt, takeSign } from './scanner.ts';
import { decadeOfTens, hundreds } from './years.ts';

/** A number word for a year or century: "nineteen fifties", "nineteenth century". */
function takeHundreds(s: Scanner, draft: Draft, value: number): boolean {
  const hyphen = isSign(s, '-', 1) ? 1 : 0;
  const decade = senseAt(s, 1 + hyphen);
  if (draft.year !== undefined || (decade?.is !== 'decade' && decade?.is !== 'hundredWord')) return false;
  s.at += 2 + hyphen;
  draft.year = decade.is === 'decade' ? `${value}${decade.tens}X` : hundreds(s, `${value}00`);
  return true;
}

function takeOrdinal(s: Scanner, draft: Draft, value: number): boolean {
  const hyphen = isSign(s, '-', 1) ? 1 : 0;
  const next = senseAt(s, 1 + hyphen)?.is;
  if (next === 'century') {
    if (draft.year !== undefined) return false;
    draft.year = `${String(value - 1).padStart(2, '0')}XX`;
    s.at += 2 + hyphen;
    return true;
  }
  const isDay =
    draft.day === undefined &&
    (hasMonth(draft) || next === 'month' || (next === 'filler' && senseAt(s, 2)?.is === 'month'));
  // "eighteenth to nineteenth century": of what, the next date says.
  if (!isDay && !isEmpty(draft)) return false;
  draft.day = value;
  draft.ordinal = true;
  s.at++;
  return true;
}

const SKIPPED = new Set(['filler', 'yearWord']);
const CONNECTING = new Set(['de', 'von', 'van', 'fra']);
const connectsAt = (s: Scanner, ahead: number): boolean =>
  SKIPPED.has(senseAt(s, ahead)?.is ?? '') || CONNECTING.has(peek(s, ahead)?.text ?? '');

/** Whether a number before a day of the week counts the days of that name: "second Sunday in June", "2 Sunday of June". */
const countsWeekdays = (s: Scanner, day: number, ordinal = false): boolean =>
  connectsAt(s, 1) || (ordinal && day <= 5);

function takeWord(s: Scanner, draft: Draft, before: Draft | undefined): boolean {
  const sense = senseAt(s);
  if (!sense) return false;
  const free = !hasMonth(draft) && draft.feast === undefined;
  switch (sense.is) {
    case 'month': {
      const [first, ...rest] = sense.values;
      if (!free || first === undefined) return false;
      const isFeast = sense.feast && draft.day === undefined && choose(s, 'word', [false, true]);
      if (isFeast && sense.feast) draft.feast = sense.feast;
      else draft.month = rest.length === 0 ? first : choose(s, 'month', [first, ...rest]);
      break;
    }
    case 'season':
      if (!free || draft.day !== undefined) return false;
      draft.season = sense.code;
      break;
    case 'feast':
      if (!free || draft.day !== undefined) return false;
      draft.feast = sense.rows;
      break;
    case 'weekday':
      if (draft.weekday !== undefined || hasMonth(draft)) return false;
      draft.weekday = sense.value;
      if (draft.day !== undefined && countsWeekdays(s, draft.day, draft.ordinal)) {
        draft.nth = draft.day;
        delete draft.day;
      }
      break;
    case 'last':
      if (!isEmpty(draft) || senseAt(s, 1)?.is !== 'weekday') return false;
      draft.nth = -1;
      break;
    case 'fraction':
      if (draft.fraction || draft.day !== undefined) return false;
      draft.fraction = sense.fraction;
      if (draft.year === undefined && isSign(s, '-', 1) && startsDate(s, 2)) s.at++;
      break;
    case 'decade':
      if (draft.year !== undefined) return false;
      draft.year = decadeOfTens(s, sense.tens, before);
      break;
    case 'hundreds':
      return takeHundreds(s, draft, sense.value);
    case 'ordinal':
      return takeOrdinal(s, draft, sense.value);
    case 'decadeHead':
      if (draft.year !== undefined) return false;
      s.at++;
      takeSign(s, "'");
      return takeNumber(s, draft, before, true) || takeWord(s, draft, before);
    case 'era':
      if (!sense.before || draft.year === undefined || !/^\d{4}$/.test(draft.year) || hasMonth(draft))
        return false;
      draft.year = yearBefore(Number(draft.year));
      break;
    case 'century': {
      s.at++;
      if (takeRoman(s, draft)) return true;
      s.at--;
      return false;
    }
    case 'quarterLetter': {
      const nth = Number(numberAt(s, 1, 1) ?? 0);
      if (draft.fraction || nth < 1 || nth > 4) return false;
      draft.fraction = { nth, of: 4, rough: false };
      s.at++;
      break;
    }
    case 'monthWord':
    case 'dayWord':
      return takeNumbered(s, draft, sense.is);
    default: {
      if (!connectsAt(s, 0) || !startsDate(s, 1)) return false;
    }
  }
  s.at++;
  return true;
}

// Astronomical years, as in ISO 8601: 1 BC is year 0.
const yearBefore = (year: number) => (year === 1 ? '0000' : `-${String(year - 1).padStart(4, '0')}`);

/** "month 1X", "day 2X": how a date with figures that are not known is shown. */
function takeNumbered(s: Scanner, draft: Draft, is: 'monthWord' | 'dayWord'): boolean {
  const piece = peek(s, 1);
  const text = piece?.text.toUpperCase();
  if (text === undefined || !/^[\dX]{1,2}$/.test(text)) return false;
  s.at += 2;
  if (!text.includes('X')) return false;
  if (is === 'monthWord') draft.monthText = text;
  else draft.dayText = text;
  return true;
}

const STARTS = new Set([
  'month',
  'season',
  'feast',
  'weekday',
  'fraction',
  'decade',
  'hundreds',
  'ordinal',
  'last',
  'decadeHead',
  'century',
  'quarterLetter',
  'filler',
  'yearWord',
  'monthWord',
]);

/** Whether a date may go on or begin at a place. */
export function startsDate(s: Scanner, ahead: number): boolean {
  const piece = peek(s, ahead);
  if (piece?.kind === 'number') return true;
  if (isSign(s, "'", ahead)) return numberAt(s, ahead + 1, 2) !== undefined;
  if (piece?.sense !== undefined) return STARTS.has(piece.sense.is);
  // "Fin du XIXe siècle"
  return piece?.kind === 'word' && senseAt(s, ahead + 1)?.is === 'century';
}

/**
 * Reads one date, as far as it goes, into a draft.
 * @param before the date before it in a range or list, from which a short second year takes its century
 */
export function readDraft(s: Scanner, before?: Draft, draft: Draft = emptyDraft()): Draft | undefined {
  const start = s.at;
  while (s.at < s.pieces.length && s.reason === undefined) {
    const piece = peek(s);
    const taken =
      piece?.kind === 'number' && piece.sense === undefined
        ? (isEmpty(draft) && takeFigures(s, draft, before)) ||
          (s.reason === undefined && takeNumber(s, draft, before))
        : piece?.sense !== undefined
          ? takeWord(s, draft, before)
          : takeRomanCentury(s, draft) || takeSignPart(s, draft, before);
    if (!taken) break;
    if (draft.year !== undefined) draft.yearFirst ??= isYearOnly(draft);
  }
  if (s.reason !== undefined) return undefined;
  return s.at === start || (isEmpty(draft) && draft.weekday === undefined && !draft.fraction)
    ? fail(s, noDate(peek(s)))
    : draft;
}

const noDate = (piece: Piece | undefined) =>
  piece?.kind === 'word' && piece.sense === undefined
    ? `“${piece.text}” is not understood here.`
    : 'No date is found in it.';
