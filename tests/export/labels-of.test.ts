import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import { component } from '../../src/catalogue/component.ts';
import { labelsOf } from '../../src/export/labels/labels-of.ts';
import { dated, someSettings, someThing } from '../support/catalogue.ts';

let ids = 0;
type Draft = { title: string; code?: string; dates?: string[]; containers?: unknown[]; children?: unknown[] };

/** A unit of description with what matters for labels. */
function unit(level: string, { title, code, dates = [], containers = [], children = [] }: Draft) {
  return {
    id: `u${++ids}`,
    level,
    title,
    ...(code !== undefined && { referenceCode: code }),
    dates: dates.map((edtf) => ({ expression: edtf, edtf })),
    containers,
    children,
  };
}

const collection = (...children: unknown[]) => ({
  collection: component.parse(unit('collection', { title: 'Quill Family Papers', children })),
});

let boxes = 0;
/** Containers as the arrangement writes them: the box with an id, the folder within it. */
function inBox(box: string, folder: string, type = 'box') {
  const id = `b${++boxes}`;
  return [
    { id, type, number: box },
    { type: 'folder', number: folder, parent: id },
  ];
}

const letters = unit('series', {
  title: 'Correspondence',
  children: [
    unit('file', { title: 'Postcards', code: 'QF/1/1', dates: ['1911'], containers: inBox('1', '1') }),
    unit('subseries', {
      title: 'From Ternesund',
      children: [
        unit('file', {
          title: 'Letters',
          code: 'QF/1/2/1',
          dates: ['1923/1939'],
          containers: inBox('1', '2'),
        }),
        unit('file', { title: 'Receipts', code: 'QF/1/2/2', containers: inBox('2', '3-5') }),
      ],
    }),
    unit('file', { title: 'Cards', code: 'QF/1/3', dates: ['1940'], containers: inBox('1', '10') }),
  ],
});
const maps = unit('series', {
  title: 'Maps and plans',
  children: [
    unit('file', {
      title: 'Maps',
      code: 'QF/2/1',
      containers: [{ type: 'folder', number: '11' }],
      children: [
        unit('item', {
          title: 'The river bend',
          code: 'QF/2/1/1',
          dates: ['1891'],
          containers: [{ type: 'flat box', number: '1' }],
        }),
      ],
    }),
  ],
});

describe('a folder with a single thing in it', () => {
  const folderOf = (title: string, ...children: unknown[]) =>
    labelsOf(collection(unit('file', { title, containers: inBox('1', '1'), children })))[0];
  const flood = unit('item', { title: 'Ada to Nils on the flood' });
  const apart = unit('item', { title: 'Map', containers: [{ type: 'flat box', number: '2' }] });

  test('names it beneath the title of the folder', () => {
    expect(folderOf('Letter', flood)).toMatchObject({ title: 'Letter', thing: 'Ada to Nils on the flood' });
    expect(folderOf('Letter', flood, apart)).toMatchObject({ thing: 'Ada to Nils on the flood' });
  });

  test('does not where there are several or none, or where it says the same', () => {
    expect(folderOf('Letters', flood, flood)).not.toHaveProperty('thing');
    expect(folderOf('Map', apart)).not.toHaveProperty('thing');
    expect(folderOf('Ada to Nils on the flood', flood)).not.toHaveProperty('thing');
  });
});

