import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import type { Component } from '../../src/catalogue/component.ts';
import { type FindingAid, findingAid } from '../../src/catalogue/finding-aid.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { withoutRestricted } from '../../src/export/without-restricted.ts';
import { arbitraryFindingAid } from '../support/arbitrary-finding-aid.ts';
import { dated, someSettings, someThing } from '../support/catalogue.ts';
import { everyComponent, quillFerry } from '../support/quill-page.ts';

const OPEN: Partial<Thing>[] = [
  {
    title: 'Ada to Nils on the flood',
    kind: 'letter',
    date: dated('1952'),
    creators: ['Ada Quill'],
    places: ['Landing'],
  },
  {
    title: 'Nils to Ada',
    kind: 'letter',
    date: dated('1955'),
    creators: ['Nils Quill'],
    people: ['Ada Quill'],
  },
  { title: 'The new cable', kind: 'photo', date: dated('1958'), places: ['Landing'] },
];
const CLOSED: Partial<Thing> = {
  title: 'The hospital to Cora',
  kind: 'medical paper',
  date: dated('1931'),
  creators: ['Cora Rook'],
  places: ['Tollbridge'],
  languages: ['Norwegian'],
  access: 'private',
};

const aidOf = (things: Partial<Thing>[], settings: Record<string, unknown> = {}): FindingAid =>
  findingAid.parse(
    arrange(
      {
        settings: someSettings({ described: '2026', ...settings }),
        things: things.map((thing, at) => someThing({ row: at + 2, ...thing })),
      },
      '2026-01-01',
    ),
  );

/** Arranged in one group with folders by group, so that what is closed lies in one folder with what is open. */
const together = { sort: { groups: ['series'], folders: 'group', order: ['date'] } };
const inSeries = (things: Partial<Thing>[]) => things.map((thing) => ({ ...thing, series: 'Family' }));

