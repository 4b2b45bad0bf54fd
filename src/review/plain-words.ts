import { fold } from '../catalogue/fold.ts';

const ASCII = /^[ -~]*$/;

/**
 * A title, a name or a place as it is compared with others: case, accents and points folded, apostrophes dropped, and
 * the words parted by one blank. `Ada's 5-year diary` is `adas 5 year diary`.
 */
export function plainWords(text: string): string {
  const folded = ASCII.test(text) ? text.toLowerCase() : fold(text);
  return folded
    .replace(/['’‘`]/g, '')
    .replace(/[^\p{L}\p{N}\p{M}]+/gu, ' ')
    .trim();
}

/** The share of the words of two titles that both have, from 0 to 1. */
export function wordsInCommon(one: string, other: string): number {
  if (one === other) return 1;
  const [these, those] = [new Set(plainWords(one).split(' ')), new Set(plainWords(other).split(' '))];
  let common = 0;
  for (const word of these) if (those.has(word)) common++;
  return (2 * common) / (these.size + those.size);
}
