import { describe, expect, test } from 'vitest';
import { arrangement } from '../../src/arrange/index.ts';
import { settle } from '../../src/arrange/settle.ts';
import type { Settled } from '../../src/catalogue/settled.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { dated, someSettings, someThing } from '../support/catalogue.ts';

const TODAY = '2026-05-14';
const settings = someSettings();
const letter = (row: number, over: Partial<Thing> = {}) =>
  someThing({ row, title: 'Letter from Ada', kind: 'letter', date: dated('1901'), ...over });
const settledOf = (...things: Thing[]) => settle({ settings, things }, false, TODAY).rows;

/** The rows of the list that look like settled numbers which are in it no more. */
const pairs = (settled: readonly Settled[], ...things: Thing[]) =>
  arrangement({ settings, things, settled }, TODAY).lookAlikes.map(({ thing, row }) => [
    thing.row,
    row.number,
  ]);

// A number that is pencilled on a letter must not be given out anew because a cell of the list was emptied.
describe('a thing that looks like one that has lost its number', () => {
  const [a, b] = [letter(2, { number: 'a' }), letter(3, { number: 'b', title: 'Letter from Nils' })];

  test('has its title and would be filed where that was, whether its own number is blank or new', () => {
    expect(pairs(settledOf(a, b), letter(2), b)).toEqual([[2, 'a']]);
    expect(pairs(settledOf(a, b), letter(2, { number: 'z' }), b)).toEqual([[2, 'a']]);
    expect(pairs(settledOf(a, b), letter(2, { title: 'LETTER  from Ada' }), b)).toEqual([[2, 'a']]);
  });

  test('is none where the number is still in the list, or is known to be gone', () => {
    expect(pairs(settledOf(a, b), a, b, letter(9))).toEqual([]);
    const gone = settledOf(a, b).map((row) => (row.number === 'a' ? { ...row, gone: 'removed' } : row));
    expect(pairs(gone, letter(2), b)).toEqual([]);
    expect(pairs([], letter(2), b)).toEqual([]);
  });

  test('is none where the title, the kind or the year is another, or where it has a settled number', () => {
    for (const over of [{ title: 'Letter to Ada' }, { kind: 'map' }, { date: dated('1950') }])
      expect(pairs(settledOf(a, b), letter(2, over), b)).toEqual([]);
    expect(pairs(settledOf(a, b), letter(3, { number: 'b' }))).toEqual([]);
  });

  test('is one for each number that is missing, in the order of both', () => {
    const twin = letter(5, { number: 'c' });
    expect(pairs(settledOf(a, b, twin), letter(2), b, letter(5))).toEqual([
      [2, 'a'],
      [5, 'c'],
    ]);
    expect(pairs(settledOf(a, b), letter(2), b, letter(5))).toEqual([[2, 'a']]);
  });
});
