import type { Agent } from '../../catalogue/agent.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import { AGENT_ELEMENT, headingOf } from '../ead/names.ts';

/** One name; the role becomes its `relator`. */
export function nameElement(agent: Agent, relator?: string): XmlElement {
  const { type, source, identifier } = agent;
  return element(AGENT_ELEMENT[type], { identifier, relator, source }, [
    element('part', {}, headingOf(agent)),
  ]);
}

/** `origination`: ISAD(G) 3.2.1, DACS 2.6. */
export const origination = (names: readonly XmlElement[]): XmlElement[] =>
  names.length === 0 ? [] : [element('origination', {}, names)];
