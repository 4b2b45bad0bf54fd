import { numbersIn } from '../catalogue/containers.ts';
import { once } from '../catalogue/once.ts';
import { withCheck, written } from './bytes.ts';
import type { Findable, Findables } from './entry.ts';
import { FIELD, FIELDS } from './fields.ts';
import { addPlace, type GrowingPostings, newPostings } from './postings.ts';
import { toRecord } from './record.ts';
import { addRecord, newRecords, type Records, sharing } from './records.ts';
import { boxTerm, codeTerm, kindTerm, personTerm, withinTerm } from './special-terms.ts';
import { wordsOf } from './words.ts';
import { writeTerms } from './write-terms.ts';

/** Of this many words or more, titles count as equally long. */
const LONGEST_TITLE = 255;
/** In the place of a year: open to that side. What is undated begins after it ends. */
export const [OPEN_START, OPEN_END] = [-32768, 32767];

/** The parts of an index, and where each lies behind the directory. */
export interface Directory {
  things: number;
  people: number;
  sections: Record<SectionName, readonly [at: number, length: number]>;
}

const SECTIONS = [
  'years',
  'titleLengths',
  'termStarts',
  'terms',
  'postings',
  'entryStarts',
  'entries',
  'peopleStarts',
  'people',
  'sharedStarts',
  'shared',
] as const;
export type SectionName = (typeof SECTIONS)[number];

/**
 * Makes the index of all that can be found, as one block of bytes: a directory, then parts that are each read by
 * themselves, with a checksum behind every piece that is read.
 */
export function makeIndex({ things, people }: Findables): Uint8Array {
  const folded = keeping();
  const names = people.map((of) => of.map(folded));
  const special = specialTermsOf(folded);
  const terms = new Map<string, GrowingPostings>();
  const add = (term: string, thing: number, field: number, position: number) => {
    let postings = terms.get(term);
    if (postings === undefined) {
      postings = newPostings();
      terms.set(term, postings);
    }
    addPlace(postings, thing, field, position);
  };
  const [entries, agents, shared] = [newRecords(), newRecords(), newRecords()];
  const share = sharing(shared);
  const titleLengths: number[] = [];
  const years: number[] = [];
  let count = 0;
  for (const thing of things) {
    for (const term of special(thing)) add(term, count, FIELD.kind, 0);
    for (const [field, values] of wordsByField(thing, names, folded)) {
      let position = 0;
      for (const value of values) {
        for (const word of value) add(word, count, field, position++);
        // So that no phrase runs from one value into the next.
        position += 1;
      }
      if (field === FIELD.title) titleLengths.push(Math.min(LONGEST_TITLE, position - 1));
    }
    years.push(...boundsOf(thing));
    addRecord(entries, toRecord(thing.entry, share));
    count += 1;
  }
  for (const of of people) addRecord(agents, of);
  const { starts, blocks, postings } = writeTerms(terms);
  return assemble(count, people.length, {
    years: withCheck(bytesOf(Int16Array.from(years))),
    titleLengths: withCheck(Uint8Array.from(titleLengths)),
    termStarts: withCheck(bytesOf(starts)),
    terms: written(blocks),
    postings: written(postings),
    ...recordParts('entryStarts', 'entries', entries),
    ...recordParts('peopleStarts', 'people', agents),
    ...recordParts('sharedStarts', 'shared', shared),
  });
}

type Folded = (text: string) => readonly string[];

const foldedWords: Folded = (text) => wordsOf(text).map(({ word }) => word);

/** Of a short text, which is likely to come again, the words are kept. */
function keeping(): Folded {
  const kept = once(foldedWords);
  return (text) => (text.length < 40 ? kept(text) : foldedWords(text));
}

/** In the order of the fields. */
function* wordsByField(
  { entry }: Findable,
  names: readonly (readonly (readonly string[])[])[],
  folded: Folded,
): Generator<[number, readonly (readonly string[])[]]> {
  const namesOf = (people: readonly number[]) => people.flatMap((person) => names[person] ?? []);
  for (const [field, { name }] of FIELDS.entries()) {
    if (name === 'title') yield [field, [foldedWords(entry.title)]];
    else if (name === 'creators' || name === 'people' || name === 'mentioned') {
      if (entry[name].length > 0) yield [field, namesOf(entry[name])];
    } else {
      const texts = entry.texts[name];
      if (texts !== undefined) yield [field, texts.map(folded)];
    }
  }
}

function specialTermsOf(folded: Folded): (thing: Findable) => Set<string> {
  const persons = once(personTerm);
  // Boxes 2-4 are three.
  const boxes = once((number: string) => [number, ...numbersIn(number)].map(boxTerm));
  const within = once(withinTerm);
  const kinds = once((words: string) => kindTerm(folded(words)));
  return ({ entry, codes, kindWords }) => {
    const terms = new Set(codes.map(codeTerm));
    for (const { referenceCode } of entry.above) terms.add(within(referenceCode));
    for (const person of entry.creators) terms.add(persons(person));
    for (const person of entry.people) terms.add(persons(person));
    for (const { number } of entry.boxes) for (const box of boxes(number)) terms.add(box);
    for (const words of kindWords) terms.add(kinds(words));
    return terms;
  };
}

function boundsOf({ entry: { years } }: Findable): [number, number] {
  if (years === undefined) return [OPEN_END, OPEN_START];
  const [first, last] = years;
  return [Math.max(first ?? OPEN_START, OPEN_START), Math.min(last ?? OPEN_END, OPEN_END)];
}

const bytesOf = (numbers: Int16Array | Uint32Array): Uint8Array => new Uint8Array(numbers.buffer);

function recordParts<Starts extends SectionName, Of extends SectionName>(
  starts: Starts,
  of: Of,
  records: Records,
): Record<Starts | Of, Uint8Array> {
  return {
    [starts]: bytesOf(Uint32Array.from([...records.starts, records.bytes.length])),
    [of]: written(records.bytes),
  } as Record<Starts | Of, Uint8Array>;
}

function assemble(things: number, people: number, parts: Record<SectionName, Uint8Array>): Uint8Array {
  const sections: [string, readonly [number, number]][] = [];
  let at = 0;
  for (const name of SECTIONS) {
    const { length } = parts[name];
    sections.push([name, [at, length]]);
    at += length;
  }
  const directory = withCheck(
    Buffer.from(JSON.stringify({ things, people, sections: Object.fromEntries(sections) })),
  );
  const length = Buffer.alloc(4);
  length.writeUInt32LE(directory.length);
  return Buffer.concat([length, directory, ...SECTIONS.map((name) => parts[name])]);
}
