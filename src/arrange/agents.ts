import type { Agent } from '../catalogue/agent.ts';
import { dateContextOf } from '../catalogue/date-context.ts';
import { fold } from '../catalogue/fold.ts';
import type { PersonSettings, Settings } from '../catalogue/settings.ts';
import { type DateContext, readDate } from '../dates/index.ts';
import { typeOf } from './agent-types.ts';
import { authorizedForm, nameParts } from './authorized-form.ts';

/** What a list says where nobody knows the name; such a word makes no agent. Common practice. */
const NOBODY = new Set([
  '?',
  '??',
  'unknown',
  'unidentified',
  'not known',
  'nobody knows',
  'unknown person',
  'n/a',
  '-',
]);

/** The people, families and corporate bodies of a catalogue, each once however its name is written. */
export interface Agents {
  /** The agent's id for a name as the list writes it; undefined for "unknown". A new name makes a new agent. */
  idOf(name: string): string | undefined;
  /** The agent with that id, and its rank: its place in `collection.yaml`, the others all after. */
  get(id: string): (Agent & { rank: number }) | undefined;
  /** All of them: those of `collection.yaml` in their order, then the others as they came. */
  all(): Agent[];
}

/** What `collection.yaml` says of people comes first, and its names and variants win over those of the list. */
export function gatherAgents(settings: Settings): Agents {
  const { people } = settings;
  const context = dateContextOf(settings);
  const agents: Agent[] = [];
  // By the name folded, and once met, by the name as written too.
  const ids = new Map<string, string | undefined>();
  const byId = new Map<string, number>();
  const timesUsed = new Map<string, number>();

  const freshId = (name: string) => {
    const slug = fold(name)
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-|-$/g, '');
    const base = /^[a-z]/.test(slug) ? slug : `agent${slug === '' ? '' : `-${slug}`}`;
    let used = timesUsed.get(base) ?? 0;
    let id = base;
    for (; byId.has(id); id = `${base}-${used}`) used = Math.max(2, used + 1);
    timesUsed.set(base, used);
    byId.set(id, agents.length);
    return id;
  };

  for (const person of people) {
    const agent = fromSettings(person, freshId(person.name), context);
    agents.push(agent);
    const withoutYears = agent.nameParts?.map(({ text }) => text).join(', ');
    for (const name of [person.name, ...person.also, agent.authorizedForm, withoutYears]) {
      if (name !== undefined && !ids.has(fold(name))) ids.set(fold(name), agent.id);
    }
  }

  // Once all are known: a relation may name somebody who comes later.
  for (const [at, { relations }] of people.entries()) {
    const links = relations.flatMap(({ to, as }) => {
      const id = ids.get(fold(to));
      return id === undefined ? [] : [{ agent: id, as }];
    });
    const agent = agents[at];
    if (agent !== undefined && links.length > 0) agent.relations = links;
  }

  const add = (name: string, key: string) => {
    const id = freshId(name);
    ids.set(key, id);
    agents.push({ id, type: typeOf(key), name });
    return id;
  };

  return {
    idOf(name) {
      if (ids.has(name)) return ids.get(name);
      const key = fold(name);
      const id = NOBODY.has(key) ? undefined : (ids.get(key) ?? add(name, key));
      ids.set(name, id);
      return id;
    },
    get(id) {
      const at = byId.get(id);
      const agent = at === undefined ? undefined : agents[at];
      return agent && { ...agent, rank: Math.min(at ?? 0, people.length) };
    },
    all: () => agents,
  };
}

function fromSettings(person: PersonSettings, id: string, context: DateContext): Agent {
  const { name, type, also, born, died, history, source, identifier, occupations } = person;
  const [birth, death] = [edtfOf(born, context), edtfOf(died, context)];
  const parts =
    type === 'person' ? nameParts(person.heading?.replace(/, [^,]*\d{4}[^,]*$/, '') ?? name) : undefined;
  const places = placesOf(person);
  return {
    id,
    type,
    name,
    authorizedForm: person.heading ?? (parts === undefined ? name : authorizedForm(parts, birth, death)),
    ...(parts !== undefined && { nameParts: parts }),
    ...(also.length > 0 && { variants: also }),
    ...(birth !== undefined && { birth }),
    ...(death !== undefined && { death }),
    ...(places.length > 0 && { places }),
    ...(occupations.length > 0 && { occupations }),
    ...(history !== undefined && { history }),
    ...(source !== undefined && { source }),
    ...(identifier !== undefined && { identifier }),
  };
}

function placesOf({ type, birthplace, deathplace, places }: PersonSettings): NonNullable<Agent['places']> {
  return [
    ...(birthplace === undefined ? [] : [{ name: birthplace, role: 'birth' as const }]),
    ...places.map((name) => ({
      name,
      role: type === 'corporateBody' ? ('location' as const) : ('residence' as const),
    })),
    ...(deathplace === undefined ? [] : [{ name: deathplace, role: 'death' as const }]),
  ];
}

function edtfOf(written: string | undefined, context: DateContext): string | undefined {
  const reading = written === undefined ? undefined : readDate(written, context);
  return reading?.kind === 'date' ? reading.edtf : undefined;
}
