import { addTo } from '../catalogue/add-to.ts';
import { fold } from '../catalogue/fold.ts';
import { isMoved, type Settled } from '../catalogue/settled.ts';
import type { Thing } from '../catalogue/thing.ts';
import { partFolder } from '../housing/part-folder.ts';
import { type Piece, pieceOf } from '../housing/piece.ts';
import type { PlacedGroup } from '../housing/placed.ts';
import type { Stock } from '../housing/stock.ts';
import { joins, settledBoxes } from './accruals.ts';
import { groupTitle } from './devised-titles.ts';
import {
  finished,
  type GrowingFolder,
  type GrowingGroup,
  groupIn,
  hold,
  newFolder,
  newGroup,
  put,
} from './growing.ts';
import type { SeriesBefore } from './series-before.ts';
import { growSettled } from './settled-places.ts';
import { type Group, thingsOf } from './sort.ts';

/** The numbers that a finding aid which was taken in has given already. */
export interface BeforeList {
  /** The last folder, after which new ones are counted on. */
  lastFolder: number;
  /** The series into which things of the list go. */
  series: readonly SeriesBefore[];
  /** The highest number of a series. */
  highest: number;
}

const NOTHING: BeforeList = { lastFolder: 0, series: [], highest: 0 };

/**
 * Gives every thing its number, in a folder in which it fits. A settled thing keeps its place, whatever has become of
 * it in the list; a new one takes the next free number in a folder filed under the same that has room for it, or
 * comes into a new folder at the end of its group. What was once given is given to nothing else.
 */
export function placeThings(
  groups: readonly Group[],
  settled: readonly Settled[],
  stock: Stock,
  before: BeforeList = NOTHING,
): PlacedGroup[] {
  const root = newGroup(0, '');
  const present = settled.length === 0 ? new Map<string, Thing>() : byNumber(thingsOf(groups));
  growSettled(root, settled, present, stock);
  countOn(root, before);
  const hasPlace = placedBy(settled);
  const boxes = settledBoxes(root, stock);
  let folders = settled.reduce(
    (highest, row) => Math.max(highest, row.lastFolder ?? row.folder ?? 0),
    before.lastFolder,
  );

  const addFolders = (
    group: GrowingGroup,
    label: string | undefined,
    box: string | undefined,
    pieces: Piece[],
  ) => {
    const { parts, apart } = partFolder(pieces, stock);
    const apartOf = new Map(apart.map((one) => [one.piece, one]));
    for (const [list, part] of inParts(pieces, parts)) {
      group.highest += 1;
      const folder = newFolder(group.highest, label, box === undefined ? [] : [{ number: box }]);
      group.folders.push(folder);
      const placed = list.map((piece) => put(folder, piece, apartOf.get(piece)));
      if (part === undefined) continue;
      const own = new Set(part.pieces);
      hold(
        folder,
        part,
        folders + 1,
        placed.filter(({ piece }) => own.has(piece)),
        stock,
      );
      folders += part.folders;
    }
  };

  const grow = (sorted: readonly Group[], above: GrowingGroup): void => {
    for (const group of sorted) {
      // A group of which everything is settled elsewhere uses up no number.
      if (settled.length > 0 && thingsOf([group]).every(hasPlace)) continue;
      const mine = groupIn(above, groupTitle(group));
      grow(group.groups, mine);
      // What is added below has a label of its own each time, so those that are there now are all that can be meant.
      const there = new Map<string, GrowingFolder[]>();
      for (const folder of mine.folders) addTo(there, fold(folder.label ?? ''), folder);
      for (const { label, things } of group.folders) {
        const under = there.get(fold(label ?? '')) ?? [];
        const fresh = things.filter((thing) => !hasPlace(thing));
        const left = fresh.filter((thing) => !under.some((folder) => joins(folder, thing, stock, boxes)));
        for (const [box, members] of byBox(left)) addFolders(mine, label, box, members.map(pieceOf));
      }
    }
  };
  grow(groups, root);
  return finished(root).groups;
}

/** A series of the finding aid has its number there, unless what goes into it was settled otherwise before. */
function countOn(root: GrowingGroup, { series, highest }: BeforeList): void {
  const numbers = new Set(Array.from(root.groups.values(), ({ number }) => number));
  for (const { title, number, highest: within } of series) {
    if (root.groups.has(fold(title)) || numbers.has(number)) continue;
    groupIn(root, title, number).highest = within;
  }
  root.highest = Math.max(root.highest, highest);
}

/** Whether a thing has a settled place that still holds. */
function placedBy(settled: readonly Settled[]): (thing: Thing) => boolean {
  const numbers = new Set(settled.flatMap((row) => (isMoved(row) ? [] : [row.number])));
  return ({ number }) => number !== undefined && numbers.has(number);
}

/**
 * The pieces of each part in order, with what lies apart listed where it would have lain: after what comes before it.
 * Without any part, all of them in one list.
 */
function inParts<P extends { pieces: Piece[] }>(
  pieces: readonly Piece[],
  parts: readonly P[],
): [Piece[], P | undefined][] {
  if (parts.length <= 1) return [[[...pieces], parts[0]]];
  const partOf = new Map(parts.flatMap((part, index) => part.pieces.map((piece) => [piece, index] as const)));
  const lists = parts.map((): Piece[] => []);
  let current = 0;
  for (const piece of pieces) {
    current = partOf.get(piece) ?? current;
    lists[current]?.push(piece);
  }
  return lists.map((list, index) => [list, parts[index]]);
}

/** Things by the box that the list names, in the order in which the boxes come; a folder lies in one box. */
function byBox(things: readonly Thing[]): Map<string | undefined, Thing[]> {
  const boxes = new Map<string | undefined, Thing[]>();
  for (const thing of things) {
    addTo(boxes, thing.box, thing);
  }
  return boxes;
}

const byNumber = (things: readonly Thing[]) =>
  new Map(things.flatMap((thing) => (thing.number === undefined ? [] : [[thing.number, thing] as const])));
