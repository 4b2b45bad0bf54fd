/**
 * Mistakes between what was typed and the beginning of a word: a letter missing, added, changed, or two swapped (optimal
 * string alignment); f for ph, or ph for f, is one. This function goes into the page as it is written, so it leans on
 * nothing outside itself.
 * @returns `most` + 1 where there are more than that
 */
export function mistakes(typed: string, word: string, most: number): number {
  const sounding = (letters: string) => letters.replace(/ph/g, 'f');
  if (sounding(word).startsWith(sounding(typed))) return 1;
  const width = Math.min(word.length, typed.length + most);
  let before: number[] = [];
  let row = Array.from({ length: width + 1 }, (_, at) => at);
  for (let i = 1; i <= typed.length; i++) {
    const next = [i];
    let least = i;
    for (let j = 1; j <= width; j++) {
      const same = typed[i - 1] === word[j - 1] ? 0 : 1;
      let cost = Math.min((row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1, (row[j - 1] ?? 0) + same);
      if (i > 1 && j > 1 && typed[i - 1] === word[j - 2] && typed[i - 2] === word[j - 1])
        cost = Math.min(cost, (before[j - 2] ?? 0) + 1);
      next.push(cost);
      least = Math.min(least, cost);
    }
    if (least > most) return most + 1;
    before = row;
    row = next;
  }
  return Math.min(...row);
}
