import type { Thing } from './thing.ts';

/** A number that was settled: where a thing has its place for good. One row of `numbers.csv`. */
export interface Settled {
  /** Number of the thing in the list. */
  number: string;
  title: string;
  /** Without the prefix and in the form `2/5/13`: group, (further groups,) folder, thing. */
  place: readonly number[];
  /** Titles of the groups, outermost first. */
  groups: readonly string[];
  /** What its folder is filed under (a year, an occasion); undefined where there is nothing to file by. */
  filedUnder?: string;
  /** Number of the folder, running through the collection; undefined where the thing lies in none. */
  folder?: number;
  /** The last of its folders, where a bundle needs several; in the file the two stand together: `3 to 5`. */
  lastFolder?: number;
  /** Id of the kind of folder. */
  folderKind?: string;
  /** Number of the box as written on it, or of several for a bundle too large for one; undefined where the thing lies in none. */
  box?: string;
  /** Id of the kind of box; undefined for a box that only the list names. */
  boxKind?: string;
  /** Why nothing lies there any more: `removed`, or `moved to 2/7/4`. */
  gone?: string;
}

/** How the reason begins for a place whose thing has been given another. */
export const MOVED = 'moved';

/** Whether the thing of a settled place has been given another since. */
export const isMoved = ({ gone }: Pick<Settled, 'gone'>): boolean => gone?.startsWith(MOVED) === true;

/** Between the numbers of the boxes in which a bundle lies that is too large for one. */
export const SEVERAL = ', ';

/** The numbers of the boxes of a settled thing; a box that only the list names bears any name, commas included. */
export const boxesOf = ({ box, boxKind }: Settled): string[] =>
  box === undefined ? [] : boxKind === undefined ? [box] : box.split(SEVERAL);

/** Whether every thing of a list has its place for good. */
export function isSettled({
  things,
  settled,
}: {
  things: readonly Thing[];
  settled: readonly Settled[];
}): boolean {
  const numbers = new Set(settled.flatMap(({ number, gone }) => (gone === undefined ? [number] : [])));
  return things.every(({ number }) => number !== undefined && numbers.has(number));
}
