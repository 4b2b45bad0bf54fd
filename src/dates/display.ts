import { dayAfter, dayBefore } from './calendar.ts';
import { displayPoint, markWords, plainPoint, pointWords } from './display-point.ts';
import { type DateSet, type Interval, parseEdtf, type Run } from './edtf.ts';
import { isSeason, isUnspecified, type Point, parsePoint } from './edtf-point.ts';
import { grainOfPoint, standardText } from './grain.ts';

/** Whether a range of two points may name what they share only once: `1975 March-August`, `1906 March 17-20`. */
function joinPoints(start: Point, end: Point): string {
  const [one, other] = [pointWords(start), pointWords(end)];
  const alike = (one.month === undefined) === (other.month === undefined) && one.day === undefined;
  const sameYear = one.year === other.year && one.month !== undefined && other.month !== undefined;
  const bothDays = one.day !== undefined && other.day !== undefined;
  if (sameYear && bothDays && one.month === other.month) return `${plainPoint(start)}-${other.day}`;
  if (sameYear && bothDays) return `${plainPoint(start)}-${other.month} ${other.day}`;
  if (sameYear && alike && other.day === undefined) return `${plainPoint(start)}-${other.month}`;
  return `${plainPoint(start)}-${plainPoint(end)}`;
}

/** A mark at the start of a range holds for both ends (DACS 2.4.12); brackets keep it to the first. */
function displayRange(start: Point, end: Point): string {
  if (start.even && end.even && start.mark === end.mark)
    return markWords(start.mark) + joinPoints(start, end);
  const opening = start.even && start.mark !== '' ? `[${displayPoint(start)}]` : displayPoint(start);
  return `${opening}-${displayPoint(end)}`;
}

function displayInterval({ start, end }: Interval): string {
  if (typeof start === 'object' && typeof end === 'object') return displayRange(start, end);
  if (typeof start === 'object') return `${displayPoint(start)}-${end === 'open' ? 'ongoing' : 'unknown'}`;
  if (typeof end === 'object')
    return start === 'open' ? `until ${displayPoint(end)}` : `unknown-${displayPoint(end)}`;
  return `unknown-${end === 'open' ? 'ongoing' : 'unknown'}`;
}

/** The neighbour of a plain date at its own grain (the year, month or day before or after); else undefined. */
function neighbour(point: Point, side: 'before' | 'after'): string | undefined {
  if (point.mark !== '' || isSeason(point) || isUnspecified(point) || /[YSE-]/.test(point.year.text))
    return undefined;
  const day = side === 'before' ? dayBefore(point.earliest) : dayAfter(point.latest);
  const text = standardText(day, grainOfPoint(point));
  const beside = text === undefined ? undefined : parsePoint(text);
  return beside && displayPoint(beside);
}

/** DACS 2.4.15: `before 1867`, `after 1867 January 5`; where no neighbour can be named, `not after 1890s`. */
function displayRun({ start, end }: Run): string {
  if (start && end) return displayRange(start, end);
  if (end) {
    const next = neighbour(end, 'after');
    return next === undefined ? `not after ${displayPoint(end)}` : `before ${next}`;
  }
  if (!start) return '';
  const previous = neighbour(start, 'before');
  return previous === undefined ? `not before ${displayPoint(start)}` : `after ${previous}`;
}

function displaySet({ of, members }: DateSet): string {
  const [only] = members;
  if (members.length === 1 && only) {
    const words = only.kind === 'run' ? displayRun(only) : displayPoint(only);
    if (of === 'one' && only.kind === 'run' && only.start && only.end) {
      return `between ${displayPoint(only.start)} and ${displayPoint(only.end)}`;
    }
    if (of === 'one') return words;
    return `all of ${words}`;
  }
  // Before alternatives a mark holds for all of them, so brackets keep it to one; in an enumeration it holds for one.
  const bracket = (member: Point | Run, words: string) =>
    of === 'one' && /^(?:probably|circa)/.test(words) && member !== members.at(-1) ? `[${words}]` : words;
  const marks = new Set(members.map((one) => (one.kind === 'point' && one.even ? one.mark : 'run')));
  const [mark] = marks;
  if (of === 'one' && marks.size === 1 && mark !== undefined && mark !== '' && mark !== 'run') {
    const plain = members.flatMap((one) => (one.kind === 'point' ? [plainPoint(one)] : []));
    return markWords(mark) + joinOr(plain);
  }
  const words = members.map((one) => bracket(one, one.kind === 'run' ? displayRun(one) : displayPoint(one)));
  return of === 'one' ? joinOr(words) : words.join(', ');
}

const joinOr = (words: readonly string[]): string =>
  [words.slice(0, -1).join(', '), words.at(-1) ?? ''].filter((part) => part !== '').join(' or ');

/**
 * A date as DACS 2.4 has it shown to readers: `1906 March 17`, `1952-1978`, `circa 1870-1879`, `before 1867`.
 * What is no EDTF comes back as it is.
 */
export function displayDate(edtf: string): string {
  const date = parseEdtf(edtf);
  if (!date) return edtf;
  if (date.kind === 'point') return displayPoint(date);
  return date.kind === 'interval' ? displayInterval(date) : displaySet(date);
}

/**
 * The same for messages to people, who know a decade by its years: `1900-1909` for what finding aids show as
 * `1900s (decade)`.
 */
export const sayDate = (edtf: string): string =>
  displayDate(edtf).replaceAll(
    /(?<![\d-])(\d\d)00s \(decade\)(?!-)/g,
    (_, hundreds: string) => `${hundreds}00-${hundreds}09`,
  );

/** Inclusive dates with bulk dates beside them, where there are any (DACS 2.4.10): `1785-1960, bulk 1916-1958`. */
export const displayDates = (inclusive: string, bulk?: string): string =>
  bulk === undefined ? displayDate(inclusive) : `${displayDate(inclusive)}, bulk ${displayDate(bulk)}`;
