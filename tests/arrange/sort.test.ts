import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gatherAgents } from '../../src/arrange/agents.ts';
import { arrange } from '../../src/arrange/index.ts';
import { sortThings, thingsOf } from '../../src/arrange/sort.ts';
import type { Component } from '../../src/catalogue/component.ts';
import { folderKey, groupKey, orderKey, type SortSettings } from '../../src/catalogue/settings.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { isWithin } from '../../src/dates/index.ts';
import { dated, someSettings, someThing } from '../support/catalogue.ts';

const noAgents = () => gatherAgents(someSettings());
const sortOf = (over: Partial<SortSettings>): SortSettings => ({
  groups: ['kind'],
  order: ['date', 'title'],
  folders: 'year',
  ...over,
});
const rows = (things: Iterable<Thing>) => [...things].map(({ row }) => row);

const word = fc.constantFrom(
  'letter',
  'Letters',
  'photo',
  'punt pole',
  'ÉTÉ',
  'ete',
  '',
  '?',
  'Ada Quill',
  '__proto__',
);
const date = fc.constantFrom(
  '1962',
  '1962-05',
  '195X',
  '1950~',
  '1958/1963',
  'undated',
  'nobody knows',
  '../1900',
  '1958/..',
);
const thing = fc.record(
  {
    title: fc.string({ minLength: 1 }),
    number: word,
    date: date.map(dated),
    kind: word,
    people: fc.array(word, { maxLength: 2 }),
    creators: fc.array(word, { maxLength: 2 }),
    places: fc.array(word, { maxLength: 2 }),
    occasion: word,
    languages: fc.array(word, { maxLength: 1 }),
    series: word,
    folder: word,
    quantity: fc.integer({ min: 1, max: 50 }),
  },
  { requiredKeys: [] },
);
const list = fc
  .array(thing, { maxLength: 40 })
  .map((things) => things.map((fields, index) => someThing({ ...fields, row: index + 2 })));
const sort = fc.record({
  groups: fc.uniqueArray(fc.constantFrom(...groupKey.options), { minLength: 1, maxLength: 3 }),
  order: fc.uniqueArray(fc.constantFrom(...orderKey.options), { minLength: 1, maxLength: 3 }),
  folders: fc.constantFrom(...folderKey.options),
});

/** What has nothing below it; every group and every folder has something in it. */
function itemsOf({ children }: Component): Component[] {
  return children.flatMap((child) => (child.children.length === 0 ? [child] : itemsOf(child)));
}

