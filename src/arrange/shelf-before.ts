import type { Component } from '../catalogue/component.ts';
import { isFolder, NOWHERE, numbersIn, type Place, placeOf } from '../catalogue/containers.ts';

/** The boxes, and whatever else is no folder, that a finding aid names, by their numbers; of a range the last. */
export const boxesIn = ({ containers, children }: Component): string[] => [
  ...containers.flatMap(({ type, number }) => (isFolder(type) ? [] : numbersIn(number).slice(-1))),
  ...children.flatMap(boxesIn),
];

/** Folders that are counted together, as others may be apart: flat folders. */
interface Counted {
  highest: number;
  beginsAnew: boolean;
  /** In which boxes each number can be; what names no box is left out. */
  boxes: Map<string, readonly string[]>;
}

// A folder put in later has a letter behind its number: 3a.
const NUMBER = /^0*(\d{1,6})[a-z]?$/i;
const PLAIN = 'folder';
// Of so many boxes, of which one holds a folder, nothing can be learnt.
const MOST_BOXES = 100;

/**
 * The highest number of a folder where folders are counted through all boxes, so that new ones can be counted on;
 * nought where each box begins anew, or none has a number. A number that stands in two boxes tells that each begins anew.
 */
export function lastFolderIn(collection: Component): number {
  const kinds = new Map<string, Counted>();
  const visit = ({ containers, children }: Component, above: Place): void => {
    const place = placeOf(containers, above);
    if (containers.length > 0) for (const one of place.folders) note(kinds, one);
    for (const child of children) visit(child, place);
  };
  visit(collection, NOWHERE);
  // New folders are plain ones: how those are counted decides.
  if (kinds.get(PLAIN)?.beginsAnew) return 0;
  return Math.max(0, ...[...kinds.values()].map(({ highest, beginsAnew }) => (beginsAnew ? 0 : highest)));
}

function note(kinds: Map<string, Counted>, { folder, boxes }: Place['folders'][number]): void {
  const kind = kindOf(folder.type);
  if (kind === undefined) return;
  const counted: Counted = kinds.get(kind) ?? { highest: 0, beginsAnew: false, boxes: new Map() };
  kinds.set(kind, counted);
  if (counted.beginsAnew) return;
  const here = boxes.flatMap(({ type, number }) =>
    numbersIn(number).map((one) => `${type} ${one}`.toLowerCase()),
  );
  for (const written of numbersIn(folder.number)) {
    const [number = '', digits] = NUMBER.exec(written) ?? [];
    if (digits === undefined) continue;
    counted.highest = Math.max(counted.highest, Number(digits));
    if (here.length === 0 || here.length > MOST_BOXES) continue;
    const key = number.toLowerCase().replace(/^0+/, '');
    const known = counted.boxes.get(key) ?? here;
    const both = known.filter((box) => here.includes(box));
    counted.beginsAnew ||= both.length === 0;
    counted.boxes.set(key, both);
  }
}

/** Folders of a kind are counted together; undefined for envelopes and sleeves, among which no folder is counted. */
function kindOf(type: string): string | undefined {
  const said = type.toLowerCase();
  return said.startsWith(PLAIN) ? PLAIN : said.includes(PLAIN) ? said : undefined;
}
