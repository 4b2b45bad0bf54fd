import { describe, expect, test } from 'vitest';
import type { Catalogue } from '../../src/catalogue/catalogue.ts';
import { CatalogueError } from '../../src/catalogue/finding.ts';
import type { Settled } from '../../src/catalogue/settled.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { type GiveOptions, thingsToGive } from '../../src/handover/index.ts';
import { dated, someCatalogue, someThing } from '../support/catalogue.ts';

const DAY = '2026-03-01';
type Row = Omit<Parameters<typeof someThing>[0], 'row'>;
const listOf = (...rows: readonly Row[]): Thing[] =>
  rows.map((row, at) => someThing({ ...row, row: at + 2 }));
const giveOf = (catalogue: Catalogue, options: GiveOptions = {}) => thingsToGive(catalogue, options, DAY);
const give = (over: Record<string, unknown>, rows: readonly Row[], options?: GiveOptions) =>
  giveOf(someCatalogue(over, listOf(...rows)), options);
const titles = (things: readonly Thing[]) => things.map(({ title }) => title);
const rulesOf = (work: () => unknown) => {
  try {
    work();
  } catch (error) {
    if (error instanceof CatalogueError) return error.findings;
    throw error;
  }
  return [];
};

describe('what stays with the family', () => {
  test('what the list marks, whatever word it uses', () => {
    const { catalogue, held } = give({}, [{ title: 'Ferry log' }, { title: 'Ring', stays: 'perhaps' }]);
    expect(titles(catalogue.things)).toEqual(['Ferry log']);
    expect(held).toMatchObject([{ thing: { title: 'Ring' }, why: 'marked' }]);
  });

  test('what collection.yaml names by title, number or group', () => {
    const rows = [
      { title: 'Ferry log', kind: 'diary', number: '1' },
      { title: 'Ring', kind: 'object', number: '2' },
      { title: 'Apple butter', kind: 'recipe', number: '3' },
      { title: 'Plum cake', kind: 'recipe', number: '4' },
    ];
    const groups = { Recipes: { title: 'From the kitchen' } };
    for (const group of ['Recipes', 'from the kitchen']) {
      const { catalogue, held } = give({ groups, handOver: { keep: [2, group] } }, rows);
      expect(titles(catalogue.things)).toEqual(['Ferry log']);
      expect(held.map(({ why }) => why)).toEqual(['named', 'named', 'named']);
      // Nothing of what is to be kept is in what is given.
      expect(catalogue.settings.handOver).toEqual({ keep: [] });
      expect(catalogue.settings.groups).toEqual({});
    }
    expect(titles(give({ handOver: { keep: ['ring'] } }, rows).catalogue.things)).not.toContain('Ring');
  });

  test('a name to keep that means nothing stops the work, and the likely one is said', () => {
    const findings = rulesOf(() =>
      give({ handOver: { keep: ['Rinng', '7'] } }, [{ title: 'Ring' }, { title: 'Log' }]),
    );
    expect(findings.map(({ rule }) => rule)).toEqual(['hand-over.keep-unknown', 'hand-over.keep-unknown']);
    expect(findings[0]?.found).toContain('Perhaps “Ring” is meant');
  });

  test.each([
    ['stays with the family', 'access'],
    ['Not to be given away.', 'access'],
    ['FAMILY ONLY until 2035', 'access'],
    ['Closed; for the family only', 'access'],
    ['ask Ellen', undefined],
    ['open', undefined],
    ['not for the archives of others', undefined],
  ])('access: %s', (access, why) => {
    const { held } = give({}, [{ title: 'Log' }, { title: 'Letters', access }]);
    expect(held.map((one) => one.why)).toEqual(why === undefined ? [] : [why]);
  });

  test('a group of which collection.yaml says so', () => {
    const groups = { Recipes: { access: 'These stay with us.' } };
    const { catalogue } = give({ groups }, [
      { title: 'Log', kind: 'diary' },
      { title: 'Cake', kind: 'recipe' },
    ]);
    expect(titles(catalogue.things)).toEqual(['Log']);
  });

  test('what is restricted goes, unless it is asked not to', () => {
    const rows = [
      { title: 'Log', access: 'open' },
      { title: 'Bank book', access: 'private', until: dated('2046') },
      { title: 'Report', until: dated('2050') },
      { title: 'Cake', kind: 'recipe' },
    ];
    const groups = { Recipes: { access: { statement: 'Not yet', until: '2040' } } };
    const all = give({ groups }, rows);
    expect(all.held).toEqual([]);
    expect(all.catalogue.things[1]).toMatchObject({ access: 'private', until: { written: '2046' } });
    const open = give({ groups }, rows, { withoutRestricted: true });
    expect(titles(open.catalogue.things)).toEqual(['Log']);
    expect(open.held.map(({ why }) => why)).toEqual(['restricted', 'restricted', 'restricted']);
  });

  test('all of it: then there is nothing to hand over', () => {
    expect(rulesOf(() => give({ access: 'Family only' }, [{ title: 'Log' }]))).toMatchObject([
      { rule: 'hand-over.nothing-left', weight: 'must' },
    ]);
  });

  test('notes meant for the family, of everything', () => {
    const { catalogue } = give({}, [
      { title: 'Log', familyNote: 'Tom wants it back', note: 'Found in the loft' },
    ]);
    expect(JSON.stringify(catalogue)).not.toContain('Tom wants');
    expect(catalogue.things[0]?.note).toBe('Found in the loft');
  });
});

