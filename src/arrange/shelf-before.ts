import type { Component } from '../catalogue/component.ts';

const isFolder = (type: string) => /^folder/i.test(type);

/** The boxes, and whatever else is no folder, that a finding aid names, by their numbers. */
export const boxesIn = ({ containers, children }: Component): string[] => [
  ...containers.flatMap(({ type, number }) => (isFolder(type) ? [] : [number])),
  ...children.flatMap(boxesIn),
];

/**
 * The highest number of a folder where folders are counted through all boxes, so that new ones can be counted on;
 * nought where each box begins anew, or none has a number.
 */
export function lastFolderIn(collection: Component): number {
  const boxOf = new Map<number, string>();
  let highest = 0;
  let beginsAnew = false;
  const note = ({ containers, children }: Component): void => {
    const box = containers.find(({ type }) => !isFolder(type))?.number ?? '';
    for (const { type, number } of containers) {
      if (!isFolder(type) || !NUMBERS.test(number)) continue;
      for (const one of number.split('-').map(Number)) {
        beginsAnew ||= (boxOf.get(one) ?? box) !== box;
        boxOf.set(one, box);
        highest = Math.max(highest, one);
      }
    }
    children.forEach(note);
  };
  note(collection);
  return beginsAnew ? 0 : highest;
}

const NUMBERS = /^\d{1,6}(?:-\d{1,6})?$/;
