/** The known word that a person most likely meant: at most one slip for every three letters, else undefined. */
export function nearest(word: string, known: readonly string[]): string | undefined {
  let best: string | undefined;
  let fewest = Math.floor(word.length / 3) + 1;
  for (const candidate of known) {
    const slips = distance(word.toLowerCase(), candidate.toLowerCase());
    if (slips < fewest) [best, fewest] = [candidate, slips];
  }
  return best;
}

/** Letters to add, drop, change, or swap with their neighbour to make one word of the other. */
function distance(one: string, other: string): number {
  // A word as long as a sentence was never meant as one of ours.
  if (Math.abs(one.length - other.length) > 5) return Number.POSITIVE_INFINITY;
  let beforeLast: number[] = [];
  let last = Array.from({ length: other.length + 1 }, (_, at) => at);
  for (let i = 1; i <= one.length; i++) {
    const now = [i];
    for (let j = 1; j <= other.length; j++) {
      const same = one[i - 1] === other[j - 1] ? 0 : 1;
      let slips = Math.min((last[j] ?? 0) + 1, (now[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + same);
      const swapped = i > 1 && j > 1 && one[i - 1] === other[j - 2] && one[i - 2] === other[j - 1];
      if (swapped) slips = Math.min(slips, (beforeLast[j - 2] ?? 0) + 1);
      now.push(slips);
    }
    [beforeLast, last] = [last, now];
  }
  return last[other.length] ?? 0;
}
