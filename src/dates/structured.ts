import { displayDate } from './display.ts';
import { displayPoint } from './display-point.ts';
import { type Edtf, type Interval, parseEdtf, type Run } from './edtf.ts';
import { joinMarks, type Mark, type Point } from './edtf-point.ts';
import { type Grain, grainOf, isPlain, plainText, standardText } from './grain.ts';

/** `approximate-uncertain` is both at once, as one NMTOKEN. */
export type Certainty = 'approximate' | 'uncertain' | 'approximate-uncertain';

/** One date for EAD3: the words, and what of it a standard date can say. */
export interface DatePart {
  readonly expression: string;
  /** YYYY, YYYY-MM or YYYY-MM-DD, years 0000 to 2999; only where the date is exactly that. */
  readonly standard?: string;
  /** Limits of a date that is not exactly one year, month or day, in the same forms. */
  readonly notBefore?: string;
  readonly notAfter?: string;
}

/** From one date to another inside a set. */
export interface DatePartRange {
  readonly from: DatePart;
  readonly to: DatePart;
}

/** A date as EAD3 takes it apart; an end of a range that is open or not known is left out; a set has two members at least. */
export type StructuredDate = { readonly certainty?: Certainty } & (
  | { readonly kind: 'single'; readonly date: DatePart }
  | { readonly kind: 'range'; readonly from?: DatePart; readonly to?: DatePart }
  | { readonly kind: 'set'; readonly members: readonly (DatePart | DatePartRange)[] }
);

const CERTAINTY: Record<Mark, Certainty | undefined> = {
  '': undefined,
  '~': 'approximate',
  '?': 'uncertain',
  '%': 'approximate-uncertain',
};

/** With one bound only, the grain it can be told in: a year's first day stands for the year, and so on. */
function grainOfLimits(first: number | undefined, last: number | undefined): Grain {
  const year = Math.floor((first ?? last ?? 0) / 10000) * 10000;
  return grainOf(first ?? year + 101, last ?? year + 1231);
}

/** A date of which only the limits can be told; undefined where a limit lies outside the years that can be written. */
function limited({ earliest: first, latest: last }: Edtf, expression: string): DatePart | undefined {
  const grain = grainOfLimits(first, last);
  const notBefore = first === undefined ? undefined : standardText(first, grain);
  const notAfter = last === undefined ? undefined : standardText(last, grain);
  const beyond = (first !== undefined && !notBefore) || (last !== undefined && !notAfter);
  return beyond ? undefined : { expression, ...(notBefore && { notBefore }), ...(notAfter && { notAfter }) };
}

function part(point: Point): DatePart | undefined {
  const expression = displayPoint(point);
  if (!isPlain(point)) return limited(point, expression);
  const standard = plainText(point);
  return standard === undefined ? undefined : { expression, standard };
}

function range(start: Interval['start'], end: Interval['end']): StructuredDate | undefined {
  const from = typeof start === 'object' ? part(start) : undefined;
  const to = typeof end === 'object' ? part(end) : undefined;
  const beyond = (typeof start === 'object' && !from) || (typeof end === 'object' && !to);
  if (beyond || (!from && !to)) return undefined;
  return { kind: 'range', ...(from && { from }), ...(to && { to }) };
}

function member(one: Point | Run): DatePart | DatePartRange | undefined {
  if (one.kind === 'point') return part(one);
  const { start, end } = one;
  const [from, to] = [start && part(start), end && part(end)];
  if (from && to) return { from, to };
  const text = `[${start?.text ?? ''}..${end?.text ?? ''}]`;
  const alone = parseEdtf(text);
  return alone && limited(alone, displayDate(text));
}

function all(members: readonly (Point | Run)[]): StructuredDate | undefined {
  const parts = members.map(member).filter((one) => one !== undefined);
  const [only] = parts;
  if (parts.length < members.length || !only) return undefined;
  if (parts.length > 1) return { kind: 'set', members: parts };
  return 'from' in only ? { kind: 'range', ...only } : { kind: 'single', date: only };
}

const known = (end: Interval['start'] | undefined) => (typeof end === 'object' ? end : undefined);

function marksOf(date: Edtf): Mark {
  const pointsOf = (one: Point | Run | Interval) =>
    one.kind === 'point' ? [one] : [known(one.start), known(one.end)];
  const points = date.kind === 'set' ? date.members.flatMap(pointsOf) : pointsOf(date);
  return points.reduce<Mark>((mark, point) => joinMarks(mark, point?.mark ?? ''), '');
}

function structure(date: Edtf): StructuredDate | undefined {
  if (date.kind === 'interval') return range(date.start, date.end);
  if (date.kind === 'set' && date.of === 'all') return all(date.members);
  // One of several dates is a single date within limits, not a set of dates.
  const single = date.kind === 'set' ? limited(date, displayDate(date.text)) : part(date);
  return single && { kind: 'single', date: single };
}

/**
 * A date taken apart for EAD3 `unitdatestructured`.
 * @returns undefined where that structure cannot hold it (years outside 0000 to 2999, no known end, no EDTF)
 */
export function structuredDate(edtf: string): StructuredDate | undefined {
  const date = parseEdtf(edtf);
  const structured = date && structure(date);
  const certainty = date && CERTAINTY[marksOf(date)];
  return structured && { ...structured, ...(certainty && { certainty }) };
}
