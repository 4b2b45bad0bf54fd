import type { Component } from './component.ts';
import type { FindingAid } from './finding-aid.ts';

/** A unit and all below it, each before what lies below it. */
export function* unitsFrom(unit: Component): Generator<Component> {
  yield unit;
  for (const child of unit.children) yield* unitsFrom(child);
}

/** The same finding aid with each unit changed on its own; a unit of which nothing changes is shared. */
export function withUnits(aid: FindingAid, change: (unit: Component) => Component): FindingAid {
  const visit = (unit: Component): Component => {
    const children = unit.children.map(visit);
    const changed = change(unit);
    const isSame = changed === unit && children.every((child, at) => child === unit.children[at]);
    return isSame ? unit : { ...changed, children };
  };
  return { ...aid, collection: visit(aid.collection) };
}
