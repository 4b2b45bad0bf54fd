import { expect, test } from 'vitest';
import { sayApart, sayBelonging } from '../../src/arrange/lying-apart.ts';
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

test('what belongs to a folder is named by its codes, or counted where it is more than four things', () => {
  const apart = (codes: string[], ...boxes: ShelfBox[]) => codes.map((code) => ({ code, boxes }));
  const four = ['QF/1/1', 'QF/1/2', 'QF/1/3', 'QF/1/4'];
  expect(sayBelonging([])).toBeUndefined();
  expect(sayBelonging([...apart(four, box('6')), ...apart(['QF/1/9'], box('7'))])).toBe(
    'Belonging here but lying apart: QF/1/1, QF/1/2, QF/1/3, QF/1/4 in package 6; QF/1/9 in package 7',
  );
  expect(sayBelonging(apart([...four, 'QF/1/5'], box('6'), box('7')))).toBe(
    'Belonging here but lying apart: 5 things in packages 6-7',
  );
});
