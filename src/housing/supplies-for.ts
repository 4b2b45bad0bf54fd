import type { Holder } from './model.ts';
import { holdersNeeded, sleeveFor } from './part-folder.ts';
import { foldersOf, type PlacedGroup, type ShelfBox } from './placed.ts';
import { filledBoxes } from './shelve.ts';
import type { Stock } from './stock.ts';
import { type Supply, supplies } from './supplies.ts';

/** What to get before the things of an arrangement can be put away. */
export function suppliesFor({
  groups,
  boxes,
  stock,
}: {
  groups: readonly PlacedGroup[];
  boxes: readonly ShelfBox[];
  stock: Stock;
}): Supply[] {
  const holders = foldersOf(groups).flatMap(({ held, things }) => [
    ...(held === undefined ? [] : [needed(held.holder, held.last - held.first + 1)]),
    ...things.flatMap(({ piece, apart }) => {
      if (apart !== undefined) return apart.holder === undefined ? [] : [needed(apart.holder, apart.holders)];
      const sleeve = sleeveFor(piece, stock);
      return sleeve === undefined ? [] : [needed(sleeve, holdersNeeded(sleeve, piece))];
    }),
  ]);
  return supplies({ holders, filled: filledBoxes(boxes) });
}

const needed = (holder: Holder, number: number) => ({ holder, number });
