import type { Component } from '../catalogue/component.ts';
import { numbersInWords } from '../catalogue/say-container.ts';
import type { Above, Whereabouts } from './entry.ts';

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
    return { boxes, folder: firstToLast(numbers), position: { number, of: inIt.length } };
  };
}

/** The first and last of some folders, `3-5`, of which each may be several. */
function firstToLast(numbers: readonly string[]): string {
  const [first = '', last] = [numbers[0]?.split('-')[0], numbers.at(-1)?.split('-').at(-1)];
  return last === undefined || last === first ? first : `${first}-${last}`;
}

/** A folder or group as it is shown; where a group lies is where all that is in it does. */
export function aboveOf(unit: Component): Above {
  const { id, referenceCode = id, title, dates } = unit;
  const said = dates.map(({ expression }) => expression).join(', ');
  const numbers = new Map<string, Set<string>>([['folder', new Set()]]);
  for (const { type, number } of containersIn(unit)) {
    const known = numbers.get(type);
    if (known === undefined) numbers.set(type, new Set([number]));
    else known.add(number);
  }
  const lies = [...numbers].flatMap(([type, of]) => {
    const inWords = numbersInWords([...of]);
    return inWords === undefined ? [] : [sayNumbers(type, inWords)];
  });
  return {
    referenceCode,
    title,
    ...(said !== '' && { dates: said }),
    ...(lies.length > 0 && { lies: `In ${lies.join(', ')}` }),
  };
}

function* containersIn(unit: Component): Generator<Component['containers'][number]> {
  // What has its own place tells of itself; what lies apart from a folder is told where it is found.
  if (unit.containers.length > 0) yield* unit.containers;
  else for (const child of unit.children) yield* containersIn(child);
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
  const folders = sayNumbers('folder', folder);
  const within =
    position === undefined || position.of === 1 ? 'In' : `${ordinal(position.number)} of ${position.of} in`;
  return `${within} ${folders}${box === '' ? '' : `, ${box}`}`;
}

/** Box 3; folders 3-7, 9. */
function sayNumbers(type: string, numbers: string): string {
  const several = /[-,]/.test(numbers);
  return `${type}${several ? (type.endsWith('x') ? 'es' : 's') : ''} ${numbers}`;
}

/** 1st, 2nd, 3rd, 4th, 11th, 21st. */
function ordinal(number: number): string {
  const teen = Math.floor(number / 10) % 10 === 1;
  const ending = teen ? undefined : { 1: 'st', 2: 'nd', 3: 'rd' }[number % 10];
  return `${number}${ending ?? 'th'}`;
}
