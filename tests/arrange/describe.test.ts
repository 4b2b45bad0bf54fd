import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { gatherAgents } from '../../src/arrange/agents.ts';
import { arrange, arrangement, compareSortings, leftOver, outline } from '../../src/arrange/index.ts';
import { sortingNotes, sortingTable } from '../../src/arrange/sorting-table.ts';
import { type Component, component } from '../../src/catalogue/component.ts';
import { findingAid } from '../../src/catalogue/finding-aid.ts';
import { languageUse } from '../../src/catalogue/languages.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { readKind } from '../../src/kinds/kind-words.ts';
import { BROAD_GROUPS, KINDS } from '../../src/kinds/kinds.ts';
import { dated, someSettings, someThing } from '../support/catalogue.ts';

const things = [
  someThing({
    row: 2,
    title: 'Letters from the winter school',
    kind: 'Letters',
    date: dated('1934'),
    quantity: 12,
  }),
  someThing({
    row: 3,
    title: 'Ferry under ice',
    kind: 'photo',
    date: dated('1934-01'),
    creators: ['Ada Quill'],
  }),
  someThing({
    row: 4,
    title: 'Card from Nils',
    kind: 'postcard',
    date: dated('1934-08'),
    people: ['Nils Quill', 'unknown'],
  }),
  someThing({ row: 5, title: 'Bell of the old ferry' }),
];

const arranged = (list: readonly Thing[] = things, over: Record<string, unknown> = {}) =>
  arrange({ settings: someSettings(over), things: list }, '2026-05-14');

/** The description of a single thing. */
function itemOf(over: Partial<Thing>): Component {
  const item = arranged([someThing({ row: 2, title: 'Thing', ...over })]).collection.children[0]?.children[0]
    ?.children[0];
  if (item === undefined) throw new Error('There is no item.');
  return item;
}

