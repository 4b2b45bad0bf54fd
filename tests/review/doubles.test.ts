import { describe, expect, test } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { reviewDoubles } from '../../src/review/doubles.ts';
import { WORDS_ALIKE } from '../../src/review/words-alike.ts';
import { dated, someCatalogue, someThing } from '../support/catalogue.ts';

function doublesOf(things: readonly Partial<Thing>[], settings: Record<string, unknown> = {}) {
  const rows = things.map((thing, index) => someThing({ row: index + 2, ...thing }));
  const catalogue = someCatalogue(settings, rows);
  return reviewDoubles(catalogue, arrange(catalogue, '2026-01-01'));
}

const picnic = { title: 'Picnic on the gravel', date: dated('1934'), kind: 'photo' };

describe('the same title, date and kind', () => {
  test('is found whatever the capitals, the points and the word for the kind', () => {
    const again = { title: 'picnic on the gravel.', date: dated('1934'), kind: 'photograph' };
    expect(doublesOf([picnic, again])).toEqual([
      {
        rule: 'doubles.same-title',
        weight: 'consider',
        place: { file: 'list.csv', row: 2, column: 'title' },
        found:
          '“Picnic on the gravel” stands in the list more than once (rows 2-3), with the same date (“1934”) and the same kind (“photo”).',
        advice: expect.stringContaining('take out'),
        source: 'common practice',
      },
    ]);
  });

  test.each([
    ['another date', { date: dated('1935') }],
    ['another kind', { kind: 'letter' }],
    ['another title', { title: 'Picnic on the grass' }],
    ['another number in the title', { title: 'Picnic on the gravel 2' }],
  ])('%s is another thing', (_, over) => {
    expect(doublesOf([picnic, { ...picnic, ...over }])).toEqual([]);
  });

  test('other people or places make another thing, one of them left blank does not', () => {
    const [ada, ruth] = [{ people: ['Ada Quill'] }, { people: ['Ruth Quill'] }];
    expect(
      doublesOf([
        { ...picnic, ...ada },
        { ...picnic, ...ruth },
      ]),
    ).toEqual([]);
    expect(doublesOf([{ ...picnic, ...ada }, picnic])).toHaveLength(1);
    expect(
      doublesOf([
        { ...picnic, places: ['Hatch Island'] },
        { ...picnic, places: ['Overbank'] },
      ]),
    ).toEqual([]);
  });

  test('without a date and a kind that is said', () => {
    const [finding] = doublesOf([{ title: 'Cider labels' }, { title: 'Cider labels' }]);
    expect(finding?.found).toContain('with no date and no kind.');
  });

  test('a title that says nothing is no double', () => {
    expect(
      doublesOf([{ title: 'Misc.' }, { title: 'Misc.' }, { title: 'Letter' }, { title: 'Letter' }]),
    ).toEqual([]);
  });
});

describe('titles nearly the same', () => {
  const near = (one: string, other: string, over: Partial<Thing> = {}) =>
    doublesOf([
      { ...picnic, title: one },
      { ...picnic, title: other, ...over },
    ]).map(({ rule }) => rule);

  test.each([
    ['Picnic on the gravel', 'Picnic on the gravle'],
    ['Wedding at Bethel Chapel', 'Weding at Bethel Chappel'],
    ['Overbank school', 'Over bank school'],
  ])('%s, %s', (one, other) => {
    expect(near(one, other)).toEqual(['doubles.near-title']);
    expect(near(one, other, { date: dated('1935') })).toEqual([]);
  });

  test.each([
    ['Letter no. 1', 'Letter no. 2'],
    ['Reel 1 of 12', 'Reel 11 of 2'],
    ['Map sheet IV', 'Map sheet VI'],
    ['Portrait of father', 'Portrait of mother'],
    ['Portrait of grandfather', 'Portrait of grandmother'],
    ['Boat on the river', 'Goat on the river'],
    ['Letter from Samuel', 'Letters from Samuel'],
    ['Road sign 1 2', 'Road sign 12'],
  ])('%s and %s are two things', (one, other) => {
    expect(near(one, other)).toEqual([]);
  });

  test('names that collection.yaml knows are no slips of each other', () => {
    const two = [
      { ...picnic, title: 'Karin on the landing' },
      { ...picnic, title: 'Karen on the landing' },
    ];
    expect(doublesOf(two)).toHaveLength(1);
    const people = [{ name: 'Karin Rook' }, { name: 'Karen Rook' }];
    expect(doublesOf(two, { people })).toEqual([]);
  });

  test('three of them make one finding', () => {
    const titles = ['Harvest at Applegarth', 'Havrest at Applegarth', 'Harvest at Applegrath'];
    const findings = doublesOf(titles.map((title) => ({ ...picnic, title })));
    expect(findings).toHaveLength(1);
    expect(findings[0]?.found).toContain('(row 2)');
    expect(findings[0]?.found).toContain('(row 4)');
  });
});

