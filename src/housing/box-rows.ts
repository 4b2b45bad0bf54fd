import { enlarged } from './measures.ts';
import type { Box, Face, Shelf } from './model.ts';

const M = 'from memory; makers differ by a few millimetres';
const BOARD = 'acid-free board, metal edges or folded';

/** Between the inside of a box and its outside, on both sides together, where only one of them is known. */
export const WALLS = 6;

/** What has to be said of a box; the rest follows from it. Millimetres. */
export interface BoxRow {
  id: string;
  names: [one: string, many: string];
  /** Of the content, inside. */
  face: Face;
  deep: number;
  takes: readonly Shelf[];
  use: string;
  material?: string;
  source?: string;
}

/** An upright box, as it stands with its content seen from the front: what is deep runs along the shelf. */
export const upright = ({ id, names, face, material = BOARD, source = M, ...row }: BoxRow): Box => {
  const { long, short } = enlarged(face, WALLS);
  const depth = row.deep + WALLS;
  const outside = { width: long, height: short, depth };
  return {
    ...row,
    id,
    one: names[0],
    many: names[1],
    lies: 'upright',
    face,
    outside,
    along: depth,
    material,
    source,
  };
};

/**
 * A flat box. Flat boxes are stacked, so it counts with its height, as if the stack stood along the shelf: common
 * practice, and local rules differ; an extent measured by hand takes its place in `collection.yaml`.
 */
export const flat = ({ id, names, face, material = BOARD, source = M, ...row }: BoxRow): Box => {
  const { long, short } = enlarged(face, WALLS);
  const outside = { width: long, height: row.deep + WALLS, depth: short };
  return {
    ...row,
    id,
    one: names[0],
    many: names[1],
    lies: 'flat',
    face,
    outside,
    along: outside.height,
    material,
    source,
  };
};
