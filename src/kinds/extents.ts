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

/** What a word of the kind column counts, and whether it says itself that there are several ("letters"). */
const unitOf = once((word: string | undefined): { unit: Count['unit']; plural: boolean } => {
  if (word === undefined) return { unit: THINGS, plural: false };
  const reading = readKind(word);
  // A kind that the table does not hold is its own unit, as written; how it makes its plural is not known.
  if (reading === undefined) return { unit: { one: word, many: word, key: fold(word) }, plural: false };
  const { one, many } = reading.kind;
  return { unit: { one, many, key: fold(one) }, plural: reading.plural };
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
    const { unit, plural } = unitOf(thing.kind);
    const sum = counts.get(unit.key);
    if (sum === undefined) counts.set(unit.key, countOf(thing));
    else if (thing.quantityUnread) {
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
