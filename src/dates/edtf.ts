import type { Day } from './calendar.ts';
import { type Point, parsePoint } from './edtf-point.ts';

/** First and last day; undefined where that side is open or unknown. */
interface Limits {
  readonly earliest: Day | undefined;
  readonly latest: Day | undefined;
}

/** ISO 8601-2, 10: from one date to another; an end is open (`..`) or unknown (nothing written). */
export interface Interval extends Limits {
  readonly kind: 'interval';
  readonly text: string;
  readonly start: Point | 'open' | 'unknown';
  readonly end: Point | 'open' | 'unknown';
}

/** A run of dates inside a set: `1670..1672`, `..1866`, `1962..`. */
export interface Run {
  readonly kind: 'run';
  readonly start?: Point;
  readonly end?: Point;
}

/** ISO 8601-2, 6: one of these dates (`[]`) or all of them (`{}`). */
export interface DateSet extends Limits {
  readonly kind: 'set';
  readonly text: string;
  readonly of: 'one' | 'all';
  readonly members: readonly (Point | Run)[];
}

export type Edtf = Point | Interval | DateSet;

function parseEnd(text: string): Point | 'open' | 'unknown' | undefined {
  if (text === '..') return 'open';
  return text === '' ? 'unknown' : parsePoint(text);
}

function parseInterval(text: string, slash: number): Interval | undefined {
  if (text.length === 1) return undefined;
  const start = parseEnd(text.slice(0, slash));
  const end = parseEnd(text.slice(slash + 1));
  if (start === undefined || end === undefined) return undefined;
  // An end before its start is no interval: ISO 8601-1, 3.1.1.6.
  if (typeof start === 'object' && typeof end === 'object' && start.earliest > end.latest) return undefined;
  const earliest = typeof start === 'object' ? start.earliest : undefined;
  const latest = typeof end === 'object' ? end.latest : undefined;
  return { kind: 'interval', text, start, end, earliest, latest };
}

function parseMember(text: string, isFirst: boolean, isLast: boolean): Point | Run | undefined {
  const dots = text.indexOf('..');
  if (dots < 0) return parsePoint(text);
  const [before, after] = [text.slice(0, dots), text.slice(dots + 2)];
  if (before === '' && after === '') return undefined;
  // ISO 8601-2, 6.4: only the first member may reach back without end, only the last one forward.
  if ((before === '' && !isFirst) || (after === '' && !isLast)) return undefined;
  const start = before === '' ? undefined : parsePoint(before);
  const end = after === '' ? undefined : parsePoint(after);
  if ((before !== '' && !start) || (after !== '' && !end)) return undefined;
  if (start && end && start.earliest > end.latest) return undefined;
  return { kind: 'run', ...(start && { start }), ...(end && { end }) };
}

function parseSet(text: string): DateSet | undefined {
  const of = text.startsWith('[') && text.endsWith(']') ? 'one' : 'all';
  if (of === 'all' && !(text.startsWith('{') && text.endsWith('}'))) return undefined;
  const written = text.slice(1, -1).split(',');
  const members: (Point | Run)[] = [];
  for (const [index, one] of written.entries()) {
    const member = parseMember(one.trim(), index === 0, index === written.length - 1);
    if (!member) return undefined;
    members.push(member);
  }
  return { kind: 'set', text, of, members, ...limitsOf(members) };
}

function limitsOf(members: readonly (Point | Run)[]): Limits {
  let [earliest, latest]: [Day | undefined, Day | undefined] = [Infinity, -Infinity];
  for (const member of members) {
    const { start, end } = member.kind === 'run' ? member : { start: member, end: member };
    earliest = earliest === undefined || start === undefined ? undefined : Math.min(earliest, start.earliest);
    latest = latest === undefined || end === undefined ? undefined : Math.max(latest, end.latest);
  }
  return { earliest, latest };
}

function parseAfresh(text: string): Edtf | undefined {
  if (text.startsWith('[') || text.startsWith('{')) return parseSet(text);
  const slash = text.indexOf('/');
  return slash < 0 ? parsePoint(text) : parseInterval(text, slash);
}

// A list of 100,000 rows holds few different dates; this many are kept, then forgotten all at once.
const KEPT = 50_000;
const kept = new Map<string, Edtf | undefined>();

/**
 * Reads an EDTF string: ISO 8601-2 (2019), levels 0 to 2.
 * @returns undefined where the text is none
 */
export function parseEdtf(text: string): Edtf | undefined {
  const known = kept.get(text);
  if (known !== undefined || kept.has(text)) return known;
  if (kept.size >= KEPT) kept.clear();
  const parsed = parseAfresh(text);
  if (text.length <= 100) kept.set(text, parsed);
  return parsed;
}

/** Whether a text is an EDTF date, interval or set (ISO 8601-2, levels 0 to 2). */
export const isEdtf = (text: string): boolean => parseEdtf(text) !== undefined;
