/**
 * How many slips make one text of the other: a letter added, dropped or changed, or two neighbours swapped, no letter
 * being touched twice (the distance of Damerau and Levenshtein in its restricted form).
 * @param most a small number; more slips than that are not counted
 * @returns `most` + 1 where there are more
 */
export function slips(one: string, other: string, most: number): number {
  if (one === other) return 0;
  const [height, width] = [one.length, other.length];
  const tooMany = most + 1;
  if (Math.abs(height - width) > most) return tooMany;
  let beforeLast = new Uint8Array(width + 1);
  let last = Uint8Array.from({ length: width + 1 }, (_, at) => Math.min(at, tooMany));
  let now = new Uint8Array(width + 1);
  let fewestBefore = 0;
  for (let i = 1; i <= height; i++) {
    now.fill(tooMany);
    now[0] = Math.min(i, tooMany);
    let fewest = now[0] ?? tooMany;
    const letter = one.charCodeAt(i - 1);
    // Beyond this band about the diagonal there are always too many.
    for (let j = Math.max(1, i - most); j <= Math.min(width, i + most); j++) {
      const its = other.charCodeAt(j - 1);
      let count = (last[j - 1] ?? tooMany) + (letter === its ? 0 : 1);
      count = Math.min(count, (last[j] ?? tooMany) + 1, (now[j - 1] ?? tooMany) + 1, tooMany);
      if (i > 1 && j > 1 && letter === other.charCodeAt(j - 2) && one.charCodeAt(i - 2) === its)
        count = Math.min(count, (beforeLast[j - 2] ?? tooMany) + 1);
      now[j] = count;
      if (count < fewest) fewest = count;
    }
    // A swap reaches back over two rows, so one row without hope is not yet the end.
    if (fewest > most && fewestBefore > most) return tooMany;
    fewestBefore = fewest;
    [beforeLast, last, now] = [last, now, beforeLast];
  }
  return last[width] ?? tooMany;
}
