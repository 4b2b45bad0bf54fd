import type { Container } from './component.ts';

// An envelope or a sleeve holds papers within a box too, and does not stand on the shelf: its number is that of no box.
const FOLDER = /^folders?(?=\s*[(,:;]|$)|(?:folder|envelope|sleeve)s?$/i;

/** Whether a type of container is one that stands in a box: folder, Oversize folder, flatfolder, envelope, sleeve. */
export const isFolder = (type: string): boolean => FOLDER.test(type);

const RANGE = /^(\d{1,6})\s*(?:[-‐‑‒–—]|to)\s*(\d{1,6})$/i;
const NUMBER = /^\d{1,6}[a-z]?$/i;
// A range of more than this is a slip, or no range of numbers at all.
const MOST = 10_000;

/**
 * The numbers that a container names: 2, 3 and 4 for `2-4`, `2–4`, `2 - 4` or `2 to 4`; 2, 5 and 6 for `2, 5-6`. What is no
 * number or range, `3a` or `oversize`, is one by itself, and so is `10-030`, which is one number in two parts.
 */
export const numbersIn = (text: string): string[] =>
  partsOf(text).flatMap((part) => {
    const range = rangeOf(part);
    if (range === undefined) return [part];
    const { first, last, width } = range;
    return Array.from({ length: last - first + 1 }, (_, at) => String(first + at).padStart(width, '0'));
  });

/** Whether a container names several numbers. */
export const namesSeveral = (text: string): boolean => {
  const [first = text, ...others] = partsOf(text);
  return others.length > 0 || rangeOf(first) !== undefined;
};

function partsOf(text: string): string[] {
  // With a space after the comma: 1,200 is one number.
  const parts = text.split(/,\s+/);
  return parts.every((part) => NUMBER.test(part) || rangeOf(part) !== undefined) ? parts : [text];
}

function rangeOf(text: string): { first: number; last: number; width: number } | undefined {
  const [, from = '', to = ''] = RANGE.exec(text) ?? [];
  const [first, last] = [Number(from), Number(to)];
  const isOne = to.startsWith('0') && to.length !== from.length;
  if (from === '' || isOne || last <= first || last - first >= MOST) return undefined;
  return { first, last, width: from.startsWith('0') ? from.length : 0 };
}

/** Where a unit lies. */
export interface Place {
  boxes: readonly Container[];
  folders: readonly FolderInBox[];
}

/** A folder, and the box it stands in: none where none is named, several where it stands in one of them. */
export interface FolderInBox {
  folder: Container;
  boxes: readonly Container[];
}

/** Of a unit that names no container. */
export const NOWHERE: Place = { boxes: [], folders: [] };

/**
 * Where a unit lies by the containers that it names. A folder stands in its `parent`, else in the box named before it, else
 * in the first named with it, else in that of the unit above: what is said above is not repeated below (ISAD(G) 2.4).
 */
export function placeOf(containers: readonly Container[], above: Place = NOWHERE): Place {
  if (containers.length === 0) return above;
  const boxes = containers.filter(({ type }) => !isFolder(type));
  const known = [...containers, ...above.boxes];
  const around = ({ parent }: Container) =>
    parent === undefined ? undefined : known.find(({ id }) => id === parent);
  const boxesOf = (folder: Container, inner: readonly Container[]): readonly Container[] => {
    const outer = around(folder);
    // Some stand in one another in a ring, which says nothing.
    if (outer !== undefined && !inner.includes(outer))
      return isFolder(outer.type) ? boxesOf(outer, [...inner, outer]) : [outer];
    const before = containers.slice(0, containers.indexOf(folder)).findLast(({ type }) => !isFolder(type));
    const box = before ?? boxes[0];
    return box === undefined ? above.boxes : [box];
  };
  const folders = containers.filter(({ type }) => isFolder(type));
  return {
    boxes: boxes.length > 0 ? boxes : above.boxes,
    folders: folders.map((folder) => ({ folder, boxes: boxesOf(folder, [folder]) })),
  };
}
