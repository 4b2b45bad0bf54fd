import type { GroupKey, Settings } from '../catalogue/settings.ts';
import type { Thing } from '../catalogue/thing.ts';
import { gatherAgents } from './agents.ts';
import { type Group, sortThings, thingsOf } from './sort.ts';

/** The things that fit no group, each with the key on which it says nothing, in the order in which they stand. */
export function leftOverThings(catalogue: { settings: Settings; things: readonly Thing[] }) {
  const { settings, things } = catalogue;
  return [...leftOver(sortThings(things, settings.sort, gatherAgents(settings)))];
}

/** The same for things already sorted. */
export function* leftOver(groups: readonly Group[]): Generator<{ thing: Thing; key: GroupKey }> {
  for (const group of groups) {
    if (group.place !== undefined) yield* leftOver(group.groups);
    else for (const thing of thingsOf([group])) yield { thing, key: group.key };
  }
}
