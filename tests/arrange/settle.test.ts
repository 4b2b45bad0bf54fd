import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Arrangement, arrange, arrangement, outline, settle } from '../../src/arrange/index.ts';
import type { Component } from '../../src/catalogue/component.ts';
import { findingAid } from '../../src/catalogue/finding-aid.ts';
import type { Settled } from '../../src/catalogue/settled.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { foldersOf } from '../../src/housing/placed.ts';
import { filledBoxes } from '../../src/housing/shelve.ts';
import { lostRows } from '../../src/review/numbers-lost.ts';
import { dated, someCatalogue, someSettings, someThing } from '../support/catalogue.ts';
import { times } from '../support/times.ts';

const TODAY = '2026-05-14';

const KINDS = [
  'letter',
  'photograph',
  'diary',
  'glass negative',
  'map',
  'quilt',
  'record',
  'oddment',
  undefined,
];
const SIZES = ['A4', '4x5 in', '60 x 90 cm', 'cabinet card, mounted', undefined];

type Row = Omit<Thing, 'row'>;

const arbitraryRow = (): fc.Arbitrary<Row> =>
  fc
    .record({
      title: fc.constantFrom('Toll book', 'Card from Nils', 'Orchard in bloom', 'Bell of the ferry'),
      kind: fc.constantFrom(...KINDS),
      year: fc.option(fc.integer({ min: 1890, max: 1930 }), { nil: undefined }),
      quantity: fc.option(fc.integer({ min: 1, max: 90 }), { nil: undefined }),
      size: fc.constantFrom(...SIZES),
      box: fc.option(fc.constantFrom('1', '7', 'trunk'), { nil: undefined, freq: 8 }),
    })
    .map(({ title, kind, year, quantity, size, box }) =>
      someThing({
        row: 0,
        title,
        ...(kind !== undefined && { kind }),
        ...(year !== undefined && { date: dated(String(year)) }),
        ...(quantity !== undefined && { quantity }),
        ...(size !== undefined && { size }),
        ...(box !== undefined && { box }),
      }),
    );

const listed = (rows: readonly Row[]): Thing[] => rows.map((row, index) => ({ ...row, row: index + 2 }));

const arbitrarySettings = () =>
  fc.constantFrom(
    someSettings({}),
    someSettings({ sort: { groups: ['kind', 'decade'], folders: 'group' } }),
    someSettings({ sort: { folders: 'decade' }, housing: { folders: ['A4 folder'] } }),
  );

/** The list with the numbers that settling gave. */
const withGiven = (things: readonly Thing[], given: ReadonlyMap<number, string>): Thing[] =>
  things.map((thing) => {
    const number = given.get(thing.row);
    return number === undefined ? thing : { ...thing, number };
  });

const live = (rows: readonly Settled[]) => rows.filter(({ gone }) => gone === undefined);

/** What of a row is written on things, folders and boxes. */
const written = ({ number, place, folder, lastFolder, box }: Settled) => ({
  number,
  place,
  folder,
  lastFolder,
  box,
});

describe('housing a list', () => {
  test('every thing has one number and lies in one place, in a box that holds it, in order', () => {
    fc.assert(
      fc.property(fc.array(arbitraryRow(), { maxLength: 60 }), arbitrarySettings(), (rows, settings) => {
        const things = listed(rows);
        const { groups, boxes } = arrangement({ settings, things }, TODAY);
        const placed = foldersOf(groups).flatMap((folder) => folder.things);
        expect(placed.map(({ thing }) => thing.row).sort((a, b) => a - b)).toEqual(
          things.map(({ row }) => row),
        );
        const inBoxes = boxes.flatMap(({ units }) => units.flatMap((unit) => unit.things));
        expect(new Set(inBoxes)).toEqual(new Set(placed.filter(({ units }) => units.length > 0)));
        for (const { units } of placed) for (const unit of units) expect(unit.box?.units).toContain(unit);
        for (const { slack } of filledBoxes(boxes)) expect(slack).toBeGreaterThanOrEqual(0);
        // Folders stand in the boxes of their shelf in the order of their numbers.
        const numbers = new Map<string, number[]>();
        for (const { units } of boxes) {
          for (const { folder, shelf, given } of units) {
            if (given !== undefined || folder.held === undefined) continue;
            numbers.set(shelf, [...(numbers.get(shelf) ?? []), folder.held.first]);
          }
        }
        for (const order of numbers.values()) expect(order).toEqual([...order].sort((a, b) => a - b));
      }),
      { numRuns: times(150) },
    );
  });

  test('the same list gives the same answer', () => {
    fc.assert(
      fc.property(fc.array(arbitraryRow(), { maxLength: 30 }), (rows) => {
        const catalogue = { settings: someSettings({}), things: listed(rows) };
        expect(settle(catalogue, false, TODAY).rows).toEqual(settle(catalogue, false, TODAY).rows);
      }),
      { numRuns: times(40) },
    );
  });
});

