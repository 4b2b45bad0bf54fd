import { expect, test } from 'vitest';
import { arrangement } from '../../src/arrange/index.ts';
import { type Component, component } from '../../src/catalogue/component.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { foldersIn } from '../../src/handover/inventory-papers.ts';
import { inventoryWith } from '../../src/handover/taken-in/inventory.ts';
import { someSettings, someThing } from '../support/catalogue.ts';

let ids = 0;
const unit = (level: string, title: string, containers: readonly string[], ...children: Component[]) =>
  component.parse({
    id: `u${++ids}`,
    level,
    title,
    containers: containers.map((text) => {
      const [type, ...number] = text.split(' ');
      return { type, number: number.join(' ') };
    }),
    children,
  });

const settings = someSettings();

function rowsOf(things: Partial<Thing>[], ...units: Component[]) {
  const { aid } = arrangement({ settings, things: [] }, '2026-01-01');
  const base = { ...aid, collection: { ...aid.collection, children: units } };
  const rows = things.map((over, at) => someThing({ ...over, row: at + 2 }));
  const arranged = arrangement({ settings, things: rows, base }, '2026-01-01');
  return inventoryWith(base, arranged, settings, new Map());
}

const places = (...units: Component[]) =>
  rowsOf([], ...units).map(({ box, folder, title }) => [title, box && `${box.type} ${box.number}`, folder]);

test('what names its folder only is in the box of that above it', () => {
  const tolls = unit('file', 'Tolls', ['Box 1', 'Folder 1'], unit('item', 'A toll of 1911', ['Folder 2']));
  const cable = unit('series', 'Cable', ['Box 3'], unit('file', 'Drawings', ['Folder 5–7']));
  expect(places(tolls, cable)).toEqual([
    ['A toll of 1911', 'box 1', '2'],
    ['Drawings', 'box 3', '5-7'],
  ]);
});

test('a large folder, or an envelope, is no box', () => {
  expect(places(unit('file', 'Plans', ['flatfolder 8', 'Box 4']))).toEqual([['Plans', 'box 4', '8']]);
  expect(places(unit('file', 'Seeds', ['envelope 8', 'Box 4']))).toEqual([['Seeds', 'box 4', '8']]);
});

test('all folders of a unit are named that stand in its box', () => {
  const spread = unit('file', 'Tolls', ['Box 1', 'Folder 2', 'Folder 4–5', 'Box 2', 'Folder 6']);
  expect(places(spread)).toEqual([['Tolls', 'box 1', '2, 4-5']]);
});

test('what a list adds comes after it, by the series that it names and not by broad groups', () => {
  const rows = rowsOf(
    [{ title: 'Ticket', kind: 'ticket', series: 'Ferry' }],
    unit('series', 'Ferry', ['Box 1']),
  );
  expect(rows).toMatchObject([
    { title: 'Ferry', box: { number: '1' } },
    { box: { number: '2' }, folder: '1', things: 1 },
  ]);
  // A series without a code gives none to go on from.
  expect(rows[1]?.code).toBe('');
});

// Counted by hand.
test.each([
  [undefined, 0],
  ['3a', 1],
  ['4-6', 3],
  ['4–6', 3],
  ['4 - 6', 3],
  ['2, 4-5', 3],
  ['oversize', 1],
])('the folders %s are %i', (folder, count) => expect(foldersIn(folder)).toBe(count));

test('what is restricted, or lies in what is, is marked', () => {
  const closed = { accessConditions: { statement: 'Closed until 2060', restricted: true } };
  const within = unit('file', 'Adoption', ['Folder 3']);
  const series = { ...unit('series', 'Private', ['Box 3'], within), ...closed };
  const rows = rowsOf([], series, unit('file', 'Tolls', ['Box 4']));
  expect(rows.map(({ title, caution }) => [title, caution])).toEqual([
    ['Adoption', 'restricted'],
    ['Tolls', undefined],
  ]);
});
