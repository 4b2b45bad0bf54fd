import { covers } from './measures.ts';
import type { Holder } from './model.ts';
import { holdersNeeded, sleeveFor } from './part-folder.ts';
import { folderCount, foldersOf, type PlacedGroup, type ShelfBox } from './placed.ts';
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
    ...(held === undefined ? [] : [needed(held.holder, folderCount({ held }))]),
    ...things.flatMap(({ piece, apart }) => {
      const holder = apart === undefined ? held?.holder : apart.holder;
      const own = apart?.holder === undefined ? [] : [needed(apart.holder, apart.holders)];
      // A sleeve larger than the folder would stick out of it: there the print lies between sheets of paper.
      const sleeve = holder?.type === 'folder' ? sleeveFor(piece, stock) : undefined;
      const fits = sleeve !== undefined && holder !== undefined && covers(holder.inside, sleeve.outside);
      return fits ? [...own, needed(sleeve, holdersNeeded(sleeve, piece))] : own;
    }),
  ]);
  return supplies({ holders, filled: filledBoxes(boxes) });
}

/** How many of the folders to get hold no folder of the outline, but something that lies apart from its own. */
export const foldersApart = (groups: readonly PlacedGroup[]): number =>
  foldersOf(groups)
    .flatMap(({ things }) => things)
    .reduce((sum, { apart }) => sum + (apart?.holder?.type === 'folder' ? apart.holders : 0), 0);

const needed = (holder: Holder, number: number) => ({ holder, number });
