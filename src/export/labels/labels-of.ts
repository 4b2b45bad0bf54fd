import { readKind } from '../../arrange/index.ts';
import { capitalised } from '../../catalogue/capitalised.ts';
import type { Component, Container } from '../../catalogue/component.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { isRestricted } from '../../catalogue/restricted.ts';
import { numbersInWords } from '../../catalogue/say-container.ts';
import { containersOf, type Held, type Place } from './held.ts';
import { codesOf, datesOf, titleOf, yearsOf } from './label-words.ts';

/** What stands on one label, in words; how it is set is for the page to say. */
export interface Label {
  /** By which the label is known from one printing to the next: `folder 12`, `box 3, folder 12`, `box 3`. */
  key: string;
  of: 'folder' | 'box';
  /** `Folder`, `Box`, `Flat box`. */
  type: string;
  number: string;
  /** The box in which a folder stands. */
  box?: { type: string; number: string };
  /** Which of the folders, or boxes, over which one unit is spread this is: `1 of 3`. */
  part?: string;
  collection: string;
  /** The groups above a folder, outermost first; on a box, the outermost groups of all that it holds. */
  series: string[];
  title?: string;
  /** On a folder with a single thing in it, the title of that. */
  thing?: string;
  dates?: string;
  /** Reference code of what is in it; of several the first and the last. */
  codes?: string;
  /** On a box, the numbers of the folders in it: `3-7, 9`. */
  folders?: string;
  /** What whoever takes it must know: `GLASS` on a box, `RESTRICTED` on a folder with something that not everybody may see. */
  care?: string;
}

const collator = new Intl.Collator('en', { numeric: true });

/**
 * A label for every folder and every box that the finding aid names, in the order of their numbers: folders first.
 * What is spread over several folders (`3-5`) has a label for each of them.
 */
export function labelsOf({ collection }: Pick<FindingAid, 'collection'>): Label[] {
  const places = containersOf(collection);
  const { title } = collection;
  const folders = places.filter(({ folder }) => folder).sort(byNumber);
  const boxes = places.filter(({ folder }) => !folder).sort(byNumber);
  return [
    ...folders.map((place) => folderLabel(place, title)),
    ...boxes.map((place) => boxLabel(place, title)),
  ];
}

const byNumber = (one: Place, other: Place): number =>
  collator.compare(one.number, other.number) ||
  collator.compare(one.type, other.type) ||
  collator.compare(one.box?.number ?? '', other.box?.number ?? '');

function folderLabel({ type, number, box, held }: Place, collection: string): Label {
  const [first] = held;
  const part = held.length === 1 ? first?.part : undefined;
  return {
    key: [...(box === undefined ? [] : [named(box)]), named({ type, number })].join(', '),
    of: 'folder',
    type: capitalised(type),
    number,
    ...(box !== undefined && { box: { type: capitalised(box.type), number: box.number } }),
    ...(part !== undefined && { part }),
    collection,
    series: first === undefined ? [] : first.path.map(titleOf),
    ...said({
      title: [...new Set(held.map(({ unit }) => unit.title))].join('; '),
      thing: onlyThing(held),
      dates: held.length === 1 && first !== undefined ? datesIn(first.unit) : yearsHere(unitsOf(held)),
      codes: codesOf(unitsOf(held)),
      care: held.some(isClosed) ? 'RESTRICTED' : undefined,
    }),
  };
}

/** The dates of a folder, or where some of it lies apart, the years of what lies in it. */
const datesIn = (unit: Component): string | undefined =>
  unit.children.some(isApart) ? yearsHere([unit]) : datesOf(unit);

/** The years of what lies where the units do; apart lies what has a container of its own. */
const yearsHere = (units: readonly Component[]): string | undefined => yearsOf(units.flatMap(here));

const isApart = ({ containers }: Component): boolean => containers.length > 0;
const here = (unit: Component): Component[] =>
  unit.children.some(isApart) ? unit.children.filter((child) => !isApart(child)).flatMap(here) : [unit];

/** Whether a unit is restricted, by itself or by what it is part of, or something that lies in it. */
const isClosed = ({ path, unit }: Held): boolean => [...path, unit].some(isRestricted) || holdsClosed(unit);
const holdsClosed = ({ children }: Component): boolean =>
  children.some((child) => !isApart(child) && (isRestricted(child) || holdsClosed(child)));

/** The title of the only thing in a folder, where it says more than that of the folder; apart lies what has its own box. */
function onlyThing([first, ...others]: readonly Held[]): string | undefined {
  if (first === undefined || others.length > 0) return undefined;
  const [only, ...more] = first.unit.children.filter((child) => !isApart(child));
  return more.length > 0 || only?.title === first.unit.title ? undefined : only?.title;
}

// So many things that lie in a box without a folder are named on it; of more, their groups say enough.
const NAMED = 3;

function boxLabel({ type, number, held }: Place, collection: string): Label {
  const units = unitsOf(held);
  const loose = [...new Set(held.filter(({ folders }) => folders.length === 0).map(({ unit }) => unit))];
  const all = loose.length === units.length;
  const part = held.length === 1 ? held[0]?.part : undefined;
  return {
    key: named({ type, number }),
    of: 'box',
    type: capitalised(type),
    number,
    ...(part !== undefined && { part }),
    collection,
    series: seriesOf(held),
    ...said({
      title: all && loose.length <= NAMED ? loose.map((unit) => unit.title).join('; ') : undefined,
      dates: yearsHere(units),
      codes: codesOf(units),
      folders: numbersInWords(held.flatMap(({ folders }) => folders)),
      care: units.some(holdsGlass) ? 'GLASS' : undefined,
    }),
  };
}

const OF_GLASS: ReadonlySet<string> = new Set(['glass plate', 'ambrotype', 'daguerreotype']);

/** Whether a unit, or what is in it and has no box of its own, is of a kind that is of glass, which its access points tell. */
const holdsGlass = ({ accessPoints, children }: Component): boolean =>
  accessPoints.some(({ type, term }) => type === 'genre' && OF_GLASS.has(readKind(term)?.kind.one ?? '')) ||
  children.some((child) => !isApart(child) && holdsGlass(child));

/** All groups above the content where they are the same, else the outermost of each. */
function seriesOf(held: readonly Held[]): string[] {
  const paths = new Map(held.map(({ path }) => [path.map(({ id }) => id).join(' '), path.map(titleOf)]));
  const [only] = paths.values();
  if (paths.size === 1) return only ?? [];
  return [...new Set([...paths.values()].flatMap(([outermost]) => outermost ?? []))];
}

const unitsOf = (held: readonly Held[]): Component[] => [...new Set(held.map(({ unit }) => unit))];

const named = ({ type, number }: Pick<Container, 'type' | 'number'>): string => `${type} ${number}`;

type Said<Words> = { [Key in keyof Words]?: string };

/** Only what there is something to say of. */
function said<Words extends Record<string, string | undefined>>(words: Words): Said<Words> {
  return Object.fromEntries(
    Object.entries(words).filter(([, text]) => text !== undefined && text !== ''),
  ) as Said<Words>;
}
