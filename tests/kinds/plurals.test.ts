import { describe, expect, test } from 'vitest';
import { FURTHER_WORDS } from '../../src/kinds/further-words.ts';
import { readKind } from '../../src/kinds/kind-words.ts';
import { OBJECT_WORDS } from '../../src/kinds/object-words.ts';
import { pluralOf } from '../../src/kinds/plural.ts';

const THINGS = [...OBJECT_WORDS, ...FURTHER_WORDS].flatMap(({ things }) => things);

// By hand, after the dictionaries of English (from memory).
const IRREGULAR: readonly (readonly [string, string])[] = [
  ['knife', 'knives'],
  ['penknife', 'penknives'],
  ['pruning knife', 'pruning knives'],
  ['grafting knife', 'grafting knives'],
  ['paper knife', 'paper knives'],
  ['pocket knife', 'pocket knives'],
  ['tooth', 'teeth'],
  ['baby tooth', 'baby teeth'],
  ['chessman', 'chessmen'],
  ['scarf', 'scarves'],
  ['thesis', 'theses'],
  ['abacus', 'abacuses'],
  ['atlas', 'atlases'],
  ['prospectus', 'prospectuses'],
  ['bird under glass', 'birds under glass'],
  ['dolls house', 'dolls houses'],
  ['piece of jewellery', 'pieces of jewellery'],
  ['stuffed fish', 'stuffed fish'],
  ...'scissors|trousers|spectacles|clothes|glasses|binoculars|shears|pliers|scales|jewelry|crockery|dice|furniture'
    .split('|')
    .map((word) => [word, word] as const),
];

describe('the plurals of the tables', () => {
  test.each(IRREGULAR)('%s, %s', (one, many) => {
    expect(THINGS.filter((thing) => thing.one === one).map((thing) => thing.many)).toEqual([many]);
    expect(readKind(many)?.thing).toEqual({ one, many });
  });

  test('none has an s too many, or stands in the table beside its singular', () => {
    const known = new Set(IRREGULAR.map(([, many]) => many));
    const odd = THINGS.filter(
      ({ one, many }) => !known.has(many) && many !== one && /[^s]ses$/.test(many) && /[^s]s$/.test(one),
    );
    expect(odd).toEqual([]);
    const plurals = new Set(
      THINGS.filter(({ one, many }) => one !== many).flatMap(({ many, alsoMany }) => [many, ...alsoMany]),
    );
    expect(THINGS.filter(({ one }) => plurals.has(one))).toEqual([]);
  });

  test('nothing that ends in -man, -tooth, -knife or -ware makes its plural with an s', () => {
    const wrong = THINGS.filter(({ many }) =>
      /(?:mans|tooths|knifes|scarfs|wares|jewelries|[^aeiou]ys)$/.test(many),
    );
    expect(wrong).toEqual([]);
  });

  test('every word, and every spelling of its plural, is understood', () => {
    const lost = THINGS.flatMap(({ one, many, alsoMany }) => [one, many, ...alsoMany]).filter(
      (word) => readKind(word) === undefined,
    );
    expect(lost).toEqual([]);
  });

  test('a word for several says so', () => {
    for (const word of ['knives', 'earrings', 'chessmen', 'scarfs', 'teeth', 'USB sticks'])
      expect(readKind(word)?.plural, word).toBe(true);
    for (const word of ['scissors', 'crockery', 'knife']) expect(readKind(word)?.plural, word).toBe(false);
  });
});

describe('a plural by rule (English, common practice)', () => {
  test.each([
    ['bank book', 'bank books'],
    ['body', 'bodies'],
    ['toy', 'toys'],
    ['box of matches', 'boxes of matches'],
    ['compass', 'compasses'],
    ['wedding dress', 'wedding dresses'],
    ['brooch', 'brooches'],
    ['minutes', 'minutes'],
  ])('%s, %s', (one, many) => expect(pluralOf(one)).toBe(many));
});
