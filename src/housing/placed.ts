import type { Thing } from '../catalogue/thing.ts';
import type { Box, Holder, Unit } from './model.ts';
import type { Apart } from './part-folder.ts';
import type { Piece } from './piece.ts';

/** A thing with its number in its folder, and how it lies. */
export interface PlacedThing {
  thing: Thing;
  number: number;
  piece: Piece;
  /** Where it does not lie in its folder: why, and in what. */
  apart: Apart | undefined;
  /** What it lies in or as on the shelf: one piece, save for a bundle too large for a box; none where it takes no room. */
  units: readonly ShelfUnit[];
}

/** A folder of the arrangement, with what is settled or worked out about it. */
export interface PlacedFolder {
  /** Within its group. */
  number: number;
  label: string | undefined;
  things: PlacedThing[];
  /** Numbers once given to things that are not there any more, and why. */
  gaps: { number: number; why: string }[];
  /** Where several folders are filed under the same. */
  part: { number: number; of: number } | undefined;
  /** The folder itself; undefined where nothing of it lies in one. */
  held: HeldFolder | undefined;
}

/**
 * A folder as it stands on the shelf. Numbers run through the collection; a large bundle may take several folders, and
 * so many that they stand in several boxes.
 */
export interface HeldFolder {
  first: number;
  last: number;
  holder: Holder;
  units: readonly ShelfUnit[];
}

/** A group of the arrangement; folders and further groups are numbered together. */
export interface PlacedGroup {
  number: number;
  title: string;
  groups: PlacedGroup[];
  folders: PlacedFolder[];
}

/** What lies in a box as one piece, and whose it is. */
export interface ShelfUnit extends Unit {
  things: PlacedThing[];
  /** The folder that it is, or that it lies apart from. */
  folder: PlacedFolder;
  /** The box that the list or the settled numbers say, if any. */
  given: { number: string; kind?: string } | undefined;
  box: ShelfBox | undefined;
}

/** A box on the shelf, or a package of what fits into no box. */
export interface ShelfBox {
  number: string;
  type: 'box' | 'package';
  /** Undefined where only the list names the box, and for a package. */
  kind: Box | undefined;
  units: ShelfUnit[];
}

/** How many folders on the shelf one of the arrangement is; none where nothing of it lies in one. */
export const folderCount = ({ held }: Pick<PlacedFolder, 'held'>): number =>
  held === undefined ? 0 : held.last - held.first + 1;

/** Every folder of some groups, in the order in which they stand. */
export function foldersOf(groups: readonly PlacedGroup[]): PlacedFolder[] {
  return groups.flatMap((group) => [...foldersOf(group.groups), ...group.folders]);
}
