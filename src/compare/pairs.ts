import { addTo } from '../catalogue/add-to.ts';

/** What belongs together on two sides; whatever is joined stays so. */
export interface Pairs<One> {
  /** The partner on the second side. */
  inB(a: One): One | undefined;
  /** The partner on the first side. */
  inA(b: One): One | undefined;
  join(a: One, b: One): void;
  readonly size: number;
}

export function noPairs<One>(): Pairs<One> {
  const ofA = new Map<One, One>();
  const ofB = new Map<One, One>();
  return {
    inB: (a) => ofA.get(a),
    inA: (b) => ofB.get(b),
    join(a, b) {
      ofA.set(a, b);
      ofB.set(b, a);
    },
    get size() {
      return ofA.size;
    },
  };
}

/** Gives the key by which one is known; undefined where it has none and so can have no partner. */
export type KeyOf<One> = (one: One) => string | undefined;

/** Those without a partner yet. */
export const leftInA = <One>(pairs: Pairs<One>, as: readonly One[]): One[] =>
  as.filter((a) => pairs.inB(a) === undefined);
export const leftInB = <One>(pairs: Pairs<One>, bs: readonly One[]): One[] =>
  bs.filter((b) => pairs.inA(b) === undefined);

/**
 * Joins those left on both sides that alone on their side have a key.
 * @param fits whether two with the same key may be joined
 */
export function joinByKey<One>(
  pairs: Pairs<One>,
  as: readonly One[],
  bs: readonly One[],
  keyOf: KeyOf<One>,
  fits: (a: One, b: One) => boolean = () => true,
): void {
  const inB = soleByKey(leftInB(pairs, bs), keyOf);
  for (const [key, a] of soleByKey(leftInA(pairs, as), keyOf)) {
    const b = inB.get(key);
    if (a !== undefined && b !== undefined && fits(a, b)) pairs.join(a, b);
  }
}

/** Joins those left on both sides that have the same key, the first with the first, the second with the second. */
export function joinInOrder<One>(
  pairs: Pairs<One>,
  as: readonly One[],
  bs: readonly One[],
  keyOf: KeyOf<One>,
  fits: (a: One, b: One) => boolean = () => true,
): void {
  const waiting = new Map<string, One[]>();
  for (const b of leftInB(pairs, bs)) {
    const key = keyOf(b);
    if (key !== undefined) addTo(waiting, key, b);
  }
  // Where each list has been read to, so that a key that all have in common does not take the square of the time.
  const begun = new Map<string, number>();
  for (const a of leftInA(pairs, as)) {
    const key = keyOf(a);
    const list = key === undefined ? undefined : waiting.get(key);
    if (key === undefined || list === undefined) continue;
    const next = begun.get(key) ?? 0;
    const b = list[next];
    if (b === undefined || !fits(a, b)) continue;
    begun.set(key, next + 1);
    pairs.join(a, b);
  }
}

/** What each key stands for; undefined where it stands for several. */
export function soleByKey<One>(some: readonly One[], keyOf: KeyOf<One>): Map<string, One | undefined> {
  const found = new Map<string, One | undefined>();
  for (const one of some) {
    const key = keyOf(one);
    if (key !== undefined) found.set(key, found.has(key) ? undefined : one);
  }
  return found;
}
