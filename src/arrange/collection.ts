import type { Component, Extent, LanguageUse } from '../catalogue/component.ts';
import { dateContextOf } from '../catalogue/date-context.ts';
import { languageUse } from '../catalogue/languages.ts';
import { nothing } from '../catalogue/nothing.ts';
import type { Settings } from '../catalogue/settings.ts';
import type { Thing } from '../catalogue/thing.ts';
import { readDate } from '../dates/index.ts';
import { extentsOfBoxes } from '../housing/extent.ts';
import { folderCount, type PlacedFolder, type ShelfBox } from '../housing/placed.ts';
import { countByKind, extentsOf, THINGS, unitOf } from '../kinds/extents.ts';
import { accessFromSettings } from './access.ts';
import type { Agents } from './agents.ts';
import { codesFor } from './reference-codes.ts';
import { arrangementFrom, scopeFromList, UNSTATED_ACCESS, UNSTATED_LANGUAGE } from './stand-ins.ts';
import { datesOf, datesOfThings } from './statements-of-date.ts';

type Described = Omit<Component, 'children' | 'id' | 'level' | 'title' | keyof ReturnType<typeof nothing>>;

/** What there is on the shelf. */
interface Shelf {
  folders: readonly PlacedFolder[];
  boxes: readonly ShelfBox[];
}

/** Which running text of `collection.yaml` goes to which element of the description. */
const TEXTS = {
  abstract: 'abstract',
  history: 'biographicalHistory',
  custody: 'custodialHistory',
  acquisition: 'acquisition',
  scope: 'scopeAndContent',
  appraisal: 'appraisal',
  accruals: 'accruals',
  arrangement: 'arrangement',
  use: 'useConditions',
  legalStatus: 'legalStatus',
  physical: 'physicalCharacteristics',
  technical: 'technicalRequirements',
  findingAids: 'otherFindingAids',
  originals: 'originals',
  copies: 'copies',
  related: 'relatedMaterial',
  separated: 'separatedMaterial',
  publications: 'publications',
  citation: 'preferredCitation',
  processing: 'processing',
} as const satisfies Partial<Record<keyof Settings, keyof Described>>;

/** The description of the collection as a whole: DACS chapter 1, the top of a multilevel description. */
export function describeCollection(
  settings: Settings,
  things: readonly Thing[],
  shelf: Shelf,
  children: Component[],
  agents: Agents,
): Component {
  const { dates: given } = settings;
  const context = dateContextOf(settings);
  const creators = idsOf(settings.creators, agents);
  return {
    ...codesFor(settings).top,
    level: 'collection',
    title: settings.title,
    ...nothing(),
    dates:
      given === undefined
        ? datesOfThings(things)
        : datesOf({ written: given, reading: readDate(given, context) }),
    extents: extentsOfCollection(settings, things, shelf),
    physicalDescription: settings.extent,
    creators: creators.map((agent) => ({ agent })),
    repository: settings.repository,
    languages: languagesOf(settings.languages, things),
    scopeAndContent: scopeFromList(things),
    arrangement: arrangementFrom(settings.sort, children.length),
    ...textsOf(settings),
    accessConditions: accessFromSettings(settings.access ?? { statement: UNSTATED_ACCESS }, false, context),
    generalNotes: settings.notes.map((text) => ({ text })),
    people: idsOf(
      settings.people.map(({ name }) => name),
      agents,
    )
      .filter((id) => !creators.includes(id))
      .map((agent) => ({ agent })),
    accessPoints: [
      ...settings.subjects.map((term) => ({ type: 'subject' as const, term })),
      ...genresOf(things).map((term) => ({ type: 'genre' as const, term })),
    ],
    children,
  };
}

/** Each agent once, however many of its names are given. */
function idsOf(names: readonly string[], agents: Agents): string[] {
  return [...new Set(names.map((name) => agents.idOf(name)))].filter((id) => id !== undefined);
}

function textsOf(settings: Settings): Described {
  const found: Described = {};
  for (const [from, to] of Object.entries(TEXTS) as [
    keyof typeof TEXTS,
    (typeof TEXTS)[keyof typeof TEXTS],
  ][]) {
    const text = settings[from];
    if (text !== undefined) found[to] = text.trim();
  }
  return found;
}

// DACS 2.5.4: numeric quantity and unit. What the settings say was measured by hand, and stands beside the counts.
function extentsOfCollection(
  { extent, housing }: Settings,
  things: readonly Thing[],
  shelf: Shelf,
): Extent[] {
  const counts = countByKind(things);
  const items = counts.reduce((sum, { number }) => sum + number, 0);
  const folders = shelf.folders.reduce((sum, folder) => sum + folderCount(folder), 0);
  const known = shelf.boxes.flatMap(({ kind }) => (kind === undefined ? [] : [{ box: kind }]));
  const boxes = shelf.boxes.filter(({ type }) => type === 'box').length;
  const packages = shelf.boxes.length - boxes;
  // Where all are of one kind, its count is the count of all.
  const unlike = boxes > 0 && (extent !== undefined || new Set(known.map(({ box }) => box.id)).size !== 1);
  const approximate = counts.some((count) => count.approximate);
  const more = counts.some((count) => count.more);
  const stated: Extent[] = [
    ...extentsOf([{ unit: THINGS, number: items, approximate, ...(more && { more }) }]),
    ...(folders === 0 ? [] : [carriers(folders, folders === 1 ? 'folder' : 'folders')]),
    ...(unlike ? [carriers(boxes, boxes === 1 ? 'box' : 'boxes')] : []),
    ...(packages === 0 ? [] : [carriers(packages, packages === 1 ? 'package' : 'packages')]),
    ...(extent === undefined && known.length > 0 ? extentsOfBoxes(known, housing.measure) : []),
  ];
  // DACS 2.5 requires an extent at the top. Where nothing could be counted there are at least the rows of the list.
  return stated.length > 0 || things.length === 0
    ? stated
    : extentsOf([{ unit: THINGS, number: things.length, approximate: true, more: true }]);
}

const carriers = (quantity: number, unit: string): Extent => ({
  type: 'carrier',
  coverage: 'whole',
  quantity,
  unit,
});

/** The languages that the settings name, then those of the list, each once. */
function languagesOf(named: readonly string[], things: readonly Thing[]): LanguageUse[] {
  const uses = new Map<string, LanguageUse>();
  const words = new Set(named);
  for (const { languages } of things) for (const word of languages) words.add(word);
  for (const word of words) {
    const use = languageUse(word);
    if (use !== undefined) uses.set(use.name, use);
  }
  return uses.size === 0 ? [UNSTATED_LANGUAGE] : [...uses.values()];
}

function genresOf(things: readonly Thing[]): string[] {
  const named = things.filter(({ kind }) => kind !== undefined);
  const kinds = named.map(({ kind }) => {
    const { unit, together = unit } = unitOf(kind);
    return together.many;
  });
  return [...new Set(kinds)].sort();
}
