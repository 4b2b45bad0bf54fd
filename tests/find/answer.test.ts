import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answer } from '../../src/find/answer.ts';
import { asJson } from '../../src/find/as-json.ts';
import { sourceOf } from '../../src/find/bytes.ts';
import type { Findable, Names } from '../../src/find/entry.ts';
import { makeIndex } from '../../src/find/make-index.ts';
import { openIndex } from '../../src/find/open-index.ts';
import { type Filters, questionOf } from '../../src/find/question.ts';
import { nastyText } from '../support/hostile-text.ts';
import { foundByHand } from './by-hand.ts';

const indexOf = (things: readonly Findable[], people: readonly Names[] = []) =>
  openIndex(sourceOf(makeIndex({ things, people })));

type Over = Partial<Findable['entry']> & Pick<Partial<Findable>, 'kindWords' | 'codes'>;

function thing(number: number, { kindWords = [], codes = [], ...over }: Over): Findable {
  const referenceCode = `QF/1/${number}`;
  const bare = { boxes: [], above: [], creators: [], people: [], mentioned: [], texts: {} };
  return {
    entry: { referenceCode, title: 'Thing', ...bare, ...over },
    codes: [referenceCode, ...codes],
    kindWords,
  };
}

async function titles(
  things: readonly Findable[],
  typed: string,
  filters: Filters = {},
  people: Names[] = [],
) {
  return (await answer(indexOf(things, people), questionOf([typed], filters), 100)).hits.map(
    ({ title }) => title,
  );
}

// Names that are near one another, with what cuts across scripts. None of them has another form in English that is one
// of the others, nor is it a word that joins.
const WORDS = [
  'kari',
  'karo',
  'karibu',
  'marik',
  'ternesund',
  'ternsund',
  'ternesuntd',
  'daguerreotype',
  'dagerotype',
  'ferry',
  'ferri',
  '1927',
  '192',
  'паром',
  'паромы',
  'אדה',
  '渡し船',
];
const text = fc
  .array(fc.constantFrom(...WORDS), { minLength: 1, maxLength: 6 })
  .map((words) => words.join(' '));
const PEOPLE: Names[] = [
  ['Kari Ternesund', 'karibu'],
  ['Marik', 'ferri паромы'],
];

const things = fc
  .array(
    fc.record({
      title: text,
      creators: fc.constantFrom([], [0], [1]),
      people: fc.constantFrom([], [0], [0, 1]),
      mentioned: fc.constantFrom([], [1]),
      texts: fc.record({
        description: fc.array(text, { maxLength: 1 }),
        places: fc.array(text, { maxLength: 2 }),
      }),
    }),
    { maxLength: 40 },
  )
  .map((list) => list.map((over, at) => thing(at, over)));

// Of a run of Chinese or Japanese letters all pairs are to stand together; what was folded is folded here again.
const WANTED: Record<string, string[]> = { 渡し船: ['渡し', 'し船'] };

