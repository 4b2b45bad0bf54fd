import { type Draft, isLoneDay, isYearOnly } from './draft.ts';
import { joinMarks, type Mark } from './edtf-point.ts';
import { readDraft, startsDate } from './read-draft.ts';
import { takeMarks, takeSuffix } from './read-marks.ts';
import { fail, isSign, numberAt, peek, type Scanner, senseAt, takeSense, takeSign } from './scanner.ts';
import type { Edge } from './senses.ts';
import { knownYear } from './years.ts';

export type End = Draft | 'open' | 'unknown';

/** One member of a list: a date, a span, or all that lies to one side of a date. */
export type Item =
  /** `spread` is the mark before it that holds for the alternatives after it as well. */
  | { readonly shape: 'date'; readonly draft: Draft; readonly spread: Mark }
  | { readonly shape: 'span'; readonly start: End; readonly end: End; readonly oneOf?: boolean }
  | { readonly shape: 'edge'; readonly edge: Edge; readonly draft: Draft };

const addMark = (draft: Draft, mark: Mark) => {
  draft.mark = joinMarks(draft.mark, mark);
};

interface Marked {
  draft: Draft;
  bracketed: boolean;
  /** Whether a mark stood before it, and what stood after it for the whole range. */
  prefix: Mark;
  whole: Mark;
}

/** A date with the marks before and after it, perhaps in the brackets of a cataloguer: `[circa 1870]`. */
function readMarked(s: Scanner, before?: Draft): Marked | undefined {
  const outer = takeMarks(s);
  const bracketed = takeSign(s, '[');
  const prefix = joinMarks(outer, bracketed ? takeMarks(s) : '');
  let draft = readDraft(s, before);
  if (!draft) return undefined;
  const suffix = takeSuffix(s, draft);
  addMark(draft, joinMarks(prefix, suffix.own));
  if (!bracketed) return { draft, bracketed, prefix, whole: suffix.whole };
  if (!takeSign(s, ']')) return fail(s, 'A bracket is opened and not closed.');
  addMark(draft, suffix.whole);
  // "[1962] May 14": the bracket holds the year only, and so does its mark.
  if (startsDate(s, 0) && isYearOnly(draft)) {
    draft.yearMark = draft.mark;
    draft.mark = '';
    draft = readDraft(s, before, draft);
    if (!draft) return undefined;
  }
  const after = takeSuffix(s, draft);
  addMark(draft, after.own);
  return { draft, bracketed, prefix, whole: after.whole };
}

/** Goes past whatever parts the ends of a range: a dash, a stroke, two points, "to". */
function takeRangeWord(s: Scanner): boolean {
  const is = senseAt(s)?.is;
  if (is === 'to' || is === 'until') {
    s.at++;
    if (senseAt(s)?.is === 'until') s.at++;
    return true;
  }
  if (isSign(s, '.') && isSign(s, '.', 1)) {
    s.at += isSign(s, '.', 2) ? 3 : 2;
    return true;
  }
  if (isSign(s, '-') && isSign(s, '-', 1)) s.at++;
  return takeSign(s, '-') || takeSign(s, '–') || takeSign(s, '/');
}

/** The date from which the next one takes what it does not name; a day alone has its own month from the one before. */
const lastPlaced = (draft: Draft, before: Draft | undefined): Draft | undefined =>
  isLoneDay(draft) ? before : draft;

/** The end of a range, after its dash. */
function readEnd(s: Scanner, start: Draft | undefined): { end: End; marked?: Marked } | undefined {
  const piece = peek(s);
  if (piece === undefined || piece.text === ']' || piece.text === ')' || piece.text === ',')
    return { end: 'open' };
  if (takeSense(s, 'ongoing') || (piece.text === 'date' && s.at + 1 === s.pieces.length && ++s.at))
    return { end: 'open' };
  if (takeSense(s, 'unknown') || (isSign(s, '?') && s.at + 1 === s.pieces.length && ++s.at))
    return { end: 'unknown' };
  const marked = readMarked(s, start);
  return marked && { end: marked.draft, marked };
}

