import type { Component } from '../../catalogue/component.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import type { Thing } from '../../catalogue/thing.ts';

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

/** The row of what stands in no list. */
export const IN_NO_LIST = 0;

/**
 * Units as things of a list, as far as it takes to know what only those have that stay: names, places, languages,
 * copies.
 */
export function asThings(units: Iterable<Component>, people: FindingAid['people']): Thing[] {
  const names = new Map(people.map(({ id, name }) => [id, name]));
  const nameOf = ({ agent }: { agent: string }) => names.get(agent) ?? agent;
  return [...units].map(
    ({ title, creators, people: links, accessPoints, languages, digitalCopies }): Thing => ({
      row: IN_NO_LIST,
      title,
      people: links.map(nameOf),
      creators: creators.map(nameOf),
      places: accessPoints.map(({ term }) => term),
      copies: digitalCopies.map(({ file }) => file),
      languages: languages.map(({ name }) => name),
      extra: [],
    }),
  );
}