describe('names nearly the same', () => {
  const people = [{ name: 'Ada Quill', also: ['Miss Quill'] }, { name: 'Abel Stroud' }];
  const names = (written: readonly Partial<Thing>[], settings: Record<string, unknown> = { people }) =>
    doublesOf(written, settings).map(({ found }) => found);

  test('a name of the list beside one of collection.yaml', () => {
    expect(names([{ people: ['A. Quill'] }, { creators: ['Ada Quil'] }])).toEqual([
      '“A. Quill” (row 2) may be another way of writing “Ada Quill”.',
      '“Ada Quil” (row 3) may be another way of writing “Ada Quill”.',
    ]);
  });

  test('a given name alone, and an initial that may be one of two', () => {
    const two = { people: [...people, { name: 'Anders Quill' }] };
    expect(names([{ people: ['Abel'] }])).toEqual([
      '“Abel” (row 2) may be another way of writing “Abel Stroud”.',
    ]);
    expect(names([{ people: ['A. Quill'] }], two)).toEqual([
      '“A. Quill” (row 2) may be another way of writing “Ada Quill” or “Anders Quill”.',
    ]);
  });

  test('two names of the list: the rarer may be the other', () => {
    const rows = [{ people: ['Nils Rook'] }, { people: ['Nisl Rook'] }, { people: ['Nils Rook'] }];
    expect(names(rows, {})).toEqual(['“Nisl Rook” (row 3) may be another way of writing “Nils Rook”.']);
  });

  test('a variant that is known, somebody else, and two who stand in one cell', () => {
    expect(names([{ people: ['Miss Quill', 'Ida Quill'] }])).toEqual([]);
    expect(names([{ people: ['Ada Quill', 'A. Quill'] }])).toEqual([]);
    expect(names([], { people: [{ name: 'Ada Quill' }, { name: 'Ada Quil' }] })).toEqual([]);
  });
});

describe('places nearly the same', () => {
  const places = (...written: string[]) =>
    doublesOf(written.map((place) => ({ places: [place] }))).map(({ found }) => found);

  test.each([
    ["Quill's Landing", 'Quills Landing'],
    ['Ternesund, Norway', 'Ternesund'],
    ['Hollin Ferry', 'Hollin Fery'],
    ['Overbank', 'Over Bank'],
    ["Quill's Landing", 'the landing'],
    ['Press House', 'press house'],
  ])('%s, %s', (one, other) => {
    expect(places(one, other, one)).toEqual([`“${other}” (row 3) may be the same place as “${one}”.`]);
  });

  test.each([
    ['Ternesund, Norway', 'Norway'],
    ['Ternesund, Norway', 'Ternesund, Sweden'],
    ['North Bank', 'South Bank'],
    ['Ward 1', 'Ward 2'],
    ["Quill's Landing", 'Landing School'],
  ])('%s is not %s', (one, other) => {
    expect(places(one, other, one)).toEqual([]);
  });
});

test('of very many, the first hundred are given and the rest are counted', () => {
  const things = Array.from({ length: 130 }, (_, index) => ({ title: `Crossing of ${index}` }));
  const findings = doublesOf([...things, ...things]);
  expect(findings).toHaveLength(100);
  expect(findings.at(-1)?.found).toContain('There are 30 more like this');
});

test('words that look alike begin with the same letter, else the row says nothing', () => {
  expect(WORDS_ALIKE.filter(({ words }) => new Set(words.map(([letter]) => letter)).size > 1)).toEqual([]);
});

// Such a cell has a finding of its own, to part the names.
test('two people in one cell are another way of writing neither of them', () => {
  const of = (name: string) =>
    doublesOf([
      { title: 'Letter on the flood', people: ['Elsie Rook'] },
      { title: 'Letter on the orchard', people: [name] },
    ]).map(({ rule }) => rule);
  expect(of('E. Rook')).toEqual(['doubles.near-name']);
  expect(of('Elsie Anne Rook')).toEqual(['doubles.near-name']);
  for (const name of ['Elsie Rook, Hattie Rook', 'Hattie Rook, Elsie Rook', 'Elsie and Hattie Rook'])
    expect(of(name)).toEqual([]);
});
