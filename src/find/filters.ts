import type { Names } from './entry.ts';
import { FIELD } from './fields.ts';
import type { Index } from './open-index.ts';
import { eachThing } from './postings.ts';
import type { Filters } from './question.ts';
import { slipsAllowed, wordsNear } from './slips.ts';
import { boxTerm, kindTerm, personTerm } from './special-terms.ts';
import type { Term } from './terms.ts';
import { otherForms } from './word-forms.ts';
import { wordsOf } from './words.ts';

/** For each thing, whether it passes all filters; undefined where there is none. */
export function passing(index: Index, { kind, person, box, from, to }: Filters): Uint8Array | undefined {
  const masks: Uint8Array[] = [];
  if (kind !== undefined) masks.push(isOfKind(index, kind));
  if (person !== undefined) masks.push(ofPerson(index, wordsIn(person)));
  if (box !== undefined) masks.push(withTerms(index, [boxTerm(boxNumber(box))]));
  if (from !== undefined || to !== undefined) masks.push(inYears(index.years(), from, to));
  const [first, ...others] = masks;
  if (first === undefined) return undefined;
  return first.map((passes, thing) => (passes !== 0 && others.every((mask) => mask[thing] === 1) ? 1 : 0));
}

const wordsIn = (text: string): string[] => wordsOf(text).flatMap(({ word, last }) => (last ? [] : [word]));

/** The number of a box, which some give with its name: box 3. */
export const boxNumber = (box: string): string => box.replace(/^(?:box|package)\s+/i, '');

/** For each thing, whether its kind has all the words, or is also called so. */
export function isOfKind(index: Index, kind: string): Uint8Array {
  const words = wordsIn(kind);
  const masks = words.map((word) => withKindWord(index, word));
  const also = withTerms(index, [kindTerm(words)]);
  return also.map((called, thing) =>
    called !== 0 || (masks.length > 0 && masks.every((mask) => mask[thing] !== 0)) ? 1 : 0,
  );
}

/** Things whose kind has the word, another form of it, or one that begins so; where there is none, one with a slip. */
function withKindWord(index: Index, word: string): Uint8Array {
  const { terms } = index;
  const mask = new Uint8Array(index.things);
  const add = (term: Term) =>
    eachThing(index.thingsWith(term), (thing, fields) => {
      if ((fields & (1 << FIELD.kind)) !== 0) mask[thing] = 1;
    });
  const forms = otherForms(word);
  for (const term of [...forms.flatMap((form) => terms.find(form) ?? []), ...terms.beginning(word)])
    add(term);
  // Kinds are kept in the plural: who types one of them with a slip (leter) is farther from that.
  for (const form of [word, ...forms]) {
    if (mask.includes(1)) break;
    for (const { term } of wordsNear(terms, form, slipsAllowed(word))) add(term);
  }
  return mask;
}

/** Things made by, or about, somebody one of whose names has all the words: as they are, as beginnings, with slips. */
function ofPerson(index: Index, words: readonly string[]): Uint8Array {
  const people = Array.from({ length: index.people }, (_, person) => formsOf(index.names(person)));
  const near = new Map(
    words.map((word) => [
      word,
      new Set(wordsNear(index.terms, word, slipsAllowed(word)).map(({ term }) => term.word)),
    ]),
  );
  const ways: ((name: string, word: string) => boolean)[] = [
    (name, word) => name === word,
    (name, word) => name.startsWith(word),
    (name, word) => name.startsWith(word) || near.get(word)?.has(name) === true,
  ];
  for (const alike of ways) {
    const found = people.flatMap((forms, person) =>
      forms.some((form) => words.every((word) => form.some((name) => alike(name, word)))) ? [person] : [],
    );
    if (found.length > 0) return withTerms(index, found.map(personTerm));
  }
  return new Uint8Array(index.things);
}

const formsOf = (names: Names): string[][] => names.map(wordsIn);

function withTerms(index: Index, words: readonly string[]): Uint8Array {
  const mask = new Uint8Array(index.things);
  for (const word of words) {
    const term = index.terms.find(word);
    if (term === undefined) continue;
    eachThing(index.thingsWith(term), (thing) => {
      mask[thing] = 1;
    });
  }
  return mask;
}

function inYears(
  bounds: Int16Array,
  from = Number.NEGATIVE_INFINITY,
  to = Number.POSITIVE_INFINITY,
): Uint8Array {
  const mask = new Uint8Array(bounds.length / 2);
  for (let thing = 0; thing < mask.length; thing++) {
    const first = bounds[2 * thing] ?? 0;
    const last = bounds[2 * thing + 1] ?? 0;
    mask[thing] = first <= last && first <= to && last >= from ? 1 : 0;
  }
  return mask;
}
