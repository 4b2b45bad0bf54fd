import type { Agent } from '../../catalogue/agent.ts';
import type { FindingAid, Recipient } from '../../catalogue/finding-aid.ts';
import { once } from '../../catalogue/once.ts';
import type { XmlElement } from '../../xml/element.ts';

/** What every part of a writer of EAD may need beside the component at hand. */
export interface Context {
  /** From which list the codes of languages are to be. */
  languageCodes: Recipient['languageCodes'];
  agents: readonly Agent[];
  /** The name of an agent in a role (or in none), made once however often it occurs; undefined for no known agent. */
  nameOf: (role: string | undefined) => (agentId: string) => XmlElement | undefined;
}

/** @param nameElement how this version of EAD writes one name in a role */
export function contextOf(
  { people, recipient }: FindingAid,
  nameElement: (agent: Agent, role: string | undefined) => XmlElement,
): Context {
  const agents = new Map(people.map((agent) => [agent.id, agent]));
  return {
    languageCodes: recipient?.languageCodes ?? 'iso639-2b',
    agents: people,
    nameOf: once((role: string | undefined) =>
      once((id: string) => {
        const agent = agents.get(id);
        return agent && nameElement(agent, role);
      }),
    ),
  };
}
