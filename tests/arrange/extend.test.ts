import { describe, expect, test } from 'vitest';
import { extendWith } from '../../src/arrange/extend.ts';
import { arrange } from '../../src/arrange/index.ts';
import type { Component } from '../../src/catalogue/component.ts';
import { findingAid } from '../../src/catalogue/finding-aid.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { dated, someSettings, someThing } from '../support/catalogue.ts';

const aidOf = (rows: readonly Partial<Thing>[], over: Record<string, unknown> = {}) =>
  arrange(
    {
      settings: someSettings({ sort: { groups: ['series'], folders: 'group' }, ...over }),
      things: rows.map((row, index) => someThing({ row: index + 2, kind: 'letter', ...row })),
    },
    '2026-05-14',
  );
const units = (unit: Component): Component[] => [unit, ...unit.children.flatMap(units)];
const called = (unit: Component, title: string) => units(unit).filter((one) => one.title === title);

const before = aidOf([{ title: 'Bell of the ferry', series: 'Letters', people: ['Ada Quill'] }]);
const extended = (rows: readonly Partial<Thing>[], over: Record<string, unknown> = {}) =>
  extendWith(before, aidOf(rows, over));

// ISAD(G), glossary: an item is the smallest unit, so nothing lies in one.
test('a group that is called like an item is another unit, and the item stays as it was', () => {
  const { collection } = extended([{ title: 'From Nils', series: 'Bell of the ferry' }]);
  expect(collection.children.map(({ title }) => title)).toEqual(['Letters', 'Bell of the ferry']);
  expect(collection.children[0]).toEqual(before.collection.children[0]);
  expect(collection.children[1] && called(collection.children[1], 'From Nils')).toHaveLength(1);
});

// DACS 2.3.18 and 2.4: folders of one kind bear one title and differ by their dates.
test('a folder is one of its own in the series, with its dates and its place, whatever others are called', () => {
  const of1934 = aidOf([{ title: 'From Ada', series: 'Letters', date: dated('1934') }]);
  const of1950 = aidOf([{ title: 'From Nils', series: 'Letters', date: dated('1950') }]);
  const [letters, ...more] = extendWith(of1934, of1950).collection.children;
  expect(more).toEqual([]);
  const [old] = of1934.collection.children;
  const [fresh] = of1950.collection.children[0]?.children ?? [];
  expect(letters?.children[0]).toEqual(old?.children[0]);
  expect(letters?.children).toHaveLength(2);
  const { title, dates, containers } = letters?.children[1] ?? {};
  expect({ title, dates }).toEqual({ title: fresh?.title, dates: fresh?.dates });
  expect(containers?.map(({ type, number }) => `${type} ${number}`)).toEqual(
    fresh?.containers.map(({ type, number }) => `${type} ${number}`),
  );
});

test('a series is meant before a folder of the same name in another series', () => {
  const aid = aidOf([
    { title: 'Voyage out', series: 'Boats', kind: 'diary' },
    { title: 'From Ada', series: 'Diary' },
  ]);
  // The folder of the diary is called by what is in it.
  expect(aid.collection.children[0]?.children[0]?.title).toBe('Diary');
  const { collection } = extendWith(aid, aidOf([{ title: 'Voyage home', series: 'Diary', kind: 'diary' }]));
  const [boats, diary] = collection.children;
  expect(boats).toEqual(aid.collection.children[0]);
  expect(diary && called(diary, 'Voyage home')).toHaveLength(1);
});

describe('reference codes', () => {
  // ISAD(G) 3.1.1: a reference code is there to identify one unit.
  const codes = (aid: { collection: Component }) =>
    units(aid.collection).flatMap(({ referenceCode }) => referenceCode ?? []);

  test('are kept where they stand for nothing yet', () => {
    const { collection } = extended([{ title: 'From Nils', series: 'Maps' }], { prefix: 'NR' });
    expect(called(collection, 'From Nils')[0]?.referenceCode).toMatch(/^NR\//);
    expect(codes({ collection })).toEqual([...new Set(codes({ collection }))]);
  });

  test('are left out for all that is added where one stands for something else', () => {
    const { collection } = extended([{ title: 'From Nils', series: 'Maps' }]);
    const maps = collection.children.find(({ title }) => title === 'Maps');
    expect(maps && units(maps).filter(({ referenceCode }) => referenceCode !== undefined)).toEqual([]);
    expect(maps && called(maps, 'From Nils')).toHaveLength(1);
    expect(codes({ collection })).toEqual(codes(before));
  });
});

describe('ids', () => {
  const { collection, people } = extended(
    [
      { title: 'From Nils', series: 'Letters', people: ['Ada Quill', 'Nils Rook'] },
      { title: 'River bend', series: 'Maps', kind: 'map', creators: ['Nils Rook'] },
    ],
    {
      people: [
        { name: 'Ada Quill', born: 1902, relations: [{ to: 'Nils Rook', as: 'aunt' }] },
        { name: 'Nils Rook' },
      ],
    },
  );
  const all = units(collection);

  test('are each the id of one thing, and a folder is in a box that is there', () => {
    const boxes = all.flatMap(({ containers }) => containers.flatMap(({ id }) => id ?? []));
    const ids = [...all.map(({ id }) => id), ...boxes];
    expect(ids).toEqual([...new Set(ids)]);
    const parents = all.flatMap(({ containers }) => containers.flatMap(({ parent }) => parent ?? []));
    expect(parents.length).toBeGreaterThan(1);
    for (const parent of parents) expect(boxes).toContain(parent);
    expect(findingAid.safeParse({ ...before, people, collection }).error).toBeUndefined();
  });

  test('of people lead to whoever is meant: two of one name but of other headings are two', () => {
    const known = new Map(people.map((agent) => [agent.id, agent]));
    expect(known.size).toBe(people.length);
    const headings = people.map(({ name, authorizedForm }) => authorizedForm ?? name);
    expect(headings).toEqual(['Ada Quill', 'Quill, Ada, 1902-', 'Rook, Nils']);
    const named = (title: string) =>
      called(collection, title)[0]?.people.map(
        ({ agent }) => known.get(agent)?.authorizedForm ?? 'Ada Quill',
      );
    expect(named('From Nils')).toEqual(['Quill, Ada, 1902-', 'Rook, Nils']);
    expect(named('Bell of the ferry')).toEqual(['Ada Quill']);
    const [relation] = people[1]?.relations ?? [];
    expect(known.get(relation?.agent ?? '')?.name).toBe('Nils Rook');
  });
});