describe('numbers that stay', () => {
  const arbitraryEdits = () =>
    fc.record({
      removed: fc.array(fc.nat(59)),
      changed: fc.array(fc.tuple(fc.nat(59), arbitraryRow())),
      added: fc.array(arbitraryRow(), { maxLength: 20 }),
      move: fc.boolean(),
      again: arbitrarySettings(),
    });

  test('after settling, no edit of the list changes a settled number, folder or box', () => {
    fc.assert(
      fc.property(
        fc.array(arbitraryRow(), { minLength: 1, maxLength: 40 }),
        arbitrarySettings(),
        fc.array(arbitraryEdits(), { minLength: 1, maxLength: 3 }),
        (rows, settings, rounds) => {
          let things = listed(rows);
          const first = settle({ settings, things }, false, TODAY);
          things = withGiven(things, first.given);
          let settled = first.rows;
          for (const { removed, changed, added, move, again } of rounds) {
            const edits = new Map(changed);
            const kept = things.flatMap((thing, index): Row[] => {
              if (removed.includes(index)) return [];
              const edit = edits.get(index);
              return [
                edit === undefined || thing.number === undefined ? thing : { ...edit, number: thing.number },
              ];
            });
            things = listed([...kept, ...added]);
            const next = settle({ settings: again, things, settled }, move, TODAY);
            things = withGiven(things, next.given);
            const now = new Map(live(next.rows).map((row) => [row.number, written(row)]));
            const present = new Set(things.map(({ number }) => number));
            expect(now.size).toBe(things.length);
            for (const row of live(settled)) {
              if (!present.has(row.number)) continue;
              const old = next.rows.find(
                ({ number, place }) => number === row.number && same(place, row.place),
              );
              if (!move) expect(now.get(row.number)).toEqual(written(row));
              else
                expect([undefined, `moved to ${now.get(row.number)?.place.join('/')}`]).toContain(old?.gone);
            }
            // Nothing is ever given twice, and every gap has its reason.
            const places = next.rows.map(({ place }) => place.join('/'));
            expect(new Set(places).size).toBe(places.length);
            const known = new Set(places);
            for (const { place } of settled) expect(known).toContain(place.join('/'));
            // Neither within a folder nor from folder to folder is a number left out.
            expect(lostRows({ ...someCatalogue({}, []), settled: next.rows })).toEqual([]);
            const boxOfFolder = new Map<number, string | undefined>();
            for (const { folder, box } of live(next.rows)) {
              if (folder === undefined) continue;
              if (boxOfFolder.has(folder)) expect(box).toBe(boxOfFolder.get(folder));
              boxOfFolder.set(folder, box);
            }
            settled = next.rows;
          }
        },
      ),
      { numRuns: times(200) },
    );
  });

  test('what is added later forces nothing into a settled box', () => {
    fc.assert(
      fc.property(
        fc.array(arbitraryRow(), { minLength: 1, maxLength: 40 }),
        // What the list itself puts into a box is not refused: that is a finding.
        fc.array(
          arbitraryRow().map(({ box: _, ...row }) => row),
          { maxLength: 40 },
        ),
        (rows, added) => {
          const settings = someSettings({});
          const things = listed(rows);
          const first = settle({ settings, things }, false, TODAY);
          const all = [
            ...withGiven(things, first.given),
            ...added.map((row, at) => ({ ...row, row: 1000 + at })),
          ];
          const { boxes } = arrangement({ settings, things: all, settled: first.rows }, TODAY);
          for (const { slack } of filledBoxes(boxes)) expect(slack).toBeGreaterThanOrEqual(0);
        },
      ),
      { numRuns: times(100) },
    );
  });

  const letter = (row: number, year: string, over: Partial<Thing> = {}) =>
    someThing({ row, title: `Letter of ${year}`, kind: 'letter', date: dated(year), ...over });

  test('a new thing takes the next number in its folder, or a new folder at the end of its group', () => {
    const settings = someSettings({});
    const first = settle(
      { settings, things: [letter(2, '1901', { number: 'a' }), letter(3, '1903', { number: 'b' })] },
      false,
      TODAY,
    );
    const things = [
      letter(2, '1901', { number: 'a' }),
      letter(3, '1902', { number: 'c' }),
      letter(4, '1901', { number: 'd' }),
      letter(5, '1903', { number: 'b' }),
    ];
    const { rows } = settle({ settings, things, settled: first.rows }, false, TODAY);
    expect(rows.map(({ number, place, folder }) => [number, place.join('/'), folder])).toEqual([
      ['a', '1/1/1', 1],
      ['d', '1/1/2', 1],
      ['b', '1/2/1', 2],
      ['c', '1/3/1', 3],
    ]);
  });

  test('what is added to a finding aid that was taken in comes into boxes of its own, as it is arranged', () => {
    const settings = someSettings({});
    const base = arrange({ settings, things: [letter(2, '1901')] }, TODAY);
    const things = [letter(2, '1902', { series: 'Correspondence' })];
    const boxesOf = ({ boxes }: Pick<Arrangement, 'boxes'>) => boxes.map(({ number }) => number);
    const settled = settle({ settings, things, base }, false, TODAY);
    // Box 1 is that of the letter that was there.
    expect([boxesOf(arrangement({ settings, things, base }, TODAY)), boxesOf(settled)]).toEqual([
      ['2'],
      ['2'],
    ]);
    expect(settled.rows.map(({ groups, box }) => [groups, box])).toEqual([[['Correspondence'], '2']]);
  });

  test('folders that are counted through all boxes of a finding aid are counted on, and those that begin anew are not', () => {
    const settings = someSettings({});
    const dated = (kind: string, years: readonly string[]) =>
      years.map((year, at) => ({ ...letter(at + 2, year), kind }));
    const list = [...dated('letter', ['1901', '1902']), ...dated('receipt', ['1903'])];
    const base = arrange({ settings, things: list }, TODAY);
    const things = [letter(2, '1904', { series: 'Correspondence' })];
    const folders = (of: typeof base) =>
      settle({ settings, things, base: of }, false, TODAY).rows.map(({ folder }) => folder);
    expect(folders(base)).toEqual([4]);
    const anew = structuredClone(base);
    const receipts = anew.collection.children[1]?.children[0];
    if (receipts === undefined) throw new Error('The receipts have no folder.');
    receipts.containers = [
      { type: 'Box', number: '2' },
      { type: 'Folder', number: '1' },
    ];
    expect(folders(anew)).toEqual([1]);
  });

  // ISAD(G) 3.1.1: a reference code is there to identify one unit.
  test('what is added to a finding aid whose codes are made as ours are is numbered on in its series', () => {
    const settings = someSettings({});
    const list = [letter(2, '1901'), letter(3, '1902'), { ...letter(4, '1903'), kind: 'receipt' }];
    const base = arrange({ settings, things: list }, TODAY);
    // Two folders of letters, QF/1/1 and QF/1/2, and one of receipts, QF/2/1.
    expect(base.collection.children.map(({ children }) => children.length)).toEqual([2, 1]);
    const [, receipts] = base.collection.children;
    const things = [
      letter(2, '1904', { number: 'a', series: receipts?.title ?? '' }),
      letter(3, '1905', { number: 'b', series: 'Maps' }),
      letter(4, '1906', { number: 'c', series: 'CORRESPONDENCE.' }),
    ];
    const first = settle({ settings, things, base }, false, TODAY);
    const placesOf = ({ rows }: Pick<typeof first, 'rows'>) =>
      new Map(rows.map(({ number, place }) => [number, place.join('/')]));
    expect(placesOf(first)).toEqual(
      new Map([
        ['c', '1/3/1'],
        ['a', '2/2/1'],
        ['b', '3/1/1'],
      ]),
    );
    const codes = (unit: Component): string[] => [unit.referenceCode ?? '', ...unit.children.flatMap(codes)];
    const all = codes(first.aid.collection);
    expect(all).toEqual(expect.arrayContaining(['QF/1/3/1', 'QF/2/2/1', 'QF/3/1/1']));
    expect(new Set(all).size).toBe(all.length);
    const more = [...things, letter(5, '1907', { number: 'd', series: 'Correspondence' })];
    const second = settle({ settings, things: more, settled: first.rows, base }, false, TODAY);
    expect(placesOf(second)).toEqual(new Map([...placesOf(first), ['d', '1/4/1']]));
  });

  test('but has no codes where a unit of it has a code of another make', () => {
    const settings = someSettings({});
    const base = arrange({ settings, things: [letter(2, '1901')] }, TODAY);
    const [letters] = base.collection.children;
    if (letters !== undefined) letters.referenceCode = 'QF I';
    const things = [letter(2, '1902', { number: 'a', series: letters?.title ?? '' })];
    const { rows, aid } = settle({ settings, things, base }, false, TODAY);
    expect(rows.map(({ place }) => place.join('/'))).toEqual(['1/1/1']);
    const [, added] = aid.collection.children[0]?.children ?? [];
    expect([added?.referenceCode, added?.children[0]?.referenceCode]).toEqual([undefined, undefined]);
  });

  test('a removed thing leaves a gap that is explained, and comes back to it', () => {
    const settings = someSettings({});
    const both = [letter(2, '1901', { number: 'a' }), letter(3, '1901', { number: 'b' })];
    const first = settle({ settings, things: both }, false, TODAY);
    const without = settle({ settings, things: both.slice(1), settled: first.rows }, false, TODAY);
    expect(without.rows.find(({ number }) => number === 'a')?.gone).toBe('removed');
    const folder = without.aid.collection.children[0]?.children[0];
    expect(folder?.generalNotes).toEqual([{ head: 'Numbers no longer used', text: 'QF/1/1/1 (removed)' }]);
    const back = settle({ settings, things: both, settled: without.rows }, false, TODAY);
    expect(back.rows).toEqual(first.rows);
  });

  test('the order of the rows in numbers.csv says nothing, and the description is as it was before settling', () => {
    fc.assert(
      fc.property(
        fc.array(arbitraryRow(), { minLength: 1, maxLength: 40 }),
        fc.infiniteStream(fc.nat()),
        (rows, random) => {
          const settings = someSettings({});
          const first = settle({ settings, things: listed(rows) }, false, TODAY);
          const things = withGiven(listed(rows), first.given);
          const before = arrangement({ settings, things }, TODAY).aid;
          const shuffled = first.rows
            .map((row) => ({ row, at: random.next().value ?? 0 }))
            .sort((a, b) => a.at - b.at)
            .map(({ row }) => row);
          expect(arrangement({ settings, things, settled: shuffled }, TODAY).aid).toEqual(before);
        },
      ),
      { numRuns: times(80) },
    );
  });

  test('a folder of which only what lies apart is left is no folder any more', () => {
    const settings = someSettings({});
    const both = [letter(2, '1901', { number: 'a' }), letter(3, '1901', { number: 'b', size: '60 x 90 cm' })];
    const first = settle({ settings, things: both }, false, TODAY);
    const { aid } = arrangement({ settings, things: both.slice(1), settled: first.rows }, TODAY);
    const folder = aid.collection.children[0]?.children[0];
    expect(folder?.containers).toEqual([]);
    expect(folder?.children[0]?.containers).toEqual([{ type: 'box', number: '2' }]);
    expect(aid.collection.extents.map(({ unit }) => unit)).not.toContain('folder');
  });

  test('what would be sorted elsewhere is proposed, and moved only on demand', () => {
    const settings = someSettings({});
    const before = [letter(2, '1901', { number: 'a' }), letter(3, '1903', { number: 'b' })];
    const first = settle({ settings, things: before }, false, TODAY);
    const things = [letter(2, '1903', { number: 'a' }), letter(3, '1903', { number: 'b' })];
    const stayed = settle({ settings, things, settled: first.rows }, false, TODAY);
    expect(stayed.moves.map(({ thing, to }) => [thing.number, to.filedUnder])).toEqual([['a', '1903']]);
    const moved = settle({ settings, things, settled: first.rows }, true, TODAY);
    expect(moved.rows.map(({ number, place, gone }) => [number, place.join('/'), gone])).toEqual([
      ['a', '1/1/1', 'moved to 1/2/2'],
      ['b', '1/2/1', undefined],
      ['a', '1/2/2', undefined],
    ]);
  });

  test('a thing is found under the code it had before it was moved, however often', () => {
    const settings = someSettings({});
    const at = (year: string) => [letter(2, year, { number: 'a' }), letter(3, '1909', { number: 'b' })];
    let settled = settle({ settings, things: at('1901') }, false, TODAY).rows;
    for (const year of ['1903', '1905']) {
      settled = settle({ settings, things: at(year), settled }, true, TODAY).rows;
    }
    const { aid } = arrangement({ settings, things: at('1905'), settled }, TODAY);
    const [series] = aid.collection.children;
    const [first, second] = (series?.children ?? []).flatMap(({ children }) => children);
    expect(second).toMatchObject({
      referenceCode: 'QF/1/4/1',
      otherIdentifiers: [
        { type: 'number in the list', value: 'a' },
        { type: 'former reference code', value: 'QF/1/1/1' },
        { type: 'former reference code', value: 'QF/1/3/1' },
      ],
    });
    expect(first?.otherIdentifiers).toEqual([{ type: 'number in the list', value: 'b' }]);
    // Of the folders that it left, nothing is there to tell their gaps, so the series does.
    expect(series?.generalNotes).toEqual([
      {
        head: 'Numbers no longer used',
        text: 'QF/1/1/1, folder 1 (moved to QF/1/3/1); QF/1/3/1, folder 3 (moved to QF/1/4/1)',
      },
    ]);
  });

  test('the gaps of a group that was emptied are told by the collection', () => {
    const settings = someSettings({});
    const ofRow = (row: number) => letter(row, '1901', { number: String(row) });
    const bell = someThing({ row: 9, number: '9', title: 'Bell of the ferry', kind: 'quilt' });
    const settled = settle({ settings, things: [ofRow(2), ofRow(3), bell] }, false, TODAY).rows;
    const { aid } = arrangement({ settings, things: [bell], settled }, TODAY);
    expect(aid.collection.generalNotes).toEqual([
      { head: 'Numbers no longer used', text: 'QF/1/1/1 to QF/1/1/2, folder 1 (removed)' },
    ]);
    expect(findingAid.safeParse(aid).error).toBeUndefined();
  });

  test('a group of which everything lies elsewhere uses up no number', () => {
    const before = someSettings({ sort: { groups: ['kind'] } });
    const things = [letter(2, '1901', { number: 'a' })];
    const { rows: settled } = settle({ settings: before, things }, false, TODAY);
    const settings = someSettings({ sort: { groups: ['decade'] } });
    const more = [...things, letter(3, '1915', { number: 'b' })];
    const { rows } = settle({ settings, things: more, settled }, false, TODAY);
    expect(rows.map(({ number, place }) => [number, place.join('/')])).toEqual([
      ['a', '1/1/1'],
      ['b', '2/1/1'],
    ]);
  });
});

