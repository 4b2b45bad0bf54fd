import type { Agent } from '../../catalogue/agent.ts';
import type { AccessPoint, Component, Container, Extent } from '../../catalogue/component.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { once } from '../../catalogue/once.ts';
import { readKind } from '../../kinds/kind-words.ts';
import { shelfKey, shelved } from './place.ts';
import { everyUnit, type Unit } from './unit.ts';

/** Something that units have in common (a person, a place, a box), and the units that have it. */
export interface Entry<What> {
  /** Its address on the page. A colon keeps it apart from the addresses of components, which have none. */
  readonly anchor: string;
  readonly what: What;
  readonly units: Unit[];
}

/** Everything that units point to, by which they are found. */
export interface Register {
  readonly agents: ReadonlyMap<string, Entry<Agent>>;
  readonly terms: readonly Entry<Term>[];
  readonly boxes: readonly Entry<Container>[];
  readonly termOf: (type: Term['type'], term: string) => Entry<Term> | undefined;
  readonly boxOf: (box: Container) => Entry<Container> | undefined;
}

export type Term = Pick<AccessPoint, 'type' | 'term' | 'source' | 'identifier'>;

const termKey = ({ type, term }: Term) => `${type}\n${term}`;

/** The kind that a unit of extent counts, as an access point names it: letters, for 1 letter. */
export const kindOfUnit = once((unit: string): string => readKind(unit)?.kind.many ?? unit);

const counted = ({ type }: Extent) => type === 'materialtype';

/** The access points of a unit; a thing without a genre is of the kinds that its extent counts. */
export function termsOf(component: Component): readonly Term[] {
  const { accessPoints, extents, children } = component;
  if (children.length > 0 || accessPoints.some(({ type }) => type === 'genre')) return accessPoints;
  const kinds = new Set(extents.filter(counted).map(({ unit }) => kindOfUnit(unit)));
  return kinds.size === 0
    ? accessPoints
    : [...accessPoints, ...[...kinds].map((term): Term => ({ type: 'genre', term }))];
}

/** Goes through a finding aid once and notes what occurs where. */
export function registerOf({ people }: FindingAid, top: Unit): Register {
  const agents = new Map(
    people.map((what): [string, Entry<Agent>] => [what.id, { anchor: `who:${what.id}`, what, units: [] }]),
  );
  const terms = new Map<string, Entry<Term>>();
  const boxes = new Map<string, Entry<Container>>();
  const entry = <What>(map: Map<string, Entry<What>>, key: string, kind: string, what: What) => {
    const known = map.get(key);
    if (known !== undefined) return known;
    const made: Entry<What> = { anchor: `${kind}:${map.size + 1}`, what, units: [] };
    map.set(key, made);
    return made;
  };
  const note = ({ units }: { units: Unit[] }, unit: Unit) => {
    if (units.at(-1) !== unit) units.push(unit);
  };
  for (const unit of everyUnit(top)) {
    const { component } = unit;
    for (const { agent } of [...component.creators, ...component.people]) {
      const found = agents.get(agent);
      if (found !== undefined) note(found, unit);
    }
    for (const term of termsOf(component)) note(entry(terms, termKey(term), 'term', term), unit);
    for (const { outer } of shelved(component.containers))
      note(entry(boxes, shelfKey(outer), 'box', outer), unit);
  }
  return {
    agents,
    terms: [...terms.values()],
    boxes: [...boxes.values()],
    termOf: (type, term) => terms.get(termKey({ type, term })),
    boxOf: (box) => boxes.get(shelfKey(box)),
  };
}
