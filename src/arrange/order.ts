import type { OrderKey } from '../catalogue/settings.ts';
import type { Thing } from '../catalogue/thing.ts';
import { compareRanks, dateRank } from '../dates/index.ts';

const collator = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

/** Natural order of texts: case and accents aside, "Book 9" before "Book 10"; equal texts by code units, so that it is total. */
export function compareNaturally(a: string, b: string): number {
  if (a === b) return 0;
  return byFirstLetters(a, b) || collator.compare(a, b) || (a < b ? -1 : 1);
}

/**
 * The order of two texts where it is told by the first letters in which they differ, both of the English alphabet; 0
 * for all others. With the collator alone, a hundred thousand rows take a tenth of a second longer to arrange.
 */
function byFirstLetters(a: string, b: string): number {
  let at = 0;
  while (at < a.length && a.charCodeAt(at) === b.charCodeAt(at)) at += 1;
  // Small letters; other signs become others, none of them a letter.
  const [one, other] = [a.charCodeAt(at) | 0x20, b.charCodeAt(at) | 0x20];
  // What stands before might belong together with the letter.
  const isApart = at === 0 || a.charCodeAt(at - 1) < 0x80;
  return isApart && isLetter(one) && isLetter(other) ? one - other : 0;
}

const isLetter = (code: number) => code >= 0x61 && code <= 0x7a;

/** The date of a thing as EDTF, or undefined where it has none that could be read. */
export function edtfOf(thing: Thing): string | undefined {
  return thing.date?.reading.kind === 'date' ? thing.date.reading.edtf : undefined;
}

/** Makes a comparison of things, each given by its place among them. */
type Key = (things: readonly Thing[]) => (a: number, b: number) => number;

/**
 * Orders by what is read of each thing, once. What is blank comes last, so that what is not known does not push what is
 * known down.
 */
function by<Value>(of: (thing: Thing) => Value | undefined, compare: (a: Value, b: Value) => number): Key {
  return (things) => {
    const values = things.map(of);
    return (a, b) => {
      const left = values[a];
      const right = values[b];
      if (left === right) return 0;
      if (left === undefined) return 1;
      return right === undefined ? -1 : compare(left, right);
    };
  };
}

const byText = (of: (thing: Thing) => string | undefined): Key => by(of, compareNaturally);

const KEYS: Record<OrderKey, Key> = {
  date: by((thing) => {
    const edtf = edtfOf(thing);
    return edtf === undefined ? undefined : dateRank(edtf);
  }, compareRanks),
  title: byText((thing) => thing.title),
  number: byText((thing) => thing.number),
  kind: byText((thing) => thing.kind),
  person: byText(firstPerson),
  place: byText((thing) => thing.places[0]),
  occasion: byText((thing) => thing.occasion),
  list: by(
    (thing) => thing.row,
    (a, b) => a - b,
  ),
};

/** The person a thing is filed under: its maker, else the first person named. */
export function firstPerson(thing: Thing): string | undefined {
  return thing.creators[0] ?? thing.people[0];
}

/**
 * Things in order by the given keys, one after the other; what is equal by all of them stays as in the list.
 * Earliest to latest, undated last: common practice.
 */
export function inOrder(things: readonly Thing[], keys: readonly OrderKey[]): Thing[] {
  const comparisons = [...keys, 'list' as const].map((key) => KEYS[key](things));
  const places = Uint32Array.from(things.keys()).sort((a, b) => {
    for (const compare of comparisons) {
      const difference = compare(a, b);
      if (difference !== 0) return difference;
    }
    return 0;
  });
  return Array.from(places, (place) => things[place]).filter((thing) => thing !== undefined);
}
