import type { Component } from './component.ts';
import type { FindingAid } from './finding-aid.ts';

/** A unit and all below it, each before what lies below it. */
export function* unitsFrom(unit: Component): Generator<Component> {
  // Those still to come, the next one last: handing on each through all levels takes longer.
  const ahead = [unit];
  for (let next = ahead.pop(); next !== undefined; next = ahead.pop()) {
    yield next;
    for (let at = next.children.length - 1; at >= 0; at--) ahead.push(next.children[at] as Component);
  }
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
