import { CHECK, checked, IndexBroken, type Source } from './bytes.ts';
import type { Entry, Names } from './entry.ts';
import type { Directory, SectionName } from './make-index.ts';
import type { Postings } from './postings.ts';
import { type EntryRecord, fromRecord } from './record.ts';
import { openTerms, type Term, type Terms } from './terms.ts';

/** An index that is open; every part of it is read when it is asked for. Each function throws IndexBroken. */
export interface Index {
  things: number;
  people: number;
  terms: Terms;
  /** The things in which a word stands; see `Postings`. */
  thingsWith(term: Term): Uint8Array;
  postings(term: Term): Postings;
  /** First and last year of each thing, one after the other. */
  years(): Int16Array;
  /** How many words each title has. */
  titleLengths(): Uint8Array;
  entry(thing: number): Entry;
  names(person: number): Names;
}

/** @throws IndexBroken */
export function openIndex(source: Source): Index {
  const length = source.read(0, 4).readUInt32LE();
  const { things, people, sections } = JSON.parse(checked(source.read(4, length)).toString()) as Directory;
  const start = 4 + length;
  const section = (name: SectionName): Source => {
    const [at, size] = sections[name];
    return {
      size,
      read(from, count) {
        if (!(from >= 0 && count >= 0 && from + count <= size)) throw new IndexBroken();
        return source.read(start + at + from, count);
      },
    };
  };
  const whole = (name: SectionName): ArrayBuffer => {
    const from = section(name);
    const bytes = checked(from.read(0, from.size));
    // A copy, for the numbers in it have to begin where the machine can read them.
    return bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.length) as ArrayBuffer;
  };
  const record =
    (starts: SectionName, records: SectionName) =>
    (number: number): unknown => {
      const [at = 0, end = 0] = new Uint32Array(
        new Uint8Array(section(starts).read(4 * number, 8)).buffer as ArrayBuffer,
      );
      return JSON.parse(checked(section(records).read(at, end - at)).toString());
    };
  const postings = section('postings');
  const entryRecord = record('entryStarts', 'entries');
  const shared = record('sharedStarts', 'shared');
  const thingsWith = ({ at, thingsLength }: Term) => checked(postings.read(at, thingsLength + CHECK));
  return {
    things,
    people,
    terms: openTerms(new Uint32Array(whole('termStarts')), section('terms')),
    thingsWith,
    postings: (term) => ({
      things: thingsWith(term),
      positions: checked(postings.read(term.at + term.thingsLength + CHECK, term.positionsLength + CHECK)),
    }),
    years: () => new Int16Array(whole('years')),
    titleLengths: () => new Uint8Array(whole('titleLengths')),
    entry: (thing) => fromRecord(entryRecord(thing) as EntryRecord, shared),
    names: record('peopleStarts', 'people') as (person: number) => Names,
  };
}
