import { addTo } from '../catalogue/add-to.ts';
import { mayHoldSlip, slipsAllowed, typingSlips } from './typing-slip.ts';

/**
 * For every word the words that a slip or two make of it, with how many; of each two, one is rare. Two words within one
 * slip of each other come to the same when each loses one letter or none, within two slips when each loses two at most;
 * so only those that come to the same are compared.
 */
export function wordsNearlyAlike(
  words: Iterable<string>,
  isRare: (word: string) => boolean,
): Map<string, Map<string, number>> {
  const able = [...words].filter(mayHoldSlip);
  const rare = new Map<string, string[]>();
  for (const word of able.filter(isRare)) {
    for (const key of shortened(word)) {
      addTo(rare, key, word);
    }
  }
  const alike = new Map<string, Map<string, number>>();
  const add = (one: string, other: string, slips: number) => {
    const known = alike.get(one);
    if (known === undefined) alike.set(one, new Map([[other, slips]]));
    else known.set(other, slips);
  };
  for (const word of able) {
    for (const key of shortened(word)) {
      for (const other of rare.get(key) ?? []) {
        if (other === word || alike.get(word)?.has(other)) continue;
        const slips = typingSlips(word, other);
        if (slips === undefined) continue;
        add(word, other, slips);
        add(other, word, slips);
      }
    }
  }
  return alike;
}

/** A word without as many of its letters as may be slips, in every way; the first letter stays. */
function shortened(word: string): Set<string> {
  const once = without(word);
  const keys = new Set([word, ...once]);
  if (slipsAllowed(word) > 1) for (const shorter of once) for (const key of without(shorter)) keys.add(key);
  return keys;
}

const without = (word: string): string[] =>
  Array.from({ length: word.length - 1 }, (_, at) => word.slice(0, at + 1) + word.slice(at + 2));
