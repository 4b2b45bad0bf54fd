import type { Agent, AgentLink, AgentType } from '../../catalogue/agent.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import type { Context } from './context.ts';

const ELEMENT: Record<AgentType, string> = {
  person: 'persname',
  family: 'famname',
  corporateBody: 'corpname',
};

/** The names of linked agents, as headings: `persname`, `famname`, `corpname`. */
export function names(links: readonly AgentLink[], { nameOf }: Context, role?: string): XmlElement[] {
  return links.map((link) => nameOf(link.role ?? role)(link.agent)).filter((name) => name !== undefined);
}

/** One name; the role becomes its `relator`. */
export function nameElement(
  { type, name, authorizedForm, source, identifier }: Agent,
  relator?: string,
): XmlElement {
  return element(ELEMENT[type], { identifier, relator, source }, [
    element('part', {}, authorizedForm ?? name),
  ]);
}

/** `origination`: ISAD(G) 3.2.1, DACS 2.6. */
export function origination(creators: readonly AgentLink[], context: Context): XmlElement[] {
  const found = names(creators, context, 'creator');
  return found.length === 0 ? [] : [element('origination', {}, found)];
}
