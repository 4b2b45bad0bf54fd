import { fold } from '../catalogue/fold.ts';
import { once } from '../catalogue/once.ts';
import type { FolderKey } from '../catalogue/settings.ts';
import type { Thing } from '../catalogue/thing.ts';
import { firstYear, lastYear } from '../dates/index.ts';
import type { Agents } from './agents.ts';
import { edtfOf, firstPerson } from './order.ts';
import type { Folder } from './sort.ts';

/** What a thing is filed under: a label, how it is compared, and a number where folders stand by number. */
interface Filing {
  label: string;
  id: string;
  rank?: number;
}

type Reader = (thing: Thing, agents: Agents) => Filing | undefined;

const byLabel = once((label: string | undefined): Filing | undefined =>
  label === undefined ? undefined : { label, id: fold(label) },
);

const byNumber = (label: string, rank: number): Filing => ({ label, id: label, rank });

// A thing known to its decade only is filed before the years of that decade; one that spans years, under its first.
const byYear = once((edtf: string | undefined): Filing | undefined => {
  if (edtf === undefined) return undefined;
  const [first, last] = [firstYear(edtf), lastYear(edtf)];
  if (first === undefined) return undefined;
  const wholeDecade = first % 10 === 0 && last === first + 9;
  return wholeDecade ? byNumber(`${first}s`, first - 0.5) : byNumber(String(first), first);
});

const byDecade = once((edtf: string | undefined): Filing | undefined => {
  const first = edtf === undefined ? undefined : firstYear(edtf);
  const decade = first === undefined ? undefined : Math.floor(first / 10) * 10;
  return decade === undefined ? undefined : byNumber(`${decade}s`, decade);
});

const FILING: Record<FolderKey, Reader> = {
  year: (thing) => byYear(edtfOf(thing)),
  decade: (thing) => byDecade(edtfOf(thing)),
  occasion: ({ occasion }) => byLabel(occasion),
  folder: ({ folder }) => byLabel(folder),
  person: (thing, agents) => {
    const name = firstPerson(thing);
    const id = name === undefined ? undefined : agents.idOf(name);
    const agent = id === undefined ? undefined : agents.get(id);
    return byLabel(agent?.authorizedForm ?? agent?.name);
  },
  group: () => byLabel(''),
};

/**
 * Parts things that are already in order into folders. Folders by year or decade stand by year; any others stand
 * by the first thing in them; what can be filed under nothing comes last, in a folder of its own.
 */
export function bucketsOf(things: readonly Thing[], key: FolderKey, agents: Agents): Folder[] {
  const found = new Map<string | undefined, Folder & { rank: number }>();
  for (const thing of things) {
    const filing = FILING[key](thing, agents);
    const folder = found.get(filing?.id);
    if (folder !== undefined) folder.things.push(thing);
    else {
      const rank = filing === undefined ? Number.POSITIVE_INFINITY : (filing.rank ?? 0);
      found.set(filing?.id, { label: filing?.label, rank, things: [thing] });
    }
  }
  return [...found.values()]
    .sort((a, b) => (a.rank === b.rank ? 0 : a.rank - b.rank))
    .map(({ label, things: members }) => ({ label, things: members }));
}