describe('an index', () => {
  test('finds what a look at every thing finds', async () => {
    await fc.assert(
      fc.asyncProperty(
        things,
        fc.uniqueArray(fc.constantFrom(...WORDS), { minLength: 1, maxLength: 4 }),
        async (list, asked) => {
          const { found, hits } = await answer(indexOf(list, PEOPLE), questionOf(asked), 100);
          const wanted = asked.map((word) => WANTED[word] ?? [word]);
          const expected = foundByHand(list, PEOPLE, wanted);
          expect(found).toBe(expected.length);
          expect(hits.map(({ referenceCode }) => referenceCode).sort()).toEqual(expected.sort());
        },
      ),
      { numRuns: 400 },
    );
  });

  test('finds a phrase where a look at every thing finds it', async () => {
    await fc.assert(
      fc.asyncProperty(
        things,
        fc.array(fc.constantFrom('kari', 'ferry', '1927', 'паром'), { minLength: 2, maxLength: 3 }),
        async (list, phrase) => {
          const { hits } = await answer(indexOf(list, PEOPLE), questionOf([`"${phrase.join(' ')}"`]), 100);
          expect(hits.map(({ referenceCode }) => referenceCode).sort()).toEqual(
            foundByHand(list, PEOPLE, [phrase]).sort(),
          );
        },
      ),
      { numRuns: 400 },
    );
  });

  test('tells of the best first, however many are asked for', async () => {
    await fc.assert(
      fc.asyncProperty(things, fc.constantFrom(...WORDS), async (list, word) => {
        const index = indexOf(list, PEOPLE);
        // Beyond a hundred the order is found in another way.
        const all = (await answer(index, questionOf([word]), 1000)).hits;
        for (const most of [0, 1, 3, 40]) {
          expect((await answer(index, questionOf([word]), most)).hits).toEqual(all.slice(0, most));
        }
      }),
    );
  });

  test('gives back every text and finds it by its own words, however hostile', async () => {
    await fc.assert(
      fc.asyncProperty(nastyText, nastyText, nastyText, async (title, note, name) => {
        const index = indexOf([thing(1, { title, texts: { note: [note] }, people: [0] })], [[name]]);
        const { hits } = await answer(index, questionOf([], { kind: 'x' }), 1);
        expect(hits).toEqual([]);
        expect(index.entry(0)).toMatchObject({ title, texts: { note: [note] } });
        expect(index.names(0)).toEqual([name]);
        for (const typed of [title, note, name]) {
          // Quotation marks of its own would part it in other places.
          const bare = typed.replaceAll(/["“”„«»]/g, ' ');
          for (const question of [questionOf([bare]), questionOf([`"${bare}"`])]) {
            const first = (await answer(index, question, 1)).hits[0];
            if (question.units.length > 0) expect(first).toMatchObject({ title, lacks: [] });
          }
        }
      }),
    );
  });
});

describe('what is found', () => {
  test('a phrase, across scripts and from the middle of a word of one without blanks', async () => {
    const list = [thing(1, { title: '手紙 from Nils 渡し船 1927' }), thing(2, { title: 'from 手紙 Nils' })];
    for (const phrase of ['手紙 from', '紙 from Nils', 'Nils 渡し', 'Nils 渡し船 1927', '船 1927'])
      expect(await titles(list, `"${phrase}"`), phrase).toEqual([list[0]?.entry.title]);
    for (const phrase of ['手 from', '手紙 Nils 渡し', 'し船 渡し'])
      expect(await titles(list, `"${phrase}"`), phrase).toEqual([]);
  });

  test('letters and letter, diaries and diary, boxes and box', async () => {
    const list = ['letters', 'letter', 'diary', 'diaries', 'box', 'boxes'].map((title, at) =>
      thing(at, { title }),
    );
    expect(await titles(list, 'letter')).toEqual(['letter', 'letters']);
    expect(await titles(list, 'letters')).toEqual(['letters', 'letter']);
    expect((await titles(list, 'diaries')).slice(0, 2)).toEqual(['diaries', 'diary']);
    expect((await titles(list, 'diary')).slice(0, 2)).toEqual(['diary', 'diaries']);
    expect((await titles(list, 'box')).slice(0, 2)).toEqual(['box', 'boxes']);
    expect((await titles(list, 'boxes')).slice(0, 2)).toEqual(['boxes', 'box']);
  });

  test('another word for a kind counts where the word itself is nowhere', async () => {
    const book = thing(1, {
      title: 'Ferry, 1919',
      texts: { kind: ['account books'] },
      kindWords: ['ledger'],
    });
    const named = thing(2, { title: 'The lost ledger' });
    expect(await titles([book], 'ledger')).toEqual(['Ferry, 1919']);
    expect(await titles([book, named], 'ledger')).toEqual(['The lost ledger']);
    expect(await titles([book, named], '', { kind: 'ledger' })).toEqual(['Ferry, 1919']);
  });

  test('a year in words, a decade, a span; the nearer first', async () => {
    const of = (number: number, title: string, from: number | null, to: number | null) =>
      thing(number, { title, dates: title, years: [from, to] });
    const list = [
      of(1, 'span', 1915, 1922),
      of(2, 'year', 1917, 1917),
      of(3, 'open', null, 1920),
      of(4, 'later', 1931, 1931),
      thing(5, { title: 'undated' }),
    ];
    expect(await titles(list, '1917')).toEqual(['year', 'span', 'open']);
    expect(await titles(list, '1930s')).toEqual(['later']);
    expect(await titles(list, '1916-1918')).toEqual(['year', 'span', 'open']);
    expect(await titles(list, '', { from: 1921 })).toEqual(['span', 'later']);
    expect(await titles(list, '', { to: 1916 })).toEqual(['span', 'open']);
    expect(await titles(list, '', { from: 1923, to: 1930 })).toEqual([]);
  });

  test('a person by any form of the name, in any order, and nobody by the names of two', async () => {
    const people: Names[] = [['Ada Quill', 'Aunt Ada', 'Miss Quill'], ['Ingrid Solem'], ['Ada Marsh']];
    const list = [
      thing(1, { title: 'a', people: [0] }),
      thing(2, { title: 'b', creators: [1] }),
      thing(3, { title: 'c', people: [1, 2] }),
    ];
    expect(await titles(list, '', { person: 'quill ada' }, people)).toEqual(['a']);
    expect(await titles(list, '', { person: 'Aunt Ada' }, people)).toEqual(['a']);
    expect(await titles(list, '', { person: 'ada' }, people)).toEqual(['a', 'c']);
    expect(await titles(list, '', { person: 'Sol' }, people)).toEqual(['b', 'c']);
    expect(await titles(list, '', { person: 'Solum' }, people)).toEqual(['b', 'c']);
    expect(await titles(list, '', { person: 'Ada Solem' }, people)).toEqual([]);
    expect(await titles(list, 'miss quill', {}, people)).toEqual(['a']);
  });

  test('a box, a reference code, a number of the list', async () => {
    const inBox = (number: string) => ({ boxes: [{ type: 'box', number }] });
    const list = [
      thing(1, { title: 'a', ...inBox('4') }),
      thing(2, { title: 'b', ...inBox('14'), codes: ['L-7'] }),
    ];
    expect(await titles(list, '', { box: '4' })).toEqual(['a']);
    expect(await titles(list, '', { box: 'Box 14' })).toEqual(['b']);
    expect(await titles(list, 'qf/1/2')).toEqual(['b']);
    expect(await titles(list, 'l-7')).toEqual(['b']);
  });

  test('three slips in a long word that is nowhere, and none where something is nearer', async () => {
    const list = ['Daguerreotype of Ada', 'Ferry licence', 'Letter of a godmother'].map((title, at) =>
      thing(at, { title }),
    );
    expect(await titles(list, 'dagerotype')).toEqual(['Daguerreotype of Ada']);
    expect(await titles(list, 'dagerrotipe')).toEqual(['Daguerreotype of Ada']);
    // Four slips are too many, and so are three in a word of nine letters.
    expect(await titles(list, 'dagerotipe')).toEqual([]);
    expect(await titles(list, 'lycensess')).toEqual([]);
    expect(await titles(list, 'grandmother')).toEqual(['Letter of a godmother']);
    const both = [...list, thing(3, { title: 'Grandmothers quilt' })];
    expect(await titles(both, 'grandmother')).toEqual(['Grandmothers quilt']);
  });

  test('a slip in one of what is there in the plural only', async () => {
    const list = [thing(1, { title: 'Tolls', texts: { kind: ['letters'] } })];
    expect(await titles(list, 'leter')).toEqual(['Tolls']);
    expect(await titles(list, '', { kind: 'leter' })).toEqual(['Tolls']);
    expect(await titles(list, '', { kind: 'lexxr' })).toEqual([]);
  });

  describe('nothing, for the filter asks for what is nowhere', () => {
    const of = async (filters: Filters, typed: string[] = [], list = BOXED) =>
      asJson(await answer(indexOf(list), questionOf(typed, filters), 10)).notThere;
    const inBox = (at: number, numbers: string[], kind: string, kindWords: string[] = []) =>
      thing(at, {
        title: 'Ferry',
        boxes: numbers.map((number) => ({ type: 'box', number })),
        texts: { kind: [kind] },
        kindWords,
      });
    const BOXED = [
      inBox(1, ['1'], 'photographs', ['snapshot']),
      inBox(2, ['2-4'], 'letters'),
      inBox(3, ['7', 'A'], 'letters'),
    ];

    test('a box: which there are', async () => {
      expect((await of({ box: '99' })).box).toEqual({ asked: '99', there: '1-4, 7, a' });
      expect((await of({ box: 'Box 99' }, ['ferry'])).box).toMatchObject({ asked: '99' });
      expect((await of({ box: '1' }, [], [thing(1, {})])).box).toEqual({ asked: '1', there: '' });
      // Box 3 is there; it only holds none of what was asked for.
      expect(await of({ box: '3' }, ['zeppelin'])).toEqual({ box: null, kind: null });
    });

    test('a kind: the nearest, by any of its names, or all of them', async () => {
      const there = ['letters', 'photographs'];
      expect((await of({ kind: 'snapchots' })).kind).toEqual({
        asked: 'snapchots',
        nearest: ['photographs'],
        there,
      });
      expect((await of({ kind: 'map' })).kind).toEqual({ asked: 'map', nearest: [], there });
      expect(await of({ kind: 'letter', box: '1' })).toEqual({ box: null, kind: null });
      expect(await of({ kind: 'map', box: '8' })).toMatchObject({
        box: { asked: '8' },
        kind: { asked: 'map' },
      });
    });
  });

  test('nothing: the nearest word, and how many there would be without the filters', async () => {
    const list = [thing(1, { title: 'The ferrymen', texts: { kind: ['letters'] } })];
    const of = async (typed: string, filters: Filters) =>
      asJson(await answer(indexOf(list), questionOf([typed], filters), 10));
    expect(await of('ferrimemm', {})).toMatchObject({
      found: 0,
      proposals: [{ typed: 'ferrimemm', nearest: 'ferrymen' }],
      withoutFilters: null,
    });
    expect(await of('ferrymen', { kind: 'map' })).toMatchObject({ found: 0, withoutFilters: 1 });
    expect(await of('xyzzy', {})).toMatchObject({ found: 0, proposals: [] });
  });
});
