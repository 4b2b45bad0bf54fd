import { capitalised } from '../catalogue/capitalised.ts';
import type { Component, Container } from '../catalogue/component.ts';
import { isFolder, numbersIn } from '../catalogue/containers.ts';
import { numbersInWords, pluralOf, sayContainer } from '../catalogue/say-container.ts';
import type { Whereabouts } from './entry.ts';

/**
 * Where a unit of a finding aid that was taken in lies, as that names it: by the containers of the unit itself, of what
 * is below it, or of the nearest unit above it that names any.
 * @param above the units it is part of, from the outermost on
 */
export function namedPlace(unit: Component, above: readonly Component[]): Whereabouts {
  const below = unit.containers.length > 0 ? undefined : sayBelow(unit);
  const outwards = [unit, ...above.toReversed()];
  const containers = containersOf(outwards);
  const named = below ?? nested(containers).map(sayNested).join('; ');
  // Where all the collection is kept is said at every unit only where there is nothing nearer to say.
  const kept = (named === '' ? outwards : [unit]).find((one) => one.physicalLocation !== undefined);
  const apart = kept?.physicalLocation;
  const more = { named, ...(apart !== undefined && { apart }) };
  // A series that is spread over boxes lies in none of them.
  return below === undefined ? { ...numbersOf(containers), ...more } : { boxes: [], ...more };
}

/** Of the nearest unit that names any; where these are folders only, in the boxes of the nearest that names some. */
function containersOf(outwards: readonly Component[]): readonly Container[] {
  const [nearest, ...outer] = outwards.map(({ containers }) => containers).filter(({ length }) => length > 0);
  if (nearest === undefined || !nearest.every(isInBox)) return nearest ?? [];
  const boxes = outer.map((some) => some.filter((one) => !isInBox(one))).find(({ length }) => length > 0);
  return [...(boxes ?? []), ...nearest];
}

const isInBox = ({ type }: Container): boolean => isFolder(type);

function numbersOf(containers: readonly Container[]): Pick<Whereabouts, 'boxes' | 'folder'> {
  const boxes = nested(containers).flatMap((group) => {
    const box = group.find((one) => !isInBox(one));
    return box === undefined ? [] : [{ type: box.type, number: box.number }];
  });
  const folder = numbersInWords(containers.filter(isInBox).flatMap(({ number }) => numbersIn(number)));
  return { boxes, ...(folder !== undefined && { folder }) };
}

/**
 * Each outer container with those in it. Where none says in which it stands, they are named from the outside in, until
 * the kind of the first comes again.
 */
function nested(containers: readonly Container[]): Container[][] {
  const ids = new Set(containers.flatMap(({ id }) => id ?? []));
  const isInner = ({ id, parent }: Container) => parent !== undefined && parent !== id && ids.has(parent);
  const isSaid = containers.some(isInner);
  const groups: Container[][] = [];
  for (const one of containers) {
    const last = groups.at(-1);
    const home = isSaid
      ? groups.find((group) => isInner(one) && group.some(({ id }) => id === one.parent))
      : last?.[0]?.type === one.type
        ? undefined
        : last;
    if (home === undefined) groups.push([one]);
    else home.push(one);
  }
  return groups;
}

const sayNested = (group: readonly Container[]): string => group.map(sayOne).join(', ');

/** Box 3. Some write the kind into the number as well, or only there. */
function sayOne({ type, number }: Container): string {
  const isInNumber =
    number.toLowerCase().startsWith(type.toLowerCase()) || (type === 'container' && /\p{L}/u.test(number));
  return capitalised(isInNumber ? number : sayContainer({ type, number }));
}

/** In UTF-16 units: longer lists of numbers are counted. */
const LONGEST = 60;

/** Where all that is below a unit lies: Boxes 1-3; Box 4, Folders 2-9. Undefined where nothing there names a container. */
export function sayBelow(unit: Component): string | undefined {
  const groups = unit.children.flatMap(groupsIn);
  const outer = new Map<string, Set<string>>();
  for (const group of groups) note(outer, group.find((one) => !isInBox(one)) ?? group[0]);
  const inner = new Map<string, Set<string>>();
  // Numbers of folders may begin anew in each box, so they are told of one box only.
  if (outer.size === 1 && [...outer.values()].every(({ size }) => size === 1))
    for (const group of groups)
      for (const one of group) if (isInBox(one) && one !== group[0]) note(inner, one);
  const said = [...outer, ...inner].map(([type, numbers]) => sayAll(type, [...numbers]));
  return said.length === 0 ? undefined : said.join(', ');
}

function groupsIn(unit: Component): Container[][] {
  return unit.containers.length > 0 ? nested(unit.containers) : unit.children.flatMap(groupsIn);
}

function note(numbers: Map<string, Set<string>>, one: Container | undefined): void {
  if (one === undefined) return;
  const type = capitalised(one.type);
  const known = numbers.get(type) ?? new Set();
  numbers.set(type, known);
  for (const number of numbersIn(one.number)) known.add(number);
}

function sayAll(type: string, numbers: readonly string[]): string {
  const [only = '', second] = numbers;
  if (second === undefined) return sayOne({ type, number: only });
  const many = pluralOf(type);
  const inWords = numbersInWords(numbers) ?? '';
  return inWords.length > LONGEST ? `${numbers.length} ${many.toLowerCase()}` : `${many} ${inWords}`;
}
