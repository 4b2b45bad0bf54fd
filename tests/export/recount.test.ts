import { expect, test } from 'vitest';
import { type Component, component } from '../../src/catalogue/component.ts';
import { extentsLeft } from '../../src/export/recount.ts';

const carriers = [
  { type: 'carrier', coverage: 'whole', quantity: 40, unit: 'folders' },
  { type: 'carrier', coverage: 'whole', quantity: 9, unit: 'boxes' },
];
let ids = 0;
const unit = (containers: readonly (readonly [string, string])[], ...children: Component[]) =>
  component.parse({
    id: `u${++ids}`,
    level: 'file',
    title: 'Tolls',
    extents: carriers,
    containers: containers.map(([type, number]) => ({ type, number })),
    children,
  });

const left = (...units: Component[]) => {
  const whole = unit([], ...units);
  return extentsLeft(whole, whole).map(({ quantity, unit: of }) => `${quantity} ${of}`);
};

// Counted by hand.
test('folders and boxes that are left, however they are written', () => {
  expect(
    left(
      unit([
        ['Box', '1'],
        ['Folder', '2–4'],
      ]),
    ),
  ).toEqual(['3 folders', '1 box']);
});

test('the first folder of two boxes is two, and that of an item is the one of its file', () => {
  const file = unit(
    [
      ['Box', '1'],
      ['Folder', '1'],
    ],
    unit([['folder', '1']]),
  );
  expect(left(file, unit([['box', '2']], unit([['Folder', '1']])))).toEqual(['2 folders', '2 boxes']);
});
