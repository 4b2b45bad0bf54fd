import { BOXES } from './boxes.ts';
import { asFilled, fillBoxes, roomIn } from './fill-boxes.ts';
import { type Box, type Filled, SHELVES, type Shelf } from './model.ts';
import { foldersOf, type PlacedGroup, type ShelfBox, type ShelfUnit } from './placed.ts';
import type { Stock } from './stock.ts';

/**
 * Puts what has been placed into boxes: first what the list or the settled numbers say, then, shelf by shelf and in
 * order, what is new: into the last box of its shelf while there is room, after that into further boxes. What fits
 * into no box is wrapped by itself.
 * @param taken numbers of boxes that were given before, though nothing may lie there now
 * @returns the boxes in the order of their numbers
 */
export function shelve(
  groups: readonly PlacedGroup[],
  stock: Stock,
  taken: readonly string[] = [],
): ShelfBox[] {
  const units = foldersOf(groups).flatMap(unitsOf);
  const boxes = new Map<string, ShelfBox>();
  const waiting = new Map<Shelf, ShelfUnit[]>(SHELVES.map((shelf) => [shelf, []]));
  for (const unit of units) {
    if (unit.given === undefined) waiting.get(unit.shelf)?.push(unit);
    else putInto(boxNamed(boxes, unit.given, stock), unit);
  }
  let highest = 0;
  for (const number of [...boxes.keys(), ...taken]) {
    if (/^\d{1,9}$/.test(number)) highest = Math.max(highest, Number(number));
  }
  const newBox = (type: ShelfBox['type'], kind?: Box): ShelfBox => {
    highest += 1;
    const box: ShelfBox = { number: String(highest), type, kind, units: [] };
    boxes.set(box.number, box);
    return box;
  };
  for (const [shelf, all] of waiting) {
    const last = [...boxes.values()]
      .filter(({ kind }) => kind?.takes.includes(shelf))
      .sort(byNumber)
      .at(-1);
    const rest = [...all];
    // In order: once something does not go into the last box, nothing after it does.
    while (last?.kind !== undefined && rest[0] !== undefined && roomIn(last.kind, last.units, rest[0])) {
      putInto(last, rest[0]);
      rest.shift();
    }
    const { filled, unplaced } = fillBoxes(rest, stock.boxes);
    for (const { box: kind, units: members } of filled) {
      const box = newBox('box', kind);
      for (const unit of members) putInto(box, unit);
    }
    for (const unit of unplaced) putInto(newBox('package'), unit);
  }
  return [...boxes.values()].sort(byNumber);
}

function putInto(box: ShelfBox, unit: ShelfUnit): void {
  box.units.push(unit);
  unit.box = box;
}

function boxNamed(
  boxes: Map<string, ShelfBox>,
  { number, kind: id }: NonNullable<ShelfUnit['given']>,
  stock: Stock,
): ShelfBox {
  const known = boxes.get(number);
  const kind = boxKindNamed(id, stock);
  if (known !== undefined) {
    // The list may name a box before a settled number says of what kind it is.
    if (kind !== undefined) known.kind ??= kind;
    if (id === PACKAGE) known.type = 'package';
    return known;
  }
  const type = id === PACKAGE ? 'package' : 'box';
  const box: ShelfBox = { number, type, kind, units: [] };
  boxes.set(number, box);
  return box;
}

/** A kind of box that was settled, though it may not be at hand any more. */
export const boxKindNamed = (id: string | undefined, stock: Stock): Box | undefined =>
  id === undefined ? undefined : [...stock.boxes, ...BOXES].find((box) => box.id === id);

/** The boxes whose kind is known, with how their content lies. */
export const filledBoxes = (boxes: readonly ShelfBox[]): (Filled<ShelfUnit> & { number: string })[] =>
  boxes.flatMap(({ kind, number, units }) =>
    kind === undefined ? [] : [{ ...asFilled(kind, units), number }],
  );

/** What stands for the kind of box where something is wrapped by itself. */
export const PACKAGE = 'package';

/** What of a folder goes onto the shelf: itself, then each thing that lies apart from it. */
function unitsOf({ held, things }: ReturnType<typeof foldersOf>[number]): ShelfUnit[] {
  const apart = things.flatMap(({ units, apart }) => (apart === undefined ? [] : units));
  return held === undefined ? apart : [...held.units, ...apart];
}

const collator = new Intl.Collator('en', { numeric: true });
const byNumber = (a: ShelfBox, b: ShelfBox) => collator.compare(a.number, b.number);