describe('sorting a list', () => {
  test('every row comes out exactly once, whatever the settings', () => {
    fc.assert(
      fc.property(list, sort, (things, settings) => {
        const out = rows(thingsOf(sortThings(things, settings, noAgents())));
        expect(out.sort((a, b) => a - b)).toEqual(rows(things));
      }),
      { numRuns: 400 },
    );
  });

  test('every row is described exactly once, under a code and an id of its own', () => {
    fc.assert(
      fc.property(list, sort, (things, settings) => {
        const numbered = things.map((one) => ({ ...one, number: `row ${one.row}` }));
        const { collection } = arrange(
          { settings: someSettings({ sort: settings }), things: numbered },
          '2026-01-01',
        );
        const items = itemsOf(collection);
        const numbers = items.map(({ otherIdentifiers }) => otherIdentifiers[0]?.value);
        expect([...numbers].sort()).toEqual(numbered.map(({ number }) => number).sort());
        const all = (unit: Component): Component[] => [unit, ...unit.children.flatMap(all)];
        const units = all(collection);
        expect(new Set(units.map(({ id }) => id)).size).toBe(units.length);
        expect(new Set(units.map(({ referenceCode }) => referenceCode)).size).toBe(units.length);
      }),
      { numRuns: 200 },
    );
  });

  test('the order of rows in the list changes only what is equal by every key', () => {
    fc.assert(
      fc.property(list, sort, (things, settings) => {
        const once = rows(thingsOf(sortThings(things, settings, noAgents())));
        const again = rows(thingsOf(sortThings([...things].reverse(), settings, noAgents())));
        // What is equal by every key stands by its row, so the groups may come in another order only by their first thing.
        if (['year', 'decade', 'group'].includes(settings.folders)) expect(again).toEqual(once);
      }),
    );
  });

  test('earliest to latest, undated last (common practice)', () => {
    const things = ['undated', '1962-05-14', '1950', '1962', '1958/1963', 'no idea'].map((written, index) =>
      someThing({ row: index + 2, kind: 'letter', date: dated(written) }),
    );
    const [letters] = sortThings(things, sortOf({ folders: 'group' }), noAgents());
    expect(letters?.folders[0]?.things.map(({ date: of }) => of?.written)).toEqual([
      '1950',
      '1958/1963',
      '1962',
      '1962-05-14',
      'undated',
      'no idea',
    ]);
  });

  test('numbers in titles count as numbers', () => {
    const things = ['Book 10', 'Book 9', 'book 1'].map((title, index) =>
      someThing({ row: index + 2, title, kind: 'book' }),
    );
    const [books] = sortThings(things, sortOf({ order: ['title'], folders: 'group' }), noAgents());
    expect(books?.folders[0]?.things.map(({ title }) => title)).toEqual(['book 1', 'Book 9', 'Book 10']);
  });

  test('broad groups by kind stand in the order of the trade; what has no kind stands last', () => {
    const kinds = ['quilt', undefined, 'photos', 'Letter', 'postcard', 'punt pole'];
    const things = kinds.map((kind, index) =>
      someThing({ row: index + 2, ...(kind !== undefined && { kind }) }),
    );
    const groups = sortThings(things, sortOf({}), noAgents());
    expect(groups.map(({ place }) => place?.title)).toEqual([
      'Correspondence',
      'Photographs',
      'Textiles and objects',
      'Punt pole',
      undefined,
    ]);
  });

  test('people stand in the order of collection.yaml, under whichever of their names', () => {
    const settings = someSettings({
      people: [{ name: 'Nils Quill', also: ['Grandpa Nils'] }, { name: 'Ada Quill' }],
    });
    const names = ['Bea Rook', 'Ada Quill', 'grandpa nils', 'unknown', 'Nils Quill'];
    const things = names.map((name, index) => someThing({ row: index + 2, people: [name] }));
    const groups = sortThings(things, sortOf({ groups: ['person'] }), gatherAgents(settings));
    expect(groups.map(({ place }) => place?.title)).toEqual([
      'Quill, Nils',
      'Quill, Ada',
      'Bea Rook',
      undefined,
    ]);
    expect(groups.map((group) => rows(thingsOf([group])).length)).toEqual([2, 1, 1, 1]);
  });

  test('a thing known to its decade is filed before the years of it, one that spans years under the first', () => {
    const things = ['1951', '195X', '1958/1963', '1958-07', 'undated', '1950'].map((written, index) =>
      someThing({ row: index + 2, kind: 'letter', date: dated(written) }),
    );
    const [letters] = sortThings(things, sortOf({}), noAgents());
    expect(letters?.folders.map(({ label }) => label)).toEqual(['1950s', '1950', '1951', '1958', undefined]);
    expect(rows(letters?.folders[3]?.things ?? [])).toEqual([4, 5]);
  });

  test('groups within groups', () => {
    const things = [
      someThing({ row: 2, kind: 'letter', people: ['Ada'] }),
      someThing({ row: 3, kind: 'photo', people: ['Ada'] }),
      someThing({ row: 4, kind: 'letter', people: ['Nils'] }),
      someThing({ row: 5, people: ['Nils'] }),
    ];
    const groups = sortThings(things, sortOf({ groups: ['person', 'kind'] }), noAgents());
    expect(
      groups.map(({ place, groups: inner }) => [place?.title, inner.map((group) => group.place?.title)]),
    ).toEqual([
      ['Ada', ['Correspondence', 'Photographs']],
      ['Nils', ['Correspondence', undefined]],
    ]);
  });
});

test('no part is dated outside its whole (DACS 2.4.9)', () => {
  fc.assert(
    fc.property(list, sort, (things, settings) => {
      const check = ({ dates, children }: Component): void => {
        const whole = dates.find(({ type }) => type === 'inclusive')?.edtf;
        for (const child of children) {
          const part = child.dates.find(({ type }) => type === 'inclusive')?.edtf;
          if (part !== undefined)
            expect([part, whole, isWithin(part, whole ?? '')]).toEqual([part, whole, true]);
          check(child);
        }
      };
      check(arrange({ settings: someSettings({ sort: settings }), things }, '2026-01-01').collection);
    }),
    { numRuns: 300 },
  );
});
