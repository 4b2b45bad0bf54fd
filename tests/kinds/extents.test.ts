import { describe, expect, test } from 'vitest';
import type { Thing } from '../../src/catalogue/thing.ts';
import { countByKind, countOf, extentsOf } from '../../src/kinds/extents.ts';
import { someThing } from '../support/catalogue.ts';

const thing = (over: Partial<Thing>) => someThing({ row: 2, ...over });
const said = (things: readonly Thing[]) =>
  countByKind(things).map(({ unit, number, approximate }) => [unit.many, number, approximate]);

// DACS 2.5 wants a number; that it is a guess has to be said with it ("about 40").
describe('how many things there are', () => {
  test('a row that says nothing of its number is one thing for certain, whether its kind is known or not', () => {
    for (const kind of [undefined, 'letter', 'punt pole'])
      expect(countOf(thing(kind === undefined ? {} : { kind }))).toMatchObject({
        number: 1,
        approximate: false,
      });
  });

  test('a plural without a number is not counted, and a number may be a guess', () => {
    expect(countOf(thing({ kind: 'letters' }))).toMatchObject({ number: 0, more: true });
    expect(countOf(thing({ kind: 'letters', quantity: 12 })).approximate).toBe(false);
    expect(countOf(thing({ kind: 'letters', quantity: 40, quantityApproximate: true })).approximate).toBe(
      true,
    );
  });

  test('one guess makes the sum a guess, whichever row it stands in', () => {
    const sure = thing({ kind: 'letter', quantity: 3 });
    const guess = thing({ kind: 'letter', quantity: 40, quantityApproximate: true });
    expect(said([sure, sure])).toEqual([['letters', 6, false]]);
    expect(said([sure, guess])).toEqual([['letters', 43, true]]);
    expect(said([guess, sure])).toEqual([['letters', 43, true]]);
  });

  test('a number that nobody could read adds nothing, and the extent then covers a part only', () => {
    const sure = thing({ kind: 'letter', quantity: 3 });
    const unread = thing({ kind: 'letter', quantityUnread: true });
    for (const things of [
      [sure, unread],
      [unread, sure],
    ]) {
      expect(said(things)).toEqual([['letters', 3, true]]);
      expect(extentsOf(countByKind(things))).toEqual([
        { type: 'materialtype', coverage: 'part', quantity: 3, unit: 'letters', approximate: true },
      ]);
    }
    expect(extentsOf(countByKind([]))).toEqual([]);
  });

  test('a trophy is a trophy, and with a lamp it is two objects', () => {
    const trophy = thing({ kind: 'Trophy' });
    expect(said([trophy])).toEqual([['trophies', 1, false]]);
    expect(extentsOf(countByKind([trophy, thing({ kind: 'trophies', quantity: 2 })]))).toMatchObject([
      { quantity: 3, unit: 'trophies' },
    ]);
    for (const other of ['lamp', 'object', 'objects'])
      expect(said([trophy, thing({ kind: other, quantity: 4 }), trophy])).toEqual([['objects', 6, false]]);
  });

  test('a kind that the tables do not hold keeps its spelling, the first that comes', () => {
    expect(said([thing({ kind: 'Quipu' }), thing({ kind: 'quipu' })])).toEqual([['Quipu', 2, false]]);
  });

  test('the most frequent kind goes first, and equal ones stay as they came', () => {
    const rows = [
      thing({ kind: 'map' }),
      thing({ kind: 'postcard', quantity: 3 }),
      thing({ kind: 'receipt', quantity: 7 }),
      thing({ kind: 'letter', quantity: 3 }),
    ];
    expect(said(rows).map(([many]) => many)).toEqual(['receipts', 'postcards', 'letters', 'maps']);
  });
});
