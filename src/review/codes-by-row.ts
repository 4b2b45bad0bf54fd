import { referenceCodes } from '../arrange/index.ts';
import type { PlacedGroup } from '../housing/placed.ts';

/** The reference code that each row of the list has in the finding aid. */
export function codesByRow(
  groups: readonly PlacedGroup[],
  settings: Parameters<typeof referenceCodes>[0],
): ReadonlyMap<number, string> {
  const codeOf = referenceCodes(settings);
  const codes = new Map<number, string>();
  const visit = (group: PlacedGroup, above: readonly number[]): void => {
    const place = [...above, group.number];
    for (const inner of group.groups) visit(inner, place);
    for (const folder of group.folders) {
      for (const { thing, number } of folder.things)
        codes.set(thing.row, codeOf([...place, folder.number, number]));
    }
  };
  for (const group of groups) visit(group, []);
  return codes;
}
