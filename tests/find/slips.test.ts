import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sourceOf } from '../../src/find/bytes.ts';
import { newPostings } from '../../src/find/postings.ts';
import { slipsAllowed, wordsNear } from '../../src/find/slips.ts';
import { openTerms } from '../../src/find/terms.ts';
import { writeTerms } from '../../src/find/write-terms.ts';
import { slipsBetween } from './by-hand.ts';

function termsOf(words: readonly string[]) {
  const { starts, blocks } = writeTerms(new Map(words.map((word) => [word, newPostings()])));
  return openTerms(starts, sourceOf(blocks.bytes.subarray(0, blocks.length)));
}

// Few letters, so that many words are near one another; Cyrillic and a letter beyond the basic plane among them.
const word = fc.string({
  unit: fc.constantFrom('a', 'b', 'r', 'паром'[0] ?? '', '𠮷', 'z'),
  minLength: 1,
  maxLength: 9,
});
const vocabulary = fc.uniqueArray(word, { maxLength: 80 });

test('the words of an index are found again, and all that begin so', () => {
  fc.assert(
    fc.property(vocabulary, word, (words, asked) => {
      const terms = termsOf(words);
      for (const one of words) expect(terms.find(one)?.word).toBe(one);
      expect(terms.find(asked)?.word).toBe(words.includes(asked) ? asked : undefined);
      expect(terms.beginning(asked).map((term) => term.word)).toEqual(
        words.filter((one) => one.startsWith(asked)).sort(),
      );
    }),
  );
});

test('the words with one slip or two are those that the full table of distances gives', () => {
  fc.assert(
    fc.property(vocabulary, word, fc.constantFrom(1, 2), (words, asked, allowed) => {
      const near = wordsNear(termsOf(words), asked, allowed);
      const expected = words
        .map((one) => ({ word: one, slips: slipsBetween(asked, one) }))
        .filter(({ slips }) => slips > 0 && slips <= allowed);
      const byWord = (a: { word: string }, b: { word: string }) => (a.word < b.word ? -1 : 1);
      expect(near.map(({ term, slips }) => ({ word: term.word, slips }))).toEqual(expected.sort(byWord));
    }),
    { numRuns: 500 },
  );
});

test('short words and numbers are taken as they are', () => {
  expect(['ada', 'ferry', 'licens', '1922', '12th'].map(slipsAllowed)).toEqual([0, 1, 2, 0, 0]);
});