describe('labels of a finding aid', () => {
  const labels = labelsOf(collection(letters, maps));
  const byKey = (key: string) => labels.find((label) => label.key === key);

  test('one for every folder, then one for every box, by their numbers', () => {
    expect(labels.map(({ key }) => key)).toEqual([
      'box 1, folder 1',
      'box 1, folder 2',
      'box 2, folder 3',
      'box 2, folder 4',
      'box 2, folder 5',
      // 10 after 5: numbers, not letters.
      'box 1, folder 10',
      'folder 11',
      'box 1',
      'flat box 1',
      'box 2',
    ]);
  });

  test('a folder says where it belongs', () => {
    expect(byKey('box 1, folder 2')).toEqual({
      key: 'box 1, folder 2',
      of: 'folder',
      type: 'Folder',
      number: '2',
      box: { type: 'Box', number: '1' },
      collection: 'Quill Family Papers',
      series: ['Correspondence', 'From Ternesund'],
      title: 'Letters',
      dates: '1923/1939',
      codes: 'QF/1/2/1',
    });
  });

  test('what is spread over several folders has a label for each of them', () => {
    const parts = labels.filter(({ title }) => title === 'Receipts');
    expect(parts.map(({ number, part }) => [number, part])).toEqual([
      ['3', '1 of 3'],
      ['4', '2 of 3'],
      ['5', '3 of 3'],
    ]);
    expect(byKey('box 2')).toMatchObject({ folders: '3-5', codes: 'QF/1/2/2' });
  });

  test('a box says what it holds, from the first to the last', () => {
    expect(byKey('box 1')).toEqual({
      key: 'box 1',
      of: 'box',
      type: 'Box',
      number: '1',
      collection: 'Quill Family Papers',
      // Two paths meet in it, both of them in the same series.
      series: ['Correspondence'],
      dates: '1911-1940',
      codes: 'QF/1/1 to QF/1/3',
      // 10 stands apart: "1-10" would claim folders that are elsewhere.
      folders: '1-2, 10',
    });
  });

  test('things that lie in a box without a folder are named on it', () => {
    expect(byKey('flat box 1')).toMatchObject({
      type: 'Flat box',
      title: 'The river bend',
      dates: '1891',
      codes: 'QF/2/1/1',
      // The folder that it lies apart from is no series.
      series: ['Maps and plans'],
    });
  });

  test('what is spread over several boxes says so on each of them', () => {
    const books = unit('item', {
      title: 'Account books',
      code: 'QF/5/5/1',
      containers: ['7', '8'].map((number) => ({ type: 'box', number })),
    });
    const made = labelsOf(collection(books));
    expect(made.map(({ key, title, part }) => [key, title, part])).toEqual([
      ['box 7', 'Account books', '1 of 2'],
      ['box 8', 'Account books', '2 of 2'],
    ]);
  });

  test('years on a box, and none where none is known', () => {
    const box = (dates: string[]) => {
      const file = unit('file', { title: 'T', dates, containers: inBox('1', '1') });
      return labelsOf(collection(file)).find(({ of }) => of === 'box')?.dates;
    };
    expect(box(['191X', '1905-05-14'])).toBe('1905-1919');
    expect(box(['1911'])).toBe('1911');
    expect(box(['1911-05', '1911-07-02'])).toBe('1911');
    expect(box([])).toBeUndefined();
    // DACS 2.4.12: what is approximate is said to be; brackets keep a mark to the first of two years.
    expect(box(['1910~', '1930-05'])).toBe('[circa 1910]-1930');
    expect(box(['1910', '1930~'])).toBe('1910-circa 1930');
    expect(box(['1910~', '1930~'])).toBe('circa 1910-1930');
    expect(box(['1910~'])).toBe('circa 1910');
    expect(box(['1910?', '1910-01-01'])).toBe('probably 1910');
    expect(box(['1962/..', '1950'])).toBe('1950-1962');
    // DACS 2.4.16.
    const undated = {
      ...unit('file', { title: 'T', containers: inBox('1', '1') }),
      dates: [{ expression: 'undated' }],
    };
    expect(labelsOf(collection(undated)).at(-1)?.dates).toBe('undated');
  });

  test('what has no year: the words of the list, and undated only where that says so', () => {
    const dated = (expression: string) => ({
      ...unit('file', { title: 'T', containers: inBox('1', String(++boxes)) }),
      dates: [/^[[\d]/.test(expression) ? { expression, edtf: expression } : { expression }],
    });
    const box = (...dates: string[]) => labelsOf(collection(...dates.map(dated))).at(-1)?.dates;
    expect(box('the years on the ferry')).toBe('the years on the ferry');
    expect(box('the years on the ferry', 'undated')).toBe('the years on the ferry; undated');
    expect(box('a', 'b', 'c')).toBe('a; b; c');
    expect(box('a', 'b', 'c', 'd')).toBe('dates in words only');
    // "1911-1940 and undated": common practice of finding aids.
    expect(box('1911', 'undated', '1940', 'undated')).toBe('1911-1940 and undated');
    expect(box('1911', 'the flood')).toBe('1911; the flood');
    expect(box('[..1899]')).toBe('before 1900');
    expect(box('[..1899]', '1908', '2016')).toBe('before 1900, 1908-2016');
    expect(box('1911', 'the flood', 'undated')).toBe('1911; the flood and undated');
    const long = 'from the day on which Thea first went to Nordvik until she came home to the orchard';
    expect(box('1911', long)).toBe('1911; dates in words');
    const shortened = box(long) ?? '';
    expect(shortened.endsWith('…') && long.startsWith(`${shortened.slice(0, -1)} `)).toBe(true);
    expect(shortened.length).toBeLessThan(64);
    expect(labelsOf(collection(dated(long)))[0]?.dates).toBe(shortened);
  });

  test('a box with one thing of which the date is in words has those words', () => {
    const diaries = someThing({
      row: 2,
      title: 'Pocket diaries of Thea',
      kind: 'diaries',
      date: dated('her years on the ferry'),
      box: '7',
    });
    const labels = labelsOf(arrange({ settings: someSettings(), things: [diaries] }, '2026-05-14'));
    expect(labels.map(({ dates }) => dates)).not.toContain('undated');
    expect(labels.find(({ key }) => key === 'box 7')?.dates).toBe('her years on the ferry');
  });

  test('a folder that names no box is labelled with that of the unit above it, or the one before it', () => {
    const folder = (number: string, type = 'Folder') => ({ type, number });
    const box = (number: string) => ({ type: 'Box', number });
    const keys = (...units: unknown[]) => labelsOf(collection(...units)).map(({ key }) => key);
    const file = unit('file', { title: 'Tolls', containers: [folder('2', 'flatfolder')] });
    expect(keys(unit('series', { title: 'Ferry', containers: [box('1')], children: [file] }))).toEqual([
      'Box 1, flatfolder 2',
      'Box 1',
    ]);
    const spread = [box('1'), folder('5'), box('2'), folder('6')];
    expect(keys(unit('file', { title: 'Tolls', containers: spread })).slice(0, 2)).toEqual([
      'Box 1, Folder 5',
      'Box 2, Folder 6',
    ]);
    // In which of the two it stands, the finding aid does not say.
    const either = unit('series', { title: 'Ferry', containers: [box('1'), box('2')], children: [file] });
    expect(keys(either)).toContain('flatfolder 2');
  });

  test('of an arranged list', () => {
    const things = [
      someThing({ row: 2, kind: 'letter', box: '2', date: dated('1911') }),
      someThing({ row: 3, kind: 'letter', box: '2', date: dated('1912') }),
      someThing({ row: 4, kind: 'receipt', date: dated('1913') }),
    ];
    const labels = labelsOf(arrange({ settings: someSettings(), things }, '2026-05-14'));
    const folders = labels.filter(({ of }) => of === 'folder');
    expect(folders).toHaveLength(3);
    expect(new Set(folders.map(({ number }) => number)).size).toBe(3);
    expect(labels.some(({ of, number }) => of === 'box' && number === '2')).toBe(true);
  });

  test('a folder and a box have the dates of what lies in them, and not of what lies apart', () => {
    const recipe = unit('item', { title: 'Recipe for plum jam', containers: [] });
    const book = unit('item', { title: 'Cookery book', containers: [{ type: 'box', number: '4' }] });
    const file = unit('file', {
      title: 'Cookery',
      containers: inBox('1', '15'),
      children: [
        { ...recipe, dates: [{ expression: '1931', edtf: '1931' }] },
        { ...book, dates: [{ expression: 'before 1900', edtf: '[..1899]' }] },
      ],
    });
    const whole = { ...file, dates: [{ expression: 'before 1900, 1931', edtf: '{..1899,1931}' }] };
    const labels = labelsOf(collection(whole));
    expect(labels.map(({ key, dates }) => [key, dates])).toEqual([
      ['box 1, folder 15', '1931'],
      ['box 1', '1931'],
      ['box 4', 'before 1900'],
    ]);
  });

  test('a box with glass plates says so, no other box and no folder does', () => {
    const things = [
      someThing({ row: 2, title: 'The landing', kind: 'glass plates', date: dated('1891'), box: '7' }),
      someThing({ row: 3, title: 'Glass jug', kind: 'object', box: '8' }),
      someThing({ row: 4, title: 'Letter', kind: 'letter', box: '9' }),
    ];
    const labels = labelsOf(arrange({ settings: someSettings(), things }, '2026-05-14'));
    expect(labels.filter(({ care }) => care !== undefined)).toMatchObject([{ key: 'box 7', care: 'GLASS' }]);
    expect(labels.map(({ key }) => key)).toEqual(expect.arrayContaining(['box 8', 'box 9']));
  });

  // Common practice: what is restricted is seen to be so before it is opened.
  test('a folder with something restricted in it says so, and no other does', () => {
    const things = [
      someThing({ row: 2, kind: 'letter', date: dated('1911'), access: 'private' }),
      someThing({ row: 3, kind: 'letter', date: dated('1911') }),
      someThing({ row: 4, kind: 'letter', date: dated('1912') }),
      // Too large for its folder, it lies apart.
      someThing({ row: 5, kind: 'letter', date: dated('1912'), size: '60 x 90 cm', access: 'private' }),
    ];
    const labels = labelsOf(arrange({ settings: someSettings(), things }, '2026-05-14'));
    const marked = labels.filter(({ care }) => care === 'RESTRICTED');
    expect(marked).toMatchObject([{ of: 'folder', dates: '1911' }]);
    expect(labels.filter(({ of }) => of === 'folder')).toHaveLength(2);
  });

  test('no folder is lost and none has two labels, whatever the numbers', () => {
    const number = fc.oneof(
      fc.integer({ min: 1, max: 40 }).map(String),
      fc.constantFrom('7a', 'OV 1', '3–5', '5-3'),
    );
    const files = fc.array(fc.record({ box: fc.constantFrom('1', '2', 'trunk'), folder: number }), {
      maxLength: 30,
    });
    fc.assert(
      fc.property(files, (drafts) => {
        const units = drafts.map(({ box, folder }, index) =>
          unit('file', { title: `File ${index}`, containers: inBox(box, folder) }),
        );
        const made = labelsOf(collection(...units));
        const wanted = new Set(
          // A dash of either kind between two numbers that rise is a range.
          drafts.flatMap(({ box, folder }) =>
            (folder === '3–5' ? ['3', '4', '5'] : [folder]).map((one) => `box ${box}, folder ${one}`),
          ),
        );
        for (const { box } of drafts) wanted.add(`box ${box}`);
        expect(made.map(({ key }) => key).sort()).toEqual([...wanted].sort());
      }),
    );
  });
});
