import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { slips } from '../../src/catalogue/slips.ts';
import { titlesNearlyAlike } from '../../src/review/titles-nearly-alike.ts';
import { typingSlips } from '../../src/review/typing-slip.ts';
import { times } from '../support/times.ts';

/** The distance of Damerau and Levenshtein in its restricted form, by the whole table, as textbooks have it. */
function distance(one: string, other: string): number {
  const table = Array.from({ length: one.length + 1 }, (_, i) =>
    Array.from({ length: other.length + 1 }, (_, j) => (i === 0 ? j : j === 0 ? i : 0)),
  );
  const cell = (i: number, j: number) => table[i]?.[j] ?? Number.NaN;
  for (let i = 1; i <= one.length; i++) {
    for (let j = 1; j <= other.length; j++) {
      const cost = one[i - 1] === other[j - 1] ? 0 : 1;
      let least = Math.min(cell(i - 1, j) + 1, cell(i, j - 1) + 1, cell(i - 1, j - 1) + cost);
      if (i > 1 && j > 1 && one[i - 1] === other[j - 2] && one[i - 2] === other[j - 1])
        least = Math.min(least, cell(i - 2, j - 2) + 1);
      (table[i] ?? [])[j] = least;
    }
  }
  return cell(one.length, other.length);
}

describe('slips between two texts', () => {
  const text = fc.string({ unit: fc.constantFrom(...'abc'), maxLength: 9 });

  test('are counted as the whole table counts them, up to the most', () => {
    fc.assert(
      fc.property(text, text, fc.integer({ min: 1, max: 3 }), (one, other, most) => {
        expect(slips(one, other, most)).toBe(Math.min(distance(one, other), most + 1));
      }),
      { numRuns: times(3000) },
    );
  });

  test('by hand', () => {
    expect([slips('quill', 'quil', 2), slips('ferry', 'fery', 2), slips('ferry', 'frery', 2)]).toEqual([
      1, 1, 1,
    ]);
    expect(slips('landing', 'lnadign', 2)).toBe(2);
    expect(slips('ferry', 'bridge', 2)).toBe(3);
  });
});

describe('slips of the keyboard in a word', () => {
  test.each([
    ['landing', 'landign'],
    ['uniform', 'unifrom'],
    ['portrait', 'potrait'],
    ['correspondence', 'corespondance'],
  ])('%s, %s', (one, other) => {
    expect(typingSlips(one, other)).toBeGreaterThan(0);
    expect(typingSlips(other, one)).toBe(typingSlips(one, other));
  });

  test.each([
    ['boat', 'coat'],
    ['letter', 'letters'],
    ['father', 'mother'],
    ['grandfather', 'grandmother'],
    ['woman', 'women'],
    ['1911', '1912'],
    ['xviii', 'xviiii'],
    ['ada', 'ada1'],
    ['tom', 'tim'],
    ['ferry', 'fyrer'],
  ])('%s and %s are two words', (one, other) => {
    expect(typingSlips(one, other)).toBeUndefined();
  });
});

// A small vocabulary, so that many titles are near one another, with slips made at random.
const VOCABULARY =
  'letter from samuel about the landing ferry orchard harvest uniform portrait certificate of ada 12 no 7'.split(
    ' ',
  );
const word = fc.constantFrom(...VOCABULARY);
const oneSlip = fc.record({
  at: fc.nat(),
  way: fc.constantFrom('none', 'none', 'none', 'none', 'none', 'add', 'drop', 'change', 'swap'),
  letter: fc.constantFrom(...'aeimnrst'),
});
const slip = fc.tuple(oneSlip, oneSlip);
type Slip = typeof oneSlip extends fc.Arbitrary<infer Made> ? Made : never;

function slipIn(written: string, { at: anywhere, way, letter }: Slip): string {
  const at = anywhere % written.length;
  const [before, after] = [written.slice(0, at), written.slice(at + 1)];
  if (way === 'add') return before + letter + written.slice(at);
  if (way === 'drop') return before + after || written;
  if (way === 'change') return before + letter + after;
  return way === 'swap' ? before + after.slice(0, 1) + written[at] + after.slice(1) : written;
}

