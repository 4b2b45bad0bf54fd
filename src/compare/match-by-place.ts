import type { Fits } from './match-units.ts';
import { joinInOrder, type KeyOf, type Pairs } from './pairs.ts';
import type { Unit } from './units.ts';

/** Joins units that have the same key below units that are joined, the first with the first. */
export function matchWithinParents(
  pairs: Pairs<Unit>,
  as: readonly Unit[],
  keyOf: KeyOf<Unit>,
  fits: Fits,
): void {
  // Each unit comes before those below it, so that one joined here has its own joined next.
  for (const a of as) {
    const b = pairs.inB(a);
    if (b !== undefined && a.children.length > 0) joinInOrder(pairs, a.children, b.children, keyOf, fits);
  }
}

/** Joins units that have more than half of what is below either of them in common. */
export function matchByVotes(pairs: Pairs<Unit>, as: readonly Unit[], fits: Fits): void {
  // From below upwards: a series may be known by its files, once they are known by their items.
  for (let at = as.length - 1; at >= 0; at--) {
    const a = as[at];
    if (a === undefined || a.children.length === 0 || pairs.inB(a) !== undefined) continue;
    const votes = new Map<Unit, number>();
    for (const child of a.children) {
      const parent = pairs.inB(child)?.parent;
      if (parent !== undefined) votes.set(parent, (votes.get(parent) ?? 0) + 1);
    }
    for (const [b, count] of votes) {
      const most = Math.max(a.children.length, b.children.length);
      if (count * 2 > most && pairs.inA(b) === undefined && fits(a, b)) pairs.join(a, b);
    }
  }
}

/**
 * Joins units that have the same reference code and level, and anything below in common: a folder of which the
 * devised title follows what is in it. A code alone is not enough, for it may have been given anew.
 */
export function matchByCode(pairs: Pairs<Unit>, as: readonly Unit[], fits: Fits): void {
  for (const a of as.toReversed()) {
    if (pairs.inB(a) !== undefined) continue;
    for (const child of a.children) {
      const b = pairs.inB(child)?.parent;
      if (b === undefined || pairs.inA(b) !== undefined || !sameCode(a, b) || !fits(a, b)) continue;
      pairs.join(a, b);
      break;
    }
  }
}

const sameCode = ({ component: a }: Unit, { component: b }: Unit): boolean =>
  a.referenceCode !== undefined && a.referenceCode === b.referenceCode && a.level === b.level;
