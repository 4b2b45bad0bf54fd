import type { Component } from '../catalogue/component.ts';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import type { Settings } from '../catalogue/settings.ts';
import { boxesOf, type Settled } from '../catalogue/settled.ts';
import type { Thing } from '../catalogue/thing.ts';
import { foldersOf, type PlacedGroup, type ShelfBox } from '../housing/placed.ts';
import { shelve } from '../housing/shelve.ts';
import { type Stock, stockFrom } from '../housing/stock.ts';
import { gatherAgents } from './agents.ts';
import { describeCollection } from './collection.ts';
import { describeControl } from './control.ts';
import { describeGroups } from './describe.ts';
import { groupTitle } from './devised-titles.ts';
import { extendWith } from './extend.ts';
import { type LookAlike, lookAlikes } from './look-alikes.ts';
import { type Move, movesWanted } from './moves.ts';
import { notesOnGaps, numberHistory } from './number-history.ts';
import { type BeforeList, placeThings } from './place.ts';
import { codesFor, referenceCodes } from './reference-codes.ts';
import { seriesBefore } from './series-before.ts';
import { boxesIn, lastFolderIn } from './shelf-before.ts';
import { type Group, sortThings } from './sort.ts';

/** What the owner of a catalogue wrote, and the numbers settled so far. */
export interface ToArrange {
  settings: Settings;
  things: readonly Thing[];
  settled?: readonly Settled[];
  /** A finding aid that was taken in: what is arranged goes into it. */
  base?: FindingAid;
}

/** A finding aid with what stands behind it: where everything lies, and what would better lie elsewhere. */
export interface Arrangement {
  aid: FindingAid;
  /** What the list makes by itself, where it went into a finding aid that was taken in. */
  added?: FindingAid;
  /** The things as they are sorted, whatever is settled. */
  sorted: readonly Group[];
  groups: readonly PlacedGroup[];
  boxes: readonly ShelfBox[];
  stock: Stock;
  /** Settled things that would now be sorted elsewhere. */
  moves: readonly Move[];
  /** Things without a settled number that look like ones that have lost theirs in the list. */
  lookAlikes: readonly LookAlike[];
}

/**
 * Turns a list into a finding aid, and keeps what stands behind it.
 * @param today as for `arrange`
 */
export function arrangement(catalogue: ToArrange, today: string): Arrangement {
  const { things, settled = [], base } = catalogue;
  const settings = base === undefined ? catalogue.settings : bySeries(catalogue.settings);
  const agents = gatherAgents(settings);
  // In the order of the list, so that it does not hang on the way of sorting which spelling of a name is met first.
  for (const { creators, people } of things) for (const name of [...creators, ...people]) agents.idOf(name);
  const stock = stockFrom(settings.housing, settings.repository.country);
  const sorted = sortThings(things, settings.sort, agents);
  const before = base && beforeList(base.collection, sorted.map(groupTitle), settings);
  const groups = placeThings(sorted, settled, stock, before);
  const taken = [...settled.flatMap(boxesOf), ...(base === undefined ? [] : boxesIn(base.collection))];
  const boxes = shelve(groups, stock, taken);
  const codeOf = referenceCodes(settings);
  const history = numberHistory(groups, settled, codeOf);
  const children = describeGroups(groups, settings, agents, history);
  const shelf = { folders: foldersOf(groups), boxes };
  const collection = describeCollection(settings, things, shelf, children, agents);
  collection.generalNotes = [...collection.generalNotes, ...notesOnGaps(history.emptied([]), codeOf)];
  const arranged: FindingAid = {
    format: 'kinfonds finding aid',
    version: 1,
    control: describeControl(settings, today),
    ...recipientOf(settings),
    people: agents.all(),
    collection,
  };
  const aids = base === undefined ? { aid: arranged } : { aid: extendWith(base, arranged), added: arranged };
  const moves = movesWanted(sorted, settled);
  return { ...aids, sorted, groups, boxes, stock, moves, lookAlikes: lookAlikes(sorted, settled) };
}

/** What of the numbers of a finding aid that was taken in is given already. */
const beforeList = (collection: Component, titles: readonly string[], settings: Settings): BeforeList => ({
  lastFolder: lastFolderIn(collection),
  ...seriesBefore(collection, titles, codesFor(settings)),
});

/** The series of a finding aid that was taken in are what new things go into. */
const bySeries = (settings: Settings): Settings => ({
  ...settings,
  sort: { ...settings.sort, groups: ['series'] },
});

function recipientOf({ recipient }: Settings): Pick<FindingAid, 'recipient'> {
  if (recipient === undefined) return {};
  const { formats: _, prefix: __, ...known } = recipient;
  return { recipient: known };
}
