import { addTo } from '../catalogue/add-to.ts';
import type { Component, Container, Extent } from '../catalogue/component.ts';
import { dateContextOf } from '../catalogue/date-context.ts';
import { fold } from '../catalogue/fold.ts';
import { nothing } from '../catalogue/nothing.ts';
import type { Settings } from '../catalogue/settings.ts';
import { shareOfShelf } from '../housing/extent.ts';
import {
  folderCount,
  foldersOf,
  type HeldFolder,
  type PlacedFolder,
  type PlacedGroup,
  type ShelfBox,
  type ShelfUnit,
} from '../housing/placed.ts';
import { countByKind, extentsOf } from '../kinds/extents.ts';
import { accessFromSettings } from './access.ts';
import type { Agents } from './agents.ts';
import { folderTitle } from './devised-titles.ts';
import { thingDescriber } from './item.ts';
import { sayApart, sayBelonging } from './lying-apart.ts';
import { type NumberHistory, notesOnGaps, numberHistory } from './number-history.ts';
import { codesFor, referenceCodes, type UnitCode } from './reference-codes.ts';
import { datesOfThings } from './statements-of-date.ts';

/**
 * Describes placed things: groups become series and subseries, folders become files, things become items.
 * @param history left out where nothing was settled before
 */
export function describeGroups(
  groups: readonly PlacedGroup[],
  settings: Settings,
  agents: Agents,
  history: NumberHistory = numberHistory(groups, [], referenceCodes(settings)),
): Component[] {
  const codes = codesFor(settings);
  const codeOf = referenceCodes(settings);
  const said = new Map(Object.entries(settings.groups).map(([title, words]) => [fold(title), words]));
  const context = dateContextOf(settings);
  const describeThing = thingDescriber(agents, settings.sort);
  const unitCode = (place: readonly number[]): UnitCode => place.reduce(codes.below, codes.top);

  const describeGroup = (group: PlacedGroup, above: readonly number[]): Component => {
    const place = [...above, group.number];
    const code = unitCode(place);
    const words = said.get(fold(group.title));
    const title = words?.title ?? group.title;
    const folders = foldersOf([group]);
    const members = folders.flatMap(({ things }) => things.map(({ thing }) => thing));
    const children = [
      ...group.groups.map((inner) => ({ number: inner.number, unit: describeGroup(inner, place) })),
      ...group.folders.map((folder) => ({
        number: folder.number,
        part: folder.part,
        unit: describeFolder(folder, place, title),
      })),
    ];
    tellApart(children);
    return {
      ...nothing(),
      ...code,
      level: above.length === 0 ? 'series' : 'subseries',
      title,
      dates: datesOfThings(members),
      extents: [...extentsOf(countByKind(members)), ...roomOf(folders, settings)],
      ...(words?.history !== undefined && { biographicalHistory: words.history }),
      ...(words?.scope !== undefined && { scopeAndContent: words.scope }),
      ...(words?.arrangement !== undefined && { arrangement: words.arrangement }),
      ...(words?.access !== undefined && {
        accessConditions: accessFromSettings(words.access, words.access.until !== undefined, context),
      }),
      generalNotes: notesOnGaps(history.emptied(place), codeOf),
      children: children.sort((a, b) => a.number - b.number).map(({ unit }) => unit),
    };
  };

  const describeFolder = (folder: PlacedFolder, above: readonly number[], groupName: string): Component => {
    const place = [...above, folder.number];
    const code = unitCode(place);
    // A number that is not used any more would look like a loss; the reason says that it is none.
    const gaps = folder.gaps.map(({ number, why }) => ({ place: [...place, number], why }));
    const things = folder.things.map(({ thing }) => thing);
    const counts = countByKind(things);
    const lyingApart: { code: string; boxes: ShelfBox[] }[] = [];
    const children = folder.things.map(({ thing, number, apart, units }) => {
      const own = codes.below(code, number);
      const item = describeThing(thing, own);
      const former = history.former(thing.number);
      if (former.length > 0) item.otherIdentifiers = [...item.otherIdentifiers, ...former.map(formerCode)];
      if (apart === undefined) return item;
      const boxes = boxesOf(units);
      lyingApart.push({ code: own.referenceCode, boxes });
      item.containers = boxes.map(boxContainer);
      item.physicalLocation = sayApart(apart, boxes, folder.held);
      return item;
    });
    return {
      ...nothing(),
      ...code,
      level: 'file',
      title: folderTitle(folder, settings.sort.folders, counts, groupName),
      dates: datesOfThings(things),
      extents: [...extentsOf(counts), ...foldersHeld(folder)],
      containers: folder.held === undefined ? [] : folderContainers(code.id, folder.held),
      physicalLocation: folder.held === undefined ? undefined : sayBelonging(lyingApart),
      generalNotes: notesOnGaps(gaps, codeOf),
      children,
    };
  };

  return groups.map((group) => describeGroup(group, []));
}

const formerCode = (value: string) => ({ type: 'former reference code', value });

/** Numbers the parts of what had to be parted, where neither title nor dates tell one folder from another. */
function tellApart(folders: readonly { part?: PlacedFolder['part']; unit: Component }[]): void {
  const alike = new Map<string, (typeof folders)[number][]>();
  for (const folder of folders) {
    const { title, dates } = folder.unit;
    addTo(alike, [title, ...dates.map(({ expression }) => expression)].join(', '), folder);
  }
  for (const { unit, part } of [...alike.values()].filter(({ length }) => length > 1).flat())
    if (part !== undefined) unit.title += ` (${part.number} of ${part.of})`;
}

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
function foldersHeld(folder: PlacedFolder): Extent[] {
  const quantity = folderCount(folder);
  if (quantity === 0) return [];
  return [{ type: 'carrier', coverage: 'whole', quantity, unit: quantity === 1 ? 'folder' : 'folders' }];
}

/** The room that the folders take, and what lies apart from them. */
function roomOf(folders: readonly PlacedFolder[], { housing }: Settings): Extent[] {
  const units = new Set<ShelfUnit>();
  for (const { things } of folders)
    for (const thing of things) for (const unit of thing.units) units.add(unit);
  return shareOfShelf(
    Array.from(units, ({ thickness }) => thickness),
    housing.measure,
  );
}
