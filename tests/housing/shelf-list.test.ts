import { describe, expect, test } from 'vitest';
import { arrangement } from '../../src/arrange/index.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { shelfList } from '../../src/housing/shelf-list.ts';
import { notToBeBoxed } from '../../src/review/not-to-be-boxed.ts';
import { smallComponent } from '../find/small-component.ts';
import { someCatalogue, someThing } from '../support/catalogue.ts';

function linesOf(...drafts: readonly Partial<Thing>[]): string[] {
  const things = drafts.map((over, at) => someThing({ row: at + 2, ...over }));
  const catalogue = someCatalogue({}, things);
  const arranged = arrangement(catalogue, '2026-01-01');
  return [...shelfList(arranged.aid.collection, arranged.boxes, notToBeBoxed(catalogue, arranged))];
}

const GRENADE = { title: 'Grenade', kind: 'object' };
const BADGE = { title: 'Badge', kind: 'object' };
const MOULDY = { title: 'Packet', kind: 'letter', condition: 'mould' };
const LETTER = { title: 'Letter', kind: 'letter' };

// common practice: what can hurt somebody, or spreads, is looked at before it gets a place among the rest.
describe('what is not to be boxed', () => {
  test('is named first, the most urgent before the rest, with where it would lie', () => {
    const lines = linesOf(LETTER, GRENADE, MOULDY);
    const blank = lines.indexOf('');
    expect(lines.slice(0, blank)).toEqual([
      'First, not to be boxed before somebody has looked at it:',
      expect.stringMatching(/^ {2}QF\/2\/1\/1 {2}Grenade, box \d+: ammunition$/),
      expect.stringMatching(/^ {2}QF\/1\/1\/\d {2}Packet, box \d+: mould$/),
    ]);
    expect(lines[blank + 1]).toMatch(/^Box 1/);
  });

  test('and again beside the thing, whether it has a line of its own or lies in a folder', () => {
    const lines = linesOf(LETTER, GRENADE, MOULDY);
    const lineBelow = (words: string) => lines[lines.findIndex((line) => line.includes(words)) + 1];
    expect(lineBelow('apart  QF/2/1/1  Grenade')).toBe(
      '    not to be boxed before somebody has looked at it: ammunition',
    );
    expect(lineBelow('folder 1  QF/1/1')).toMatch(
      /^ {4}QF\/1\/1\/\d {2}Packet, not to be boxed before somebody has looked at it: mould$/,
    );
  });

  test('nothing is said where there is no such thing', () => {
    const lines = linesOf(LETTER, BADGE, { title: 'Plan', kind: 'map', condition: 'brittle' });
    expect(lines[0]).toMatch(/^Box 1/);
    expect(lines.join('\n')).not.toContain('not to be boxed');
  });
});

test('a folder is in its box and is none itself, however its type is written', () => {
  const containers = [
    { id: 'b', type: 'Box', number: '1' },
    { type: 'Folder', number: '2' },
  ];
  const file = smallComponent({ level: 'file', title: 'Tolls', containers });
  const boxes = ['1', '2'].map((number) => ({ number, type: 'box' as const, kind: undefined, units: [] }));
  expect([...shelfList(smallComponent({ level: 'collection', children: [file] }), boxes)]).toEqual([
    'Box 1',
    '  Folder 2  Tolls',
    'Box 2',
  ]);
});