describe('the finding aid that follows from a list', () => {
  test('is a finding aid by the model', () => {
    expect(findingAid.safeParse(arranged()).error).toBeUndefined();
  });

  test('groups, folders and things have codes and devised titles (DACS 2.3.18)', () => {
    const lines = [...outline(arranged().collection, 'item')].map((line) => line.trim());
    expect(lines).toEqual([
      // A half-width document box is 64 mm deep and a box for objects 156 mm high: 0.72 linear feet (arithmetic).
      'QF  Quill family papers, 1934  (15 items, 0.72 linear feet, 0.22 linear metres; 2 folders, 2 boxes)',
      'QF/1  Correspondence, 1934  (12 letters, 1 postcard, about 0.03 linear feet, about 0.01 linear metres)',
      'QF/1/1  Letters and postcard, 1934  (folder 1, box 1, 12 letters, 1 postcard)',
      'QF/1/1/1  Letters from the winter school, 1934  (12 letters)',
      'QF/1/1/2  Card from Nils, 1934 August  (1 postcard)',
      'QF/2  Photographs, 1934 January  (1 photograph)',
      'QF/2/1  Photograph, 1934 January  (folder 2, box 1, 1 photograph)',
      'QF/2/1/1  Ferry under ice, 1934 January  (1 photograph)',
      // A bell 10 cm high lies in no folder: 0.33 linear feet.
      'QF/3  Things whose kind is not yet noted, undated  (1 item, about 0.33 linear feet, about 0.1 linear metres)',
      'QF/3/1  Things whose kind is not yet noted, undated  (box 2, 1 item)',
      'QF/3/1/1  Bell of the old ferry, undated  (box 2)',
    ]);
  });

  test('prefix and separator are of one’s choice, and the ids follow the codes', () => {
    const { collection } = arranged(things, { prefix: 'Ø 7', separator: '.' });
    const item = collection.children[0]?.children[0]?.children[1];
    expect([item?.referenceCode, item?.id]).toEqual(['Ø 7.1.1.2', '_7-1-1-2']);
  });

  test('a bundle is a file, a single thing an item (ISAD(G), glossary: item, file)', () => {
    expect(itemOf({ kind: 'letter', quantity: 12 }).level).toBe('file');
    expect(itemOf({ kind: 'letters' }).level).toBe('file');
    expect(itemOf({ kind: 'letter' }).level).toBe('item');
  });

  test('a plural without a number is not counted as one', () => {
    expect(itemOf({ kind: 'letters' }).extents).toEqual([]);
    expect(itemOf({ kind: 'letter' }).extents).toMatchObject([
      { quantity: 1, unit: 'letter', coverage: 'whole' },
    ]);
    const letters = { kind: 'letters', title: 'From Nils' };
    const { collection } = arranged([someThing({ row: 2, ...letters }), someThing({ row: 3, kind: 'map' })]);
    expect(collection.extents[0]).toMatchObject({ quantity: 1, coverage: 'part', approximate: true });
    expect(collection.scopeAndContent).toContain('letters that are not counted');
    const folder = collection.children[0]?.children[0];
    expect(folder).toMatchObject({ title: 'Letters', level: 'file' });
    expect(folder?.extents.map(({ type, unit }) => [type, unit])).toEqual([['carrier', 'folder']]);
    // Two bundles are not two letters.
    const bundles = arranged([2, 3].map((row) => someThing({ row, ...letters }))).collection;
    expect(
      [bundles, ...bundles.children].flatMap(({ extents }) => extents.map(({ type }) => type)),
    ).not.toContain('materialtype');
    // Nor is what is noted of the size lost where there is nothing to count.
    for (const how of [{}, { quantityUnread: true }])
      expect(itemOf({ ...letters, ...how, size: '8x10 in' }).physicalDescription).toBe('8x10 in');
    const alone = arranged([someThing({ row: 2, ...letters })]).collection;
    expect(alone.extents.map(({ type }) => type)).not.toContain('materialtype');
  });

  test('what stands for an unread number is counted nowhere, and what is counted is no more the whole', () => {
    const unread = { kind: 'slides', quantityUnread: true } as const;
    // "2 crates" of slides are a bundle, not an item (ISAD(G), glossary).
    expect(itemOf(unread)).toMatchObject({ level: 'file', extents: [] });
    expect(itemOf({ kind: '8mm film strip', quantityUnread: true }).extents).toEqual([]);
    const alone = arranged([someThing({ row: 2, ...unread })]).collection;
    const counted = (unit: Component) => unit.extents.filter(({ type }) => type === 'materialtype');
    expect([alone, ...alone.children].flatMap(counted)).toEqual([]);
    expect(alone.scopeAndContent).toContain('slides that are not counted');
    const both = arranged([
      someThing({ row: 2, ...unread }),
      someThing({ row: 3, kind: 'slides', quantity: 36 }),
    ]).collection;
    expect(both.children.flatMap(counted)).toEqual([
      { type: 'materialtype', coverage: 'part', quantity: 36, unit: 'slides', approximate: true },
    ]);
    expect(findingAid.safeParse(arranged([someThing({ row: 2, ...unread })])).error).toBeUndefined();
  });

  test('a letter of six sheets is one letter', () => {
    expect(itemOf({ kind: 'letter', sheets: 6 }).extents).toMatchObject([{ quantity: 1, unit: 'letter' }]);
  });

  test('a date keeps the words of the list where it is shown otherwise', () => {
    expect(itemOf({ date: dated('c. 1950') }).dates).toEqual([
      { type: 'inclusive', expression: 'circa 1950', edtf: '1950~', written: 'c. 1950' },
    ]);
    expect(itemOf({ date: dated('the year of the heifer') }).dates).toEqual([
      { type: 'inclusive', expression: 'the year of the heifer' },
    ]);
    // DACS 2.4.16: never n.d.
    expect(itemOf({}).dates).toEqual([{ type: 'inclusive', expression: 'undated' }]);
  });

  test('nothing of a row is dropped', () => {
    const item = itemOf({
      number: '17',
      description: 'About the flood.',
      condition: 'torn',
      size: '8x10 in',
      kind: 'photo',
      access: 'family only',
      until: dated('2050'),
      note: 'Ask Ruth.',
      people: ['unknown'],
      languages: ['Riverish', 'Norwegian'],
      copies: ['copies/a.jpg'],
      box: '3',
      places: ['Quill Landing'],
      occasion: 'the flood',
      extra: [{ heading: 'Found in', text: 'attic' }],
    });
    expect(item).toMatchObject({
      otherIdentifiers: [{ value: '17' }],
      scopeAndContent: 'About the flood.',
      physicalCharacteristics: 'torn',
      extents: [{ quantity: 1, unit: 'photograph', dimensions: '8x10 in' }],
      accessConditions: { statement: 'family only', restricted: true, until: '2050' },
      generalNotes: [
        { text: 'Ask Ruth.' },
        { head: 'People', text: 'unknown' },
        { head: 'Language', text: 'Riverish' },
        { head: 'Found in', text: 'attic' },
      ],
      languages: [{ code: 'nor' }],
      digitalCopies: [{ file: 'copies/a.jpg' }],
      accessPoints: [
        { type: 'place', term: 'Quill Landing' },
        { type: 'subject', term: 'the flood' },
        { type: 'genre', term: 'photographs' },
      ],
    });
  });

  test('what anybody may see is not restricted', () => {
    expect(itemOf({ access: 'Everyone' }).accessConditions).toEqual({
      statement: 'Everyone',
      restricted: false,
    });
    expect(itemOf({ access: 'ask first' }).accessConditions).toEqual({
      statement: 'ask first',
      restricted: true,
    });
  });

  test('where the things of a folder lie in one box, the folder does', () => {
    const inBoxes = (...boxes: string[]) =>
      arranged(boxes.map((box, index) => someThing({ row: index + 2, box }))).collection.children[0]
        ?.children[0];
    expect(inBoxes('3', '3')?.containers).toEqual([
      { id: 'QF-1-1-box', type: 'box', number: '3' },
      { type: 'folder', number: '1', parent: 'QF-1-1-box' },
    ]);
  });

  test('what the list has in two boxes is in two folders, since a folder lies in one', () => {
    const { collection } = arranged([
      someThing({ row: 2, title: 'One', box: '3' }),
      someThing({ row: 3, title: 'Two', box: 'trunk' }),
    ]);
    const folders = collection.children[0]?.children ?? [];
    expect(folders.map(({ title, containers }) => [title, containers.map(({ number }) => number)])).toEqual([
      ['Things whose kind is not yet noted (1 of 2)', ['3', '1']],
      ['Things whose kind is not yet noted (2 of 2)', ['trunk', '2']],
    ]);
  });

  test('parts are not numbered where the title or the dates tell them apart', () => {
    const { collection } = arranged([
      someThing({ row: 2, title: 'One', kind: 'letter', box: '3' }),
      someThing({ row: 3, title: 'Two', kind: 'letter', box: '4', date: dated('1936') }),
    ]);
    const folders = collection.children[0]?.children ?? [];
    expect(folders.map(({ title, dates }) => [title, dates[0]?.expression])).toEqual([
      ['Letter', '1936'],
      ['Letter', 'undated'],
    ]);
  });

  test('the outline names the boxes of a folder whose things lie apart, neighbours drawn together', () => {
    const bells = ['4', '2', '3', '9'].map((number, at) => ({
      ...{ id: `QF-1-${at}`, level: 'item', title: `Bell ${at}` },
      containers: [{ type: 'box', number }],
    }));
    const folder = component.parse({ id: 'QF-1', level: 'file', title: 'Bells', children: bells });
    expect([...outline(folder)]).toEqual(['  Bells  (boxes 2-4, 9)']);
  });

  test('what lies apart is pointed to from its folder, and back', () => {
    const { collection } = arranged([
      someThing({ row: 2, title: 'Toll letter', kind: 'letter', occasion: 'the flood', size: 'A4' }),
      someThing({ row: 3, title: 'Toll plan', kind: 'letter', occasion: 'the flood', size: '50 x 70 cm' }),
    ]);
    const folder = collection.children[0]?.children[0];
    expect(folder?.physicalLocation).toMatch(
      /^Belonging here but lying apart: QF\/1\/1\/2 in box 2 \(flat box, /,
    );
    expect(folder?.children[1]).toMatchObject({
      containers: [{ type: 'box', number: '2' }],
      physicalLocation: expect.stringMatching(
        /^Apart from folder 1, in box 2 \(flat box, [^)]+\): too large for its folder|larger than any folder$/,
      ),
    });
    expect(folder?.children[0]?.physicalLocation).toBeUndefined();
  });

  test('words of collection.yaml reach the group they are meant for, under its own title', () => {
    const groups = { photographs: { title: 'Pictures', scope: 'Mostly of the ferry.' } };
    const group = arranged(things, { groups }).collection.children[1];
    expect(group).toMatchObject({ title: 'Pictures', scopeAndContent: 'Mostly of the ferry.' });
  });

  test('what the settings do not say is not invented', () => {
    const { collection, control } = arranged();
    expect(collection.scopeAndContent).toContain('12 letters');
    expect(collection.languages).toEqual([{ code: 'und', name: 'Undetermined' }]);
    expect(control.rights[0]?.citation).toBe('No rights in this description have been stated.');
    expect(control.history).toEqual([
      { type: 'created', date: '2026-05-14', agent: 'kinfonds', agentType: 'machine' },
    ]);
  });
});

