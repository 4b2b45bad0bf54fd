import type { Extent } from '../catalogue/component.ts';
import { fold } from '../catalogue/fold.ts';
import { once } from '../catalogue/once.ts';
import type { Thing } from '../catalogue/thing.ts';
import { readKind } from './kind-words.ts';

/** How many of a kind there are, and whether that is a guess. */
export interface Count {
  unit: { one: string; many: string; key: string };
  number: number;
  approximate: boolean;
  /** Whether there are more of them, in a number that nobody could read; the number may then be nought. */
  more?: true;
  /** Whether it is one row in the plural ("letters") that says not how many: nobody would call that about one letter. */
  uncounted?: boolean;
}

/** The unit in the number that goes with a quantity: 1 letter, 2 letters. */
export function unitFor({ unit, number, uncounted }: Count): string {
  return number === 1 && !uncounted ? unit.one : unit.many;
}

/** What is counted where kinds are not told apart, or not known. */
export const THINGS = { one: 'item', many: 'items', key: 'item' };

interface UnitReading {
  unit: Count['unit'];
  /** What it is counted as together with others, where the tables hold it: a trophy and a lamp are two objects. */
  together?: Count['unit'];
  /** Whether the word says itself that there are several ("letters"). */
  plural: boolean;
}

/** What a word of the kind column counts. */
export const unitOf = once((word: string | undefined): UnitReading => {
  if (word === undefined) return { unit: THINGS, plural: false };
  const reading = readKind(word);
  // A kind that the table does not hold is its own unit, as written; how it makes its plural is not known.
  if (reading === undefined) return { unit: { one: word, many: word, key: fold(word) }, plural: false };
  const { kind, plural, thing = kind } = reading;
  const key = fold(kind.one);
  const together = { one: kind.one, many: kind.many, key };
  return { unit: thing === kind ? together : { one: thing.one, many: thing.many, key }, together, plural };
});

/** Whether the number of things in a row is a guess: it says so, or it is a plural without a number ("letters"). */
const isGuess = ({ quantity, quantityApproximate }: Thing, plural: boolean) =>
  quantityApproximate === true || (quantity === undefined && plural);

/** How many things one row stands for; one, where the list does not say; nought, where what it says cannot be read. */
export function countOf(thing: Thing): Count {
  const { unit, plural } = unitOf(thing.kind);
  if (thing.quantityUnread) return { unit, number: 0, approximate: true, more: true };
  const uncounted = thing.quantity === undefined && plural;
  return { unit, number: thing.quantity ?? 1, approximate: isGuess(thing, plural), uncounted };
}

/** Whether nothing is known of what the things are. */
export const isUnnamed = ({ unit }: Count): boolean => unit === THINGS;

/** Counts by kind, the most frequent first, equal ones in the order in which they came. */
export function countByKind(things: Iterable<Thing>): Count[] {
  const counts = new Map<string, Count>();
  for (const thing of things) {
    const { unit, together, plural } = unitOf(thing.kind);
    const sum = counts.get(unit.key);
    if (sum === undefined) {
      counts.set(unit.key, countOf(thing));
      continue;
    }
    if (together !== undefined && sum.unit.one !== unit.one) sum.unit = together;
    if (thing.quantityUnread) {
      sum.approximate = true;
      sum.more = true;
    } else {
      sum.uncounted = sum.number === 0 && thing.quantity === undefined && plural;
      sum.number += thing.quantity ?? 1;
      sum.approximate ||= isGuess(thing, plural);
    }
  }
  return [...counts.values()].sort((a, b) => b.number - a.number);
}

/**
 * Statements of extent for counts by kind: DACS 2.5, EAD3 physdescstructured. What is not counted is not stated, and
 * what is then covers a part only.
 */
export function extentsOf(counts: readonly Count[]): Extent[] {
  const whole = counts.length === 1 && !counts[0]?.more;
  return counts
    .filter(({ number, uncounted }) => number > 0 && !uncounted)
    .map((count) => ({
      type: 'materialtype',
      coverage: whole ? 'whole' : 'part',
      quantity: count.number,
      unit: unitFor(count),
      ...(count.approximate && { approximate: true }),
    }));
}
