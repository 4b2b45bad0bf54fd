import type { GroupKey, Settings } from '../catalogue/settings.ts';
import type { Thing } from '../catalogue/thing.ts';
import { gatherAgents } from './agents.ts';
import { groupTitle } from './devised-titles.ts';
import { leftOver } from './left-over.ts';
import { type Group, sortThings, thingsOf } from './sort.ts';

/** What one way of sorting makes of a list, in figures. */
export interface SortingSummary {
  groups: readonly GroupKey[];
  /** Whether this is the way that `collection.yaml` has chosen. */
  chosen: boolean;
  /** Broad groups, the one for what is left over not counted. */
  groupCount: number;
  folderCount: number;
  largest: { title: string; things: number } | undefined;
  smallest: { title: string; things: number } | undefined;
  /** Things that fit no group at some level. */
  leftOver: number;
}

/** Ways of sorting that people choose among (common practice: by material, by person, by occasion, by time). */
const WAYS: readonly (readonly GroupKey[])[] = [
  ['kind'],
  ['person'],
  ['occasion'],
  ['place'],
  ['decade'],
  ['language'],
  ['series'],
  ['person', 'kind'],
  ['kind', 'decade'],
];

/** Sets several ways of sorting side by side, so that a person can choose before moving anything. */
export function compareSortings(settings: Settings, things: readonly Thing[]): SortingSummary[] {
  const chosen = settings.sort.groups.join();
  const ways = WAYS.some((way) => way.join() === chosen) ? WAYS : [settings.sort.groups, ...WAYS];
  const agents = gatherAgents(settings);
  return ways.map((way) => {
    const groups = sortThings(things, { ...settings.sort, groups: [...way] }, agents);
    return { groups: way, chosen: way.join() === chosen, ...summary(groups) };
  });
}

function summary(groups: readonly Group[]): Omit<SortingSummary, 'groups' | 'chosen'> {
  const sizes = groups
    .filter(({ place }) => place !== undefined)
    .map((group) => ({ title: groupTitle(group), things: thingsOf([group]).length }))
    .sort((a, b) => b.things - a.things);
  return {
    groupCount: sizes.length,
    folderCount: count(groups, ({ folders }) => folders.length),
    largest: sizes[0],
    smallest: sizes.at(-1),
    leftOver: [...leftOver(groups)].length,
  };
}

function count(groups: readonly Group[], of: (group: Group) => number): number {
  return groups.reduce((sum, group) => sum + of(group) + count(group.groups, of), 0);
}