describe('without what is restricted', () => {
  test('what is open throughout comes back as it was', () => {
    const aid = aidOf(OPEN);
    expect(withoutRestricted(aid)).toBe(aid);
  });

  test('packages are counted again as boxes are', () => {
    const map = { kind: 'map', size: '120 x 90 cm' };
    const aid = aidOf([
      ...OPEN,
      { ...map, title: 'The river' },
      { ...map, title: 'The bend', access: 'closed' },
    ]);
    const packages = ({ collection }: FindingAid) =>
      collection.extents.filter(({ unit }) => unit.startsWith('package'));
    expect(packages(aid)).toMatchObject([{ quantity: 2, unit: 'packages' }]);
    expect(packages(withoutRestricted(aid))).toMatchObject([{ quantity: 1, unit: 'package' }]);
    const none = aidOf([...OPEN, { ...map, title: 'The bend', access: 'closed' }]);
    expect(packages(withoutRestricted(none))).toEqual([]);
  });

  test('nothing that only the closed thing carried is left', () => {
    const left = withoutRestricted(aidOf([...OPEN, CLOSED]));
    expect(JSON.stringify(left)).not.toMatch(
      /hospital|medical|Cora|Rook|1931|193|Tollbridge|Norwegian|nor\b/i,
    );
    expect(left.people.map(({ name }) => name).sort()).toEqual(['Ada Quill', 'Nils Quill']);
    expect(findingAid.safeParse(left).success).toBe(true);
  });

  test('dates, counts and summary are those that the list without it would give', () => {
    const [left, never] = [withoutRestricted(aidOf([...OPEN, CLOSED])), aidOf(OPEN)];
    expect(left.collection.dates).toEqual(never.collection.dates);
    const counts = ({ extents }: Component) => extents.filter(({ type }) => type === 'materialtype');
    expect(counts(left.collection)).toEqual(counts(never.collection));
    expect(left.collection.scopeAndContent).toBe(never.collection.scopeAndContent);
    expect(left.collection.arrangement).toBe(never.collection.arrangement);
    expect(left.collection.children.map(({ title }) => title)).toEqual(
      never.collection.children.map(({ title }) => title),
    );
  });

  test('a folder that holds both is stated anew, title and all', () => {
    const left = withoutRestricted(aidOf(inSeries([...OPEN, CLOSED]), together));
    const never = aidOf(inSeries(OPEN), together);
    const folder = ({ collection }: FindingAid) => collection.children[0]?.children[0];
    expect(folder(left)?.title).toBe(folder(never)?.title);
    expect(folder(left)?.dates).toEqual(folder(never)?.dates);
    expect(folder(left)?.children.map(({ title }) => title)).toEqual(
      folder(never)?.children.map(({ title }) => title),
    );
  });

  // DACS 2.3.18, and what the same list without the closed things gives.
  test.each<[string, Partial<Thing>[], Partial<Thing>[], string]>([
    ['letters that nobody counted', [{ kind: 'letters' }], [{ kind: 'postcard', quantity: 3 }], 'Letters'],
    ['a number nobody could read', [{ kind: 'letter', quantityUnread: true }], [{ kind: 'map' }], 'Letters'],
    ['one of several', [{ kind: 'letter' }], [{ kind: 'letters' }, { kind: 'photo', quantity: 9 }], 'Letter'],
    ['what is an object in the table', [{ kind: 'violins' }], [{ kind: 'postcard', quantity: 3 }], 'Violins'],
    ['the same order', [{ kind: 'map' }, { kind: 'letters' }], [{ kind: 'recipes' }], 'Map and letters'],
    ['a word with a comma in it', [{ kind: 'flotsam, tarred' }], [{ kind: 'letters' }], 'Flotsam, tarred'],
    ['a word not in the tables', [{ kind: 'flotsam', quantityUnread: true }], [{ kind: 'map' }], 'Flotsam'],
    ['only closed ones uncounted', [{ kind: 'map', quantity: 2 }], [{ kind: 'postcards' }], 'Maps'],
  ])('no title names a kind of which nothing is left: %s', (_, open, closed, title) => {
    const shut = closed.map((thing) => ({ ...thing, access: 'closed' }));
    const titles = (things: Partial<Thing>[], label: string, key: string) => {
      const filed = inSeries(things).map((thing) => ({ ...thing, [key]: label }));
      const sort = { ...together.sort, folders: key === 'series' ? 'group' : key };
      return withoutRestricted(aidOf(filed, { sort })).collection.children[0]?.children[0]?.title;
    };
    const inside = `${title.charAt(0).toLowerCase()}${title.slice(1)}`;
    for (const things of [open, [...open, ...shut], [...shut, ...open]]) {
      expect(titles(things, 'Family', 'series')).toBe(title);
      expect(titles(things, 'Crossing: the flood', 'occasion')).toBe(`Crossing: the flood: ${inside}`);
    }
  });

  test('the summary of the whole counts what is left, and says what nobody counted', () => {
    const open = [{ kind: 'letters' }, { kind: 'map', quantity: 2 }, {}];
    const closed = { kind: 'postcard', quantity: 3, access: 'closed' };
    const left = withoutRestricted(aidOf([...open, closed])).collection;
    expect(left.scopeAndContent).toBe(aidOf(open).collection.scopeAndContent);
    expect(left.scopeAndContent).toContain('2 maps, 1 item, letters that are not counted');
  });

  test('the parts of a folder keep their numbers where their titles name other kinds', () => {
    const aid = aidOf(inSeries([{ kind: 'letters' }, { kind: 'postcard', access: 'closed' }]), together);
    const part = (title: string): FindingAid => {
      const [series] = aid.collection.children;
      const children = series?.children.map((folder) => ({ ...folder, title })) ?? [];
      const all = series === undefined ? [] : [{ ...series, children }];
      return { ...aid, collection: { ...aid.collection, children: all } };
    };
    const left = (title: string) => withoutRestricted(part(title)).collection.children[0]?.children[0]?.title;
    expect(left('Postcard and letters (1 of 2)')).toBe('Letters (1 of 2)');
    // Somebody wrote these.
    expect(left('Letter')).toBe('Letter');
    expect(left('Postcard and letters from the landing')).toBe('Postcard and letters from the landing');
  });

  test('what the author said of the whole stays where the closed thing had no part in it', () => {
    const dates = '1900-2000';
    const inside = { ...CLOSED, date: dated('1954') };
    expect(withoutRestricted(aidOf([...OPEN, inside], { dates })).collection.dates).toEqual([
      { type: 'inclusive', expression: dates, edtf: '1900/2000' },
    ]);
    expect(withoutRestricted(aidOf([...OPEN, CLOSED], { dates })).collection.dates[0]?.edtf).toBe(
      '1952/1958',
    );
  });

  test('creators of the collection stay, named as they are for the whole', () => {
    const aid = aidOf([...OPEN, { ...CLOSED, creators: ['Signe Quill'] }], { creators: ['Signe Quill'] });
    expect(withoutRestricted(aid).people.map(({ name }) => name)).toContain('Signe Quill');
  });

  test('ties to somebody who went go with them', () => {
    const people = [{ name: 'Ada Quill', relations: [{ to: 'Cora Rook', as: 'aunt' }] }];
    const left = withoutRestricted(aidOf([...OPEN, CLOSED], { people: [...people, { name: 'Cora Rook' }] }));
    expect(JSON.stringify(left.people)).not.toMatch(/cora|aunt/i);
  });

  test('of a collection that is closed as a whole only its name, its keeper and the reason are left', () => {
    const aid = aidOf(OPEN);
    const closed = { ...aid.collection, accessConditions: { statement: 'Closed', restricted: true } };
    const left = withoutRestricted({ ...aid, collection: closed });
    expect(left.people).toEqual([]);
    expect(left.collection.children).toEqual([]);
    expect(JSON.stringify(left.collection)).not.toMatch(/195|letter/);
    expect(left.collection.accessConditions?.statement).toBe('Closed');
    expect(left.collection.title).toBe(aid.collection.title);
  });

  test('where all is closed nothing is counted or dated', () => {
    const left = withoutRestricted(aidOf([CLOSED])).collection;
    expect(left.children).toEqual([]);
    expect(left.dates).toEqual([{ type: 'inclusive', expression: 'undated' }]);
    expect(left.extents).toEqual([]);
  });
});

