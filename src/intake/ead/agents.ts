import type { Agent, AgentLink, AgentType } from '../../catalogue/agent.ts';
import { fold } from '../../catalogue/fold.ts';
import { elementsOf, type Found } from './found.ts';
import { isSeen, words } from './text.ts';

/** Elements of names; a `name` says of what kind it is to nobody. */
export const NAMES: ReadonlySet<string> = new Set(['persname', 'famname', 'corpname', 'name']);

const TYPES: Readonly<Record<string, AgentType>> = {
  persname: 'person',
  famname: 'family',
  corpname: 'corporateBody',
};

/** The people, families and corporate bodies of a finding aid, each once, as they are met. */
export interface People {
  /** All of them, in the order in which they were met. */
  list: () => Agent[];
  /** The agent that an element names, in a role; undefined where the element is blank. */
  link: (element: Found) => AgentLink | undefined;
}

/** The text of a name or term: in EAD3 it stands in parts. */
export function heading(element: Found, between: string): string {
  const parts = elementsOf(element, 'part');
  if (parts.length < 2) return words(element);
  return parts
    .map(words)
    .filter((part) => part !== '')
    .join(between);
}

/** Begins to gather the agents of one finding aid. */
export function people(): People {
  const known = new Map<string, Agent>();
  const ids = new Set<string>();
  const agentOf = (element: Found): Agent | undefined => {
    const text = heading(element, ', ');
    if (text === '') return undefined;
    const type = TYPES[element.name] ?? guess(text);
    const { source, identifier = element.attributes.authfilenumber } = element.attributes;
    const key = [type, text, source, identifier].join('\n');
    const found = known.get(key);
    if (found !== undefined) return found;
    const agent: Agent = {
      id: idFor(text, ids),
      type,
      ...named(text, type),
      ...(isSeen(source) && { source }),
      ...(isSeen(identifier) && { identifier }),
    };
    known.set(key, agent);
    return agent;
  };
  return {
    list: () => [...known.values()],
    link: (element) => {
      const agent = agentOf(element);
      const role = element.attributes.relator ?? element.attributes.role;
      return agent && { agent: agent.id, ...(isSeen(role) && { role }) };
    },
  };
}

/** What a name that says not whose it is may be: common practice puts a person's surname before a comma. */
function guess(text: string): AgentType {
  if (/\bfamily\b/i.test(text)) return 'family';
  return /^[^,]+, [^,]+/.test(text) ? 'person' : 'corporateBody';
}

/** Quill, Ada, 1902-1988 is called Ada Quill. */
function named(text: string, type: AgentType): Pick<Agent, 'name' | 'authorizedForm'> {
  const [, surname, forename] = /^([^,\d]+), ([^,\d()]+?)\.?(?:, .*\d.*)?$/.exec(text) ?? [];
  if (type !== 'person' || surname === undefined || forename === undefined) return { name: text };
  return { name: `${forename} ${surname}`, authorizedForm: text };
}

function idFor(text: string, ids: Set<string>): string {
  const base =
    fold(text)
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^[^a-z]+|-+$/g, '')
      .slice(0, 40) || 'agent';
  let id = base;
  for (let count = 2; ids.has(id); count++) id = `${base}-${count}`;
  ids.add(id);
  return id;
}
