import { describe, expect, test } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import type { Component } from '../../src/catalogue/component.ts';
import { findablesOf } from '../../src/find/findables.ts';
import { sayWhereabouts, whereaboutsOf } from '../../src/find/whereabouts.ts';
import { dated, someSettings, someThing } from '../support/catalogue.ts';
import { smallComponent } from './small-component.ts';

const letters = (count: number) => Array.from({ length: count }, (_, at) => smallComponent({ id: `t${at}` }));

function folderWith(children: Component[], containers: Component['containers']): Component {
  return smallComponent({ level: 'file', containers, children });
}

const IN_BOX_4: Component['containers'] = [
  { id: 'b', type: 'box', number: '4' },
  { type: 'folder', number: '27', parent: 'b' },
];

describe('where a thing lies', () => {
  test('its place among those that lie in the folder, with what lies apart left out', () => {
    const apart = smallComponent({
      id: 'apart',
      containers: [{ type: 'box', number: '9' }],
      physicalLocation: 'Apart from folder 27, in box 9: too large',
    });
    const [first, second, ...others] = letters(12);
    const all = [first, apart, second, ...others].filter((one) => one !== undefined);
    const folder = folderWith(all, IN_BOX_4);
    const said = all.map((thing) => sayWhereabouts(whereaboutsOf(folder)(thing)));
    expect(said.slice(0, 4)).toEqual([
      '1st of 12 in folder 27, box 4',
      'Apart from folder 27, in box 9: too large',
      '2nd of 12 in folder 27, box 4',
      '3rd of 12 in folder 27, box 4',
    ]);
    expect(said.slice(-2)).toEqual(['11th of 12 in folder 27, box 4', '12th of 12 in folder 27, box 4']);
  });

  test('alone, over several folders and boxes, in no box', () => {
    const say = (containers: Component['containers']) => {
      const [thing] = letters(1);
      const only = thing ?? smallComponent({});
      return sayWhereabouts(whereaboutsOf(folderWith([only], containers))(only));
    };
    expect(say(IN_BOX_4)).toBe('In folder 27, box 4');
    const bundle = [
      { id: 'a', type: 'box', number: '4' },
      { type: 'folder', number: '22-25', parent: 'a' },
      { id: 'b', type: 'box', number: '5' },
      { type: 'folder', number: '26', parent: 'b' },
    ];
    expect(say(bundle)).toBe('In folders 22-26, box 4 and box 5');
    expect(say([{ type: 'folder', number: '3' }])).toBe('In folder 3');
    expect(say([])).toBe('In no box');
  });

  test.each([
    [21, '21st'],
    [22, '22nd'],
    [23, '23rd'],
    [111, '111th'],
    [112, '112th'],
    [113, '113th'],
    [101, '101st'],
  ])('the ordinal of %i', (number, said) => {
    expect(sayWhereabouts({ boxes: [], folder: '1', position: { number, of: 200 } })).toBe(
      `${said} of 200 in folder 1`,
    );
  });
});

describe('what can be found of a list', () => {
  const settings = someSettings({
    people: [
      {
        name: 'Lois Quill',
        also: ['Mom', 'Lois Barrow'],
        heading: 'Quill, Lois Barrow, 1929-2015',
        born: '1929',
      },
    ],
  });
  const things = [
    someThing({
      row: 2,
      title: 'Mom’s notebook',
      kind: 'notebook',
      date: dated('1953-2010'),
      note: 'greasy',
    }),
    someThing({
      row: 3,
      title: 'To Dad',
      kind: 'letter',
      people: ['Lois Barrow'],
      creators: ['Peter'],
      places: ['Pellow Falls'],
    }),
    someThing({ row: 4, title: 'Stone', access: 'private', extra: [{ heading: 'Found in', text: 'loft' }] }),
  ];
  const { things: found, people } = findablesOf(arrange({ settings, things }, '2026-11-25'));
  const byTitle = new Map([...found].map((one) => [one.entry.title, one]));

  test('every form of a name, without the years of its heading', () => {
    expect(people).toEqual([['Lois Quill', 'Mom', 'Lois Barrow', 'Quill Lois Barrow'], ['Peter']]);
  });

  test('who is only named in a text, and who is named in the list', () => {
    expect(byTitle.get('Mom’s notebook')?.entry).toMatchObject({ people: [], creators: [], mentioned: [0] });
    expect(byTitle.get('To Dad')?.entry).toMatchObject({ people: [0], creators: [1], mentioned: [] });
  });

  test('until when something is restricted, in words', () => {
    const until = { written: 'about 2050', reading: dated('2050~').reading };
    const thing = someThing({ row: 2, title: 'Adoption', access: 'private', until });
    const [one] = findablesOf(arrange({ settings, things: [thing] }, '2026-11-25')).things;
    expect(one?.entry.restricted).toBe('private (until circa 2050)');
  });

  test('dates, kind, place, notes and unknown columns', () => {
    expect(byTitle.get('Mom’s notebook')).toMatchObject({
      entry: { years: [1953, 2010], texts: { kind: ['notebooks'], note: ['greasy'] } },
      kindWords: expect.arrayContaining(['exercise book']),
    });
    expect(byTitle.get('To Dad')?.entry.texts.places).toEqual(['Pellow Falls']);
    const stone = byTitle.get('Stone')?.entry;
    expect(stone?.texts.other).toEqual(['Found in: loft', 'private']);
    expect(stone).toMatchObject({ restricted: 'private' });
    expect(stone).not.toHaveProperty('years');
  });
});

test('a thing is found by the word of the list for its kind, and by the kind', () => {
  const kindsOf = (kind: string) => {
    const aid = arrange({ settings: someSettings({}), things: [someThing({ row: 2, kind })] }, '2026-05-14');
    return Array.from(findablesOf(aid).things, ({ entry }) => entry.texts.kind);
  };
  expect(kindsOf('violin')).toEqual([['objects', 'violin']]);
  expect(kindsOf('love letter')).toEqual([['letters', 'love letter']]);
  expect(kindsOf('letter')).toEqual([['letters']]);
});
