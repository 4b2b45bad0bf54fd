import type { Thing } from '../catalogue/thing.ts';
import type { PlacedFolder, PlacedGroup } from '../housing/placed.ts';
import { referenceCodes } from './reference-codes.ts';

/** The reference codes of placed folders and things, in the order of the arrangement. */
export function placedCodes(
  groups: readonly PlacedGroup[],
  settings: Parameters<typeof referenceCodes>[0],
): { folders: Map<PlacedFolder, string>; things: Map<Thing, string> } {
  const codeAt = referenceCodes(settings);
  const folders = new Map<PlacedFolder, string>();
  const things = new Map<Thing, string>();
  const visit = (group: PlacedGroup, above: readonly number[]): void => {
    const here = [...above, group.number];
    for (const inner of group.groups) visit(inner, here);
    for (const folder of group.folders) {
      folders.set(folder, codeAt([...here, folder.number]));
      for (const { thing, number } of folder.things)
        things.set(thing, codeAt([...here, folder.number, number]));
    }
  };
  for (const group of groups) visit(group, []);
  return { folders, things };
}
