import type { Entry, Findable, Names } from '../../src/find/entry.ts';
import { wordsOf } from '../../src/find/words.ts';

/**
 * The same answers by looking at every thing, without an index. It shares with what it tests only how words are folded;
 * the rules are written again here from the help of the command and the comments in src/find.
 */

/** Optimal string alignment by the full table, over UTF-16 units (from memory). */
export function slipsBetween(one: string, other: string): number {
  const table: number[][] = [];
  const at = (i: number, j: number) => table[i]?.[j] ?? Number.POSITIVE_INFINITY;
  for (let i = 0; i <= one.length; i++) {
    table.push([]);
    for (let j = 0; j <= other.length; j++) {
      let least = i === 0 ? j : j === 0 ? i : Number.POSITIVE_INFINITY;
      if (i > 0 && j > 0) {
        least = Math.min(
          at(i - 1, j) + 1,
          at(i, j - 1) + 1,
          at(i - 1, j - 1) + (one[i - 1] === other[j - 1] ? 0 : 1),
        );
        if (i > 1 && j > 1 && one[i - 1] === other[j - 2] && one[i - 2] === other[j - 1])
          least = Math.min(least, at(i - 2, j - 2) + 1);
      }
      table[i]?.push(least);
    }
  }
  return at(one.length, other.length);
}

/** Every value of every field of a thing, as words. */
export function valuesOf(
  { title, creators, people, mentioned, texts }: Entry,
  names: readonly Names[],
): string[][] {
  const forms = [...creators, ...people, ...mentioned].flatMap((person) => names[person] ?? []);
  return [title, ...forms, ...Object.values(texts).flat()].map((text) =>
    wordsOf(text).map(({ word }) => word),
  );
}

/** What is asked: words that stand together. */
export type Wanted = readonly string[];

type Alike = (there: string, asked: string) => boolean;

const typed: Alike = (there, asked) =>
  there === asked || (asked.length > 1 && !/^\d+$/.test(asked) && there.startsWith(asked));

const allowed = (asked: string) => (asked.length < 4 || /\d/.test(asked) ? 0 : asked.length < 6 ? 1 : 2);

const near = (there: string, asked: string, slips: number) =>
  slips > 0 && !/^\d/.test(there) && slipsBetween(asked, there) <= slips;

/** A word of ten letters or more that is nowhere, nor anything near it, may have a third slip. */
const withSlips = (all: readonly string[]): Alike => {
  const isFar = (asked: string) =>
    asked.length >= 10 && !all.some((there) => typed(there, asked) || near(there, asked, allowed(asked)));
  const far = new Map<string, boolean>();
  return (there, asked) => {
    if (!far.has(asked)) far.set(asked, isFar(asked));
    const more = allowed(asked) > 0 && far.get(asked) ? 1 : 0;
    return typed(there, asked) || near(there, asked, allowed(asked) + more);
  };
};

function has(values: readonly string[][], wanted: Wanted, alike: Alike): boolean {
  const [word = ''] = wanted;
  if (wanted.length === 1) return values.some((value) => value.some((there) => alike(there, word)));
  return values.some((value) =>
    value.some((_, at) => wanted.every((one, index) => value[at + index] === one)),
  );
}

/** The codes of all things that answer a question, in order of the list. */
export function foundByHand(
  things: readonly Findable[],
  names: readonly Names[],
  wanted: readonly Wanted[],
): string[] {
  const all = things.map(({ entry }) => ({ code: entry.referenceCode, values: valuesOf(entry, names) }));
  const having = (alike: Alike, least: number) =>
    all
      .filter(({ values }) => wanted.filter((one) => has(values, one, alike)).length >= least)
      .map(({ code }) => code);
  let found = having(typed, wanted.length);
  if (found.length < 10) {
    const forgiving = withSlips([...new Set(all.flatMap(({ values }) => values.flat()))]);
    found = having(forgiving, wanted.length);
    for (
      let least = wanted.length - 1;
      found.length === 0 && least > 0 && least * 2 >= wanted.length;
      least--
    )
      found = having(forgiving, least);
  }
  return found;
}
