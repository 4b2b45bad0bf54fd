import type { Extent } from '../catalogue/component.ts';
import type { HousingSettings } from '../catalogue/housing-settings.ts';
import { type Count, extentsOf } from '../kinds/extents.ts';
import type { Box } from './model.ts';

const FOOT = 304.8;
const METRE = 1000;

type Measure = HousingSettings['measure'];

/**
 * Statements of extent for the boxes of a collection: room on the shelf, then how many of each kind. DACS 2.5. The sum is
 * rounded to two decimals, not its parts: two boxes of 5 in are 0.83 linear feet, not 0.84.
 */
export function extentsOfBoxes(filled: readonly { box: Box }[], measure: Measure): Extent[] {
  const boxes = filled.map(({ box }) => box);
  const cartons = measure === 'metres' ? [] : boxes.filter(isCarton);
  // A record carton of 1.04 cubic feet is called one cubic foot: common practice.
  const called = sum(cartons.map((carton) => Math.max(1, Math.round(cubicFeet(carton)))));
  return [
    ...alongShelf(sum(boxes.map((box) => box.along)), measure),
    ...(called === 0 ? [] : [inCubicFeet(called, cartons.length === boxes.length ? 'whole' : 'part')]),
    ...extentsOf(countBoxes(boxes)).map((extent): Extent => ({ ...extent, type: 'carrier' })),
  ];
}

/**
 * The room that the folders of a series or a file take in their boxes, from their thicknesses in millimetres. It is
 * marked as approximate, since a thickness is worked out and not measured. DACS 2.5 wants a number, so a little is
 * stated as that ("0.04 linear feet") and not as "less than 0.1"; what would round to 0.00 is not stated at all, and
 * the count of its things says how much it is.
 */
export const shareOfShelf = (thicknesses: readonly number[], measure: Measure): Extent[] =>
  alongShelf(sum(thicknesses), measure).map((extent) => ({ ...extent, approximate: true }));

/** Extents in words, the room first and the counts behind it: 0.83 linear feet (2 document boxes). DACS 2.5. */
export function sayExtent(extents: readonly Extent[]): string {
  const said = (some: readonly Extent[]) =>
    some
      .map(({ approximate, quantity, unit }) => `${approximate ? 'about ' : ''}${quantity} ${unit}`)
      .join(', ');
  const room = said(extents.filter(({ type }) => type === 'spaceoccupied'));
  const counts = said(extents.filter(({ type }) => type !== 'spaceoccupied'));
  return room === '' || counts === '' ? room + counts : `${room} (${counts})`;
}

function alongShelf(millimetres: number, measure: Measure): Extent[] {
  const feet = hundredths(millimetres / FOOT);
  const metres = hundredths(millimetres / METRE);
  const stated: Extent[] = [];
  if (measure !== 'metres') stated.push(room(feet, feet === 1 ? 'linear foot' : 'linear feet'));
  if (measure !== 'feet') stated.push(room(metres, metres === 1 ? 'linear metre' : 'linear metres'));
  return stated.filter(({ quantity }) => quantity > 0);
}

const room = (quantity: number, unit: string): Extent => ({
  type: 'spaceoccupied',
  coverage: 'whole',
  quantity,
  unit,
});

const inCubicFeet = (called: number, coverage: Extent['coverage']): Extent => ({
  ...room(called, called === 1 ? 'cubic foot' : 'cubic feet'),
  coverage,
  approximate: true,
});

/** How many of each kind of box, the most frequent first, equal ones in the order in which they stand. */
function countBoxes(boxes: readonly Box[]): Count[] {
  const counts = new Map<string, Count>();
  for (const { id, one, many } of boxes) {
    const count = counts.get(id) ?? { unit: { one, many, key: id }, number: 0, approximate: false };
    counts.set(id, { ...count, number: count.number + 1 });
  }
  return [...counts.values()].sort((a, b) => b.number - a.number);
}

/** Only what is kept in record cartons is commonly measured in cubic feet. */
const isCarton = ({ id }: Box) => id === 'record-carton';

const cubicFeet = ({ outside: { width, height, depth } }: Box) => (width * height * depth) / FOOT ** 3;

const sum = (numbers: readonly number[]) => numbers.reduce((total, number) => total + number, 0);

/** To two decimals, halves up, also where the half is not quite one in binary: 38.1 mm are 0.125 feet, so 0.13. */
const hundredths = (number: number) => Math.round(number * 100 + 1e-6) / 100;
