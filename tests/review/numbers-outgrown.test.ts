import { describe, expect, test } from 'vitest';
import { arrangement } from '../../src/arrange/index.ts';
import { settle } from '../../src/arrange/settle.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { outgrown } from '../../src/review/numbers-outgrown.ts';
import { dated, someCatalogue, someThing } from '../support/catalogue.ts';

const TODAY = '2026-06-01';
const letter = (row: number, over: Partial<Thing> = {}) =>
  someThing({ row, number: String(row), kind: 'letter', date: dated('1931'), ...over });

/** Rows of which it is said, where numbers were settled by one list and the list is another now. */
function rowsOf(settledBy: readonly Thing[], now: readonly Thing[]): (number | undefined)[] {
  const settled = settledBy.length === 0 ? [] : settle(someCatalogue({}, settledBy), false, TODAY).rows;
  const catalogue = { ...someCatalogue({}, now), settled };
  return outgrown(catalogue, arrangement(catalogue, TODAY)).map(({ place }) => place.row);
}

describe('a thing larger than the folder in which it was settled', () => {
  // A4 is 210 × 297 mm (ISO 216), the usual folder for letters outside North America; A1 is 594 × 841 mm.
  const before = [letter(2), letter(3)];

  test('is named, once its size is written', () => {
    expect(rowsOf(before, [letter(2), letter(3, { size: 'A1' })])).toEqual([3]);
    expect(rowsOf(before, [letter(2), letter(3, { size: '60 x 84 cm' })])).toEqual([3]);
  });

  test('not so where it fits, where its size cannot be read, and where nothing is settled', () => {
    expect(rowsOf(before, [letter(2), letter(3, { size: 'A4' })])).toEqual([]);
    expect(rowsOf(before, [letter(2), letter(3, { size: 'knee-high' })])).toEqual([]);
    expect(rowsOf([], [letter(2), letter(3, { size: 'A1' })])).toEqual([]);
    const large = [letter(2), letter(3, { size: 'A1' })];
    expect(rowsOf(large, large)).toEqual([]);
  });
});
