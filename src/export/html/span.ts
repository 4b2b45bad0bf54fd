import { once } from '../../catalogue/once.ts';
import { everyUnit, groupOf, isThing, type Unit } from './unit.ts';

/** How many things of a group fall into each stretch of years. */
export interface Row {
  group: Unit;
  counts: readonly number[];
  undated: number;
}

/** The years that a collection covers, cut into stretches of equal length. */
export interface Picture {
  /** The first year of each stretch. */
  starts: readonly number[];
  /** Years in a stretch: 1, 10, 100 and so on. */
  step: number;
  rows: readonly Row[];
}

/** No more stretches than an eye can tell apart on a phone. */
const MOST = 40;

/**
 * Counts the things of every group by year or decade. What spans several stretches counts in each of them; an open end
 * counts where it is known. Undefined where no thing has a year.
 */
export function pictureOf(top: Unit): Picture | undefined {
  const spans = [...everyUnit(top)].filter(isThing).map((unit) => {
    const first = unit.years?.first ?? unit.years?.last;
    const last = unit.years?.last ?? unit.years?.first;
    return { group: groupOf(unit), ...(first !== undefined && last !== undefined && { first, last }) };
  });
  const [earliest, latest] = [
    least(spans.map(({ first }) => first)),
    greatest(spans.map(({ last }) => last)),
  ];
  if (earliest === undefined || latest === undefined) return undefined;
  let step = 1;
  while (stretch(latest, step) - stretch(earliest, step) + 1 > MOST) step *= 10;
  const origin = stretch(earliest, step);
  const starts = Array.from({ length: stretch(latest, step) - origin + 1 }, (_, at) => (origin + at) * step);
  const rowOf = once((_: Unit) => ({ counts: starts.map(() => 0), undated: 0 }));
  for (const { group, first, last } of spans) {
    const row = rowOf(group);
    if (first === undefined || last === undefined) row.undated += 1;
    else
      for (let at = stretch(first, step) - origin; at <= stretch(last, step) - origin; at++)
        row.counts[at] = (row.counts[at] ?? 0) + 1;
  }
  const groups = [...new Set(spans.map(({ group }) => group))];
  return { starts, step, rows: groups.map((group) => ({ group, ...rowOf(group) })) };
}

const stretch = (year: number, step: number) => Math.floor(year / step);

const least = (years: readonly (number | undefined)[]) => outermost(years, (one, other) => one < other);
const greatest = (years: readonly (number | undefined)[]) => outermost(years, (one, other) => one > other);

function outermost(
  years: readonly (number | undefined)[],
  isFurther: (one: number, other: number) => boolean,
) {
  let found: number | undefined;
  for (const year of years)
    if (year !== undefined && (found === undefined || isFurther(year, found))) found = year;
  return found;
}
