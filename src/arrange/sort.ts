import type { FolderKey, GroupKey, SortSettings } from '../catalogue/settings.ts';
import type { Thing } from '../catalogue/thing.ts';
import type { Agents } from './agents.ts';
import { bucketsOf } from './folders.ts';
import { GROUP_PLACE, type GroupPlace } from './group-keys.ts';
import { compareNaturally, inOrder } from './order.ts';

/** Things that share a folder, in order. */
export interface Folder {
  /** What the folder holds together: a year, an occasion, a name; undefined where nothing is known to file by. */
  label: string | undefined;
  things: Thing[];
}

/** A group of things: either further groups or folders, never both. */
export interface Group {
  key: GroupKey;
  /** Undefined for the things that fit no group by this key; that group stands last. */
  place: GroupPlace | undefined;
  groups: Group[];
  folders: Folder[];
}

/**
 * Sorts the things of a list into broad groups, each into groups again where more than one key is given, puts each
 * group in order, and parts it into folders. Every thing comes out exactly once, whatever the settings.
 */
export function sortThings(things: readonly Thing[], sort: SortSettings, agents: Agents): Group[] {
  const [key, ...finer] = sort.groups;
  if (key === undefined || things.length === 0) return [];
  const found = new Map<string | undefined, { place: GroupPlace | undefined; things: Thing[] }>();
  for (const thing of things) {
    const place = GROUP_PLACE[key](thing, agents);
    const group = found.get(place?.id);
    if (group === undefined) found.set(place?.id, { place, things: [thing] });
    else group.things.push(thing);
  }
  return [...found.values()].sort(byPlace).map(({ place, things: members }) => ({
    key,
    place,
    groups: finer.length === 0 ? [] : sortThings(members, { ...sort, groups: finer }, agents),
    folders: finer.length === 0 ? inFolders(members, sort.folders, sort, agents) : [],
  }));
}

function inFolders(things: readonly Thing[], key: FolderKey, sort: SortSettings, agents: Agents): Folder[] {
  return bucketsOf(inOrder(things, sort.order), key, agents);
}

type Placed = { place: GroupPlace | undefined };

// What fits no group stands last: common practice, as with undated things.
function byPlace({ place: a }: Placed, { place: b }: Placed): number {
  if (a === undefined || b === undefined) return Number(a === undefined) - Number(b === undefined);
  return a.rank - b.rank || compareNaturally(a.title, b.title);
}

/** Every thing of some groups, in the order in which they stand. */
export function thingsOf(groups: readonly Group[]): Thing[] {
  return groups.flatMap((group) => [
    ...thingsOf(group.groups),
    ...group.folders.flatMap(({ things }) => things),
  ]);
}
