import { isMoved, SEVERAL, type Settled } from '../catalogue/settled.ts';
import type { Thing } from '../catalogue/thing.ts';
import { apartFrom } from '../housing/apart.ts';
import { HOLDERS } from '../housing/holders.ts';
import type { Holder } from '../housing/model.ts';
import { partFolder } from '../housing/part-folder.ts';
import { pieceOf } from '../housing/piece.ts';
import type { PlacedThing } from '../housing/placed.ts';
import type { Stock } from '../housing/stock.ts';
import {
  type GivenBox,
  type GrowingFolder,
  type GrowingGroup,
  groupIn,
  hold,
  newFolder,
  put,
} from './growing.ts';

/** Puts what is settled where it is settled. `present` holds the things of the list by their numbers. */
export function growSettled(
  root: GrowingGroup,
  settled: readonly Settled[],
  present: ReadonlyMap<string, Thing>,
  stock: Stock,
): void {
  const folders = new Map<string, { folder: GrowingFolder; rows: Settled[] }>();
  for (const row of settled) {
    let group = root;
    row.groups.forEach((title, depth) => {
      group = groupIn(group, title, row.place[depth]);
    });
    const number = row.place.at(-2) ?? 0;
    const key = row.place.slice(0, -1).join('/');
    let known = folders.get(key);
    if (known === undefined) {
      known = { folder: newFolder(number, row.filedUnder), rows: [] };
      folders.set(key, known);
      group.folders.push(known.folder);
      group.highest = Math.max(group.highest, number);
    }
    known.rows.push(row);
    known.folder.highest = Math.max(known.folder.highest, row.place.at(-1) ?? 0);
  }
  for (const { folder, rows } of folders.values()) growFolder(folder, rows, present, stock);
}

function growFolder(
  folder: GrowingFolder,
  rows: readonly Settled[],
  present: ReadonlyMap<string, Thing>,
  stock: Stock,
): void {
  const inside: PlacedThing[] = [];
  // What is gone may name a box in which the folder does not lie any more.
  const held = rows.filter((row) => row.folder !== undefined);
  const sample = held.find(({ gone }) => gone === undefined) ?? held[0];
  folder.boxes = sample === undefined ? [] : givenBoxes(sample);
  for (const row of [...rows].sort((a, b) => (a.place.at(-1) ?? 0) - (b.place.at(-1) ?? 0))) {
    const thing = isMoved(row) ? undefined : present.get(row.number);
    const number = row.place.at(-1) ?? 0;
    if (thing === undefined) {
      folder.gaps.push({ number, why: row.gone ?? 'removed' });
      continue;
    }
    const piece = pieceOf(thing);
    if (row.folder !== undefined) inside.push(put(folder, piece, undefined, number));
    else {
      const apart = partFolder([piece], stock).apart[0];
      // Were it new, it would lie in a folder; settled as it is, it stays where it is.
      const stays = row.box === undefined ? undefined : { ...apartFrom(piece, stock), why: 'settled there' };
      put(folder, piece, apart ?? stays, number, givenBoxes(row));
    }
  }
  if (sample?.folder === undefined) return;
  const holder = holderNamed(sample.folderKind, stock);
  if (holder === undefined) return;
  const pieces = inside.map(({ piece }) => piece);
  const folderCount = (sample.lastFolder ?? sample.folder) - sample.folder + 1;
  const thickness = pieces.reduce((sum, piece) => sum + piece.thickness, folderCount * holder.wall);
  hold(folder, { holder, pieces, thickness, folders: folderCount }, sample.folder, inside, stock);
}

/** A bundle too large for a box names several, in the order of its folders; a box of the list bears any name. */
function givenBoxes({ box, boxKind }: Settled): GivenBox[] {
  if (box === undefined) return [];
  if (boxKind === undefined) return [{ number: box }];
  const kinds = boxKind.split(SEVERAL);
  return box.split(SEVERAL).map((number, index) => {
    const kind = kinds[index] ?? kinds[0];
    return { number, ...(kind !== undefined && { kind }) };
  });
}

function holderNamed(id: string | undefined, stock: Stock): Holder | undefined {
  const named = [...stock.holders, ...HOLDERS].find((holder) => holder.id === id);
  return named ?? stock.holders.find(({ shelf }) => shelf === 'papers');
}
