import type { Agent } from '../../catalogue/agent.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import { AGENT_ELEMENT, headingOf } from '../ead/names.ts';
import { token } from './token.ts';

/** What says where a heading is registered. */
export const register = ({ identifier, source }: Pick<Agent, 'identifier' | 'source'>) => ({
  authfilenumber: identifier,
  source: source === undefined ? undefined : token(source),
});

/** One name in its role. */
export function nameElement(agent: Agent, role?: string): XmlElement {
  return element(AGENT_ELEMENT[agent.type], { ...register(agent), role }, headingOf(agent));
}

/** `origination`, one for each creator: ISAD(G) 3.2.1, DACS 2.6. */
export const origination = (names: readonly XmlElement[]): XmlElement[] =>
  names.map((name) => element('origination', {}, [name]));
