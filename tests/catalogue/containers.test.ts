import { describe, expect, test } from 'vitest';
import type { Container } from '../../src/catalogue/component.ts';
import { isFolder, NOWHERE, namesSeveral, numbersIn, placeOf } from '../../src/catalogue/containers.ts';
import { sayContainer } from '../../src/catalogue/say-container.ts';

// From memory, of how finding aids name what stands in a box and what stands on the shelf.
describe('what is a folder', () => {
  test.each([
    ...['folder', 'Folder', 'folders', 'Oversize folder', 'flat-folder', 'flatfolder', 'Folder (legal)'],
    ...['envelope', 'Sleeve', 'glassine envelope'],
  ])('%s is', (type) => expect(isFolder(type)).toBe(true));

  test.each([
    'box',
    'Box',
    'folder box',
    'Envelope box',
    'package',
    'reel',
    'carton',
    'portfolio',
    'container',
  ])('%s is none', (type) => expect(isFolder(type)).toBe(false));
});

// Worked out by hand.
describe('the numbers that a container names', () => {
  test.each([
    ...['2-5', '2–5', '2 - 5', '2 — 5', '2‑5', '2 to 5'].map((text): [string, string[]] => [
      text,
      ['2', '3', '4', '5'],
    ]),
    ['2, 4-5', ['2', '4', '5']],
    ['008-010', ['008', '009', '010']],
  ])('%s', (text, numbers) => {
    expect(numbersIn(text)).toEqual(numbers);
    expect(namesSeveral(text)).toBe(true);
  });

  test.each(['7', '3a', 'oversize', '5-2', '4-4', '10-030', '1,200', 'Plans, 2', '1-99999', '3a-c', ''])(
    '“%s” is one',
    (text) => {
      expect(numbersIn(text)).toEqual([text]);
      expect(namesSeveral(text)).toBe(false);
    },
  );

  test('stand after a plural where they are several', () => {
    const said = (type: string, number: string) => sayContainer({ type, number });
    expect(said('folder', '2–9')).toBe('folders 2–9');
    expect(said('box', '1-3')).toBe('boxes 1-3');
    expect(said('Folders', '1-3')).toBe('Folders 1-3');
    expect([said('folder', '3a'), said('box', '10-030')]).toEqual(['folder 3a', 'box 10-030']);
  });
});

describe('where a unit lies', () => {
  const box = (number: string, id?: string): Container => ({ ...(id && { id }), type: 'Box', number });
  const folder = (number: string, parent?: string): Container => ({
    ...(parent && { parent }),
    type: 'Folder',
    number,
  });
  const pairs = (...args: Parameters<typeof placeOf>) =>
    placeOf(...args).folders.map((one) => [one.folder.number, ...one.boxes.map(({ number }) => number)]);

  test('where that above it does, if it names no container', () => {
    const above = placeOf([box('1'), folder('2')]);
    expect(placeOf([], above)).toBe(above);
    expect(placeOf([])).toBe(NOWHERE);
  });

  test('in the box of that above it, if it names a folder only; in no folder, if it names a box', () => {
    const above = placeOf([box('1'), folder('2')]);
    expect(pairs([folder('3')], above)).toEqual([['3', '1']]);
    expect(placeOf([folder('3')], above).boxes).toEqual([box('1')]);
    expect(placeOf([box('4')], above)).toEqual({ boxes: [box('4')], folders: [] });
    expect(pairs([folder('3')], placeOf([box('1'), box('2')]))).toEqual([['3', '1', '2']]);
  });

  test('each folder in its parent, else in the box before it, else in the first', () => {
    expect(pairs([box('1', 'a'), box('2', 'b'), folder('5', 'a'), folder('6', 'b')])).toEqual([
      ['5', '1'],
      ['6', '2'],
    ]);
    expect(pairs([box('1'), folder('5'), box('2'), folder('6')])).toEqual([
      ['5', '1'],
      ['6', '2'],
    ]);
    expect(pairs([folder('5'), box('1'), box('2')])).toEqual([['5', '1']]);
    expect(pairs([folder('5')])).toEqual([['5']]);
  });

  test('an envelope in a folder stands in the box of that; a ring says nothing', () => {
    const inner = { type: 'envelope', number: '9', parent: 'f' };
    expect(pairs([box('1', 'a'), { ...folder('5', 'a'), id: 'f' }, box('2'), inner])).toEqual([
      ['5', '1'],
      ['9', '1'],
    ]);
    const ring = [
      { ...folder('1', 'y'), id: 'x' },
      { ...folder('2', 'x'), id: 'y' },
    ];
    expect(pairs(ring)).toEqual([['1'], ['2']]);
  });
});
