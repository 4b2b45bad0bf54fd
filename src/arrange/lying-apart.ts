import { addTo } from '../catalogue/add-to.ts';
import { numbersInWords, pluralOf } from '../catalogue/say-container.ts';
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

/** Boxes of one kind together: in boxes 23-28 (medium volume boxes). */
function sayBoxes(boxes: readonly ShelfBox[]): string {
  if (boxes.length === 0) return 'by itself';
  if (boxes.length === 1) return `in ${sayAlike(boxes)}`;
  const alike = new Map<string, ShelfBox[]>();
  for (const box of boxes) addTo(alike, `${box.type} ${box.kind?.id ?? ''}`, box);
  return `in ${Array.from(alike.values(), sayAlike).join(' and ')}`;
}

function sayAlike([first, ...others]: readonly ShelfBox[]): string {
  if (first === undefined) return '';
  const { type, number, kind } = first;
  if (others.length === 0) return `${type} ${number}${kind === undefined ? '' : ` (${kind.one})`}`;
  const numbers = numbersInWords([number, ...others.map((box) => box.number)]);
  return `${pluralOf(type)} ${numbers}${kind === undefined ? '' : ` (${kind.many})`}`;
}
