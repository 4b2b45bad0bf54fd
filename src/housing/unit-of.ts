import { type Apart, eachOf, quantityOf } from './apart.ts';
import { roomIn } from './fill-boxes.ts';
import { mm } from './measures.ts';
import type { Box, Face, Shelf, Unit } from './model.ts';
import type { Part } from './part-folder.ts';
import type { Piece } from './piece.ts';

/** A folder with its content, or all the folders of a bundle, as one piece on the shelf. */
export const unitOfPart = ({ holder: { shelf, outside }, thickness }: Part): Unit => ({
  shelf,
  outside,
  thickness,
});

/**
 * What lies apart, as one piece on the shelf. Small things lie side by side, so each takes only its share of a layer;
 * what is rolled is as thick as its roll; textiles are folded to the size of their box.
 */
export function unitOfApart(apart: Apart): Unit {
  const { piece, holder, shelf, boxes } = apart;
  if (piece.form === 'rolled') return { shelf, ...rolled(piece) };
  if (piece.form === 'textile') return { shelf, ...folded(piece, boxes) };
  const outside = holder?.outside ?? mm(piece.size.long, piece.size.short);
  const stack = stackOf(apart);
  if (holder?.type === 'folder') return { shelf, outside, thickness: stack };
  return {
    shelf,
    outside,
    thickness: Math.max(stack / abreast(outside, shelf, boxes), least(apart, outside)),
  };
}

/**
 * A bundle that is thicker than every box for it, as the fewest equal lots that each go into one; anything else as it
 * is. No folder is divided between boxes, nor a thing.
 * @param most how many lots it can be divided into: the folders of a part, or the things of a row
 */
export function inLots(unit: Unit, most: number, boxes: readonly Box[]): Unit[] {
  let deepest = 0;
  for (const box of boxes) if (faceFits(box, unit.outside, unit.shelf)) deepest = Math.max(deepest, box.deep);
  const inOne = Math.floor((deepest * most) / unit.thickness);
  if (unit.thickness <= deepest || inOne < 1) return [unit];
  return equalLots(unit, most, Math.ceil(most / inOne));
}

/** The same in a given number of lots; the last may in truth be the smaller one. */
export const equalLots = (unit: Unit, most: number, lots: number): Unit[] =>
  new Array<Unit>(lots).fill({ ...unit, thickness: (unit.thickness * Math.ceil(most / lots)) / most });

/** How thick all things of a row are in what they lie in, one on the other; pockets of a page lie side by side. */
function stackOf({ piece, holder, holders }: Apart): number {
  if (holder === undefined) return piece.thickness;
  const content = holder.type === 'sleeve' ? holders * eachOf(piece) : piece.thickness;
  return content + holders * holder.wall;
}

const faceFits = (box: Box, outside: Face, shelf: Shelf) => roomIn(box, [], { shelf, outside, thickness: 0 });

/**
 * How many of them lie side by side in whichever box they come into: on the floor of a flat box, or along the width of
 * an upright one. Things of unlike size are reckoned each by itself, and the last layer as if it were shared. From
 * memory: so do people pack, and a gap left by one is filled by the next.
 */
function abreast(outside: Face, shelf: Shelf, boxes: readonly Box[]): number {
  let fewest = Number.POSITIVE_INFINITY;
  for (const box of boxes)
    if (faceFits(box, outside, shelf)) fewest = Math.min(fewest, countIn(box, outside));
  return Number.isFinite(fewest) ? Math.max(1, fewest) : 1;
}

function countIn({ lies, face }: Box, { long, short }: Face): number {
  if (lies === 'rolled') return 1;
  const along = (one: number, other: number) =>
    Math.floor(face.long / one) * (lies === 'flat' ? Math.floor(face.short / other) : 1);
  const turned = long <= face.short ? along(short, long) : 0;
  return Math.max(along(long, short), turned);
}

/** One thing alone is never thinner than it is: so none comes into a box that is wide enough for it but too shallow. */
function least({ piece, holder, boxes, shelf }: Apart, outside: Face): number {
  const one = eachOf(piece) + (holder?.wall ?? 0);
  return boxes.some((box) => faceFits(box, outside, shelf) && box.deep < one) ? one : 0;
}

/** A core of 3 in, around which a large sheet is rolled so that it does not crease. Common practice. */
const CORE = 76;
/** A sheet narrower than this is not rolled: the measures are those of the roll itself. From memory. */
const NARROW = 200;

/** A roll: as long as the sheet is wide, and as thick as its windings make it around the core. */
function rolled(piece: Piece): Pick<Unit, 'outside' | 'thickness'> {
  const { long, short } = piece.size;
  if (short < NARROW) return { outside: mm(long, short), thickness: short * quantityOf(piece) };
  // The end of the roll is a ring of the area that the edge of the sheet has.
  const across = Math.sqrt(CORE ** 2 + (4 * long * piece.thickness) / Math.PI);
  return { outside: mm(Math.max(short, across), Math.min(short, across)), thickness: across };
}

/** A textile, folded until it is no larger than the largest box for textiles, the thicker for it. Arithmetic. */
function folded(piece: Piece, boxes: readonly Box[]): Pick<Unit, 'outside' | 'thickness'> {
  const { long, short } = piece.size;
  const largest = boxes.toSorted((a, b) => areaOf(b.face) - areaOf(a.face))[0];
  if (largest === undefined) return { outside: mm(long, short), thickness: piece.thickness };
  const outside = mm(
    Math.min(long, largest.face.long - PADDING),
    Math.min(short, largest.face.short - PADDING),
  );
  return { outside, thickness: (piece.thickness * areaOf(piece.size)) / areaOf(outside) };
}

/** For the tissue around a textile. From memory. */
const PADDING = 20;

const areaOf = ({ long, short }: Face) => long * short;