describe('names', () => {
  const settings = someSettings({
    people: [
      { name: 'Ada Quill', also: ['Aunt Ada', 'A. Quill'], born: 1902, died: 1988 },
      { name: 'Pieter van der Molen', born: 'c. 1870' },
      { name: 'Quill Ferry Company', type: 'corporateBody', born: 1891 },
      { name: 'Gran' },
    ],
  });

  test('headings of people in collection.yaml are turned round and dated (common practice; RDA 9.2.2.4, from memory)', () => {
    expect(
      gatherAgents(settings)
        .all()
        .map(({ authorizedForm }) => authorizedForm),
    ).toEqual([
      'Quill, Ada, 1902-1988',
      'Molen, Pieter van der, approximately 1870-',
      'Quill Ferry Company',
      'Gran',
    ]);
  });

  test('every way in which the list writes a name leads to the same person', () => {
    const agents = gatherAgents(settings);
    const ids = ['ada quill', 'AUNT  ADA', 'A. Quill', 'Quill, Ada, 1902-1988'].map(agents.idOf);
    expect(new Set(ids)).toEqual(new Set(['ada-quill']));
  });

  test('a name met only in the list stays as written; nobody is nobody', () => {
    const agents = gatherAgents(someSettings());
    expect(agents.idOf('Rook family')).toBe('rook-family');
    expect(agents.idOf('Bea Rook')).toBe('bea-rook');
    expect(agents.idOf('Béa Rook')).toBe('bea-rook');
    expect(agents.idOf('unknown')).toBeUndefined();
    expect(agents.all().map(({ name, type }) => [name, type])).toEqual([
      ['Rook family', 'family'],
      ['Bea Rook', 'person'],
    ]);
  });

  test('names in any script get ids of their own', () => {
    const agents = gatherAgents(someSettings());
    expect(['Ада', 'Нильс', '李'].map(agents.idOf)).toEqual(['agent', 'agent-2', 'agent-3']);
  });
});

