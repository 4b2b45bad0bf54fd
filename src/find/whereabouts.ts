import type { Component } from '../catalogue/component.ts';
import { isFolder, NOWHERE, namesSeveral, numbersIn, type Place, placeOf } from '../catalogue/containers.ts';
import { numbersInWords, pluralOf } from '../catalogue/say-container.ts';
import type { Above, Whereabouts } from './entry.ts';

/** Where the things of a folder lie. The place in the folder counts what lies in it, not what lies apart. */
export function whereaboutsOf(folder: Component): (thing: Component) => Whereabouts {
  const around = placeOf(folder.containers);
  const inIt = folder.children.filter((thing) => !liesApart(thing));
  const place = new Map(inIt.map((thing, index) => [thing, index + 1]));
  return (thing) => {
    const number = place.get(thing);
    if (number !== undefined && around.folders.length > 0)
      return { ...inNumbers(around), position: { number, of: inIt.length } };
    const { containers, physicalLocation: apart } = thing;
    // Only a folder of its own stands in the box of the folder that it is described in.
    const own = containers.length === 0 ? NOWHERE : placeOf(containers, around);
    return { ...inNumbers(own), ...(apart !== undefined && { apart }) };
  };
}

function inNumbers({ boxes, folders }: Place): Pick<Whereabouts, 'boxes' | 'folder'> {
  const inWords = numbersInWords(folders.flatMap(({ folder }) => numbersIn(folder.number)));
  return {
    boxes: boxes.map(({ type, number }) => ({ type, number })),
    ...(inWords !== undefined && { folder: inWords }),
  };
}

/**
 * A folder or group as it is shown; where a group lies is where all that is in it does.
 * @param lies where it lies, as people say it
 */
export function aboveOf(unit: Component, lies = liesIn(unit)): Above {
  const { id, referenceCode = id, title, dates } = unit;
  const said = dates.map(({ expression }) => expression).join(', ');
  return {
    referenceCode,
    title,
    ...(said !== '' && { dates: said }),
    ...(lies !== undefined && lies !== '' && { lies }),
  };
}

function liesIn(unit: Component): string | undefined {
  const numbers = new Map<string, Set<string>>([['folder', new Set()]]);
  for (const { type: written, number } of containersIn(unit)) {
    // Folders come first, however they are written.
    const type = isFolder(written) ? written.toLowerCase() : written;
    const known = numbers.get(type) ?? new Set();
    numbers.set(type, known);
    for (const one of numbersIn(number)) known.add(one);
  }
  const lies = [...numbers].flatMap(([type, of]) => {
    const inWords = numbersInWords([...of]);
    return inWords === undefined ? [] : [sayNumbers(type, inWords)];
  });
  return lies.length === 0 ? undefined : `In ${lies.join(', ')}`;
}

function* containersIn(unit: Component): Generator<Component['containers'][number]> {
  // What has its own place tells of itself; what lies apart from a folder is told where it is found.
  if (unit.containers.length > 0) yield* unit.containers;
  else for (const child of unit.children) yield* containersIn(child);
}

const liesApart = ({ containers, physicalLocation }: Component): boolean =>
  containers.length > 0 || physicalLocation !== undefined;

/** Where a thing lies, for people: "3rd of 12 in folder 27, box 4"; or as a finding aid that was taken in names it. */
export function sayWhereabouts({ boxes, folder, position, apart, named }: Whereabouts): string {
  if (named !== undefined) {
    const said = [named, apart ?? ''].filter((part) => part !== '').join('. ');
    return said === '' ? 'The finding aid names no box for it' : said;
  }
  const box = boxes.map(({ type, number }) => `${type} ${number}`).join(' and ');
  if (folder === undefined || (apart !== undefined && position === undefined))
    return apart ?? (box === '' ? 'In no box' : `In ${box}`);
  const folders = sayNumbers('folder', folder);
  const within =
    position === undefined || position.of === 1 ? 'In' : `${ordinal(position.number)} of ${position.of} in`;
  return `${within} ${folders}${box === '' ? '' : `, ${box}`}`;
}

/** Box 3; folders 3-7, 9. */
const sayNumbers = (type: string, numbers: string): string =>
  `${numbers.includes(',') || namesSeveral(numbers) ? pluralOf(type) : type} ${numbers}`;

/** 1st, 2nd, 3rd, 4th, 11th, 21st. */
function ordinal(number: number): string {
  const teen = Math.floor(number / 10) % 10 === 1;
  const ending = teen ? undefined : { 1: 'st', 2: 'nd', 3: 'rd' }[number % 10];
  return `${number}${ending ?? 'th'}`;
}
