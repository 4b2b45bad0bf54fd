import { MOVED, SEVERAL, type Settled } from '../catalogue/settled.ts';
import type { PlacedFolder, PlacedGroup, PlacedThing } from '../housing/placed.ts';
import { PACKAGE } from '../housing/shelve.ts';

/**
 * The rows of `numbers.csv` for things as they are placed. What was settled before and has nothing in it any more
 * stays, with the reason, so that no number is ever given twice and every gap is explained.
 * @param groups every thing with a number of the list
 */
export function settledFrom(groups: readonly PlacedGroup[], before: readonly Settled[]): Settled[] {
  const rows = [...rowsOf(groups, [], [])];
  const now = new Map(rows.map((row) => [row.number, row]));
  const gone = before.flatMap((row): Settled[] => {
    const current = now.get(row.number);
    if (current === undefined) return [{ ...row, gone: row.gone ?? 'removed' }];
    if (current.place.join('/') === row.place.join('/')) return [];
    const known = row.gone !== undefined && row.gone !== MOVED;
    return [known ? row : { ...row, gone: `${MOVED} to ${current.place.join('/')}` }];
  });
  return [...rows, ...gone].sort((a, b) => byPlace(a.place, b.place));
}

function* rowsOf(
  groups: readonly PlacedGroup[],
  place: readonly number[],
  titles: readonly string[],
): Generator<Settled> {
  for (const group of groups) {
    const here = [...place, group.number];
    const named = [...titles, group.title];
    yield* rowsOf(group.groups, here, named);
    for (const folder of group.folders) {
      for (const placed of folder.things) yield rowOf(placed, folder, [...here, folder.number], named);
    }
  }
}

function rowOf(
  { thing, number, apart, units }: PlacedThing,
  { label, held }: PlacedFolder,
  place: readonly number[],
  groups: readonly string[],
): Settled {
  if (thing.number === undefined) throw new Error(`The thing of row ${thing.row} has no number.`);
  const boxes = units.flatMap(({ box }) => (box === undefined ? [] : [box]));
  const kinds = boxes.flatMap(({ type, kind }) => (type === 'package' ? PACKAGE : (kind?.id ?? [])));
  return {
    number: thing.number,
    title: thing.title,
    place: [...place, number],
    groups,
    ...(label !== undefined && { filedUnder: label }),
    ...(apart === undefined && units.length > 0 && held !== undefined && folderOf(held)),
    ...(apart?.holder !== undefined && { folderKind: apart.holder.id }),
    ...(boxes.length > 0 && { box: boxes.map((box) => box.number).join(SEVERAL) }),
    ...(kinds.length > 0 && { boxKind: kinds.join(SEVERAL) }),
  };
}

const folderOf = ({ first, last, holder }: NonNullable<PlacedFolder['held']>) => ({
  folder: first,
  ...(last !== first && { lastFolder: last }),
  folderKind: holder.id,
});

function byPlace(a: readonly number[], b: readonly number[]): number {
  for (let at = 0; at < Math.min(a.length, b.length); at++) {
    const difference = (a[at] ?? 0) - (b[at] ?? 0);
    if (difference !== 0) return difference;
  }
  return a.length - b.length;
}
