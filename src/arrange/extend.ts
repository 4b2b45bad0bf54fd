import type { Agent, AgentLink } from '../catalogue/agent.ts';
import type { Component } from '../catalogue/component.ts';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import { fold } from '../catalogue/fold.ts';

/**
 * A finding aid that was taken in, with what a list adds to it. A group of the list whose title or reference code is
 * that of a unit of the finding aid (which the column `series` names) goes into that unit, and so on down; what has
 * no counterpart comes last, and so does every folder. What the finding aid says already stays as it is.
 * @param additions as arranged from the list: the units below its collection are what is added
 */
export function extendWith(aid: FindingAid, additions: FindingAid): FindingAid {
  const taken = new Set(idsOf(aid.collection));
  const agents = joined(aid.people, additions.people);
  // A code that stands for something else already would be worse than none: the archive gives the new ones.
  const codes = new Set(codesOf(aid.collection));
  const known = levelByLevel(aid.collection.children);
  const added = additions.collection.children.flatMap((unit) =>
    counterpartOf(unit, known) ? unit.children : [unit],
  );
  const clashes = added.flatMap(codesOf).some((code) => codes.has(code));
  const add = (unit: Component): Component => fresh(clashes ? withoutCodes(unit) : unit, taken, agents.idOf);
  return {
    ...aid,
    ...(additions.recipient !== undefined && { recipient: additions.recipient }),
    people: agents.list,
    collection: into(aid.collection, additions.collection.children, add, known),
  };
}

/** Puts units into the one that they belong to: a unit of the same title or code anywhere below, else at the end. */
function into(
  whole: Component,
  units: readonly Component[],
  add: (unit: Component) => Component,
  known: readonly Component[],
): Component {
  const places = new Map<string, Component[]>();
  const last: Component[] = [];
  for (const unit of units) {
    const place = counterpartOf(unit, known);
    if (place === undefined) last.push(add(unit));
    else {
      // Codes are made from that of the unit above: in one of another code they would tell of a place that is none.
      const inPlace = place.referenceCode === unit.referenceCode ? unit : withoutCodes(unit);
      places.set(place.id, [...(places.get(place.id) ?? []), ...inPlace.children]);
    }
  }
  const place = (unit: Component): Component => {
    const here = places.get(unit.id);
    const children = unit.children.map(place);
    const placed = {
      ...unit,
      children: children.some((child, at) => child !== unit.children[at]) ? children : unit.children,
    };
    const same = placed.children === unit.children ? unit : placed;
    return here === undefined ? same : into(same, here, add, same.children);
  };
  const placed = places.size === 0 ? whole : { ...whole, children: whole.children.map(place) };
  return last.length === 0 ? placed : { ...placed, children: [...placed.children, ...last] };
}

/** The unit of the finding aid that a unit of the list goes into. */
const counterpartOf = (unit: Component, known: readonly Component[]): Component | undefined =>
  known.find((one) => mayHold(one, unit) && isCalled(one, unit.title));

/**
 * Items hold nothing: a thing of the list that is called like one of them is another thing. And a folder is a place of
 * its own: the letters of 1950 do not lie among those of 1934 because both folders are called "Letters" (DACS 2.3.18).
 */
const mayHold = (one: Component, unit: Component) =>
  one.level !== 'item' && unit.level !== 'file' && unit.children.length > 0;

/** Whether a unit bears a title or that as its code, without regard to case, accents and a full stop at the end. */
export function isCalled({ title, referenceCode }: Component, name: string): boolean {
  const called = plain(name);
  return plain(title) === called || (referenceCode !== undefined && plain(referenceCode) === called);
}

const plain = (text: string) =>
  fold(text)
    .replace(/[\s.:;,]+$/, '')
    .replace(/\s+/g, ' ');

/** The nearest to the top first: a series of a name is meant before a folder in another series that is called so. */
const levelByLevel = (units: readonly Component[]): Component[] =>
  units.length === 0 ? [] : [...units, ...levelByLevel(units.flatMap(({ children }) => children))];

const codesOf = ({ referenceCode, children }: Component): string[] => [
  ...(referenceCode === undefined ? [] : [referenceCode]),
  ...children.flatMap(codesOf),
];

const withoutCodes = (unit: Component): Component => ({
  ...unit,
  referenceCode: undefined,
  children: unit.children.map(withoutCodes),
});

function idsOf(unit: Component): string[] {
  const containers = unit.containers.flatMap(({ id }) => (id === undefined ? [] : [id]));
  return [unit.id, ...containers, ...unit.children.flatMap(idsOf)];
}

/** The agents of both; one that both name alike is one. */
function joined(
  before: readonly Agent[],
  more: readonly Agent[],
): { list: Agent[]; idOf: (id: string) => string } {
  const list = [...before];
  const ids = new Map<string, string>();
  const taken = new Set(before.map(({ id }) => id));
  const heading = ({ type, name, authorizedForm }: Agent) => `${type} ${fold(authorizedForm ?? name)}`;
  const byHeading = new Map(before.toReversed().map((one) => [heading(one), one]));
  for (const agent of more) {
    const known = byHeading.get(heading(agent));
    const id = known?.id ?? free(agent.id, taken);
    ids.set(agent.id, id);
    if (known === undefined) list.push({ ...agent, id });
  }
  const idOf = (id: string) => ids.get(id) ?? id;
  const there = new Set(before);
  const renamed = (agent: Agent): Agent =>
    there.has(agent) || agent.relations === undefined
      ? agent
      : { ...agent, relations: agent.relations.map((one) => ({ ...one, agent: idOf(one.agent) })) };
  return { list: list.map(renamed), idOf };
}

/** A unit of the list with ids of its own in the finding aid. */
function fresh(unit: Component, taken: Set<string>, agentId: (id: string) => string): Component {
  const ids = new Map<string, string>();
  const containers = unit.containers.map((container) => {
    if (container.id === undefined) return container;
    const id = free(container.id, taken);
    ids.set(container.id, id);
    return { ...container, id };
  });
  const links = (list: readonly AgentLink[]) => list.map((link) => ({ ...link, agent: agentId(link.agent) }));
  return {
    ...unit,
    id: free(unit.id, taken),
    creators: links(unit.creators),
    people: links(unit.people),
    containers: containers.map((container) =>
      container.parent === undefined
        ? container
        : { ...container, parent: ids.get(container.parent) ?? container.parent },
    ),
    children: unit.children.map((child) => fresh(child, taken, agentId)),
  };
}

function free(wanted: string, taken: Set<string>): string {
  let id = wanted;
  for (let count = 2; taken.has(id); count++) id = `${wanted}-${count}`;
  taken.add(id);
  return id;
}
