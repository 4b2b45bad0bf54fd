import { fold } from '../catalogue/fold.ts';
import { MOVED, SEVERAL, type Settled } from '../catalogue/settled.ts';
import type { Thing } from '../catalogue/thing.ts';
import { apartFrom, quantityOf } from '../housing/apart.ts';
import { choicesOf } from '../housing/choices.ts';
import { roomIn } from '../housing/fill-boxes.ts';
import { HOLDERS } from '../housing/holders.ts';
import { covers } from '../housing/measures.ts';
import type { Box, Holder, Unit } from '../housing/model.ts';
import { type Apart, type Part, partFolder } from '../housing/part-folder.ts';
import { type Piece, pieceOf } from '../housing/piece.ts';
import type { PlacedFolder, PlacedGroup, PlacedThing, ShelfUnit } from '../housing/placed.ts';
import { boxKindNamed } from '../housing/shelve.ts';
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
  highest: 0,
  boxes,
});

/** Whether the thing of a settled place has been given another since. */
export const isMoved = ({ gone }: Settled): boolean => gone?.startsWith(MOVED) === true;

/** The group of that title, which takes the next free number if it is not there yet. */
export function groupIn(above: GrowingGroup, title: string, number = above.highest + 1): GrowingGroup {
  const known = above.groups.get(fold(title));
  if (known !== undefined) return known;
  const group = newGroup(number, title);
  above.groups.set(fold(title), group);
  above.highest = Math.max(above.highest, number);
  return group;
}

