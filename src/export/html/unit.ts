import type { Component, Container } from '../../catalogue/component.ts';
import { isRestricted } from '../../catalogue/restricted.ts';
import { type Years, yearsOf } from './years.ts';

/** A component in its place, with what it has from the units above it. */
export interface Unit {
  readonly component: Component;
  readonly above: Unit | undefined;
  /** Below the collection, whose own depth is 0. */
  readonly depth: number;
  /** Where it lies: its own containers, else those of the nearest unit above that has any. */
  readonly place: readonly Container[];
  /** Whether it, or a unit above it, is restricted. */
  readonly isClosed: boolean;
  readonly years: Years | undefined;
  readonly children: readonly Unit[];
}

/** The tree of units below and with a component. */
export function unitOf(component: Component, above?: Unit): Unit {
  const { containers, children } = component;
  const below: Unit[] = [];
  const unit: Unit = {
    component,
    above,
    depth: above === undefined ? 0 : above.depth + 1,
    place: containers.length > 0 ? containers : (above?.place ?? []),
    isClosed: isRestricted(component) || above?.isClosed === true,
    years: yearsOf(component),
    children: below,
  };
  for (const child of children) below.push(unitOf(child, unit));
  return unit;
}

/** A unit and every unit below it, in order. */
export function* everyUnit(unit: Unit): Generator<Unit> {
  yield unit;
  for (const child of unit.children) yield* everyUnit(child);
}

/** Whether a unit is a thing (or a bundle), and not a group of described units. */
export const isThing = ({ children, depth }: Unit): boolean => children.length === 0 && depth > 0;

/** The unit right below the collection in which a unit stands; the collection for itself. */
export function groupOf(unit: Unit): Unit {
  return unit.above === undefined || unit.depth <= 1 ? unit : groupOf(unit.above);
}
