import type { Component } from '../catalogue/component.ts';
import { type Count, THINGS, unitOf } from '../kinds/extents.ts';
import { leaves } from './recount.ts';

type UnitReading = ReturnType<typeof unitOf>;

/**
 * What a thing is, with its number: as it was counted, else by its access points, with nought for a bundle that nobody
 * counted. Nothing, where its kind is not known.
 */
export function kindsOf({ level, extents, accessPoints }: Component): Count[] {
  const counts = extents
    .filter(({ type }) => type === 'materialtype')
    .map(({ unit, quantity: number, approximate = false }) => ({
      unit: unitOf(unit).unit,
      number,
      approximate,
    }))
    .filter(({ unit }) => unit.key !== THINGS.key);
  if (counts.length > 0) return counts;
  const number = level === 'item' ? 1 : 0;
  return accessPoints
    .filter(({ type }) => type === 'genre')
    .map(({ term }) => ({ unit: unitOf(term).unit, number, approximate: number === 0 }));
}

/**
 * The things below, summed by kind, the most frequent first.
 * @param named what the title calls the kinds; an access point only says that violins are objects
 */
export function sumByKind(unit: Component, named: ReadonlyMap<string, UnitReading> = new Map()): Count[] {
  const sums = new Map<string, Count>();
  const counts = leaves(unit).flatMap((leaf) => {
    const kinds = kindsOf(leaf);
    return kinds.length > 0 ? kinds : [unnamed(leaf)];
  });
  for (const { unit: known, ...count } of counts) {
    const said = count.number === 0 ? named.get(known.key) : undefined;
    // A word that the tables do not hold may have a capital in the title.
    const own = said?.together === undefined ? known : said.unit;
    const sum = sums.get(own.key);
    if (sum === undefined) sums.set(own.key, { unit: own, ...count });
    else {
      const { together } = unitOf(own.one);
      if (together !== undefined && sum.unit.one !== own.one) sum.unit = together;
      sum.number += count.number;
      sum.approximate ||= count.approximate;
    }
  }
  return [...sums.values()].sort((one, other) => other.number - one.number);
}

function unnamed({ level, extents }: Component): Count {
  const stated = extents.find(({ type }) => type === 'materialtype');
  const number = stated?.quantity ?? (level === 'item' ? 1 : 0);
  return { unit: THINGS, number, approximate: stated?.approximate ?? number === 0 };
}
