import { slips } from './slips.ts';

/** The known word that a person most likely meant: at most one slip for every three letters, else undefined. */
export function nearest(word: string, known: readonly string[]): string | undefined {
  let best: string | undefined;
  let fewest = Math.floor(word.length / 3) + 1;
  const small = word.toLowerCase();
  for (const candidate of known) {
    const other = candidate.toLowerCase();
    // A word as long as a sentence was never meant as one of ours.
    if (Math.abs(small.length - other.length) > 5) continue;
    const count = slips(small, other, fewest - 1);
    if (count < fewest) [best, fewest] = [candidate, count];
  }
  return best;
}