describe('kinds and languages', () => {
  test('no word of the table of kinds means two kinds', () => {
    const words = KINDS.flatMap(({ one, many, also }) => [...new Set([one, many, ...also])]);
    expect(words.filter((word, index) => words.indexOf(word) !== index)).toEqual([]);
    expect(new Set(KINDS.map(({ group }) => group))).toEqual(new Set(BROAD_GROUPS));
  });

  test('everyday words for a kind are understood', () => {
    expect(readKind('Photos')?.kind.one).toBe('photograph');
    expect(readKind('newspaper clipping')?.kind.many).toBe('press cuttings');
    // Several of what one of the words names.
    const plurals = [
      'bank books',
      'title deeds',
      'lithographs',
      'service records',
      'orders of service',
      'diaries',
    ];
    for (const word of plurals) expect(readKind(word)?.plural).toBe(true);
    expect(readKind('bank books')?.kind).toBe(readKind('bank book')?.kind);
    expect(readKind('8mm film')?.kind.one).toBe('film reel');
    expect(readKind('punt pole')).toBeUndefined();
  });

  test.each([
    // ISO 639-2/B: the bibliographic code is ger, not deu.
    ['German', 'ger', 'Latn'],
    ['de', 'ger', 'Latn'],
    ['norwegian', 'nor', 'Latn'],
    ['Russian', 'rus', 'Cyrl'],
    ['Modern Greek', 'gre', 'Grek'],
  ])('%s is %s in %s', (word, code, script) => {
    expect(languageUse(word)).toMatchObject({ code, script: { code: script } });
  });

  test('an unknown language is no language', () => {
    expect(languageUse('Riverish')).toBeUndefined();
  });
});

