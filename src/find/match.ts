import { FIELDS, WEIGHTS } from './fields.ts';
import type { Index } from './open-index.ts';
import { LAST_POSITION, placesOf, raiseStrength } from './postings.ts';
import type { Unit } from './question.ts';
import { codeTerm, kindTerm, withinTerm } from './special-terms.ts';
import type { Term } from './terms.ts';
import { otherForms } from './word-forms.ts';

/** How near what is in the list is to what was typed, from 0 to 1. Our own, held by the forty questions. */
export const NEARNESS = {
  same: 1,
  otherForm: 0.95,
  year: 0.6,
  kindWord: 0.4,
  within: 0.5,
  slips: [0, 0.6, 0.4, 0.3],
} as const;

/** From 0.5 to 0.8: the more of the word was typed. */
const beginningNearness = (typed: string, word: string): number => 0.5 + (0.3 * typed.length) / word.length;

/** How a unit of a question fares with all things. */
export interface Match {
  /** For each thing, 0 for none; else how well it matches, times `SCALE`, and one more where that is in the title. */
  strength: Uint16Array;
  /** How many things match. */
  having: number;
  /** The words that matched, and how near each is. */
  words: Map<string, number>;
}

/** The strength of the same word in the title. Even, so that the lowest bit is free. */
export const SCALE = 20_000;

/** The things that have a unit as it was typed: the word, another form of it, one that begins so, or its years. */
export function matchTyped(index: Index, { words, code, insteadOf, years, optional }: Unit): Match {
  const match: Match = {
    strength: new Uint16Array(index.things),
    having: 0,
    words: new Map(),
  };
  const [word] = words;
  if (word !== undefined && optional) {
    const term = index.terms.find(word);
    // A word that joins others and stands everywhere tells no thing from another.
    if (term !== undefined && term.thingsLength < index.things / 2)
      addTerm(index, term, NEARNESS.same, match);
    return match;
  }
  if (words.length > 1) addPhrase(index, words, match);
  else if (word !== undefined) addWord(index, word, match);
  if (code !== undefined) addIfThere(index, codeTerm(code), NEARNESS.same, match);
  // A single number is that of a thing, and not also of a whole group.
  if (code !== undefined && insteadOf !== undefined)
    addIfThere(index, withinTerm(code), NEARNESS.within, match);
  // What is nowhere in the list may be another word for a kind; a bell is in it, and is not just any object.
  if (word !== undefined && match.having === 0) addIfThere(index, kindTerm(words), NEARNESS.kindWord, match);
  if (years !== undefined) addYears(index.years(), years, match);
  return match;
}

function addWord(index: Index, word: string, match: Match): void {
  addIfThere(index, word, NEARNESS.same, match);
  for (const other of otherForms(word)) addIfThere(index, other, NEARNESS.otherForm, match);
  if (!canBegin(word)) return;
  for (const term of index.terms.beginning(word)) {
    addTerm(index, term, beginningNearness(word, term.word), match);
  }
}

/** One letter begins too many words, save where words are taken two letters at a time; and 19 is not meant as 1900. */
const canBegin = (word: string): boolean =>
  word.length > 1 ? !/^\p{N}+$/u.test(word) : /\p{Lo}/u.test(word);

function addIfThere(index: Index, word: string, nearness: number, match: Match): void {
  const term = index.terms.find(word);
  if (term !== undefined) addTerm(index, term, nearness, match);
}

/** Adds the things that have a word of the list, so near to what was typed. */
export function addTerm(index: Index, term: Term, nearness: number, match: Match): void {
  const { strength, words } = match;
  if ((words.get(term.word) ?? 0) >= nearness) return;
  words.set(term.word, nearness);
  const byField = Uint16Array.from(FIELDS, (_, field) => strengthIn(field, nearness));
  match.having += raiseStrength(index.thingsWith(term), byField, strength);
}

const strengthIn = (field: number, nearness: number): number =>
  2 * Math.round((nearness * (WEIGHTS[field] ?? 0) * SCALE) / 2) + (field === 0 ? 1 : 0);

/** Words that stand one behind the other within one field. */
function addPhrase(index: Index, words: readonly string[], match: Match): void {
  const terms = words.flatMap((word, offset) => {
    const term = index.terms.find(word);
    return term === undefined ? [] : [{ term, offset }];
  });
  if (terms.length < words.length) return;
  for (const { term } of terms) match.words.set(term.word, NEARNESS.same);
  // Where the phrase may begin, in order; from the rarest word on they become ever fewer.
  let starts: Int32Array | undefined;
  for (const { term, offset } of terms.sort((a, b) => a.term.positionsLength - b.term.positionsLength)) {
    const here = placesOf(index.postings(term), offset);
    starts = starts === undefined ? here : inBoth(starts, here);
  }
  if (starts === undefined) return;
  for (let from = 0; from < starts.length; from += 2) {
    const field = Math.floor((starts[from + 1] ?? 0) / (LAST_POSITION + 1));
    set(match, starts[from] ?? 0, strengthIn(field, NEARNESS.same));
  }
}

/** What two lists of places have in common, in the room of the first. */
function inBoth(one: Int32Array, other: Int32Array): Int32Array {
  let both = 0;
  let at = 0;
  for (let from = 0; from < one.length && at < other.length; from += 2) {
    const thing = one[from] ?? 0;
    const place = one[from + 1] ?? 0;
    while (at < other.length && isBefore(other, at, thing, place)) at += 2;
    if (other[at] !== thing || other[at + 1] !== place) continue;
    one[both++] = thing;
    one[both++] = place;
  }
  return one.subarray(0, both);
}

const isBefore = (places: Int32Array, at: number, thing: number, place: number): boolean => {
  const here = places[at] ?? 0;
  return here < thing || (here === thing && (places[at + 1] ?? 0) < place);
};

/** Dates that reach into the years; the less the more they reach beyond them. */
function addYears(bounds: Int16Array, [from, to]: readonly [number, number], match: Match): void {
  for (let thing = 0; thing < match.strength.length; thing++) {
    const first = bounds[2 * thing] ?? 0;
    const last = bounds[2 * thing + 1] ?? 0;
    if (first > to || last < from || first > last) continue;
    const beyond = Math.max(0, from - first) + Math.max(0, last - to);
    set(match, thing, 2 * Math.ceil((NEARNESS.year * SCALE) / 2 / (1 + Math.log2(1 + beyond))));
  }
}

function set(match: Match, thing: number, found: number): void {
  const before = match.strength[thing] ?? 1;
  if (before === 0) match.having += 1;
  if (found > before) match.strength[thing] = found;
}
