import type { GroupKey } from '../catalogue/settings.ts';
import type { Thing } from '../catalogue/thing.ts';
import { type Group, thingsOf } from './sort.ts';

/** The things that fit no group, each with the key on which it says nothing, in the order in which they stand. */
export function* leftOver(groups: readonly Group[]): Generator<{ thing: Thing; key: GroupKey }> {
  for (const group of groups) {
    if (group.place !== undefined) yield* leftOver(group.groups);
    else for (const thing of thingsOf([group])) yield { thing, key: group.key };
  }
}
