import { describe, expect, it } from 'vitest';
import { readBoxMeasures } from '../../src/housing/box-measures.ts';

// Arithmetic: 1 in is 25.4 mm, 1 ft 304.8 mm.
describe('the three measures of a box', () => {
  it.each([
    ['12 1/4 x 10-1/2 x 1/2 in', [311.15, 266.7, 12.7]],
    ['12 1/4 x 10-1/2 x 3/4 ft', [3733.8, 3200.4, 228.6]],
    ['1 ft x 10 x 4 inches', [304.8, 254, 101.6]],
    ['1 metre x 30 cm x 100 mm', [1000, 300, 100]],
    [' 1 FT X 10 X 4 IN ', [304.8, 254, 101.6]],
    ['10 x 10 x 5000 mm', [10, 10, 5000]],
    ['12 in x 10 x 4', [304.8, 254, 101.6]],
    ['12 in wide x 10 in deep x 4 in high', [304.8, 254, 101.6]],
    ['12 × 10 × 5 Zoll', [304.8, 254, 127]],
    ['1,200 x 300 x 200 mm', [1200, 300, 200]],
    ['12¼" by 10" by 5"', [311.15, 254, 127]],
    ['33 × 26 × 10,5 cm', [330, 260, 105]],
  ])('%s', (written, expected) => {
    const read = readBoxMeasures(written);
    expect(read).toEqual({ measures: expected.map((mm) => expect.closeTo(mm, 6)) });
  });

  it.each([
    ['12 in', 'one measure'],
    ['12 x 10 in', '2 measures'],
    ['12 x 10 x 4 x 2 in', '4 measures'],
    ['12 x 10 x 4', 'has no unit'],
    ['in x 10 x 4 in', 'cannot be read'],
    ['large x 10 x 4 in', 'cannot be read'],
    ['12 x 10 x 4 cubits', 'cannot be read'],
    ['12 x 1/0 x 4 in', 'cannot be read'],
    ['10/4 x 5 in', 'cannot be read'],
    ['10/4 x 10 x 5 in', 'cannot be read'],
    ['-12 x 10 x 4 in', 'less than 10 mm'],
    ['9 x 10 x 11 mm', 'less than 10 mm'],
    ['10 x 10 x 5001 mm', 'more than 5 m'],
    ['', 'cannot be read'],
  ])('%j is none: %s', (written, why) => {
    const read = readBoxMeasures(written);
    expect('wrong' in read && read.wrong).toContain(why);
    expect('wrong' in read && read.wrong.startsWith(`“${written}” `)).toBe(true);
  });
});
