import type { Component, Level } from '../../catalogue/component.ts';
import { isRestricted } from '../../catalogue/restricted.ts';

/** A unit that gets a record, with the units it lies in, the collection first. */
export interface DescribedUnit {
  unit: Component;
  above: readonly Component[];
  /** The nearest of those that has a record too; undefined for the whole. */
  parent: Component | undefined;
}

/** How far down a level lies: ISAD(G), appendix A-1. A level of another name lies where it is found. */
const DEPTH: Readonly<Record<Exclude<Level, 'otherlevel'>, number>> = {
  collection: 0,
  fonds: 0,
  recordgrp: 0,
  subfonds: 1,
  subgrp: 1,
  class: 2,
  series: 2,
  subseries: 3,
  file: 4,
  item: 5,
};

/**
 * The units that get a record of their own: always the whole; with a level, every unit down to that level; without
 * one, all files and whatever has a digital copy, for that is what somebody looks for, or looks at, by itself; and
 * whatever is restricted, so that its condition is told.
 */
export function* describedUnits(collection: Component, downTo?: Level): Generator<DescribedUnit> {
  const chosen = chooser(downTo);
  yield* walk(collection, [], undefined, (unit, above) => above.length === 0 || chosen(unit));
}

function chooser(downTo: Level | undefined): (unit: Component) => boolean {
  if (downTo === undefined) {
    return (unit) => unit.level === 'file' || unit.digitalCopies.length > 0 || isRestricted(unit);
  }
  if (downTo === 'otherlevel') return () => true;
  return ({ level }) => level === 'otherlevel' || DEPTH[level] <= DEPTH[downTo];
}

function* walk(
  unit: Component,
  above: readonly Component[],
  parent: Component | undefined,
  chosen: (unit: Component, above: readonly Component[]) => boolean,
): Generator<DescribedUnit> {
  const hasRecord = chosen(unit, above);
  if (hasRecord) yield { unit, above, parent };
  if (unit.children.length === 0) return;
  const below = [...above, unit];
  for (const child of unit.children) yield* walk(child, below, hasRecord ? unit : parent, chosen);
}