describe('what is left of the rest', () => {
  const rows = [
    { title: 'Log', people: ['Ada', 'Nils Quill'], languages: ['English'], occasion: 'Flood' },
    {
      title: 'Ring',
      people: ['Lois Barrow', 'Old Nils'],
      languages: ['Norwegian'],
      occasion: 'Wedding',
      stays: 'x',
    },
  ];
  const settings = {
    creators: ['Quill family', 'Lois Barrow'],
    languages: ['eng', 'Norwegian', 'Latin'],
    subjects: ['Flood', 'Wedding', 'Ferries'],
    people: [
      { name: 'Quill family', type: 'family' },
      {
        name: 'Ada Quill',
        also: ['Ada'],
        relations: [
          { to: 'Lois Barrow', as: 'friend' },
          { to: 'Nils Quill', as: 'brother' },
        ],
      },
      { name: 'Nils Quill', also: ['Old Nils', 'N. Q.'] },
      { name: 'Lois Barrow', history: 'Married in 1952.' },
    ],
  };

  test('people, creators, languages and subjects that only staying things have go; what no thing has was said of the whole', () => {
    const given = give(settings, rows).catalogue.settings;
    expect(given.creators).toEqual(['Quill family']);
    expect(given.languages).toEqual(['eng', 'Latin']);
    expect(given.subjects).toEqual(['Flood', 'Ferries']);
    expect(given.people.map(({ name }) => name)).toEqual(['Quill family', 'Ada Quill', 'Nils Quill']);
    expect(given.people[1]?.relations).toEqual([{ to: 'Nils Quill', as: 'brother' }]);
    expect(given.people[2]?.also).toEqual(['N. Q.']);
  });

  test('where nothing stays, all of it stays as it is', () => {
    const all = give(
      settings,
      rows.map(({ stays: _, ...row }) => row),
    ).catalogue.settings;
    expect(all.people).toHaveLength(4);
    expect(all.creators).toEqual(['Quill family', 'Lois Barrow']);
  });

  test('dates and extent of the whole are worked out anew where what stays has a part in them', () => {
    const with_ = (date: string) =>
      give({ dates: '1890-1999', extent: '3 boxes' }, [
        { title: 'Log', date: dated('1900') },
        { title: 'Diary', date: dated('1950') },
        { title: 'Ring', date: dated(date), stays: 'x' },
      ]).catalogue.settings;
    expect(with_('1999')).not.toHaveProperty('dates');
    expect(with_('1950')).toMatchObject({ dates: '1890-1999' });
    expect(with_('1950')).not.toHaveProperty('extent');
  });

  test('answers to findings about what stays go with it', () => {
    const answers = [
      { rule: 'danger.ammunition', of: 'Ring', because: 'Looked at' },
      { rule: 'danger.mould', of: 'log', because: 'Dry' },
      { rule: 'dates.span', because: 'Right' },
    ];
    const { check } = give({ check: { answers } }, rows).catalogue.settings;
    expect(check.answers.map(({ rule }) => rule)).toEqual(['danger.mould', 'dates.span']);
  });

  test('settled numbers of what stays would explain the gap they leave', () => {
    const settled = (number: string, last: number): Settled => ({
      number,
      title: `No. ${number}`,
      place: [1, 1, last],
      groups: ['Letters'],
    });
    const things = listOf(
      { title: 'A', number: '1' },
      { title: 'B', number: '2', stays: 'x' },
      { title: 'C', number: '3' },
    );
    const whole: Catalogue = {
      ...someCatalogue({}, things),
      settled: [
        settled('1', 1),
        settled('2', 2),
        { ...settled('2', 9), gone: 'moved to 1/1/2' },
        settled('3', 3),
        { ...settled('8', 4), gone: 'removed' },
      ],
    };
    expect(giveOf(whole).catalogue.settled.map(({ number }) => number)).toEqual(['1', '3', '8']);
  });

  test('the list as it was read, and what was found in reading it, are left behind', () => {
    const found = { rule: 'list.date', weight: 'should' as const, place: { row: 3 }, found: 'Ring: no date' };
    const { catalogue } = giveOf({
      ...someCatalogue(settings, listOf(...rows), [found]),
      list: Buffer.from('Ring'),
    });
    expect(catalogue.findings).toEqual([]);
    expect(catalogue.list).toHaveLength(0);
  });
});
