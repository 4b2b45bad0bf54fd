import { type Apart, apartFrom, eachOf, holdersNeeded } from './apart.ts';
import { type Choices, choicesOf, faceIn, smallest } from './choices.ts';
import { micrometres, mm } from './measures.ts';
import type { Face, Form, Holder } from './model.ts';
import type { Piece } from './piece.ts';
import type { Stock } from './stock.ts';

export { type Apart, holdersNeeded, sleeveFor } from './apart.ts';

/** What lies in one folder. */
export interface Part {
  holder: Holder;
  pieces: Piece[];
  /** Of the content with its folder, or with all its folders, in millimetres. */
  thickness: number;
  /**
   * How many folders it takes: one, save for a single row of the list that is thicker than a folder may be, such as
   * 400 letters. Such a row is a part of its own, and its folders are numbered one after the other.
   */
  folders: number;
}

/** What is filed under one heading: by the folders it lies in, what lies elsewhere, and what takes no room at all. */
interface Parting {
  parts: Part[];
  apart: Apart[];
  /** Digital files, which lie on no shelf. */
  nowhere: Piece[];
}

/** A part while it is filled; its content in whole thousandths of a millimetre. */
interface Filling {
  holder: Holder;
  pieces: Piece[];
  content: number;
  face: Face;
}

/** What lies with what: mounts are kept from thickening the folders of papers, and frames lie in none. Common practice. */
const COMPANY: Readonly<Partial<Record<Form, string>>> = {
  sheet: 'loose',
  photograph: 'loose',
  bound: 'loose',
  mounted: 'mounted',
};

/**
 * Divides what is filed under one heading into folders that close, each the smallest that covers all of its content,
 * in the order given: a part begins where the one before is full. Parts come in the order of their first pieces.
 * Common practice throughout: a folder takes what its limit says, nothing sticks out of it, mounted photographs have
 * folders of their own, frames none, and nothing lies between papers but what is on paper.
 */
export function partFolder(pieces: readonly Piece[], stock: Stock): Parting {
  const choices = choicesOf(stock);
  const begun: (Filling | Part)[] = [];
  const open = new Map<string, Filling>();
  const apart: Apart[] = [];
  const nowhere: Piece[] = [];
  for (const piece of pieces) {
    const company = COMPANY[piece.form];
    const holder = company === undefined ? undefined : folderFor(piece, choices);
    if (piece.form === 'digital' && piece.thickness === 0) nowhere.push(piece);
    else if (company === undefined || holder === undefined) apart.push(apartFrom(piece, stock));
    else if (micrometres(piece.thickness) > micrometres(holder.limit)) {
      begun.push(closed(filling(holder, piece, choices), holdersNeeded(holder, piece)));
      // What follows the bundle must not come to lie before it.
      open.delete(company);
    } else if (!joined(open.get(company), piece, choices)) {
      const next = filling(holder, piece, choices);
      open.set(company, next);
      begun.push(next);
    }
  }
  return { parts: begun.map((part) => ('folders' in part ? part : closed(part))), apart, nowhere };
}

/** The smallest folder for each thing of a row; undefined where it is too large or too thick for any. */
function folderFor(piece: Piece, choices: Choices): Holder | undefined {
  const holder = smallest(choices.folders, faceIn(piece, choices), eachOf(piece));
  // Volumes that are too many for one folder stand together instead, like those that are too thick for any.
  const many = holder !== undefined && micrometres(piece.thickness) > micrometres(holder.limit);
  return many && piece.form === 'bound' && piece.shelf === 'volumes' ? undefined : holder;
}

/** Puts a piece into a part, in a larger folder if need be; false where it does not go in. */
function joined(part: Filling | undefined, piece: Piece, choices: Choices): boolean {
  if (part === undefined) return false;
  const { long, short } = faceIn(piece, choices);
  const larger = long > part.face.long || short > part.face.short;
  const face = larger ? mm(Math.max(part.face.long, long), Math.max(part.face.short, short)) : part.face;
  const holder = larger ? smallest(choices.folders, face) : part.holder;
  const content = part.content + micrometres(piece.thickness);
  if (holder === undefined || content > micrometres(holder.limit)) return false;
  part.pieces.push(piece);
  part.holder = holder;
  part.content = content;
  part.face = face;
  return true;
}

const filling = (holder: Holder, piece: Piece, choices: Choices): Filling => ({
  holder,
  pieces: [piece],
  content: micrometres(piece.thickness),
  face: faceIn(piece, choices),
});

const closed = ({ holder, pieces, content }: Filling, folders = 1): Part => ({
  holder,
  pieces,
  thickness: (content + folders * micrometres(holder.wall)) / 1000,
  folders,
});
