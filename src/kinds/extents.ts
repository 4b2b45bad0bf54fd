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
  /** Whether there are more of them, in a number that nobody wrote or could read; the number may then be nought. */
  more?: true;
}

/** The unit in the number that goes with a quantity: 1 letter, 2 letters. */
export function unitFor({ unit, number }: Count): string {
  return number === 1 ? unit.one : unit.many;
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

/**
 * Whether a row stands for several, and nobody knows how many: a plural without a number ("letters"), or with one that
 * cannot be read.
 */
export const isUncounted = ({ kind, quantity, quantityUnread }: Thing): boolean =>
  quantityUnread === true || (quantity === undefined && unitOf(kind).plural);

/** How many things one row stands for; one, where the list does not say; nought, where they are several and not counted. */
export function countOf(thing: Thing): Count {
  const { unit } = unitOf(thing.kind);
  if (isUncounted(thing)) return { unit, number: 0, approximate: true, more: true };
  return { unit, number: thing.quantity ?? 1, approximate: thing.quantityApproximate === true };
}

/** Whether nothing is known of what the things are. */
export const isUnnamed = ({ unit }: Count): boolean => unit === THINGS;

/** Counts by kind, the most frequent first, equal ones in the order in which they came. */
export function countByKind(things: Iterable<Thing>): Count[] {
  const counts = new Map<string, Count>();
  for (const thing of things) {
    const { unit, together } = unitOf(thing.kind);
    const sum = counts.get(unit.key);
    if (sum === undefined) {
      counts.set(unit.key, countOf(thing));
      continue;
    }
    if (together !== undefined && sum.unit.one !== unit.one) sum.unit = together;
    if (isUncounted(thing)) {
      sum.approximate = true;
      sum.more = true;
    } else {
      sum.number += thing.quantity ?? 1;
      sum.approximate ||= thing.quantityApproximate === true;
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
    .filter(({ number }) => number > 0)
    .map((count) => ({
      type: 'materialtype',
      coverage: whole ? 'whole' : 'part',
      quantity: count.number,
      unit: unitFor(count),
      ...(count.approximate && { approximate: true }),
    }));
}
