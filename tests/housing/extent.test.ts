import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { extent as extentModel } from '../../src/catalogue/component.ts';
import { structured } from '../../src/export/ead3/physical-description.ts';
import { extentsOfBoxes, sayExtent, shareOfShelf } from '../../src/housing/extent.ts';
import type { Box } from '../../src/housing/model.ts';
import { element } from '../../src/xml/element.ts';

const inches = (number: number) => number * 25.4;

/** A box by its outside measures in inches. */
function someBox(id: string, width: number, height: number, depth: number, one: string, many: string): Box {
  return {
    id,
    one,
    many,
    lies: 'upright',
    face: { long: inches(width) - 6, short: inches(height) - 6 },
    deep: inches(depth) - 6,
    outside: { width: inches(width), height: inches(height), depth: inches(depth) },
    along: inches(depth),
    takes: ['papers'],
    material: 'acid-free board',
    use: '',
    source: 'invented for this test',
  };
}

// From memory: the document box is 12¼ × 10¼ × 5 in, half the width is 2½ in.
const full = someBox('document-box-letter', 12.25, 10.25, 5, 'document box', 'document boxes');
const half = someBox(
  'half-box-letter',
  12.25,
  10.25,
  2.5,
  'half-width document box',
  'half-width document boxes',
);
const carton = someBox('record-carton', 12, 10, 15, 'record carton', 'record cartons');
const times = (number: number, box: Box) => Array.from({ length: number }, () => box);
const inBoxes = (...boxes: Box[]) => boxes.map((box) => ({ box }));

/** The room that boxes are said to take along the shelf, in feet and in metres. */
function shelfExtent(boxes: readonly Box[]): { feet: number; metres: number } {
  const extents = extentsOfBoxes(inBoxes(...boxes), 'both');
  const of = (unit: RegExp) => extents.find((extent) => unit.test(extent.unit))?.quantity ?? 0;
  return { feet: of(/^linear (?:foot|feet)$/), metres: of(/^linear metres?$/) };
}

describe('room on the shelf', () => {
  test('5 in are 0.42 linear feet, 2½ in 0.21 (arithmetic)', () => {
    expect(shelfExtent([full]).feet).toBe(0.42);
    expect(shelfExtent([half]).feet).toBe(0.21);
  });

  test('in metres: 127 mm are 0.13 m, 2 × 127 mm 0.25 m', () => {
    expect(shelfExtent([full]).metres).toBe(0.13);
    expect(shelfExtent([full, full]).metres).toBe(0.25);
  });

  test('the sum is rounded, not its parts: 10 in are 0.83, not twice 0.42', () => {
    expect(shelfExtent([full, full]).feet).toBe(0.83);
    expect(shelfExtent(times(12, full)).feet).toBe(5);
  });

  test('halves go up, although 38.1 mm ÷ 304.8 mm may be a little less than 0.125 in binary', () => {
    expect(shelfExtent([{ ...full, along: inches(1.5) }]).feet).toBe(0.13);
    expect(shelfExtent(times(3, { ...full, along: inches(1.5) })).feet).toBe(0.38);
  });

  test('never off by more than half of the last decimal', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 2000 }), { maxLength: 60 }), (alongs) => {
        const { feet, metres } = shelfExtent(alongs.map((along) => ({ ...full, along })));
        const total = alongs.reduce((sum, along) => sum + along, 0);
        expect(Math.abs(feet * 304.8 - total)).toBeLessThanOrEqual(1.524001);
        expect(Math.abs(metres * 1000 - total)).toBeLessThanOrEqual(5.000001);
      }),
    );
  });
});

