import { describe, expect, test } from 'vitest';
import { arrangement, settle } from '../../src/arrange/index.ts';
import type { Settled } from '../../src/catalogue/settled.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { reviewNumbers, stopsSettling } from '../../src/review/numbers.ts';
import { dated, someCatalogue, someThing } from '../support/catalogue.ts';

const TODAY = '2026-06-01';
const thing = (row: number, title: string, over: Partial<Thing> = {}) =>
  someThing({ row, number: String(row), kind: 'letter', date: dated('1931'), title, ...over });

const list = [thing(1, 'Postcards from Nordvik'), thing(2, 'Letter about the cable'), thing(3, 'Toll book')];

function said(now: readonly Thing[], settled: readonly Settled[]) {
  const catalogue = { ...someCatalogue({}, now), settled };
  const isThis = ({ rule }: { rule: string }) => rule === 'numbers.used-again';
  const found = reviewNumbers(catalogue, arrangement(catalogue, TODAY)).filter(isThis);
  // What is a finding of it also keeps the numbers from being settled.
  expect(stopsSettling(catalogue, settle(catalogue, false, TODAY)).filter(isThis)).toEqual(found);
  return found;
}

// Common practice: a number that was once given is given to nothing else.
describe('a settled number at another thing', () => {
  const settled = settle(someCatalogue({}, list), false, TODAY).rows;
  const [, ...others] = list;
  const removed = settle({ ...someCatalogue({}, others), settled }, false, TODAY).rows;

  test('is said of a number that is noted as removed, by what it was and what stands there now', () => {
    expect(removed.find(({ number }) => number === '1')?.gone).toContain('removed');
    const found = said([thing(1, 'Quite another thing'), ...others], removed);
    expect(found).toMatchObject([{ weight: 'must', place: { row: 1, column: 'number' } }]);
    expect(found[0]?.found).toMatch(/“Postcards from Nordvik”.*removed.*“Quite another thing”/);
  });

  test('is said of one that is not, where nothing is like what it was', () => {
    const other = thing(1, 'Bottle of laudanum', { kind: 'object', date: dated('1880') });
    expect(said([other, ...others], settled)).toHaveLength(1);
  });

  test.each([
    ['is put back', thing(1, 'Postcards from Nordvik'), removed],
    ['is put back under a better title', thing(1, 'Six postcards from Nordvik, signed Ada'), removed],
    ['is retitled', thing(1, 'Greetings to Ada'), settled],
    ['is filed elsewhere', thing(1, 'Postcards from Nordvik', { date: dated('1880') }), settled],
    ['is retitled and dated anew', thing(1, 'Ten postcards', { date: dated('1880') }), settled],
  ])('is not said of a thing that %s', (_, now, rows) => {
    expect(said([now, ...others], rows)).toEqual([]);
  });

  test('is not said of a new number, nor where nothing is settled', () => {
    expect(said([...list, thing(9, 'Quite another thing')], settled)).toEqual([]);
    expect(said(list, [])).toEqual([]);
  });
});