/** A title, and the same with a slip in some of its words. */
const twoTitles = fc
  .array(fc.tuple(word, slip), { minLength: 3, maxLength: 4 })
  .map((made) => [
    made.map(([one]) => one).join(' '),
    made.map(([one, its]) => its.reduce(slipIn, one)).join(' '),
  ]);
const titles = fc
  .array(twoTitles, { minLength: 100, maxLength: 150 })
  .map((pairs) => [...new Set(pairs.flat())]);

describe('titles nearly alike', () => {
  const isKnown = (word: string) => word === 'samuel';
  const nearOf = (all: readonly string[], blocks: readonly number[]) => {
    const places = new Map(all.map((written, at) => [`${blocks[at]} ${written}`, at]));
    return titlesNearlyAlike(all, (written, at) => places.get(`${blocks[at]} ${written}`), isKnown);
  };

  test('are the pairs that a comparison of all with all finds', () => {
    let found = 0;
    fc.assert(
      fc.property(titles, (all) => {
        const blocks = all.map(() => 0);
        const words = all.map((written) => written.split(' '));
        const times = (one: string) => words.filter((own) => own.includes(one)).length;
        const isRare = (one: string) => times(one) === 1 && !isKnown(one);
        const expected: [number, number][] = [];
        for (let a = 0; a < all.length; a++) {
          for (let b = a + 1; b < all.length; b++) {
            const [one = [], other = []] = [words[a], words[b]];
            if (blocks[a] !== blocks[b] || one.length !== other.length) continue;
            // No more slips as a whole than in the words taken together.
            if (distance(all[a] ?? '', all[b] ?? '') > 2) continue;
            const different = one.flatMap((own, at) =>
              own === other[at] ? [] : [[own, other[at] ?? ''] as const],
            );
            const sum = different.reduce((count, [own, its]) => count + distance(own, its), 0);
            const maySlip = different.every(([own, its]) => typingSlips(own, its) !== undefined);
            if (sum <= 2 && maySlip && different.every(([own, its]) => isRare(own) || isRare(its)))
              expected.push([a, b]);
          }
        }
        found += expected.length;
        expect(nearOf(all, blocks)).toEqual(expected);
      }),
      { numRuns: times(10) },
    );
    // Else nothing was tried.
    expect(found).toBeGreaterThan(times(50));
  });

  test('only within a block', () => {
    expect(nearOf(['the landing stage', 'the landign stage'], [0, 0])).toEqual([[0, 1]]);
    expect(nearOf(['the landing stage', 'the landign stage'], [0, 1])).toEqual([]);
  });

  test('a word that stands in other titles as well is right', () => {
    expect(nearOf(['the horn', 'the harn', 'a harn', 'a horn'], [0, 0, 1, 2])).toEqual([]);
  });
});

test('a hundred thousand titles are not compared all with all', () => {
  // Seven words of some twenty thousand, and a slip in every fiftieth title. A safety limit: it takes about 0.3 s, and
  // five thousand million comparisons would take an hour.
  const syllables = 'an er in or el is ka mo ru ti la se du vo pe ny ha bri lo wen dar'.split(' ');
  const wordAt = (n: number) =>
    [n, n / 21, n / 441, n / 9261].map((part) => syllables[Math.floor(part) % 21] ?? '').join('');
  const made = Array.from({ length: 100_000 }, (_, at) => {
    const word = (place: number) => wordAt(((at + 1) * (place * 7919 + 104_729)) % 20_011);
    return Array.from({ length: 7 }, (_, place) => word(place)).join(' ');
  });
  const slipped = made.flatMap((one, at) => (at % 50 === 0 ? [one, one.replace(/(.)(.) /, '$2$1 ')] : [one]));
  const places = new Map(slipped.map((one, at) => [one, at]));
  const started = performance.now();
  const pairs = titlesNearlyAlike(slipped, (one) => places.get(one));
  expect(performance.now() - started).toBeLessThan(20_000);
  expect(pairs.length).toBeGreaterThan(500);
});
