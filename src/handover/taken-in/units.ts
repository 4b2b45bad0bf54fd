import type { Component } from '../../catalogue/component.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import type { Thing } from '../../catalogue/thing.ts';

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
