import { fold } from '../catalogue/fold.ts';
import type { FolderKey } from '../catalogue/settings.ts';
import type { Thing } from '../catalogue/thing.ts';
import { firstYear, lastYear, yearOf } from '../dates/index.ts';
import type { Agents } from './agents.ts';
import { edtfOf, firstPerson } from './order.ts';
import type { Folder } from './sort.ts';

/** What a thing is filed under: a label, and a number where folders stand by number rather than by first thing. */
interface Filing {
  label: string;
  rank?: number;
}

type Reader = (thing: Thing, agents: Agents) => Filing | undefined;

const byLabel = (label: string | undefined): Filing | undefined =>
  label === undefined ? undefined : { label };

const FILING: Record<FolderKey, Reader> = {
  // A thing known to its decade only is filed before the years of that decade; one that spans years, under its first.
  year: (thing) => {
    const edtf = edtfOf(thing);
    if (edtf === undefined) return undefined;
    const year = yearOf(edtf);
    if (year !== undefined) return { label: String(year), rank: year };
    const [first, last] = [firstYear(edtf), lastYear(edtf)];
    if (first === undefined) return undefined;
    const wholeDecade = first % 10 === 0 && last === first + 9;
    return wholeDecade ? { label: `${first}s`, rank: first - 0.5 } : { label: String(first), rank: first };
  },
  decade: (thing) => {
    const first = firstYear(edtfOf(thing) ?? '');
    if (first === undefined) return undefined;
    const decade = Math.floor(first / 10) * 10;
    return { label: `${decade}s`, rank: decade };
  },
  occasion: ({ occasion }) => byLabel(occasion),
  folder: ({ folder }) => byLabel(folder),
  person: (thing, agents) => {
    const name = firstPerson(thing);
    const id = name === undefined ? undefined : agents.idOf(name);
    const agent = id === undefined ? undefined : agents.get(id);
    return byLabel(agent?.authorizedForm ?? agent?.name);
  },
  group: () => ({ label: '' }),
};

/**
 * Parts things that are already in order into folders. Folders by year or decade stand by year; any others stand
 * by the first thing in them; what can be filed under nothing comes last, in a folder of its own.
 */
export function bucketsOf(things: readonly Thing[], key: FolderKey, agents: Agents): Folder[] {
  const found = new Map<string | undefined, Folder & { rank: number }>();
  for (const thing of things) {
    const filing = FILING[key](thing, agents);
    const id = filing === undefined ? undefined : fold(filing.label);
    const folder = found.get(id);
    if (folder !== undefined) folder.things.push(thing);
    else {
      const rank = filing === undefined ? Number.POSITIVE_INFINITY : (filing.rank ?? 0);
      found.set(id, { label: filing?.label, rank, things: [thing] });
    }
  }
  return [...found.values()]
    .sort((a, b) => (a.rank === b.rank ? 0 : a.rank - b.rank))
    .map(({ label, things: members }) => ({ label, things: members }));
}
