import { type Day, dayAfter, dayBefore, dayText, yearOfDay, yearText } from './calendar.ts';
import { type Dated, type Draft, finish, isYearOnly } from './draft.ts';
import { joinMarks, type Point, parsePoint } from './edtf-point.ts';
import { type Grain, grainOfPoint } from './grain.ts';
import type { End, Item } from './read-item.ts';
import { fail, type Scanner } from './scanner.ts';
import type { Edge } from './senses.ts';
import { knownYear } from './years.ts';

/** A member of a list as EDTF: a date, an interval (an end may be `..` or nothing), or a run of a set. */
export type Built =
  | { readonly kind: 'date'; readonly text: string }
  | { readonly kind: 'interval'; readonly from: string; readonly to: string }
  | { readonly kind: 'run'; readonly from: string; readonly to: string };

function textAt(day: Day, grain: Grain): string {
  if (grain === 'year') return yearText(yearOfDay(day));
  const text = dayText(day);
  return grain === 'month' ? text.slice(0, -3) : text;
}

// A season ends with a month, a decade with a year: the date beside it is told in those.
const grainBeside = (point: Point): Grain =>
  point.year.text.includes('X') && !point.month ? 'year' : grainOfPoint(point);

/** The set of all that lies to one side of a date: DACS 2.4.15, ISO 8601-2, 6.4. */
function buildEdge(s: Scanner, edge: Edge, dated: Dated): Built | undefined {
  const [first, last] = [parsePoint(dated.from), parsePoint(dated.to)];
  if (!first || !last) return fail(s, 'There is no such day.');
  if (edge === 'before')
    return {
      kind: 'run',
      from: '',
      to: `${textAt(dayBefore(first.earliest), grainBeside(first))}${first.mark}`,
    };
  if (edge === 'after')
    return { kind: 'run', from: `${textAt(dayAfter(last.latest), grainBeside(last))}${last.mark}`, to: '' };
  if (edge === 'by') return { kind: 'run', from: '', to: dated.to };
  if (edge === 'notBefore') return { kind: 'run', from: dated.from, to: '' };
  return { kind: 'interval', from: dated.from, to: '..' };
}

const isWinter = ({ season }: Draft) => season === 24 || season === 28 || season === 30;

/** "Winter 1962-63" and "1962-63 winter" are one winter, from December to February. */
function acrossNewYear(start: End, end: End): Built | undefined {
  if (typeof start !== 'object' || typeof end !== 'object') return undefined;
  const [from, to] = [knownYear(start), knownYear(end)];
  const crosses = (isWinter(start) && isYearOnly(end)) || (isWinter(end) && isYearOnly(start));
  if (!crosses || from === undefined || to !== from + 1) return undefined;
  // The months of a season are an assumption: they are near enough, no more.
  const mark = joinMarks(start.mark, '~');
  return { kind: 'interval', from: `${start.year}-12${mark}`, to: `${end.year}-02${mark}` };
}

function finishEnd(s: Scanner, end: End, side: 'from' | 'to'): string | undefined {
  if (typeof end === 'string') return end === 'open' ? '..' : '';
  return finish(s, end)?.[side];
}

/** Makes EDTF of a member of a list. */
export function build(s: Scanner, item: Item): Built | undefined {
  if (item.shape === 'span') {
    const winter = acrossNewYear(item.start, item.end);
    if (winter) return winter;
    const from = finishEnd(s, item.start, 'from');
    const to = finishEnd(s, item.end, 'to');
    if (from === undefined || to === undefined) return undefined;
    return { kind: item.oneOf ? 'run' : 'interval', from, to };
  }
  const dated = finish(s, item.draft);
  if (!dated) return undefined;
  if (item.shape === 'edge') return buildEdge(s, item.edge, dated);
  return dated.from === dated.to ? { kind: 'date', text: dated.from } : { kind: 'interval', ...dated };
}

/** The drafts of an item from left to right. */
export function draftsOf(item: Item): Draft[] {
  if (item.shape !== 'span') return [item.draft];
  return [item.start, item.end].filter((end) => typeof end === 'object');
}
