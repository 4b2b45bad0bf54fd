import type { Agent, AgentLink } from '../../catalogue/agent.ts';
import type { Component } from '../../catalogue/component.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { hasRecord } from './has-record.ts';

/** How an agent occurs in the finding aid. */
export interface Occurrence {
  /** Whether it made or gathered the collection or any part of it, or is only named as an access point. */
  creator: boolean;
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
  const found = new Map<string, { creator: boolean; roles: Set<string> }>();
  const note = ({ agent, role }: AgentLink, creator: boolean) => {
    const occurrence = found.get(agent) ?? { creator, roles: new Set() };
    occurrence.creator ||= creator;
    if (role !== undefined) occurrence.roles.add(role);
    found.set(agent, occurrence);
  };
  const walk = ({ creators, people, children }: Component) => {
    for (const link of creators) note(link, true);
    for (const link of people) note(link, false);
    for (const child of children) walk(child);
  };
  walk(collection);
  return found;
}
