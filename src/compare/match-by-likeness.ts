import { nearestAmong, type WeightOf } from './alike.ts';
import type { Fits } from './match-units.ts';
import { leftInA, leftInB, type Pairs } from './pairs.ts';
import type { Unit } from './units.ts';

/**
 * How alike two units must be to be taken for one that was changed: more so where one of them lies elsewhere. The bounds
 * are our own, held by the tests: a title of which a word was mended, a date that was corrected.
 */
const ENOUGH = { samePlace: 0.55, elsewhere: 0.75 };

/** Joins what is left by likeness, the likest first; of equally like ones, the first in the order of the finding aid. */
export function matchByLikeness(
  pairs: Pairs<Unit>,
  as: readonly Unit[],
  bs: readonly Unit[],
  weight: WeightOf,
  fits: Fits,
): void {
  const nearest = nearestAmong(leftInB(pairs, bs), weight);
  const found: { a: Unit; b: Unit; likeness: number }[] = [];
  for (const a of leftInA(pairs, as)) {
    for (const { b, likeness } of nearest(a)) {
      const samePlace = a.parent !== undefined && pairs.inB(a.parent) === b.parent;
      if (likeness >= (samePlace ? ENOUGH.samePlace : ENOUGH.elsewhere) && fits(a, b))
        found.push({ a, b, likeness: likeness + (samePlace ? 1 : 0) });
    }
  }
  found.sort((one, other) => other.likeness - one.likeness);
  for (const { a, b } of found)
    if (pairs.inB(a) === undefined && pairs.inA(b) === undefined) pairs.join(a, b);
}