describe('where things lie, in the outline', () => {
  const linesOf = (things: readonly Thing[]) => {
    const { aid } = arrangement({ settings: someSettings({}), things }, TODAY);
    return [...outline(aid.collection)].map((line) => line.trim());
  };

  test('a bundle too large for a box: each box with its folders, in order', () => {
    const lines = linesOf([
      someThing({ row: 2, title: 'Letters', kind: 'letter', date: dated('1901'), quantity: 2000 }),
    ]);
    const [, shelf] = /\((box .*); 2000 letters\)$/.exec(lines[2] ?? '') ?? [];
    const parts = (shelf ?? '').split('; ').map((part) => /^box (\d+), folders (\d+)-(\d+)$/.exec(part));
    expect(parts.length).toBeGreaterThan(1);
    let last = 0;
    for (const [index, part] of parts.entries()) {
      const [box, from, to] = (part ?? []).slice(1).map(Number);
      expect([box, from]).toEqual([index + 1, last + 1]);
      last = to ?? 0;
    }
  });

  test('one box as before: the folder, then its box', () => {
    const lines = linesOf([someThing({ row: 2, title: 'Letter', kind: 'letter', date: dated('1901') })]);
    expect(lines[2]).toContain('(folder 1, box 1, 1 letter)');
  });
});

const same = (a: readonly number[], b: readonly number[]) => a.join('/') === b.join('/');
