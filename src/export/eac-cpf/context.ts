import type { Agent, AgentLink } from '../../catalogue/agent.ts';
import type { Component } from '../../catalogue/component.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { hasRecord } from './has-record.ts';

/** How an agent occurs in the finding aid. */
interface Occurrence {
  /** What it is to the collection: its creator, the maker of something in it, or what something in it is about. */
  as: 'creator' | 'maker' | 'subject';
  /** The roles in which it is named: photographer, correspondent. */
  roles: ReadonlySet<string>;
}

/** What every part of the writer may need beside the agent at hand. */
export interface Context {
  agentOf: (id: string) => Agent | undefined;
  recordIdOf: (agent: Agent) => string;
  /** Whether there is a record for that agent, to which others can point. */
  hasRecord: (agent: Agent) => boolean;
  occurrenceOf: (agent: Agent) => Occurrence | undefined;
}

export function contextOf({ control, people, collection }: FindingAid): Context {
  const agents = new Map(people.map((agent) => [agent.id, agent]));
  const occurrences = occurrencesIn(collection);
  return {
    agentOf: (id) => agents.get(id),
    recordIdOf: ({ id }) => `${control.recordId}-${id}`,
    hasRecord,
    occurrenceOf: ({ id }) => occurrences.get(id),
  };
}

function occurrencesIn(collection: Component): ReadonlyMap<string, Occurrence> {
  const found = new Map<string, { as: Occurrence['as']; roles: Set<string> }>();
  const note = ({ agent, role }: AgentLink, as: Occurrence['as']) => {
    const occurrence = found.get(agent) ?? { as, roles: new Set() };
    if (occurrence.as === 'subject') occurrence.as = as;
    if (role !== undefined) occurrence.roles.add(role);
    found.set(agent, occurrence);
  };
  const walk = ({ creators, people, children }: Component) => {
    for (const link of creators) note(link, 'maker');
    for (const link of people) note(link, 'subject');
    for (const child of children) walk(child);
  };
  // First those who made or gathered the whole: DACS 2.6.
  for (const link of collection.creators) note(link, 'creator');
  walk(collection);
  return found;
}
