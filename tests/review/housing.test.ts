import { describe, expect, test } from 'vitest';
import { arrangement, settle } from '../../src/arrange/index.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { reviewHousing } from '../../src/review/housing.ts';
import { dated, someCatalogue, someThing } from '../support/catalogue.ts';

const US = { repository: { name: 'Quill family', country: 'US' } };
const TODAY = '2026-01-01';

const letter = (row: number, over: Partial<Thing> = {}) =>
  someThing({ row, number: String(row), kind: 'letter', date: dated('1901'), ...over });

/** Findings on a list whose numbers were settled when it was as `before`, if ever. */
function found(things: readonly Thing[], before?: readonly Thing[]) {
  const settled = before === undefined ? [] : settle(someCatalogue(US, before), false, TODAY).rows;
  const catalogue = { ...someCatalogue(US, things), settled };
  return reviewHousing(catalogue, arrangement(catalogue, TODAY)).map(({ rule, found: words }) => ({
    rule,
    words,
  }));
}

const rules = (...lists: [readonly Thing[], (readonly Thing[])?]) => found(...lists).map(({ rule }) => rule);

// Sheets of 0.1 mm (CHECKS.md, a ream): 550 of them are 55 mm, which a box of 2½ in takes and fills.
const full = [2, 3, 4].map((row) => letter(row, { kind: 'document', quantity: 180, size: 'letter' }));

describe('boxes that are slack or tight', () => {
  test('few letters stand in no box; enough of them do (common practice)', () => {
    expect(found([letter(2)])).toEqual([
      { rule: 'housing.slack', words: 'Box 1 is so empty that what stands in it would fall over.' },
    ]);
    expect(rules(full)).toEqual([]);
  });

  test('a settled box whose content has grown is not forced', () => {
    const grown = full.map((thing) => ({ ...thing, quantity: 400 }));
    expect(rules(full, full)).toEqual([]);
    expect(rules(grown, full)).toContain('housing.tight');
  });

  test('what fits into no box', () => {
    expect(rules([...full, letter(9, { kind: 'map', size: '2 x 3 m' })])).toContain('housing.no-box');
    expect(rules([...full, letter(9, { kind: 'map', size: '60 x 90 cm' })])).not.toContain('housing.no-box');
  });
});

describe('settled numbers and the list', () => {
  test('a number to which nothing belongs any more', () => {
    expect(rules(full.slice(1), full)).toContain('numbers.gap');
    expect(rules([...full, letter(9)], full)).not.toContain('numbers.gap');
  });

  test('a thing that would be sorted elsewhere', () => {
    const [first, ...rest] = full;
    if (first === undefined) throw new Error('There is no first thing.');
    expect(rules([{ ...first, date: dated('1950') }, ...rest], full)).toContain('numbers.would-move');
    expect(rules([{ ...first, title: 'Another title' }, ...rest], full)).not.toContain('numbers.would-move');
  });

  test('a list that names another box', () => {
    const inBox = (box: string) => [letter(2, { box })];
    expect(rules(inBox('7'), [letter(2)])).toContain('numbers.other-box');
    expect(rules(inBox('1'), [letter(2)])).not.toContain('numbers.other-box');
  });
});
