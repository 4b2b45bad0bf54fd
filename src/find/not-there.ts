import { namesSeveral } from '../catalogue/containers.ts';
import { fold } from '../catalogue/fold.ts';
import { numbersInWords } from '../catalogue/say-container.ts';
import { slips } from '../catalogue/slips.ts';
import { boxNumber, isOfKind } from './filters.ts';
import type { Index } from './open-index.ts';
import type { Filters } from './question.ts';
import { boxesStart, boxTerm } from './special-terms.ts';
import { namesOfKind } from './texts-of.ts';

/** What a filter asks for that the catalogue does not have at all, and what it has. */
export interface NotThere {
  /** `there` has the numbers of the boxes in words (1-12, 14), blank where there are none; they are in small letters. */
  box?: { asked: string; there: string };
  /** `nearest` may be empty; `there` has all kinds that were met, the commonest first. */
  kind?: { asked: string; nearest: readonly string[]; there: readonly string[] };
}

/** @returns undefined where all that the filters ask for is there */
export function notThere(index: Index, { box, kind }: Filters): NotThere | undefined {
  const noBox = box !== undefined && index.terms.find(boxTerm(boxNumber(box))) === undefined;
  const noKind = kind !== undefined && !isOfKind(index, kind).includes(1);
  if (!noBox && !noKind) return undefined;
  return {
    ...(noBox && { box: { asked: boxNumber(box), there: boxesIn(index) } }),
    ...(noKind && { kind: { asked: kind, ...kindsNear(index, kind) } }),
  };
}

/** The numbers of all boxes; of a range (2-4) each is in the index by itself. */
function boxesIn(index: Index): string {
  const numbers = index.terms.beginning(boxesStart).map(({ word }) => word.slice(boxesStart.length));
  return numbersInWords(numbers.filter((number) => !namesSeveral(number))) ?? '';
}

/** So many things are looked at for their kinds, spread over the whole; few of a family have more. */
const LOOKED_AT = 2000;
/** So many near kinds are told. */
const NEAREST = 3;

function kindsNear(index: Index, asked: string): { nearest: string[]; there: string[] } {
  const counts = new Map<string, number>();
  const step = Math.max(1, Math.ceil(index.things / LOOKED_AT));
  for (let thing = 0; thing < index.things; thing += step)
    for (const kind of index.entry(thing).texts.kind ?? []) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  const there = [...counts].sort(([, one], [, other]) => other - one).map(([kind]) => kind);
  const word = fold(asked);
  // A slip for every three letters, as in a word that is proposed.
  const most = Math.floor(word.length / 3);
  const near = there
    .map((kind) => ({
      kind,
      far: Math.min(...namesOfKind(kind).map((name) => slips(word, fold(name), most))),
    }))
    .filter(({ far }) => far <= most)
    .sort((one, other) => one.far - other.far);
  return { nearest: near.slice(0, NEAREST).map(({ kind }) => kind), there };
}
