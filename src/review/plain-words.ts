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