describe('whatever the finding aid', () => {
  const sum = (unit: Component): number => [...everyComponent(unit)].length;

  test('no restricted unit is left below the collection, every link leads somewhere, and twice is the same as once', () => {
    fc.assert(
      fc.property(arbitraryFindingAid({ largest: 6 }), (aid) => {
        const left = withoutRestricted(aid);
        const units = [...everyComponent(left.collection)];
        for (const unit of units.slice(1)) expect(unit.accessConditions?.restricted).not.toBe(true);
        const known = new Set(left.people.map(({ id }) => id));
        for (const { creators, people } of units)
          for (const { agent } of [...creators, ...people]) expect(known).toContain(agent);
        for (const { relations = [] } of left.people)
          for (const { agent } of relations) expect(known).toContain(agent);
        expect(sum(left.collection)).toBeLessThanOrEqual(sum(aid.collection));
        expect(findingAid.safeParse(left).success).toBe(true);
        if (left.collection.accessConditions?.restricted !== true) expect(withoutRestricted(left)).toBe(left);
      }),
      { numRuns: 200 },
    );
  });
});

describe('the example', () => {
  let aid: FindingAid;
  beforeAll(async () => {
    aid = await quillFerry();
  });

  test('loses the five things that its list does not open, and their folders where those held nothing else', () => {
    const left = withoutRestricted(aid);
    const ids = new Set([...everyComponent(left.collection)].map(({ id }) => id));
    const gone = [...everyComponent(aid.collection)].filter(({ id }) => !ids.has(id));
    expect(gone.filter(({ accessConditions }) => accessConditions?.restricted).length).toBe(5);
    for (const { children, accessConditions } of gone)
      expect(accessConditions?.restricted === true || children.every((child) => !ids.has(child.id))).toBe(
        true,
      );
  });
});
