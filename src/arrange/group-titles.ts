import type { Settings } from '../catalogue/settings.ts';
import type { Thing } from '../catalogue/thing.ts';
import { gatherAgents } from './agents.ts';
import { groupTitle } from './devised-titles.ts';
import { type Group, sortThings } from './sort.ts';

/** The titles that the groups have before `collection.yaml` gives any of them another. */
export function groupTitles(catalogue: { settings: Settings; things: readonly Thing[] }): string[] {
  const { settings, things } = catalogue;
  const titles = (groups: readonly Group[]): string[] =>
    groups.flatMap((group) => [groupTitle(group), ...titles(group.groups)]);
  return [...new Set(titles(sortThings(things, settings.sort, gatherAgents(settings))))];
}
