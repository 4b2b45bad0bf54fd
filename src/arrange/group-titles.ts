import { groupTitle } from './devised-titles.ts';
import type { Group } from './sort.ts';

/** The titles that the groups have before `collection.yaml` gives any of them another. */
export function groupTitles(sorted: readonly Group[]): string[] {
  const titles = (groups: readonly Group[]): string[] =>
    groups.flatMap((group) => [groupTitle(group), ...titles(group.groups)]);
  return [...new Set(titles(sorted))];
}
