import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arrangement } from '../../src/arrange/index.ts';
import { housingSettings } from '../../src/catalogue/housing-settings.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { asFilled } from '../../src/housing/fill-boxes.ts';
import { covers } from '../../src/housing/measures.ts';
import type { Box, Filled, Holder, Unit } from '../../src/housing/model.ts';
import { stockFrom } from '../../src/housing/stock.ts';
import {
  type Supply,
  sayFoldersApart,
  supplies,
  suppliesCsv,
  suppliesTable,
} from '../../src/housing/supplies.ts';
import { foldersApart, suppliesFor } from '../../src/housing/supplies-for.ts';
import { someSettings, someThing } from '../support/catalogue.ts';

const inches = (number: number) => number * 25.4;

// From memory: a folder of letter size is 11¾ × 9½ in, a document box 12¼ × 10¼ × 5 in.
const folder: Holder = {
  id: 'folder-letter',
  one: 'letter folder',
  many: 'letter folders',
  type: 'folder',
  inside: { long: 292, short: 229 },
  outside: { long: inches(11.75), short: inches(9.5) },
  limit: 19,
  wall: 1,
  takes: ['sheet'],
  shelf: 'papers',
  material: 'acid-free paper',
  use: 'letters and other papers',
  source: 'invented for this test',
};
const sleeve: Holder = {
  ...folder,
  id: 'sleeve',
  one: 'sleeve, "4 × 5"',
  many: 'sleeves, "4 × 5"',
  type: 'sleeve',
  outside: { long: inches(5.5), short: inches(4.125) },
  material: 'polyester',
  use: 'negatives, one each',
};
const envelope: Holder = { ...folder, id: 'env', one: 'envelope', many: 'envelopes', type: 'envelope' };
const box: Box = {
  id: 'document-box-letter',
  one: 'document box',
  many: 'document boxes',
  lies: 'upright',
  face: { long: 305, short: 254 },
  deep: 121,
  outside: { width: inches(12.25), height: inches(10.25), depth: inches(5) },
  along: inches(5),
  takes: ['papers'],
  material: 'acid-free board',
  use: 'folders, upright',
  source: 'invented for this test',
};
const flatBox: Box = { ...box, id: 'flat', one: 'flat box', many: 'flat boxes', lies: 'flat' };
const filledWith = (kind: Box, ...thicknesses: number[]): Filled =>
  asFilled(
    kind,
    thicknesses.map((thickness): Unit => ({ shelf: 'papers', outside: folder.outside, thickness })),
  );
const counts = (rows: readonly Supply[]) => rows.map(({ number, what }) => `${number} ${what}`);

test('boxes first, then spacers, folders, envelopes, sleeves, in the number that goes with each', () => {
  const rows = supplies({
    holders: [
      { holder: sleeve, number: 30 },
      { holder: envelope, number: 1 },
      { holder: folder, number: 12 },
      { holder: folder, number: 3 },
      { holder: { ...folder, id: 'legal', many: 'legal folders' }, number: 40 },
      { holder: { ...folder, id: 'none' }, number: 0 },
    ],
    filled: [
      filledWith(flatBox, 20),
      filledWith(box, 60, 45),
      // 41 mm are left, then 31; with room for a finger (10 mm) the spacers are 31 and 21 mm thick.
      filledWith(box, 40, 40),
      filledWith(box, 50, 40),
    ],
  });
  expect(counts(rows)).toEqual([
    '3 document boxes',
    '1 flat box',
    '2 spacers for document boxes',
    '40 legal folders',
    '15 letter folders',
    '1 envelope',
    '30 sleeves, "4 × 5"',
  ]);
  expect(rows[2]?.use).toContain('21 to 31 mm');
});

test('one spacer', () => {
  const [, spacer] = supplies({ holders: [], filled: [filledWith(box, 50, 40)] });
  expect(spacer).toMatchObject({ number: 1, what: 'spacer for a document box', millimetres: '305 × 254' });
  expect(spacer?.use).toContain('folded 21 mm');
});

test('the article goes with the name of the box', () => {
  const [, spacer] = supplies({
    holders: [],
    filled: [filledWith({ ...box, one: 'A4 document box' }, 50, 40)],
  });
  expect(spacer?.what).toBe('spacer for an A4 document box');
});

test('a box to be laid flat wants no spacer', () => {
  expect(counts(supplies({ holders: [], filled: [filledWith(box, 10)] }))).toEqual(['1 document box']);
});

test('measures in millimetres and to an eighth of an inch (from memory; × 25.4)', () => {
  const rows = supplies({
    holders: [
      { holder: folder, number: 1 },
      { holder: sleeve, number: 1 },
    ],
    filled: [filledWith(box, 100)],
  });
  expect(rows.map(({ millimetres, inches }) => [millimetres, inches])).toEqual([
    ['311 × 260 × 127', '12¼ × 10¼ × 5'],
    ['298 × 241', '11¾ × 9½'],
    ['140 × 105', '5½ × 4⅛'],
  ]);
});

test('nothing to get', () => {
  expect(supplies({ holders: [], filled: [] })).toEqual([]);
  expect(suppliesTable([])).toEqual(['number  what  millimetres  inches  material  use']);
});

