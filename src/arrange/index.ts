import type { FindingAid } from '../catalogue/finding-aid.ts';
import type { Settings } from '../catalogue/settings.ts';
import type { Thing } from '../catalogue/thing.ts';
import { gatherAgents } from './agents.ts';
import { describeCollection } from './collection.ts';
import { describeControl } from './control.ts';
import { describeGroups } from './describe.ts';
import { sortThings } from './sort.ts';

export { isOpen } from './access.ts';
export { compareSortings, type SortingSummary } from './compare.ts';
export { groupTitles } from './group-titles.ts';
export { readKind } from './kind-words.ts';
export { KINDS } from './kinds.ts';
export { leftOverThings } from './left-over.ts';
export { outline } from './outline.ts';

/**
 * Turns a list into a finding aid: groups, order, folders, reference codes, and the description that follows from them.
 * @param today the day of the description where the settings name none, as YYYY-MM-DD
 */
export function arrange(
  catalogue: { settings: Settings; things: readonly Thing[] },
  today: string,
): FindingAid {
  const { settings, things } = catalogue;
  const agents = gatherAgents(settings);
  // In the order of the list, so that it does not hang on the way of sorting which spelling of a name is met first.
  for (const { creators, people } of things) for (const name of [...creators, ...people]) agents.idOf(name);
  const children = describeGroups(sortThings(things, settings.sort, agents), settings, agents);
  const collection = describeCollection(settings, things, children, agents);
  return {
    format: 'kinfonds finding aid',
    version: 1,
    control: describeControl(settings, today),
    ...recipientOf(settings),
    people: agents.all(),
    collection,
  };
}

function recipientOf({ recipient }: Settings): Pick<FindingAid, 'recipient'> {
  if (recipient === undefined) return {};
  const { formats: _, prefix: __, ...known } = recipient;
  return { recipient: known };
}
