import { slips } from '../catalogue/slips.ts';
import { WORDS_ALIKE } from './words-alike.ts';

const LETTERS = /^\p{L}+$/u;
const ROMAN = /^[ivxlcdm]+$/;
/** A shorter word is more often another word than a slip: boat, coat. */
const SHORTEST = 4;
/** A longer one is no word. */
const LONGEST = 30;
/** From so many letters on a word may hold two slips. */
const LONG = 8;

const ALIKE = new Map<string, Set<string>>();
for (const { words } of WORDS_ALIKE) for (const word of words) ALIKE.set(word, new Set(words));

/** Whether a word may hold a slip at all. Numbers never do: letter 1 and letter 2 are two letters. */
export const mayHoldSlip = (word: string): boolean =>
  word.length >= SHORTEST && word.length <= LONGEST && LETTERS.test(word) && !ROMAN.test(word);

/** So many slips are looked for in a word. */
export const slipsAllowed = (word: string): number => (word.length >= LONG ? 2 : 1);

/**
 * How many slips of the keyboard or of the ear part two words, as `plainWords` gives them; none where they are alike.
 * The first letter is right nearly always (from memory: studies of misspelling), a plural is meant, and some words
 * merely look alike.
 * @returns undefined where they are two words
 */
export function typingSlips(one: string, other: string): number | undefined {
  if (one === other) return 0;
  if (one[0] !== other[0] || !mayHoldSlip(one) || !mayHoldSlip(other)) return undefined;
  if (`${one}s` === other || `${other}s` === one || ALIKE.get(one)?.has(other)) return undefined;
  const allowed = Math.min(slipsAllowed(one), slipsAllowed(other));
  const found = slips(one, other, allowed);
  return found <= allowed ? found : undefined;
}

/** How many slips part two lists of words, each at its place; undefined where some are other words, or more than `most`. */
export function slipsBetween(
  one: readonly string[],
  other: readonly string[],
  most: number,
): number | undefined {
  if (one.length !== other.length) return undefined;
  let sum = 0;
  for (let at = 0; at < one.length; at++) {
    const found = typingSlips(one[at] ?? '', other[at] ?? '');
    if (found === undefined || sum + found > most) return undefined;
    sum += found;
  }
  return sum;
}
