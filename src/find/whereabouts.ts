import type { Component } from '../catalogue/component.ts';
import type { Whereabouts } from './entry.ts';

/** Where the things of a folder lie. The place in the folder counts what lies in it, not what lies apart. */
export function whereaboutsOf(folder: Component): (thing: Component) => Whereabouts {
  const numbers = folder.containers.filter(({ type }) => type === 'folder').map(({ number }) => number);
  const boxes = boxesIn(folder);
  const inIt = folder.children.filter((thing) => !liesApart(thing));
  const place = new Map(inIt.map((thing, index) => [thing, index + 1]));
  return (thing) => {
    const number = place.get(thing);
    if (number === undefined || numbers.length === 0) {
      const { physicalLocation: apart } = thing;
      return { boxes: boxesIn(thing), ...(apart !== undefined && { apart }) };
    }
    const [first = '', last] = [numbers[0]?.split('-')[0], numbers.at(-1)?.split('-').at(-1)];
    return {
      boxes,
      folder: last === undefined || last === first ? first : `${first}-${last}`,
      position: { number, of: inIt.length },
    };
  };
}

const liesApart = ({ containers, physicalLocation }: Component): boolean =>
  containers.length > 0 || physicalLocation !== undefined;

function boxesIn({ containers }: Component): Whereabouts['boxes'] {
  return containers.flatMap(({ type, number }) => (type === 'folder' ? [] : [{ type, number }]));
}

/** Where a thing lies, for people: "3rd of 12 in folder 27, box 4". */
export function sayWhereabouts({ boxes, folder, position, apart }: Whereabouts): string {
  const box = boxes.map(({ type, number }) => `${type} ${number}`).join(' and ');
  if (folder === undefined) return apart ?? (box === '' ? 'In no box' : `In ${box}`);
  const folders = `folder${folder.includes('-') ? 's' : ''} ${folder}`;
  const within =
    position === undefined
      ? 'In'
      : position.of === 1
        ? 'By itself in'
        : `${ordinal(position.number)} of ${position.of} in`;
  return `${within} ${folders}${box === '' ? '' : `, ${box}`}`;
}

/** 1st, 2nd, 3rd, 4th, 11th, 21st. */
function ordinal(number: number): string {
  const teen = Math.floor(number / 10) % 10 === 1;
  const ending = teen ? undefined : { 1: 'st', 2: 'nd', 3: 'rd' }[number % 10];
  return `${number}${ending ?? 'th'}`;
}