/** The rest of a range whose start is read; marks at its outer ends hold for both. */
function readSpan(s: Scanner, start: Marked, before?: Draft): Item | undefined {
  const found = readEnd(s, lastPlaced(start.draft, before));
  if (!found) return undefined;
  const { end, marked } = found;
  if (marked) {
    if (start.prefix !== '' && !start.bracketed && marked.prefix === '') addMark(marked.draft, start.prefix);
    // "1920-30s" is two decades.
    if (marked.draft.shortDecade && isYearOnly(start.draft) && /^\d{3}0$/.test(start.draft.year ?? '')) {
      start.draft.year = `${start.draft.year?.slice(0, 3)}X`;
    }
    addMark(marked.draft, marked.whole);
    addMark(start.draft, marked.whole);
  }
  addMark(start.draft, start.whole);
  return { shape: 'span', start: start.draft, end };
}

/** "1952 ± 2", "1952 +/- 2": years to either side. */
function takeTolerance(s: Scanner, draft: Draft): Item | undefined {
  const length = isSign(s, '±') ? 1 : isSign(s, '+') && isSign(s, '/', 1) && isSign(s, '-', 2) ? 3 : 0;
  const years = length === 0 ? undefined : numberAt(s, length, 1, 2);
  const middle = knownYear(draft);
  if (years === undefined || middle === undefined || !isYearOnly(draft)) return undefined;
  s.at += length + 1;
  if (senseAt(s)?.is === 'yearWord' || peek(s)?.text === 'years') s.at++;
  const year = (by: number): Draft => ({
    ...draft,
    year: String(middle + by).padStart(4, '0'),
    mark: joinMarks(draft.mark, '~'),
  });
  return { shape: 'span', start: year(-Number(years)), end: year(Number(years)) };
}

/** "1950 or before", "1950 and after", with no other date behind it. */
function takeSideAlone(s: Scanner): Edge | undefined {
  const [joint, side] = [senseAt(s), senseAt(s, 1)];
  if ((joint?.is !== 'or' && joint?.is !== 'and') || side?.is !== 'edge' || s.at + 2 < s.pieces.length)
    return undefined;
  s.at += 2;
  return side.edge === 'before'
    ? 'by'
    : side.edge === 'after'
      ? 'notBefore'
      : fail(s, 'It is not understood.');
}

/** What may follow a date: the rest of a range, "or earlier", "onwards". */
function readAfter(s: Scanner, marked: Marked, before?: Draft): Item | undefined {
  const { draft, bracketed } = marked;
  const sense = senseAt(s);
  const tolerance = takeTolerance(s, draft);
  if (tolerance) return tolerance;
  if (sense?.is === 'tail' && sense.tail !== 'roughly') {
    s.at++;
    addMark(draft, marked.whole);
    if (sense.tail === 'onward') return { shape: 'span', start: draft, end: 'open' };
    return { shape: 'edge', edge: sense.tail === 'orEarlier' ? 'by' : 'notBefore', draft };
  }
  const side = takeSideAlone(s);
  if (side) return { shape: 'edge', edge: side, draft };
  if (isSign(s, '+') && s.at + 1 === s.pieces.length) {
    s.at++;
    return { shape: 'edge', edge: 'notBefore', draft };
  }
  if (takeRangeWord(s)) return readSpan(s, marked, before);
  addMark(draft, marked.whole);
  return { shape: 'date', draft, spread: bracketed ? '' : marked.prefix };
}

