import { sayCount } from '../catalogue/say-count.ts';

/** Boxes, and packages of what fits into none, counted: 43 boxes and 3 packages. Blank where there are neither. */
export const sayBoxes = (boxes: number, packages: number): string =>
  [boxes === 0 ? '' : sayCount(boxes, 'box', 'boxes'), packages === 0 ? '' : sayCount(packages, 'package')]
    .filter((part) => part !== '')
    .join(' and ');

/** The same behind folders: 190 folders, 43 boxes and 3 packages. Blank where there is nothing of it all. */
export function sayFoldersAndBoxes(folders: number, boxes: number, packages: number): string {
  const held = sayBoxes(boxes, packages);
  if (folders === 0) return held;
  const all = [sayCount(folders, 'folder'), ...(held === '' ? [] : [held])];
  return all.join(boxes > 0 && packages > 0 ? ', ' : ' and ');
}
