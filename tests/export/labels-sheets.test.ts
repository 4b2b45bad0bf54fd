import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readSheet } from '../../src/export/labels/own-sheet.ts';
import { cornerOf, labelsOn, SHEETS, usualSheet } from '../../src/export/labels/sheets.ts';

const named = (name: string) => {
  const read = readSheet(name);
  if ('trouble' in read) throw new Error(read.trouble);
  return read.sheet;
};
const trouble = (words: string) => {
  const read = readSheet(words);
  return 'trouble' in read ? read.trouble : `none: ${JSON.stringify(read.sheet)}`;
};

describe('sheets of labels', () => {
  test.each(SHEETS)('$name lies within its page, labels side by side, with even margins', (sheet) => {
    const { page, label, step, first } = sheet;
    // ISO 216: A4 is 210 × 297 mm. US Letter is 8½ × 11 in; an inch is 25.4 mm (exact).
    expect(page).toEqual(sheet.name.startsWith('A4') ? [210, 297] : [215.9, 279.4]);
    const end = cornerOf(sheet, labelsOn(sheet) - 1);
    for (const side of [0, 1] as const) {
      expect(step[side]).toBeGreaterThanOrEqual(label[side]);
      expect(first[side]).toBeGreaterThanOrEqual(0);
      const margin = page[side] - end[side] - label[side];
      expect(Math.abs(margin - first[side])).toBeLessThan(0.02);
    }
  });

  // By hand, in inches: rows 10 × 1 in an 11 in page leave ½ in above; 3 × 2⅝ + 2 × ⅛ in 8½ leave 3/16 at the left.
  test('US Letter, 3 × 10 of 1 × 2⅝ in', () => {
    const sheet = named('letter 3x10');
    expect(labelsOn(sheet)).toBe(30);
    expect(sheet.label.map((side) => side / 25.4)).toEqual([2.625, 1]);
    const corner = (place: number) =>
      cornerOf(sheet, place).map((side) => Math.round((side / 25.4) * 1e4) / 1e4);
    expect([corner(0), corner(1), corner(3), corner(29)]).toEqual([
      [0.1875, 0.5],
      [2.9375, 0.5],
      [0.1875, 1.5],
      [5.6875, 9.5],
    ]);
  });

  test('A4, 3 × 8: 70 mm fill the width, and 37 mm leave half a millimetre', () => {
    const sheet = named('a4  3×8');
    expect([labelsOn(sheet), ...cornerOf(sheet, 0), ...cornerOf(sheet, 23)]).toEqual([
      24, 0, 0.5, 140, 259.5,
    ]);
  });

  test('the paper of the country, larger labels for boxes', () => {
    expect(usualSheet('US', 'folders').name).toBe('letter 3x10');
    expect(usualSheet('CA', 'boxes').name).toBe('letter 2x5');
    expect(usualSheet('NO', 'folders').name).toBe('A4 3x7');
    expect(usualSheet(undefined, 'boxes').name).toBe('A4 2x4');
  });
});

describe('a sheet of one’s own', () => {
  test('from all of its measures', () => {
    expect(named('page 210x297, label 70x37, first at 0x0.5, step 70x37')).toMatchObject({
      page: [210, 297],
      columns: 3,
      rows: 8,
      first: [0, 0.5],
      step: [70, 37],
    });
  });

  test('from page and label alone: as many as fit, in the middle', () => {
    expect(named('page A4, label 70 x 37')).toMatchObject({ columns: 3, rows: 8, first: [0, 0.5] });
    expect(named('label 60x30; page 100x100; labels 1x2')).toMatchObject({
      columns: 1,
      rows: 2,
      first: [20, 20],
    });
  });

  test('in inches', () => {
    const own = named('page letter, label 2.625x1in, first at 0.1875 x 0.5 in, step 2.75in x 1in');
    const known = named('letter 3x10');
    expect([own.columns, own.rows]).toEqual([known.columns, known.rows]);
    for (const place of [0, 29])
      cornerOf(own, place).forEach((side, index) => {
        expect(side).toBeCloseTo(cornerOf(known, place)[index] ?? -1, 6);
      });
  });

  test.each([
    ['letter 5x5', /known by name are letter 3x10/],
    ['page 210x297', /at least the page and the label/],
    ['page A4, label 70', /“label 70” is no width and height/],
    ['page A4, label -70x37', /no room for words/],
    ['page A4, label 70x1', /no room for words; 20 × 10 mm/],
    ['page 0x297, label 70x37', /no sheet of paper/],
    ['page A4, label 70x37, step 60x37', /lie over each other/],
    ['page A4, label 70x37, first at -5x0', /begins outside the page/],
    ['page A4, label 250x37', /Not one label of 250 × 37 mm: that does not fit on a page of 210 × 297 mm/],
    ['page A4, label 70x37, labels 4x8', /4 across and 8 down of 70 × 37 mm/],
    ['page A4, label 70x37, labels 2.5x8', /no number of columns and rows/],
    ['page A4, label 70x37, margin 5x5', /“margin 5x5” is none of page, label, first at, step, labels/],
    ['page A4, label 70x37, label 60x37', /“label” is given twice/],
    ['page A4, label 7..0x37', /no width and height/],
  ])('%s is refused with a reason', (words, reason) => {
    expect(trouble(words)).toMatch(reason);
  });

  test('whatever is taken lies on its page', () => {
    const measure = (least: number, most: number) => {
      const side = fc.integer({ min: least * 2, max: most * 2 }).map((halves) => halves / 2);
      return fc.tuple(side, side).map(([x, y]) => `${x}x${y}`);
    };
    const words = fc
      .record({
        page: measure(80, 400),
        label: measure(10, 120),
        first: fc.option(measure(-5, 60)),
        step: fc.option(measure(20, 150)),
      })
      .map(({ page, label, first, step }) =>
        [`page ${page}`, `label ${label}`, first && `first at ${first}`, step && `step ${step}`]
          .filter((part) => part)
          .join(', '),
      );
    let taken = 0;
    fc.assert(
      fc.property(words, (text) => {
        const read = readSheet(text);
        if ('trouble' in read) return;
        taken += 1;
        const { sheet } = read;
        const end = cornerOf(sheet, labelsOn(sheet) - 1);
        for (const axis of [0, 1] as const) {
          expect(sheet.first[axis]).toBeGreaterThanOrEqual(0);
          // Sheets are measured to a tenth of a millimetre.
          expect(end[axis] + sheet.label[axis]).toBeLessThanOrEqual(sheet.page[axis] + 0.2);
        }
      }),
      { numRuns: 2000 },
    );
    expect(taken).toBeGreaterThan(50);
  });
});
