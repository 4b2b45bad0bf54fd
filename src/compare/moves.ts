import { once } from '../catalogue/once.ts';
import type { MovedUnit } from './model.ts';
import type { Pairs } from './pairs.ts';
import { nameOf, type Unit } from './units.ts';

/** The units that lie below another unit than before, or between others. */
export function movedUnits(bs: readonly Unit[], pairs: Pairs<Unit>): MovedUnit[] {
  const outOfOrderIn = once((parent: Unit) => outOfOrder(parent, pairs));
  return bs.flatMap((now): MovedUnit[] => {
    const was = pairs.inA(now);
    if (was?.parent === undefined || now.parent === undefined) return [];
    const names = { was: nameOf(was), now: nameOf(now), from: nameOf(was.parent), to: nameOf(now.parent) };
    if (pairs.inB(was.parent) !== now.parent) return [names];
    return outOfOrderIn(now.parent).has(now) ? [{ ...names, reordered: true }] : [];
  });
}

/** The fewest units below one that must have changed places for the rest to be in the order they were in. */
function outOfOrder(parent: Unit, pairs: Pairs<Unit>): ReadonlySet<Unit> {
  const stayed = parent.children.flatMap((now) => {
    const was = pairs.inA(now);
    return was?.parent !== undefined && pairs.inB(was.parent) === parent ? [{ now, place: was.place }] : [];
  });
  const kept = longestRising(stayed.map(({ place }) => place));
  return new Set(stayed.flatMap(({ now }, at) => (kept.has(at) ? [] : [now])));
}

/** The positions of a longest rising subsequence: patience sorting. */
function longestRising(numbers: readonly number[]): Set<number> {
  const ends: number[] = [];
  const before: (number | undefined)[] = [];
  numbers.forEach((number, at) => {
    let low = 0;
    for (let high = ends.length; low < high; ) {
      const middle = (low + high) >> 1;
      if ((numbers[ends[middle] ?? 0] ?? 0) < number) low = middle + 1;
      else high = middle;
    }
    before[at] = low === 0 ? undefined : ends[low - 1];
    ends[low] = at;
  });
  const rising = new Set<number>();
  for (let at = ends.at(-1); at !== undefined; at = before[at]) rising.add(at);
  return rising;
}
