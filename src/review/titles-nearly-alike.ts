import { wordsNearlyAlike } from './words-nearly-alike.ts';

/** Two titles by their places in the list that was given, the first before the second. */
export type Pair = readonly [one: number, other: number];

/** So many slips in a title are looked for. */
const MOST = 2;
/** What is longer, in characters, is a description and not looked at. */
const LONGEST = 300;

/**
 * Titles that differ by one or two slips in their words. A slip makes a word that stands nowhere else; so of two words
 * that differ, one must stand in no other title. Only the few titles with such a word are looked at, and each is looked
 * up with its words set right: no title is compared with all others.
 * @param titles as `plainWords` gives them
 * @param find the place of a title that has the date, the kind and the like in common with the one at a place
 * @param isKnown whether a word is known to be right, such as the name of a person
 */
export function titlesNearlyAlike(
  titles: readonly string[],
  find: (title: string, beside: number) => number | undefined,
  isKnown: (word: string) => boolean = () => false,
): Pair[] {
  const times = timesUsed(titles.filter(isTitle));
  const isRare = (word: string) => times.get(word) === 1 && !isKnown(word);
  const alike = wordsNearlyAlike(times.keys(), isRare);
  const pairs = new Map<string, Pair>();
  for (const [at, title] of alike.size === 0 ? [] : titles.entries()) {
    if (!isTitle(title)) continue;
    for (const mended of setRight(title.split(' '), alike, isRare)) {
      const other = find(mended, at);
      if (other === undefined) continue;
      const pair: Pair = at < other ? [at, other] : [other, at];
      pairs.set(pair.join(), pair);
    }
  }
  return [...pairs.values()].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
}

const isTitle = (title: string) => title.length <= LONGEST;

/** In how many titles each word stands. */
function timesUsed(titles: readonly string[]): Map<string, number> {
  const times = new Map<string, number>();
  for (const title of titles) {
    const words = title.split(' ');
    for (let at = 0; at < words.length; at++) {
      const word = words[at] ?? '';
      if (words.indexOf(word) === at) times.set(word, (times.get(word) ?? 0) + 1);
    }
  }
  return times;
}

/** A title with a word that stands nowhere else, in every way in which that word and perhaps another may be meant. */
function* setRight(
  words: readonly string[],
  alike: ReturnType<typeof wordsNearlyAlike>,
  isRare: (word: string) => boolean,
): Generator<string> {
  for (const [place, word] of words.entries()) {
    if (!isRare(word)) continue;
    for (const [meant, slips] of alike.get(word) ?? []) {
      const once = words.with(place, meant);
      yield once.join(' ');
      if (slips >= MOST) continue;
      for (const [second, its] of words.entries()) {
        if (second === place) continue;
        for (const [meantToo, more] of alike.get(its) ?? [])
          if (slips + more <= MOST) yield once.with(second, meantToo).join(' ');
      }
    }
  }
}