/** Lists a thing in a folder; where it lies apart, in a unit of its own. */
export function put(
  folder: GrowingFolder,
  piece: Piece,
  apart: Apart | undefined,
  number = folder.highest + 1,
  given: readonly GivenBox[] = folder.boxes,
): PlacedThing {
  const placed: PlacedThing = { thing: piece.thing, number, piece, units: [] };
  folder.highest = Math.max(folder.highest, number);
  folder.things.push(placed);
  if (apart !== undefined) {
    placed.apart = apart;
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
  owner: Pick<ShelfUnit, 'things' | 'folder'>,
): ShelfUnit[] {
  const lots =
    given.length === 0
      ? inLots(unit, most, boxes)
      : given.length === 1
        ? [unit]
        : equalLots(unit, most, given.length);
  return lots.map((lot, index) => {
    const box = given[index];
    return { ...lot, ...owner, ...(box !== undefined && { given: box }) };
  });
}

/** Adds a thing to a folder, if it belongs and fits there, and into the box of that folder. */
export function joins(folder: GrowingFolder, thing: Thing, stock: Stock, boxes: SettledBoxes): boolean {
  const [given] = folder.boxes;
  if (thing.box !== undefined && thing.box !== given?.number) return false;
  const piece = pieceOf(thing);
  const alone = partFolder([piece], stock);
  if (alone.parts.length === 0) {
    // Its folder has a box; what lies apart gets one on a shelf of its own.
    put(folder, piece, alone.apart[0], undefined, thing.box === undefined ? [] : [{ number: thing.box }]);
    return true;
  }
  const { held } = folder;
  const unit = held?.units[0];
  if (held === undefined || unit === undefined || held.units.length > 1) return false;
  const [part, ...more] = partFolder([...unit.things.map((one) => one.piece), piece], stock).parts;
  if (part === undefined || more.length > 0 || part.folders !== held.last - held.first + 1) return false;
  if (!covers(held.holder.inside, part.holder.inside)) return false;
  const box = boxes.get(given?.number ?? '');
  const grown = { ...unit, thickness: piece.thickness };
  if (box !== undefined && !roomIn(box.kind, box.units, grown)) return false;
  box?.units.push(grown);
  const things = [...unit.things, put(folder, piece, undefined)];
  hold(folder, { ...part, holder: held.holder }, held.first, things, stock);
  return true;
}

/** The boxes whose kind is settled, with what lies in them. */
export type SettledBoxes = ReadonlyMap<string, { kind: Box; units: Unit[] }>;

/** The same for what has grown so far. */
export function settledBoxes(root: GrowingGroup, stock: Stock): SettledBoxes {
  const boxes = new Map<string, { kind: Box; units: Unit[] }>();
  const visit = ({ groups, folders }: GrowingGroup): void => {
    for (const group of groups.values()) visit(group);
    for (const { held, things } of folders) {
      for (const unit of new Set([...(held?.units ?? []), ...things.flatMap(({ units }) => units)])) {
        const kind = boxKindNamed(unit.given?.kind, stock);
        if (unit.given === undefined || kind === undefined) continue;
        const box = boxes.get(unit.given.number);
        if (box === undefined) boxes.set(unit.given.number, { kind, units: [unit] });
        else box.units.push(unit);
      }
    }
  };
  visit(root);
  return boxes;
}

/** Puts what is settled where it is settled. `present` holds the things of the list by their numbers. */
export function growSettled(
  root: GrowingGroup,
  settled: readonly Settled[],
  present: ReadonlyMap<string, Thing>,
  stock: Stock,
): void {
  const folders = new Map<string, { folder: GrowingFolder; rows: Settled[] }>();
  for (const row of settled) {
    let group = root;
    row.groups.forEach((title, depth) => {
      group = groupIn(group, title, row.place[depth]);
    });
    const number = row.place.at(-2) ?? 0;
    const key = row.place.slice(0, -1).join('/');
    let known = folders.get(key);
    if (known === undefined) {
      known = { folder: newFolder(number, row.filedUnder), rows: [] };
      folders.set(key, known);
      group.folders.push(known.folder);
      group.highest = Math.max(group.highest, number);
    }
    known.rows.push(row);
    known.folder.highest = Math.max(known.folder.highest, row.place.at(-1) ?? 0);
  }
  for (const { folder, rows } of folders.values()) growFolder(folder, rows, present, stock);
}

function growFolder(
  folder: GrowingFolder,
  rows: readonly Settled[],
  present: ReadonlyMap<string, Thing>,
  stock: Stock,
): void {
  const inside: PlacedThing[] = [];
  // What is gone may name a box in which the folder does not lie any more.
  const held = rows.filter((row) => row.folder !== undefined);
  const sample = held.find(({ gone }) => gone === undefined) ?? held[0];
  folder.boxes = sample === undefined ? [] : givenBoxes(sample);
  for (const row of [...rows].sort((a, b) => (a.place.at(-1) ?? 0) - (b.place.at(-1) ?? 0))) {
    const thing = isMoved(row) ? undefined : present.get(row.number);
    const number = row.place.at(-1) ?? 0;
    if (thing === undefined) {
      folder.gaps.push({ number, why: row.gone ?? 'removed' });
      continue;
    }
    const piece = pieceOf(thing);
    if (row.folder !== undefined) inside.push(put(folder, piece, undefined, number));
    else {
      const apart = partFolder([piece], stock).apart[0];
      // Were it new, it would lie in a folder; settled as it is, it stays where it is.
      const stays = row.box === undefined ? undefined : { ...apartFrom(piece, stock), why: 'settled there' };
      put(folder, piece, apart ?? stays, number, givenBoxes(row));
    }
  }
  if (sample?.folder === undefined) return;
  const holder = holderNamed(sample.folderKind, stock);
  if (holder === undefined) return;
  const pieces = inside.map(({ piece }) => piece);
  const thickness = pieces.reduce((sum, piece) => sum + piece.thickness, holder.wall);
  const folderCount = (sample.lastFolder ?? sample.folder) - sample.folder + 1;
  hold(folder, { holder, pieces, thickness, folders: folderCount }, sample.folder, inside, stock);
}

/** A bundle too large for a box names several, in the order of its folders; a box of the list bears any name. */
function givenBoxes({ box, boxKind }: Settled): GivenBox[] {
  if (box === undefined) return [];
  if (boxKind === undefined) return [{ number: box }];
  const kinds = boxKind.split(SEVERAL);
  return box.split(SEVERAL).map((number, index) => {
    const kind = kinds[index] ?? kinds[0];
    return { number, ...(kind !== undefined && { kind }) };
  });
}

function holderNamed(id: string | undefined, stock: Stock): Holder | undefined {
  const named = [...stock.holders, ...HOLDERS].find((holder) => holder.id === id);
  return named ?? stock.holders.find(({ shelf }) => shelf === 'papers');
}

/** What has been put together, by number; folders and groups without anything in them are left out. */
export function finished({ number, title, groups, folders }: GrowingGroup): PlacedGroup {
  const filled = folders.filter(({ things }) => things.length > 0);
  const under = new Map<string | undefined, GrowingFolder[]>();
  for (const folder of filled) {
    const same = under.get(folder.label);
    if (same === undefined) under.set(folder.label, [folder]);
    else same.push(folder);
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
    folders: filled.sort((a, b) => a.number - b.number),
  };
}
