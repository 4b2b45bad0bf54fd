import type { Agent } from '../catalogue/agent.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import { once } from '../catalogue/once.ts';
import type { Thing } from '../catalogue/thing.ts';
import { bounds } from '../dates/index.ts';
import { agentsByName } from './agents-by-name.ts';

/** Nobody is taken for dead without a word on it before so many years: common practice; local rules decide. */
export const LIFETIME = 100;

/** What the catalogue tells of whether somebody lives. */
export interface Life {
  name: string;
  mayLive: boolean;
  /** The last year in which they can have been born, where a birth is given. */
  born?: number;
  /** The year by which they must have been born, since something of that year names them. */
  named?: number;
}

const yearIn = (day: string | undefined) => (day === undefined ? undefined : Number(day.slice(0, 4)));
const lastYearOf = once((edtf: string): number | undefined =>
  // Most dates are plain, and a list has many.
  /^\d{4}(?:-\d\d){0,2}$/.test(edtf) ? yearIn(edtf) : yearIn(bounds(edtf).latest),
);

/** The last year that a date touches; undefined where there is none, or its end is open. */
export function lastYearIn(date: Thing['date']): number | undefined {
  return date?.reading.kind === 'date' ? lastYearOf(date.reading.edtf) : undefined;
}

/** The last year of the whole collection, for things without a date of their own. */
export function lastYearOfWhole({ collection }: FindingAid): number | undefined {
  const years = collection.dates.map(({ edtf }) => (edtf === undefined ? undefined : lastYearOf(edtf)));
  return years.reduce((a, b) => (a === undefined || b === undefined ? (a ?? b) : Math.max(a, b)), undefined);
}

/** Whom a list names, and who of them may be living. */
export interface Lives {
  /** Undefined for a family, an organisation, or "unknown". */
  lifeOf: (name: string) => Life | undefined;
  /** All single people of the catalogue. */
  all: () => Life[];
}

/**
 * Who may be living: those without a death who were born less than a hundred years ago, and those of whom neither is
 * known, unless something that is a hundred years old names them already.
 * @param today YYYY-MM-DD
 */
export function livesOf({ things }: Catalogue, aid: FindingAid, today: string): Lives {
  const year = Number(today.slice(0, 4));
  const agentOf = agentsByName(aid);
  const firstNamed = once((_: 'all') => yearsOfFirstNaming(things, agentOf));

  const life = once((agent: Agent): Life | undefined => {
    const { type, name, birth, death } = agent;
    if (type !== 'person') return undefined;
    const born = birth === undefined ? undefined : lastYearOf(birth);
    if (death !== undefined) return { name, mayLive: false };
    if (born !== undefined) return { name, mayLive: year - born < LIFETIME, born };
    const named = firstNamed('all').get(agent);
    return {
      name,
      mayLive: named === undefined || year - named < LIFETIME,
      ...(named !== undefined && { named }),
    };
  });
  return {
    lifeOf: (name) => {
      const agent = agentOf(name);
      return agent === undefined ? undefined : life(agent);
    },
    all: () => aid.people.map(life).filter((one) => one !== undefined),
  };
}

/** For everybody whose birth and death nobody has noted, the year by which something names them: the last it may be of. */
function yearsOfFirstNaming(
  things: readonly Thing[],
  agentOf: (name: string) => Agent | undefined,
): Map<Agent, number> {
  const years = new Map<Agent, number>();
  for (const { people, creators, date } of things) {
    const year = lastYearIn(date);
    if (year === undefined) continue;
    for (const names of [people, creators]) {
      for (const name of names) {
        const agent = agentOf(name);
        if (agent === undefined || agent.birth !== undefined || agent.death !== undefined) continue;
        if (year < (years.get(agent) ?? 9999)) years.set(agent, year);
      }
    }
  }
  return years;
}
