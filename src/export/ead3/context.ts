import type { Agent } from '../../catalogue/agent.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { once } from '../../catalogue/once.ts';
import type { XmlElement } from '../../xml/element.ts';
import { nameElement } from './names.ts';

/** What every part of the writer may need beside the component at hand. */
export interface Context {
  agents: readonly Agent[];
  /** The name of an agent in a role (or in none), made once however often it occurs; undefined for no known agent. */
  nameOf: (role: string | undefined) => (agentId: string) => XmlElement | undefined;
}

export function contextOf({ people }: FindingAid): Context {
  const agents = new Map(people.map((agent) => [agent.id, agent]));
  return {
    agents: people,
    nameOf: once((role: string | undefined) =>
      once((id: string) => {
        const agent = agents.get(id);
        return agent && nameElement(agent, role);
      }),
    ),
  };
}
