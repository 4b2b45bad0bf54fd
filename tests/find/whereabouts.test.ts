import { expect, test } from 'vitest';
import type { Component } from '../../src/catalogue/component.ts';
import { aboveOf, sayWhereabouts, whereaboutsOf } from '../../src/find/whereabouts.ts';
import { smallComponent } from './small-component.ts';

const BOX = { type: 'box', number: '4' };
const lies = (containers: Component['containers'], own: Component['containers'] = []) => {
  const thing = smallComponent({ containers: own });
  const folder = smallComponent({ id: 'folder', level: 'file', containers, children: [thing] });
  return sayWhereabouts(whereaboutsOf(folder)(thing));
};

test('a folder is one with a capital too, and a range is one with any dash', () => {
  expect(lies([BOX, { type: 'Folder', number: '7' }])).toBe('In folder 7, box 4');
  expect(lies([BOX, { type: 'folder', number: '2 – 5' }])).toBe('In folders 2-5, box 4');
});

test('folders that are no neighbours are not told as from the first to the last', () => {
  const both = ['2', '7'].map((number) => ({ type: 'folder', number }));
  expect(lies([BOX, ...both])).toBe('In folders 2, 7, box 4');
});

test('a folder of its own is in the box of the folder above it', () => {
  expect(lies([BOX, { type: 'folder', number: '7' }], [{ type: 'Folder', number: '8' }])).toBe(
    'In folder 8, box 4',
  );
});

test('a group tells of all its folders in one run, however each is written', () => {
  const files = [
    [BOX, { type: 'Folder', number: '2–3' }],
    [BOX, { type: 'folder', number: '4' }],
  ].map((containers, at) => smallComponent({ id: `f${at}`, containers }));
  expect(aboveOf(smallComponent({ level: 'series', children: files })).lies).toBe('In folders 2-4, box 4');
});
