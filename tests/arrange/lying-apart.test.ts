import { expect, test } from 'vitest';
import { sayApart } from '../../src/arrange/lying-apart.ts';
import type { Apart } from '../../src/housing/part-folder.ts';
import type { ShelfBox } from '../../src/housing/placed.ts';
import { boxKindNamed } from '../../src/housing/shelve.ts';
import { stockFrom } from '../../src/housing/stock.ts';
import { someSettings } from '../support/catalogue.ts';

const stock = stockFrom(someSettings({}).housing, undefined);
const box = (number: string, id?: string): ShelfBox => ({
  number,
  type: id === undefined ? 'package' : 'box',
  kind: boxKindNamed(id, stock),
  units: [],
});
const said = (...boxes: ShelfBox[]) => sayApart({ why: 'too thick' } as Apart, boxes, undefined);

test('boxes of one kind are said together, and packages by themselves', () => {
  const [small, medium] = ['volume-box-small', 'volume-box'];
  expect(said(box('4', small))).toMatch(/^Apart, in box 4 \(small volume box\): too thick$/);
  expect(said(box('4', medium), box('5', medium), box('6', medium), box('8', medium))).toBe(
    'Apart, in boxes 4-6, 8 (medium volume boxes): too thick',
  );
  expect(said(box('4', small), box('5', medium), box('6'))).toBe(
    'Apart, in box 4 (small volume box) and box 5 (medium volume box) and package 6: too thick',
  );
  expect(said()).toBe('Apart, by itself: too thick');
});
