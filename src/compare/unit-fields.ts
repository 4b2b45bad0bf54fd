import type { AgentLink } from '../catalogue/agent.ts';
import { type Component, type Container, component as componentSchema } from '../catalogue/component.ts';
import { sayContainer } from '../catalogue/say-container.ts';
import type { AgentNames } from './agents.ts';
import { fieldChanges } from './field-changes.ts';
import { UNIT_FIELDS } from './field-names.ts';
import type { FieldChange } from './model.ts';
import { same } from './same.ts';

/**
 * What two units say differently. Ids are not looked at: they only hold the file together. Containers are compared by
 * what they are and stand in, links by whom they mean.
 */
export function unitChanges(was: Component, now: Component, names: AgentNames): FieldChange[] {
  if (was === now && names.sameIds) return [];
  return fieldChanges(
    componentSchema,
    told(was, now, names, names.inA),
    told(now, was, names, names.inB),
    UNIT_FIELDS,
  );
}

/** A unit as it is compared; what is plainly the same on both sides is left as it is. */
function told(unit: Component, other: Component, names: AgentNames, nameOf: (id: string) => string): object {
  const sameLinks = (key: 'creators' | 'people') => names.sameIds && same(unit[key], other[key]);
  const sameBoxes = same(unit.containers, other.containers);
  if (sameBoxes && sameLinks('creators') && sameLinks('people')) return unit;
  return {
    ...unit,
    creators: unit.creators.map((link) => toldLink(link, nameOf)),
    people: unit.people.map((link) => toldLink(link, nameOf)),
    containers: toldContainers(unit.containers),
  };
}

const toldLink = ({ agent, role }: AgentLink, nameOf: (id: string) => string) => ({
  name: nameOf(agent),
  ...(role !== undefined && { role }),
});

/** The containers that hold the unit itself, each with those it stands in: box 2, folder 5. */
function toldContainers(containers: readonly Container[]): object[] {
  const outer = new Set(containers.map(({ parent }) => parent).filter((id) => id !== undefined));
  const byId = new Map(containers.map((one) => [one.id, one]));
  const around = ({ parent }: Container, inner: readonly Container[]): string[] => {
    const one = parent === undefined ? undefined : byId.get(parent);
    // Some stand in one another in a ring; then the ring is gone round once.
    return one === undefined || inner.includes(one)
      ? []
      : [...around(one, [...inner, one]), sayContainer(one)];
  };
  const told = containers.filter(({ id }) => id === undefined || !outer.has(id));
  return (told.length === 0 ? containers : told).map((one) => {
    const holders = around(one, [one]);
    return { type: one.type, number: one.number, ...(holders.length > 0 && { in: holders.join(', ') }) };
  });
}