function readEdge(s: Scanner, edge: Edge, mark: Mark): Item | undefined {
  if (isSign(s, '-')) s.at++;
  skipLead(s);
  const marked = readMarked(s);
  if (!marked) return undefined;
  addMark(marked.draft, mark);
  if (edge === 'since' && takeRangeWord(s)) return readSpan(s, marked);
  addMark(marked.draft, marked.whole);
  if (edge !== 'since') return { shape: 'edge', edge, draft: marked.draft };
  takeSense(s, 'tail');
  return { shape: 'span', start: marked.draft, end: 'open' };
}

function readBetween(s: Scanner, mark: Mark): Item | undefined {
  const start = readMarked(s);
  if (!start) return undefined;
  addMark(start.draft, joinMarks(mark, start.whole));
  if (!takeSense(s, 'and') && !takeSign(s, '&') && !takeRangeWord(s))
    return fail(s, 'It says “between”, but not between what.');
  const end = readMarked(s, start.draft);
  if (!end) return fail(s, 'It says “between”, but not between what.');
  addMark(end.draft, joinMarks(mark, end.whole));
  return { shape: 'span', start: start.draft, end: end.draft, oneOf: true };
}

// "À Noël 1912", "al 5 de mayo": before a date what else joins the ends of a range says when.
const AT = new Set(['a', 'au', 'al']);
const isAt = (s: Scanner) => senseAt(s)?.is === 'to' && AT.has(peek(s)?.text ?? '');

/** Words and signs before a date that say nothing of it: "dated", "in the", "on". */
function skipLead(s: Scanner): void {
  while (s.at < s.pieces.length) {
    const text = peek(s)?.text;
    const leads = senseAt(s)?.is === 'filler' || text === 'on' || text === ':' || isAt(s);
    if (!leads) return;
    s.at++;
  }
}

const SIDES: Readonly<Record<string, Edge>> = { '<': 'before', '>': 'after', '≤': 'by', '≥': 'notBefore' };

/** Reads one member of a list. */
export function readItem(s: Scanner, before?: Draft): Item | undefined {
  skipLead(s);
  const next = senseAt(s, 1)?.is;
  const parts = isSign(s, '-', 1) || isSign(s, '–', 1) || next === 'to' || next === 'until';
  if (parts && takeSign(s, '?')) return readUnknownStart(s);
  const mark = takeMarks(s);
  const sense = senseAt(s);
  const side = peek(s)?.kind === 'sign' ? SIDES[peek(s)?.text ?? ''] : undefined;
  if (sense?.is === 'edge' || side !== undefined) {
    s.at++;
    return readEdge(s, sense?.is === 'edge' ? sense.edge : (side ?? 'before'), mark);
  }
  // "Bis 1912", "to 1912"
  if (takeSense(s, 'until') || takeSense(s, 'to')) {
    const end = readMarked(s);
    if (!end) return undefined;
    addMark(end.draft, joinMarks(mark, end.whole));
    return { shape: 'span', start: 'open', end: end.draft };
  }
  if (takeSense(s, 'between')) return readBetween(s, mark);
  if (takeSense(s, 'unknown')) return readUnknownStart(s);
  const bracketed = mark === '' ? readBracketedSpan(s) : undefined;
  if (bracketed) return bracketed;
  const marked = readMarked(s, before);
  if (!marked) return undefined;
  addMark(marked.draft, mark);
  return readAfter(s, { ...marked, prefix: joinMarks(mark, marked.prefix) }, before);
}

/** `[circa 1870-1879] or 1890`: a whole range in brackets. Goes nowhere if the bracket holds something else. */
function readBracketedSpan(s: Scanner): Item | undefined {
  const { at, reason } = s;
  if (!takeSign(s, '[')) return undefined;
  const inner = readItem(s);
  if (inner?.shape === 'span' && takeSign(s, ']')) return inner;
  Object.assign(s, { at, reason });
  return undefined;
}

function readUnknownStart(s: Scanner): Item | undefined {
  const end = takeRangeWord(s) ? readEnd(s, undefined) : fail(s, 'It names no date.');
  return end && { shape: 'span', start: 'unknown', end: end.end };
}