describe('weighing ways of sorting', () => {
  test('figures of each way, the chosen one marked', () => {
    const summaries = compareSortings(someSettings(), things);
    const byKind = summaries.find(({ groups }) => groups.join() === 'kind');
    expect(byKind).toEqual({
      groups: ['kind'],
      chosen: true,
      groupCount: 2,
      folderCount: 3,
      largest: { title: 'Correspondence', things: 2 },
      smallest: { title: 'Photographs', things: 1 },
      leftOver: 1,
    });
    expect(sortingTable(summaries).filter((line) => line.startsWith('→'))).toHaveLength(1);
  });

  test('says how to write a way that is not chosen, in words that collection.yaml takes', () => {
    const summaries = compareSortings(someSettings({ sort: { groups: ['kind', 'decade'] } }), things);
    const [folders, leftOver = '', choose = ''] = sortingNotes(summaries);
    expect(folders).toContain('headings');
    expect(leftOver).toContain('Left over');
    const [, way, line = ''] = /such as “(.+?)”, write .* the line (.+?) \(/.exec(choose) ?? [];
    expect(way).toBe('person, then kind');
    expect(someSettings(parse(line)).sort.groups).toEqual(['person', 'kind']);
  });

  test('a way that is not among the usual ones is weighed too', () => {
    const settings = someSettings({ sort: { groups: ['place', 'language'] } });
    expect(compareSortings(settings, things)[0]).toMatchObject({
      groups: ['place', 'language'],
      chosen: true,
      leftOver: 4,
    });
  });

  test('what fits no group is pointed out', () => {
    const { sorted } = arrangement({ settings: someSettings(), things }, '2026-01-01');
    expect([...leftOver(sorted)].map(({ thing, key }) => [thing.row, key])).toEqual([[5, 'kind']]);
  });
});

describe('what a stranger’s list taught', () => {
  test('folder and series of the list are kept where the sorting does not use them', () => {
    const item = itemOf({ folder: 'Blue', series: 'Ferry' });
    expect(item.generalNotes).toEqual([
      { head: 'Series in the list', text: 'Ferry' },
      { head: 'Folder in the list', text: 'Blue' },
    ]);
    const used = { sort: { groups: ['series'], folders: 'folder' } };
    const { collection } = arranged([someThing({ row: 2, folder: 'Blue', series: 'Ferry' })], used);
    expect(collection.children[0]?.title).toBe('Ferry');
    expect(collection.children[0]?.children[0]?.title).toBe('Blue');
    expect(collection.children[0]?.children[0]?.children[0]?.generalNotes).toEqual([]);
  });

  test('a kind of one’s own is shown as written', () => {
    const { collection } = arranged([
      someThing({ row: 2, kind: 'Schlüssel' }),
      someThing({ row: 3, kind: 'schlüssel' }),
    ]);
    expect(collection.children[0]?.title).toBe('Schlüssel');
    expect(collection.children[0]?.extents[0]).toMatchObject({ quantity: 2, unit: 'Schlüssel' });
  });

  test('dates in words do not make a group undated', () => {
    const group = (...words: string[]) =>
      arranged(
        words.map((written, index) => someThing({ row: index + 2, kind: 'letter', date: dated(written) })),
      ).collection.children[0]?.dates[0]?.expression;
    expect(group('um die Ernte', 'undated')).toBe('um die Ernte');
    expect(group('the flood', 'the frost', 'the thaw', 'the drought')).toBe('dates in words only');
    expect(group('undated')).toBe('undated');
  });

  test('bulk dates weigh pieces, not rows (DACS 2.4.10)', () => {
    const rows = Array.from({ length: 12 }, (_, index) =>
      someThing({ row: index + 2, kind: 'letter', date: dated('1890') }),
    );
    const bundle = someThing({ row: 20, kind: 'letter', date: dated('1970'), quantity: 300 });
    expect(arranged([...rows, bundle]).collection.dates[1]).toMatchObject({ type: 'bulk', edtf: '1970' });
  });

  test('the words behind a day that was worked out stay', () => {
    expect(itemOf({ date: dated('Christmas 1955') }).dates[0]?.note).toContain('“Christmas 1955”');
    expect(itemOf({ date: dated('14 May 1952') }).dates[0]?.note).toBeUndefined();
  });

  test('an end of a restriction does not close what anybody may see', () => {
    expect(itemOf({ access: 'open', until: dated('2050') }).accessConditions?.restricted).toBe(false);
    const access = { statement: 'Open, save for the letters of 1944.', until: '2040' };
    expect(arranged(things, { access }).collection.accessConditions).toEqual({
      statement: access.statement,
      restricted: false,
      until: '2040',
    });
  });

  test('a name turned round is the same name', () => {
    const agents = gatherAgents(someSettings({ people: [{ name: 'Heinrich Brandt', born: 1898 }] }));
    expect(agents.idOf('Brandt, Heinrich')).toBe('heinrich-brandt');
  });

  test.each([
    ['Savings Bank of Ellersby', 'corporateBody'],
    ['Bell & Co.', 'corporateBody'],
    ['Rook family', 'family'],
    ['Ada Cole', 'person'],
    ['Clara Banks', 'person'],
  ])('%s is a %s', (name, type) => {
    const agents = gatherAgents(someSettings());
    agents.idOf(name);
    expect(agents.all()[0]?.type).toBe(type);
  });

  test.each([
    ['norsk', 'nor'],
    ['Deutsch', 'ger'],
    ['en-GB', 'eng'],
  ])('%s is %s', (word, code) => expect(languageUse(word)?.code).toBe(code));
});

test.each([
  // RDA 9.2.2.4 and 9.3, from memory; common practice.
  [{ name: 'Henry Quill Jr.', born: '1850s' }, 'Quill, Henry, Jr., 1850s-'],
  // An open hyphen would say that he lives.
  [
    { name: 'Jonas Rook', born: 'c. 1850', died: 'before 1921' },
    'Rook, Jonas, approximately 1850-before 1921',
  ],
  [{ name: 'Henry Quill III' }, 'Quill, Henry, III'],
  [{ name: 'Aunt Ada' }, 'Aunt Ada'],
  [{ name: 'Gran' }, 'Gran'],
  [{ name: 'Quill, Ada', born: 1902 }, 'Quill, Ada, 1902-'],
  [{ name: 'Jon Quill', born: '1902?', died: '1988-05-12' }, 'Quill, Jon, probably 1902-1988'],
])('%o is headed %s', (person, heading) => {
  expect(gatherAgents(someSettings({ people: [person] })).all()[0]?.authorizedForm).toBe(heading);
});

test('names that differ in their vowel signs are different people', () => {
  const agents = gatherAgents(someSettings());
  expect(new Set(['パパ', 'ババ', 'ハハ', 'राम', 'रमा'].map(agents.idOf)).size).toBe(5);
});

test('an agent named twice is one creator', () => {
  const people = [{ name: 'Ada Quill', also: ['Aunt Ada'] }];
  const { collection } = arranged(things, { people, creators: ['Ada Quill', 'Aunt Ada'] });
  expect(collection.creators).toEqual([{ agent: 'ada-quill' }]);
});

test('the order of day and month holds for collection.yaml too', () => {
  const over = { dateOrder: 'month-day', people: [{ name: 'Ada Quill', born: '5/6/1902' }] };
  expect(arranged(things, over).people[0]?.birth).toBe('1902-05-06');
});
