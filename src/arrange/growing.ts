import { addTo } from '../catalogue/add-to.ts';
import { fold } from '../catalogue/fold.ts';
import { quantityOf } from '../housing/apart.ts';
import { choicesOf } from '../housing/choices.ts';
import type { Box, Unit } from '../housing/model.ts';
import type { Apart, Part } from '../housing/part-folder.ts';
import type { Piece } from '../housing/piece.ts';
import type { PlacedFolder, PlacedGroup, PlacedThing, ShelfUnit } from '../housing/placed.ts';
import type { Stock } from '../housing/stock.ts';
import { equalLots, inLots, unitOfApart, unitOfPart } from '../housing/unit-of.ts';

/** A group while it is put together: what is settled in it, and what has been added. */
export interface GrowingGroup {
  number: number;
  title: string;
  /** Under their titles, folded. */
  groups: Map<string, GrowingGroup>;
  folders: GrowingFolder[];
  /** The highest number that was ever given in it. */
  highest: number;
}

/** A folder while it is put together. */
export interface GrowingFolder extends PlacedFolder {
  highest: number;
  /** Boxes that the list or the settled numbers name: one, save for a bundle too large for a box. */
  boxes: readonly GivenBox[];
}

export interface GivenBox {
  number: string;
  kind?: string;
}

export const newGroup = (number: number, title: string): GrowingGroup => ({
  number,
  title,
  groups: new Map(),
  folders: [],
  highest: 0,
});

export const newFolder = (
  number: number,
  label: string | undefined,
  boxes: readonly GivenBox[] = [],
): GrowingFolder => ({
  number,
  label,
  things: [],
  gaps: [],
  part: undefined,
  held: undefined,
  highest: 0,
  boxes,
});

/** The group of that title, which takes the next free number if it is not there yet. */
export function groupIn(above: GrowingGroup, title: string, number = above.highest + 1): GrowingGroup {
  const known = above.groups.get(fold(title));
  if (known !== undefined) return known;
  const group = newGroup(number, title);
  above.groups.set(fold(title), group);
  above.highest = Math.max(above.highest, number);
  return group;
}

/** What takes no room. */
const NONE: readonly ShelfUnit[] = [];

/** Lists a thing in a folder; where it lies apart, in a unit of its own. */
export function put(
  folder: GrowingFolder,
  piece: Piece,
  apart: Apart | undefined,
  number = folder.highest + 1,
  given: readonly GivenBox[] = folder.boxes,
): PlacedThing {
  const placed: PlacedThing = { thing: piece.thing, number, piece, apart, units: NONE };
  folder.highest = Math.max(folder.highest, number);
  folder.things.push(placed);
  if (apart !== undefined) {
    placed.units = shelfUnits(unitOfApart(apart), quantityOf(piece), apart.boxes, given, {
      things: [placed],
      folder,
    });
  }
  return placed;
}

/** Puts the things of a folder that do not lie apart into a folder on the shelf. */
export function hold(
  folder: GrowingFolder,
  part: Part,
  first: number,
  things: PlacedThing[],
  stock: Stock,
): void {
  const unit = unitOfPart(part);
  const boxes = choicesOf(stock).boxes[unit.shelf];
  const units = shelfUnits(unit, part.folders, boxes, folder.boxes, { things, folder });
  folder.held = { first, last: first + part.folders - 1, holder: part.holder, units };
  for (const placed of things) placed.units = units;
}

/** A unit with whose it is; in several lots where a bundle is too large for a box, or was settled so. */
function shelfUnits(
  unit: Unit,
  most: number,
  boxes: readonly Box[],
  given: readonly GivenBox[],
  { things, folder }: Pick<ShelfUnit, 'things' | 'folder'>,
): ShelfUnit[] {
  const lots =
    given.length === 0
      ? inLots(unit, most, boxes)
      : given.length === 1
        ? [unit]
        : equalLots(unit, most, given.length);
  return lots.map(({ shelf, outside, thickness }, index) => ({
    shelf,
    outside,
    thickness,
    things,
    folder,
    given: given[index],
    box: undefined,
  }));
}

/** What has been put together, by number; folders and groups without anything in them are left out. */
export function finished({ number, title, groups, folders }: GrowingGroup): PlacedGroup {
  const filled = folders.filter(({ things }) => things.length > 0).sort((a, b) => a.number - b.number);
  const under = new Map<string, GrowingFolder[]>();
  for (const folder of filled) {
    // All that is left of it lies apart.
    if (folder.held?.units.every(({ things }) => things.length === 0)) folder.held = undefined;
    const label = fold(folder.label ?? '');
    addTo(under, label, folder);
  }
  for (const same of under.values()) {
    if (same.length === 1) continue;
    same.forEach((folder, index) => {
      folder.part = { number: index + 1, of: same.length };
    });
  }
  return {
    number,
    title,
    groups: [...groups.values()]
      .map(finished)
      .filter((group) => group.groups.length > 0 || group.folders.length > 0)
      .sort((a, b) => a.number - b.number),
    folders: filled,
  };
}
