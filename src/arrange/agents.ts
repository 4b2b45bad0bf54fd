import type { Agent } from '../catalogue/agent.ts';
import { fold } from '../catalogue/fold.ts';
import type { PersonSettings } from '../catalogue/settings.ts';
import { readDate } from '../dates/index.ts';
import { typeOf } from './agent-types.ts';

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

/** @param people what `collection.yaml` says of people; it comes first, and its names and variants win */
export function gatherAgents(people: readonly PersonSettings[]): Agents {
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
    const agent = fromSettings(person, freshId(person.name));
    agents.push(agent);
    const withoutYears = agent.authorizedForm?.replace(/, [\d-]+$/, '');
    for (const name of [person.name, ...person.also, agent.authorizedForm, withoutYears]) {
      if (name !== undefined && !ids.has(fold(name))) ids.set(fold(name), agent.id);
    }
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

function fromSettings(person: PersonSettings, id: string): Agent {
  const { name, type, also, born, died, history, source, identifier } = person;
  const birth = born === undefined ? undefined : edtfOf(born);
  const death = died === undefined ? undefined : edtfOf(died);
  return {
    id,
    type,
    name,
    authorizedForm: person.heading ?? heading(name, type, birth, death),
    ...(also.length > 0 && { variants: also }),
    ...(birth !== undefined && { birth }),
    ...(death !== undefined && { death }),
    ...(history !== undefined && { history }),
    ...(source !== undefined && { source }),
    ...(identifier !== undefined && { identifier }),
  };
}

function edtfOf(written: string): string | undefined {
  const reading = readDate(written);
  return reading.kind === 'date' ? reading.edtf : undefined;
}

// Common practice (and RDA 9.2.2.4): family name first, then the years that tell namesakes apart. Only names of
// people whom collection.yaml lists are turned round; a name met in the list alone stays as written.
function heading(
  name: string,
  type: Agent['type'],
  birth: string | undefined,
  death: string | undefined,
): string {
  if (type !== 'person') return name;
  const [, given, particle, family] =
    /^([^,]*\p{Lu}[^,\s]*)\s((?:(?:van|von|de|der|den|del|di|du|la|le|ter|zu)\s)*)(\p{Lu}\S*)$/u.exec(name) ??
    [];
  const turned =
    given !== undefined && family !== undefined
      ? `${family}, ${given}${particle ? ` ${particle.trim()}` : ''}`
      : name;
  const years = [birth, death].map((edtf) => /^\d{4}/.exec(edtf ?? '')?.[0]);
  if (years[0] === undefined && years[1] === undefined) return turned;
  return `${turned}, ${years[0] ?? ''}-${years[1] ?? ''}`;
}
