import type { Component, Container } from '../catalogue/component.ts';
import { dateContextOf } from '../catalogue/date-context.ts';
import { fold } from '../catalogue/fold.ts';
import type { Settings } from '../catalogue/settings.ts';
import type { Thing } from '../catalogue/thing.ts';
import { accessFromSettings } from './access.ts';
import type { Agents } from './agents.ts';
import { folderTitle, groupTitle } from './devised-titles.ts';
import { countByKind, extentsOf } from './extents.ts';
import { thingDescriber } from './item.ts';
import { codesFor, type UnitCode } from './reference-codes.ts';
import { type Folder, type Group, thingsOf } from './sort.ts';
import { datesOfThings } from './statements-of-date.ts';

/** The lists of a component that has nothing in them yet. */
export const nothing = () => ({
  otherIdentifiers: [],
  dates: [],
  extents: [],
  creators: [],
  languages: [],
  containers: [],
  digitalCopies: [],
  generalNotes: [],
  people: [],
  accessPoints: [],
});

/** Describes sorted things: groups become series and subseries, folders become files, things become items. */
export function describeGroups(groups: readonly Group[], settings: Settings, agents: Agents): Component[] {
  const codes = codesFor(settings);
  const said = new Map(Object.entries(settings.groups).map(([title, words]) => [fold(title), words]));
  const context = dateContextOf(settings);
  const describeThing = thingDescriber(agents, settings.sort);
  let folderNumber = 0;

  const describeGroup = (group: Group, code: UnitCode, depth: number): Component => {
    const name = groupTitle(group);
    const words = said.get(fold(name));
    const title = words?.title ?? name;
    const members = thingsOf([group]);
    return {
      ...code,
      level: depth === 0 ? 'series' : 'subseries',
      title,
      ...nothing(),
      dates: datesOfThings(members),
      extents: extentsOf(countByKind(members)),
      ...(words?.history !== undefined && { biographicalHistory: words.history }),
      ...(words?.scope !== undefined && { scopeAndContent: words.scope }),
      ...(words?.arrangement !== undefined && { arrangement: words.arrangement }),
      ...(words?.access !== undefined && {
        accessConditions: accessFromSettings(words.access, words.access.until !== undefined, context),
      }),
      children: [
        ...group.groups.map((inner, index) => describeGroup(inner, codes.below(code, index + 1), depth + 1)),
        ...group.folders.map((folder, index) => describeFolder(folder, codes.below(code, index + 1), title)),
      ],
    };
  };

  const describeFolder = (folder: Folder, code: UnitCode, groupName: string): Component => {
    const counts = countByKind(folder.things);
    const box = sharedBox(folder.things);
    folderNumber += 1;
    return {
      ...code,
      level: 'file',
      title: folderTitle(folder, settings.sort.folders, counts, groupName),
      ...nothing(),
      dates: datesOfThings(folder.things),
      extents: extentsOf(counts),
      containers: folderContainers(code.id, folderNumber, box),
      children: folder.things.map((thing, index) =>
        describeThing(thing, codes.below(code, index + 1), box === undefined ? thing.box : undefined),
      ),
    };
  };

  return groups.map((group, index) => describeGroup(group, codes.below(codes.top, index + 1), 0));
}

/** The box in which all things of a folder lie, where the list says so of every one of them. */
function sharedBox(things: readonly Thing[]): string | undefined {
  const box = things[0]?.box;
  return things.every((thing) => thing.box === box) ? box : undefined;
}

function folderContainers(id: string, folderNumber: number, box: string | undefined): Container[] {
  const folder = { type: 'folder', number: String(folderNumber) };
  if (box === undefined) return [folder];
  return [
    { id: `${id}-box`, type: 'box', number: box },
    { ...folder, parent: `${id}-box` },
  ];
}
