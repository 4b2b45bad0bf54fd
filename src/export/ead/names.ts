import type { Agent, AgentLink, AgentType } from '../../catalogue/agent.ts';
import type { AccessPoint } from '../../catalogue/component.ts';
import type { XmlElement } from '../../xml/element.ts';
import type { Context } from './context.ts';

/** The element of a name, by what bears it. */
export const AGENT_ELEMENT: Readonly<Record<AgentType, string>> = {
  person: 'persname',
  family: 'famname',
  corporateBody: 'corpname',
};

/** The element of every other access point. */
export const ACCESS_POINT_ELEMENT: Readonly<Record<AccessPoint['type'], string>> = {
  subject: 'subject',
  place: 'geogname',
  genre: 'genreform',
  occupation: 'occupation',
  function: 'function',
  title: 'title',
};

/** The form of a name for headings. */
export const headingOf = ({ name, authorizedForm }: Agent): string => authorizedForm ?? name;

/** The names of linked agents, as headings: `persname`, `famname`, `corpname`. */
export function names(
  links: readonly AgentLink[],
  { nameOf }: Pick<Context, 'nameOf'>,
  role?: string,
): XmlElement[] {
  return links.map((link) => nameOf(link.role ?? role)(link.agent)).filter((name) => name !== undefined);
}
