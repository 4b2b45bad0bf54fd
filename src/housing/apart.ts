import { type Choices, choicesOf, faceIn, smallest } from './choices.ts';
import { roomIn } from './fill-boxes.ts';
import type { Box, Form, Holder, Shelf } from './model.ts';
import { LEAVES, type Piece, SOME } from './piece.ts';
import { inWords } from './size-checked.ts';
import { pocketsOf } from './sleeves.ts';
import type { Stock } from './stock.ts';
import { usualOf } from './usual-form.ts';

/** A row of the list that does not lie in the folder under whose heading it is filed. */
export interface Apart {
  piece: Piece;
  /** What it lies in: a sleeve, an enclosure, a large folder; nothing, where it goes into its box as it is. */
  holder: Holder | undefined;
  /** How many of those its things need. */
  holders: number;
  /** With what it stands together. */
  shelf: Shelf;
  /** The boxes for that shelf. */
  boxes: readonly Box[];
  /** Why it lies apart, to follow a colon in a note. */
  why: string;
}

/** Why things are not kept between papers. Common practice, with no single source. */
const WHY: Readonly<Record<Exclude<Form, 'sheet' | 'photograph' | 'mounted' | 'bound'>, string>> = {
  framed: 'a frame lies flat, in no folder',
  negative: 'negatives are kept apart from paper',
  slide: 'slides are kept apart from paper',
  glass: 'glass is kept apart from paper',
  disc: 'records are kept apart from paper',
  film: 'film is kept apart from paper',
  tape: 'tapes are kept apart from paper',
  textile: 'textiles are kept apart from paper',
  object: 'objects are kept apart from paper',
  rolled: 'rolled',
  digital: 'data carriers are kept apart from paper',
};

/**
 * How many things a row of the list stands for. Papers that nobody counted ("letters") can be divided anywhere, here
 * into lots of a millimetre, and so can those of many sheets; anything else that is not counted is one thing.
 */
export function quantityOf({ thing, form, thickness, inOne }: Piece): number {
  if (inOne) return 1;
  const { quantity, kind, sheets, quantityUnread } = thing;
  if (form === 'sheet' && sheets !== undefined) return Math.max(1, quantity ?? 1, sheets);
  if (quantity !== undefined) return Math.max(1, quantity);
  if (quantityUnread && LEAVES.has(form)) return SOME;
  const papers = form === 'sheet' && thickness > 1 && kind !== undefined && usualOf(kind)?.plural === true;
  return papers ? Math.ceil(thickness) : 1;
}

/** Thickness of one of the things of a row, in millimetres. */
export const eachOf = (piece: Piece): number => piece.thickness / quantityOf(piece);

/** The smallest sleeve, case or envelope for each thing of a row; undefined where the stock has none that fits. */
export const sleeveFor = (piece: Piece, stock: Stock): Holder | undefined =>
  smallest(choicesOf(stock).sleeves[piece.form], piece.size, eachOf(piece));

/** How many sleeves the things of a row need, each in one or in a pocket of one; and folders, for how thick they are. */
export function holdersNeeded(holder: Holder, piece: Piece): number {
  const each = eachOf(piece);
  const fitting = each > 0 ? Math.floor(holder.limit / each + 1e-9) : Number.POSITIVE_INFINITY;
  const inOne = holder.type === 'sleeve' ? pocketsOf(holder) : Math.max(1, fitting);
  return Math.ceil(quantityOf(piece) / inOne);
}

/** How a thing lies that goes into no folder of papers. */
export function apartFrom(piece: Piece, stock: Stock): Apart {
  const { form, size, shelf } = piece;
  const choices = choicesOf(stock);
  const { largeFolders, boxes } = choices;
  const each = eachOf(piece);
  const on = (where: Shelf, holder: Holder | undefined, why: string): Apart => ({
    piece,
    holder,
    holders: holder === undefined ? 0 : holdersNeeded(holder, piece),
    shelf: where,
    boxes: boxes[where],
    why,
  });
  switch (form) {
    case 'sheet':
    case 'photograph':
    case 'mounted': {
      const large = smallest(largeFolders, faceIn(piece, choices), each);
      return on('oversize', large, whyNot(piece, choices, large));
    }
    case 'framed': {
      // What is too thick for a flat box is packed as an object is.
      const fits = (where: Shelf) =>
        boxes[where].some((box) => roomIn(box, [], { shelf: where, outside: size, thickness: each }));
      return on(fits('objects') && !fits('oversize') ? 'objects' : 'oversize', undefined, WHY.framed);
    }
    case 'bound':
      return on('volumes', undefined, whyNot(piece, choices));
    default: {
      const holder = sleeveFor(piece, stock);
      return on(holder?.shelf ?? (form === 'digital' ? 'objects' : shelf), holder, WHY[form]);
    }
  }
}

/** Why something on paper lies in no folder among the papers: thickness first, for it is what hands notice. */
function whyNot(piece: Piece, choices: Choices, large?: Holder): string {
  const { folders } = choices;
  const each = eachOf(piece);
  if (!folders.some(({ limit }) => each <= limit)) return 'too thick for a folder';
  const face = faceIn(piece, choices);
  if (smallest(folders, face, each) !== undefined) return 'too many for a folder';
  const why = large === undefined ? 'larger than any folder' : 'too large for its folder';
  if (!piece.assumed) return why;
  const noted = piece.thing.size === undefined ? 'no size is noted' : 'its size is not known';
  return `${why}; ${noted}, and ${inWords(face)} was assumed`;
}
