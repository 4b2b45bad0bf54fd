import { describe, expect, test } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { plainWords } from '../../src/review/plain-words.ts';
import { titleRules } from '../../src/review/titles.ts';
import { SMALL_WORDS, VAGUE_WORDS } from '../../src/review/vague-words.ts';
import { dated, someCatalogue, someThing } from '../support/catalogue.ts';

function titlesOf(...things: readonly Partial<Thing>[]) {
  const catalogue = someCatalogue(
    {},
    things.map((thing, index) => someThing({ row: index + 2, ...thing })),
  );
  return titleRules(VAGUE_WORDS)(catalogue, arrange(catalogue, '2026-01-01'));
}

const rulesOf = (title: string, over: Partial<Thing> = {}) =>
  titlesOf({ title, ...over }).map(({ rule }) => rule);

describe('titles that say nothing (DACS 2.3)', () => {
  test.each([
    'misc',
    'Misc.',
    'stuff',
    'box 3',
    'Box no. 3',
    'various',
    'Various items',
    'Old things',
    'Odds and ends',
    '?',
    '12',
    'Folder 7 (misc)',
    'n/a',
    'Diverses',
  ])('%s', (title) => {
    expect(rulesOf(title)).toEqual(['titles.say-nothing']);
  });

  test.each([
    'Box of keys',
    'Box camera',
    'Various views of the landing',
    'Papers of the ferry',
    '“Things I saw”',
    'Trunk',
    'Number 7, Mill Lane',
    '渡し船',
  ])('%s says something', (title) => {
    expect(rulesOf(title)).toEqual([]);
  });

  test('one finding for all of them, with the rows', () => {
    expect(titlesOf({ title: 'misc' }, { title: 'Ferry bell' }, { title: 'stuff' })).toEqual([
      {
        rule: 'titles.say-nothing',
        weight: 'should',
        place: { file: 'list.csv', row: 2, column: 'title' },
        found: 'These titles do not say what the thing is: “misc” (row 2) and “stuff” (row 4).',
        advice: expect.stringContaining('Say in a few words'),
        source: 'DACS 2.3',
      },
    ]);
  });
});

describe('titles that say only the kind or only the date', () => {
  test.each(['letter', 'Letters', 'Old photo', 'Photo 3', 'Various postcards', 'birth certificate'])(
    '%s',
    (title) => {
      expect(rulesOf(title)).toEqual(['titles.say-only-the-kind']);
    },
  );

  test.each(['Letter to Ada', 'Photo of a heifer', 'Ferry licence', 'Letter carrier'])(
    '%s says more',
    (title) => {
      expect(rulesOf(title)).toEqual([]);
    },
  );

  test.each(['1923', '1908-1910', '1908/09', '1923.'])('%s', (title) => {
    expect(rulesOf(title, { date: dated('1923') })).toEqual(['titles.say-only-the-date']);
  });

  test.each(['1123', '76518'])('%s is no date', (title) => {
    expect(rulesOf(title)).toEqual(['titles.say-nothing']);
  });
});

describe('titles that repeat the date column (DACS 2.4: the date is an element of its own)', () => {
  test.each([
    ['Ferry account book, 1919', '1919'],
    ['1919: the new boat', '1919'],
    ['The landing (1919)', 'summer 1919'],
    ["Ada's diary of 1919", '1919'],
    ['Letter of 14 May 1952 to Lois', '14 May 1952'],
    ['Ferry account books 1908-1910', '1908-1910'],
  ])('%s', (title, date) => {
    expect(rulesOf(title, { date: dated(date) })).toEqual(['titles.repeat-the-date']);
  });

  test.each([
    ['Ferry account book, 1919', '1920'],
    ['Ferry account book, 1919', undefined],
    ['The frost of 1938', '1938'],
    ['Share no. 1919', '1919-05-02'],
    ['Ferry account book', '1919'],
    ['Ferry ledger 19195', '1919'],
  ])('%s, dated %s, does not', (title, date) => {
    expect(rulesOf(title, date === undefined ? {} : { date: dated(date) })).toEqual([]);
  });
});

test('the words of the table are written as titles are compared, each once', () => {
  const words = [...VAGUE_WORDS, SMALL_WORDS].flatMap((row) => row.words);
  expect(words.filter((word) => plainWords(word) !== word)).toEqual([]);
  expect(words.filter((word, at) => words.indexOf(word) !== at)).toEqual([]);
});

test('words that a catalogue adds, of one word or of several', () => {
  const catalogue = someCatalogue({}, [
    someThing({ row: 2, title: "Grandma's" }),
    someThing({ row: 3, title: 'The usual bits n bobs' }),
    someThing({ row: 4, title: "Grandma's thimble" }),
  ]);
  const own = [{ words: ["grandma's", 'usual bits n bobs'], source: 'collection.yaml' }];
  const [finding, ...others] = titleRules([...VAGUE_WORDS, ...own])(
    catalogue,
    arrange(catalogue, '2026-01-01'),
  );
  expect(finding?.found).toContain('(row 2) and “The usual bits n bobs” (row 3).');
  expect(others).toEqual([]);
});
