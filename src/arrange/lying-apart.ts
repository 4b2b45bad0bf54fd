import { addTo } from '../catalogue/add-to.ts';
import type { Apart } from '../housing/part-folder.ts';
import type { HeldFolder, ShelfBox } from '../housing/placed.ts';

/** Where a thing lies that is not in its folder, and why: a pointer from its place in the order to the shelf. */
export function sayApart({ why }: Apart, boxes: readonly ShelfBox[], held: HeldFolder | undefined): string {
  return `Apart${held === undefined ? '' : ` from folder ${held.first}`}, ${sayBoxes(boxes)}: ${why}`;
}

// Beyond so many in one box, their number says more than their codes.
const NAMED_AT_MOST = 4;

/** What belongs to a folder but lies elsewhere: a pointer from the shelf to the thing. */
export function sayBelonging(
  apart: readonly { code: string; boxes: readonly ShelfBox[] }[],
): string | undefined {
  const places = new Map<string, string[]>();
  for (const { code, boxes } of apart) {
    const where = sayBoxes(boxes);
    addTo(places, where, code);
  }
  if (places.size === 0) return undefined;
  const parts = [...places].map(
    ([where, codes]) =>
      `${codes.length > NAMED_AT_MOST ? `${codes.length} things` : codes.join(', ')} ${where}`,
  );
  return `Belonging here but lying apart: ${parts.join('; ')}`;
}

const sayBoxes = (boxes: readonly ShelfBox[]) =>
  boxes.length === 0 ? 'by itself' : `in ${boxes.map(sayBox).join(' and ')}`;

const sayBox = ({ type, number, kind }: ShelfBox) =>
  `${type} ${number}${kind === undefined ? '' : ` (${kind.one})`}`;