test('as many boxes as are filled, as many holders as are asked for, however they are listed', () => {
  const someFilled = fc.array(
    fc
      .tuple(fc.constantFrom(box, flatBox), fc.integer({ min: 1, max: 121 }))
      .map(([kind, t]) => filledWith(kind, t)),
  );
  const someHolders = fc.array(
    fc.record({ holder: fc.constantFrom(folder, sleeve, envelope), number: fc.nat({ max: 50 }) }),
  );
  fc.assert(
    fc.property(someHolders, someFilled, (holders, filled) => {
      const rows = supplies({ holders, filled });
      const total = rows.reduce((sum, { number }) => sum + number, 0);
      const spacers = filled.filter(({ advice }) => advice === 'spacer').length;
      expect(total).toBe(holders.reduce((sum, { number }) => sum + number, 0) + filled.length + spacers);
      expect(new Set(rows.map(({ what }) => what)).size).toBe(rows.length);
    }),
  );
});

describe('on paper', () => {
  const rows = supplies({
    holders: [
      { holder: sleeve, number: 130 },
      { holder: { ...folder, id: 'own', many: '=own, folders' }, number: 2 },
    ],
    filled: [filledWith(box, 50, 40)],
  });

  test('CSV reads back cell by cell (RFC 4180), and no cell runs as a formula', () => {
    const text = suppliesCsv(rows);
    expect(text).toMatch(/^\uFEFFnumber,what,millimetres,inches,material,use\r\n/);
    const read: string[][] = parse(text, { bom: true, record_delimiter: '\r\n' });
    expect(read.map(([number, what]) => [number, what])).toEqual([
      ['number', 'what'],
      ['1', 'document box'],
      ['1', 'spacer for a document box'],
      ['2', "'=own, folders"],
      ['130', 'sleeves, "4 × 5"'],
    ]);
    expect(read[1]?.slice(2)).toEqual(['311 × 260 × 127', '12¼ × 10¼ × 5', box.material, box.use]);
  });

  test('in the table every column begins at the same place, numbers end there', () => {
    const lines = suppliesTable(rows);
    expect(lines).toHaveLength(rows.length + 1);
    const column = lines[0]?.indexOf('millimetres') ?? -1;
    for (const [index, { millimetres }] of rows.entries()) {
      expect(lines[index + 1]?.slice(column - 2)).toMatch(new RegExp(`^ {2}${millimetres} `));
    }
    expect(lines.at(-1)).toMatch(/^ {3}130 {2}sleeves/);
    expect(lines[1]).toMatch(/^ {5}1 {2}document box/);
  });
});

// Common practice: a loose photograph goes into its folder sleeved, also into a large one.
describe('sleeves of photographs', () => {
  const sleevesFor = (size: string) =>
    suppliesFor(
      arrangement(
        { settings: someSettings(), things: [someThing({ row: 2, kind: 'photograph', size })] },
        '2026-01-01',
      ),
    )
      .map(({ what }) => what)
      .filter((what) => what.includes('sleeve'));

  test('are counted in folders, large ones among them', () => {
    expect(sleevesFor('5 x 7 in')).toEqual(['photograph sleeve, 5 × 7 in']);
    expect(sleevesFor('11 x 14 in')).toEqual(['photograph sleeve, 11 × 14 in']);
  });

  test('are not bought where they would stick out of the folder', () => {
    // 210 × 330 mm go into a foolscap folder, the next sleeve, of 11 × 14 in, does not.
    expect(sleevesFor('210 x 330 mm')).toEqual([]);
  });

  test.each(['US', 'NO'])('each go into a folder that goes into a box, in %s', (country) => {
    const { holders, boxes } = stockFrom(housingSettings.parse({}), country);
    const folders = holders.filter(({ type }) => type === 'folder');
    const prints = holders.filter(({ type, takes }) => type === 'sleeve' && takes.includes('photograph'));
    expect(prints.length).toBeGreaterThan(3);
    for (const { id, outside } of prints) {
      const fitting = folders.filter(({ inside }) => covers(inside, outside));
      const boxed = fitting.some((one) =>
        boxes.some((box) => box.takes.includes(one.shelf) && covers(box.face, one.outside)),
      );
      expect([id, boxed]).toEqual([id, true]);
    }
  });
});

// A map of 16 × 20 in lies flat in a large folder, apart from that of the letters filed with it.
test('folders for what lies apart are those that the outline does not number', () => {
  const letters = [1, 2, 3].map((row) => someThing({ row: row + 1, kind: 'letter', title: `Letter ${row}` }));
  const large = someThing({ row: 9, kind: 'letter', title: 'A large one', size: '16 x 20 in' });
  const of = (things: readonly Thing[]) => {
    const arranged = arrangement({ settings: someSettings(), things }, '2026-01-01');
    const toGet = suppliesFor(arranged).filter(({ what }) => /folders?\b/.test(what));
    const numbered = arranged.aid.collection.extents.find(({ unit }) => /^folders?$/.test(unit))?.quantity;
    const apart = foldersApart(arranged.groups);
    return { more: toGet.reduce((sum, { number }) => sum + number, 0) - (numbered ?? 0), apart };
  };
  expect(of(letters)).toEqual({ more: 0, apart: 0 });
  expect(of([...letters, large])).toEqual({ more: 1, apart: 1 });
  expect(sayFoldersApart(0)).toBe('');
  expect(sayFoldersApart(2)).toBe('Folders: 2 more than in the outline, for what lies apart.');
});
