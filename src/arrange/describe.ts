import type { Component, Container, Extent } from '../catalogue/component.ts';
import { dateContextOf } from '../catalogue/date-context.ts';
import { fold } from '../catalogue/fold.ts';
import type { Settings } from '../catalogue/settings.ts';
import { shareOfShelf } from '../housing/extent.ts';
import {
  foldersOf,
  type HeldFolder,
  type PlacedFolder,
  type PlacedGroup,
  type ShelfBox,
  type ShelfUnit,
} from '../housing/placed.ts';
import { accessFromSettings } from './access.ts';
import type { Agents } from './agents.ts';
import { folderTitle } from './devised-titles.ts';
import { countByKind, extentsOf } from './extents.ts';
import { thingDescriber } from './item.ts';
import { sayApart, sayBelonging } from './lying-apart.ts';
import { codesFor, type UnitCode } from './reference-codes.ts';
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

/** Describes placed things: groups become series and subseries, folders become files, things become items. */
export function describeGroups(
  groups: readonly PlacedGroup[],
  settings: Settings,
  agents: Agents,
): Component[] {
  const codes = codesFor(settings);
  const said = new Map(Object.entries(settings.groups).map(([title, words]) => [fold(title), words]));
  const context = dateContextOf(settings);
  const describeThing = thingDescriber(agents, settings.sort);

  const describeGroup = (group: PlacedGroup, above: UnitCode, depth: number): Component => {
    const code = codes.below(above, group.number);
    const words = said.get(fold(group.title));
    const title = words?.title ?? group.title;
    const folders = foldersOf([group]);
    const members = folders.flatMap(({ things }) => things.map(({ thing }) => thing));
    const children = [
      ...group.groups.map((inner) => ({ ...inner, describe: () => describeGroup(inner, code, depth + 1) })),
      ...group.folders.map((folder) => ({ ...folder, describe: () => describeFolder(folder, code, title) })),
    ];
    return {
      ...code,
      level: depth === 0 ? 'series' : 'subseries',
      title,
      ...nothing(),
      dates: datesOfThings(members),
      extents: [...extentsOf(countByKind(members)), ...roomOf(folders, settings)],
      ...(words?.history !== undefined && { biographicalHistory: words.history }),
      ...(words?.scope !== undefined && { scopeAndContent: words.scope }),
      ...(words?.arrangement !== undefined && { arrangement: words.arrangement }),
      ...(words?.access !== undefined && {
        accessConditions: accessFromSettings(words.access, words.access.until !== undefined, context),
      }),
      children: children.sort((a, b) => a.number - b.number).map(({ describe }) => describe()),
    };
  };

  const describeFolder = (folder: PlacedFolder, above: UnitCode, groupName: string): Component => {
    const code = codes.below(above, folder.number);
    const things = folder.things.map(({ thing }) => thing);
    const counts = countByKind(things);
    const apart = folder.things.flatMap(({ number, apart, units }) =>
      apart === undefined ? [] : [{ code: codes.below(code, number).referenceCode, boxes: boxesOf(units) }],
    );
    return {
      ...code,
      level: 'file',
      title: `${folderTitle(folder, settings.sort.folders, counts, groupName)}${sayPart(folder)}`,
      ...nothing(),
      dates: datesOfThings(things),
      extents: [...extentsOf(counts), ...foldersHeld(folder)],
      containers: folder.held === undefined ? [] : folderContainers(code.id, folder.held),
      physicalLocation: folder.held === undefined ? undefined : sayBelonging(apart),
      generalNotes: gapsOf(folder, code),
      children: folder.things.map(({ thing, number, apart, units }) => {
        const item = describeThing(thing, codes.below(code, number));
        if (apart === undefined) return item;
        item.containers = boxesOf(units).map(boxContainer);
        item.physicalLocation = sayApart(apart, boxesOf(units), folder.held);
        return item;
      }),
    };
  };

  /** A number that is not used any more would look like a loss; the reason says that it is none. */
  const gapsOf = ({ gaps }: PlacedFolder, code: UnitCode): Component['generalNotes'] => {
    if (gaps.length === 0) return [];
    const said = gaps.map(({ number, why }) => `${codes.below(code, number).referenceCode} (${why})`);
    return [{ head: 'Numbers no longer used', text: said.join('; ') }];
  };

  return groups.map((group) => describeGroup(group, codes.top, 0));
}

const sayPart = ({ part }: PlacedFolder) => (part === undefined ? '' : ` (${part.number} of ${part.of})`);

const boxContainer = ({ type, number }: ShelfBox): Container => ({ type, number });

const boxesOf = (units: readonly ShelfUnit[]) => units.flatMap(({ box }) => (box === undefined ? [] : [box]));

/** A box with the folders in it; for a bundle too large for a box, each box with its share of the folders. */
function folderContainers(id: string, { first, last, units }: HeldFolder): Container[] {
  const share = Math.ceil((last - first + 1) / units.length);
  return units.flatMap(({ box }, index): Container[] => {
    const from = first + index * share;
    const to = Math.min(last, from + share - 1);
    const folder = { type: 'folder', number: from === to ? String(from) : `${from}-${to}` };
    if (box === undefined) return [folder];
    const boxId = `${id}-box${index === 0 ? '' : `-${index + 1}`}`;
    return [
      { id: boxId, ...boxContainer(box) },
      { ...folder, parent: boxId },
    ];
  });
}

// DACS 2.5.4: numeric quantity and unit.
function foldersHeld({ held }: PlacedFolder): Extent[] {
  if (held === undefined) return [];
  const quantity = held.last - held.first + 1;
  return [{ type: 'carrier', coverage: 'whole', quantity, unit: quantity === 1 ? 'folder' : 'folders' }];
}

/** The room that the folders take, and what lies apart from them. */
function roomOf(folders: readonly PlacedFolder[], { housing }: Settings): Extent[] {
  const units = new Set(folders.flatMap(({ things }) => things.flatMap((thing) => thing.units)));
  return shareOfShelf(
    [...units].map(({ thickness }) => thickness),
    housing.measure,
  );
}
