import { capitalised } from '../catalogue/capitalised.ts';
import { fold } from '../catalogue/fold.ts';
import { languageUse } from '../catalogue/languages.ts';
import { once } from '../catalogue/once.ts';
import type { GroupKey } from '../catalogue/settings.ts';
import type { Thing } from '../catalogue/thing.ts';
import { firstYear } from '../dates/index.ts';
import { readKind } from '../kinds/kind-words.ts';
import { BROAD_GROUPS } from '../kinds/kinds.ts';
import type { Agents } from './agents.ts';
import { edtfOf, firstPerson } from './order.ts';

/** Where a thing belongs by one key: what tells the group from others, its title, and its rank among them. */
export interface GroupPlace {
  id: string;
  title: string;
  /** Groups stand by rank, then by the natural order of their titles. */
  rank: number;
}

type Reader = (thing: Thing, agents: Agents) => GroupPlace | undefined;

const LAST = Number.MAX_SAFE_INTEGER;
const text = (value: string | undefined): GroupPlace | undefined =>
  value === undefined ? undefined : { id: fold(value), title: capitalised(value), rank: 0 };

const byKind = once((kind: string | undefined): GroupPlace | undefined => {
  if (kind === undefined) return undefined;
  const group = readKind(kind)?.kind.group;
  if (group === undefined) return { id: `other ${fold(kind)}`, title: capitalised(kind), rank: LAST };
  return { id: group, title: group, rank: BROAD_GROUPS.indexOf(group) };
});

/** By each key, where a thing belongs; undefined where it says nothing on that. */
export const GROUP_PLACE: Record<GroupKey, Reader> = {
  kind: ({ kind }) => byKind(kind),
  person: (thing, agents) => {
    const name = firstPerson(thing);
    const id = name === undefined ? undefined : agents.idOf(name);
    if (id === undefined) return undefined;
    const agent = agents.get(id);
    return agent && { id, title: agent.authorizedForm ?? agent.name, rank: agent.rank };
  },
  place: ({ places }) => text(places[0]),
  occasion: ({ occasion }) => text(occasion),
  series: ({ series }) => text(series),
  language: ({ languages }) => {
    const first = languages[0];
    return first === undefined ? undefined : text(languageUse(first)?.name ?? first);
  },
  // A thing that spans years belongs to the first of them.
  year: (thing) => {
    const year = firstYear(edtfOf(thing) ?? '');
    return year === undefined ? undefined : { id: String(year), title: String(year), rank: year };
  },
  decade: (thing) => {
    const year = firstYear(edtfOf(thing) ?? '');
    if (year === undefined) return undefined;
    const decade = Math.floor(year / 10) * 10;
    return { id: `${decade}s`, title: `${decade}s`, rank: decade };
  },
};
