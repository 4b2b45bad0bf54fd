import { yearOfDay } from './calendar.ts';
import type { Edtf } from './edtf.ts';
import { inclusiveOf } from './inclusive.ts';

/**
 * DACS 2.4.11 shows large gaps: `1827, 1952-1978`. A gap counts as large here where nothing is dated for 25 years or
 * more and for at least a third of the whole span; so there are never more than two.
 */
const RULE = { leastYears: 25, leastOfSpan: 1 / 3 };

interface Stretch {
  parts: Edtf[];
  first: number;
  last: number;
}

/** The parts by the stretches of years they cover; undefined where one of them has an open end. */
function stretches(parts: readonly Edtf[]): Stretch[] | undefined {
  const joined: Stretch[] = [];
  for (const part of [...parts].sort(byStart)) {
    const { earliest, latest } = part;
    if (earliest === undefined || latest === undefined) return undefined;
    const [first, last] = [yearOfDay(earliest), yearOfDay(latest)];
    const before = joined.at(-1);
    if (!before || first - before.last - 1 >= RULE.leastYears) joined.push({ parts: [part], first, last });
    else {
      before.parts.push(part);
      before.last = Math.max(before.last, last);
    }
  }
  return joined;
}

const byStart = (one: Edtf, other: Edtf) => (one.earliest ?? 0) - (other.earliest ?? 0);

/** Joins stretches whose gap is short beside the whole. */
function largeGapsOnly(all: readonly Stretch[]): Stretch[] {
  const span = (all.at(-1)?.last ?? 0) - (all[0]?.first ?? 0) + 1;
  const kept: Stretch[] = [];
  for (const next of all) {
    const before = kept.at(-1);
    if (!before || next.first - before.last - 1 >= RULE.leastOfSpan * span) kept.push(next);
    else {
      before.parts = [...before.parts, ...next.parts];
      before.last = Math.max(before.last, next.last);
    }
  }
  return kept;
}

/** Whether there is room for a gap between the first and the last year. */
function isLong(dates: readonly Edtf[]): boolean {
  let [first, last] = [Infinity, -Infinity];
  for (const { earliest, latest } of dates) {
    first = Math.min(first, earliest ?? Infinity);
    last = Math.max(last, latest ?? -Infinity);
  }
  return last >= first && yearOfDay(last) - yearOfDay(first) > RULE.leastYears;
}

/**
 * The inclusive dates of a whole with large gaps shown (DACS 2.4.11; the threshold stands at the top of this file):
 * `{1827,1952..1978}`. Without such gaps, and where an end is open, the same as `inclusiveOf`.
 * @param dates of the parts, each once
 */
export function inclusiveWithGaps(dates: readonly Edtf[]): string | undefined {
  const found = isLong(dates) ? largeGapsOnly(stretches(dates) ?? []) : [];
  if (found.length < 2) return inclusiveOf(dates);
  const members = found.map(({ parts: of }) => inclusiveOf(of)?.replace('/', '..') ?? '');
  // A stretch that is itself a set (years apart, or one of several) is told by its outer ends.
  return members.some((member) => /[[{]/.test(member)) ? inclusiveOf(dates) : `{${members.join(',')}}`;
}
