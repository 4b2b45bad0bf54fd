import { type Day, dayText, monthOfDay, two, yearOfDay, yearText } from './calendar.ts';
import { type Edtf, parseEdtf, type Run } from './edtf.ts';
import { isUnspecified, type Point } from './edtf-point.ts';

/** What the parts say together, gathered in one pass. */
interface Gathered {
  start: Point | undefined;
  end: Point | undefined;
  /** The last "before" and the first "after" of parts of which no more is known. */
  before: Point | undefined;
  after: Point | undefined;
  /** `..` or nothing, where some interval has no known start or end. */
  openStart: '..' | '' | undefined;
  openEnd: '..' | '' | undefined;
  allAreOne: boolean;
}

/** From the certain to what is approximate, uncertain, and both. */
const DOUBTS: readonly Point['mark'][] = ['', '~', '?', '%'];
const certainFirst = (one: Point, other: Point) => DOUBTS.indexOf(one.mark) - DOUBTS.indexOf(other.mark);

/** Of two that say the same, always the same one, in whatever order they come. */
const byText = (one: Point, other: Point) => (one.text === other.text ? 0 : one.text < other.text ? -1 : 1);

/** The point that begins first; of those that begin together the least doubtful, then the one that ends last. */
function earlier(one: Point | undefined, other: Point): Point {
  if (!one) return other;
  const order =
    one.earliest - other.earliest ||
    certainFirst(one, other) ||
    other.latest - one.latest ||
    byText(one, other);
  return order > 0 ? other : one;
}

/** The point that ends last; of those that end together the least doubtful, then the one that begins first. */
function later(one: Point | undefined, other: Point): Point {
  if (!one) return other;
  const order =
    other.latest - one.latest ||
    certainFirst(one, other) ||
    one.earliest - other.earliest ||
    byText(one, other);
  return order > 0 ? other : one;
}

function addRun(gathered: Gathered, { start, end }: Run): void {
  if (start && end) {
    gathered.start = earlier(gathered.start, start);
    gathered.end = later(gathered.end, end);
  } else if (end) gathered.before = later(gathered.before, end);
  else if (start) gathered.after = earlier(gathered.after, start);
}

function add(gathered: Gathered, date: Edtf): void {
  if (date.kind === 'point') addRun(gathered, { kind: 'run', start: date, end: date });
  else if (date.kind === 'set') {
    if (date.of === 'all') gathered.allAreOne = false;
    for (const member of date.members) {
      addRun(gathered, member.kind === 'run' ? member : { kind: 'run', start: member, end: member });
    }
  } else {
    const { start, end } = date;
    if (typeof start === 'object') gathered.start = earlier(gathered.start, start);
    else gathered.openStart = start === 'open' || gathered.openStart === '..' ? '..' : '';
    if (typeof end === 'object') gathered.end = later(gathered.end, end);
    else gathered.openEnd = end === 'open' || gathered.openEnd === '..' ? '..' : '';
  }
}

/** An end at the grain of years; a decade stays one (`189X`), unless a mark forces years (`1890~`). */
function yearEnd({ year, mark }: Point, side: 'low' | 'high'): string {
  return year.text.includes('X') && mark === '' ? year.text : `${yearText(year[side])}${mark}`;
}

const monthEnd = (day: Day, { mark }: Point) => `${yearText(yearOfDay(day))}-${two(monthOfDay(day))}${mark}`;

/** Both known ends, as fine as they can be told together: days within a month, months within a year, else years. */
function ends(start: Point, end: Point): [string, string] {
  const [first, last] = [start.earliest, end.latest];
  const oneYear = yearOfDay(first) === yearOfDay(last) && !start.year.text.includes('X');
  if (oneYear && start.day && end.day && !isUnspecified(start) && !isUnspecified(end)) {
    if (monthOfDay(first) === monthOfDay(last))
      return [`${dayText(first)}${start.mark}`, `${dayText(last)}${end.mark}`];
  }
  if (oneYear && start.month && end.month) return [monthEnd(first, start), monthEnd(last, end)];
  return [yearEnd(start, 'low'), yearEnd(end, 'high')];
}

/** A date of one end where there is no other to weigh its grain against. */
const alone = (point: Point, side: 'low' | 'high') =>
  isUnspecified(point) || !point.even ? yearEnd(point, side) : point.text;

function join({ start, end, before, after, openStart, openEnd, allAreOne }: Gathered): string | undefined {
  if (openStart !== undefined && openEnd !== undefined) return '../..';
  const highest = end && before && openStart !== undefined ? later(end, before) : (end ?? before);
  const lowest = start && after && openEnd !== undefined ? earlier(start, after) : (start ?? after);
  if (openStart !== undefined) {
    if (!highest) return undefined;
    return after
      ? `{..${yearEnd(highest, 'high')},${yearEnd(after, 'low')}..}`
      : `${openStart}/${yearEnd(highest, 'high')}`;
  }
  if (openEnd !== undefined) {
    if (!lowest) return undefined;
    return before
      ? `{..${yearEnd(before, 'high')},${yearEnd(lowest, 'low')}..}`
      : `${yearEnd(lowest, 'low')}/${openEnd}`;
  }
  const middle = start && end ? spanText(start, end) : undefined;
  if (!before && !after) return middle?.join('/');
  const members = [
    ...(before ? [`..${alone(before, 'high')}`] : []),
    ...(middle ? [middle.join('..')] : []),
    ...(after ? [`${alone(after, 'low')}..`] : []),
  ];
  return members.length === 1 && allAreOne ? `[${members[0]}]` : `{${members.join(',')}}`;
}

function spanText(start: Point, end: Point): string[] {
  if (start.text === end.text) return [start.text];
  const [from, to] = ends(start, end);
  return from === to ? [from] : [from, to];
}

/**
 * The inclusive dates of a whole from those of its parts (DACS 2.4.7, 2.4.9), as one EDTF; its bounds hold those of
 * every part. What is uncertain or approximate at an end makes that end so. An interval without end makes the whole
 * one without end; a part of which only "before" or "after" is known stands beside the rest: `{..1866,1870..1912}`.
 * Parts that are no EDTF are passed over.
 * @returns undefined where no part has a date
 */
export function inclusiveDates(parts: Iterable<string>): string | undefined {
  return inclusiveOf(Array.from(new Set(parts), parseEdtf).filter((date) => date !== undefined));
}

/** The same of dates that are read already, each of them once. */
export function inclusiveOf(dates: readonly Edtf[]): string | undefined {
  if (dates.length <= 1) return dates[0]?.text;
  const gathered: Gathered = {
    start: undefined,
    end: undefined,
    before: undefined,
    after: undefined,
    openStart: undefined,
    openEnd: undefined,
    allAreOne: true,
  };
  for (const date of dates) add(gathered, date);
  return join(gathered);
}