describe('statements of extent', () => {
  test('linear feet and metres of the whole, then the boxes', () => {
    expect(extentsOfBoxes(inBoxes(full, full), 'both')).toEqual([
      { type: 'spaceoccupied', coverage: 'whole', quantity: 0.83, unit: 'linear feet' },
      { type: 'spaceoccupied', coverage: 'whole', quantity: 0.25, unit: 'linear metres' },
      { type: 'carrier', coverage: 'whole', quantity: 2, unit: 'document boxes' },
    ]);
  });

  test('several kinds of boxes are each a part, the most frequent first', () => {
    expect(extentsOfBoxes(inBoxes(half, full, full), 'feet')).toEqual([
      // 12.5 in ÷ 12
      { type: 'spaceoccupied', coverage: 'whole', quantity: 1.04, unit: 'linear feet' },
      { type: 'carrier', coverage: 'part', quantity: 2, unit: 'document boxes' },
      { type: 'carrier', coverage: 'part', quantity: 1, unit: 'half-width document box' },
    ]);
  });

  test('a record carton is called one cubic foot (common practice), so 20 of them are 20', () => {
    const cubic = (quantity: number, coverage: string, unit = 'cubic feet') =>
      expect.objectContaining({ type: 'spaceoccupied', coverage, quantity, unit, approximate: true });
    expect(extentsOfBoxes(inBoxes(carton), 'feet')).toContainEqual(cubic(1, 'whole', 'cubic foot'));
    expect(extentsOfBoxes(inBoxes(...times(20, carton)), 'both')).toContainEqual(cubic(20, 'whole'));
    expect(extentsOfBoxes(inBoxes(carton, carton, full), 'both')).toContainEqual(cubic(2, 'part'));
  });

  test('cubic feet are stated neither in metric measure nor where there is no record carton', () => {
    const units = (boxes: Box[], measure: 'metres' | 'both') =>
      extentsOfBoxes(inBoxes(...boxes), measure).map(({ unit }) => unit);
    expect(units([carton], 'metres')).toEqual(['linear metres', 'record carton']);
    expect(units([full], 'both')).not.toContainEqual(expect.stringContaining('cubic'));
  });

  test('one foot is a foot', () => {
    expect(sayExtent(extentsOfBoxes(inBoxes({ ...full, along: 304.8 }), 'feet'))).toBe(
      '1 linear foot (1 document box)',
    );
  });

  test('without boxes nothing is stated', () => {
    expect(extentsOfBoxes([], 'both')).toEqual([]);
    expect(shareOfShelf([], 'both')).toEqual([]);
  });

  test('folders of a series: what they take, as a number, marked as approximate (DACS 2.5)', () => {
    // 19 + 19 + 12 = 50 mm: 0.164 feet, 0.05 metres.
    expect(shareOfShelf([19, 19, 12], 'both')).toEqual([
      { type: 'spaceoccupied', coverage: 'whole', quantity: 0.16, unit: 'linear feet', approximate: true },
      { type: 'spaceoccupied', coverage: 'whole', quantity: 0.05, unit: 'linear metres', approximate: true },
    ]);
    // 12 mm: 0.039 feet, which is said as it is.
    expect(shareOfShelf([12], 'feet')).toMatchObject([{ quantity: 0.04 }]);
  });

  test('what would round to nothing is not stated: a single sheet of 0.1 mm', () => {
    expect(shareOfShelf([0.1], 'both')).toEqual([]);
  });

  test('every statement is one that the model takes', () => {
    const measure = fc.constantFrom('feet' as const, 'metres' as const, 'both' as const);
    const boxes = fc.array(fc.constantFrom(full, half, carton, { ...half, along: 0.5 }), { maxLength: 30 });
    fc.assert(
      fc.property(
        boxes,
        fc.array(fc.double({ min: 0, max: 60, noNaN: true })),
        measure,
        (some, thick, as) => {
          const stated = [...extentsOfBoxes(inBoxes(...some), as), ...shareOfShelf(thick, as)];
          for (const one of stated) expect(extentModel.safeParse(one).error).toBeUndefined();
          const carriers = stated.filter(({ type }) => type === 'carrier');
          expect(carriers.reduce((sum, { quantity }) => sum + quantity, 0)).toBe(some.length);
        },
      ),
    );
  });
});

test('in EAD3 (tag library: physdescstructured with its coverage and type, quantity, unittype)', () => {
  const [feet, , boxes] = extentsOfBoxes(inBoxes(full, full), 'both').map(structured);
  expect(feet).toEqual(
    element('physdescstructured', { coverage: 'whole', physdescstructuredtype: 'spaceoccupied' }, [
      element('quantity', {}, '0.83'),
      element('unittype', {}, 'linear feet'),
    ]),
  );
  expect(boxes).toEqual(
    element('physdescstructured', { coverage: 'whole', physdescstructuredtype: 'carrier' }, [
      element('quantity', {}, '2'),
      element('unittype', {}, 'document boxes'),
    ]),
  );
});

describe('in words', () => {
  test('the room, and the counts in parentheses', () => {
    expect(sayExtent(extentsOfBoxes(inBoxes(full, full), 'both'))).toBe(
      '0.83 linear feet, 0.25 linear metres (2 document boxes)',
    );
    expect(sayExtent(shareOfShelf([50], 'feet'))).toBe('about 0.16 linear feet');
    expect(
      sayExtent([
        { type: 'materialtype', coverage: 'part', quantity: 34, unit: 'letters', approximate: true },
        { type: 'materialtype', coverage: 'part', quantity: 3, unit: 'albums' },
      ]),
    ).toBe('about 34 letters, 3 albums');
    expect(sayExtent([])).toBe('');
  });
});
