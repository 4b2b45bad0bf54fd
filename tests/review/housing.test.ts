import { describe, expect, test } from 'vitest';
import { arrangement, settle } from '../../src/arrange/index.ts';
import type { Settled } from '../../src/catalogue/settled.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { reviewHousing } from '../../src/review/housing.ts';
import { stopsSettling } from '../../src/review/numbers.ts';
import { dated, someCatalogue, someThing } from '../support/catalogue.ts';

const US = { repository: { name: 'Quill family', country: 'US' } };
const TODAY = '2026-01-01';

const letter = (row: number, over: Partial<Thing> = {}) =>
  someThing({ row, number: String(row), kind: 'letter', date: dated('1901'), ...over });

/** Findings on a list whose numbers were settled when it was as `before`, if ever, and may have been edited since. */
function findings(
  things: readonly Thing[],
  before?: readonly Thing[],
  edit: (rows: readonly Settled[]) => readonly Settled[] = (rows) => rows,
) {
  const settled = before === undefined ? [] : edit(settle(someCatalogue(US, before), false, TODAY).rows);
  const catalogue = { ...someCatalogue(US, things), settled };
  return reviewHousing(catalogue, arrangement(catalogue, TODAY));
}

const found = (...given: Parameters<typeof findings>) =>
  findings(...given).map(({ rule, found: words }) => ({ rule, words }));

const rules = (...given: Parameters<typeof findings>) => findings(...given).map(({ rule }) => rule);

// Sheets of 0.1 mm (a ream of 500 is about 51 mm; from memory): 550 of them are 55 mm, which a box of 2½ in takes and fills.
const full = [2, 3, 4].map((row) => letter(row, { kind: 'document', quantity: 180, size: 'letter' }));

describe('boxes that are slack or tight', () => {
  test('few letters stand in no box; enough of them do (common practice)', () => {
    expect(found([letter(2)])).toEqual([
      { rule: 'housing.slack', words: 'It is so empty that what stands in it would fall over.' },
    ]);
    expect(rules(full)).toEqual([]);
  });

  test('a settled box whose content has grown is not forced', () => {
    const grown = full.map((thing) => ({ ...thing, quantity: 400 }));
    expect(rules(full, full)).toEqual([]);
    expect(rules(grown, full)).toContain('housing.tight');
  });

  describe('three folders of 14 mm in a box of 2½ in (64 mm)', () => {
    const sheaf = (row: number, thick: number, over: Partial<Thing> = {}) =>
      letter(row, { kind: 'document', size: `280 x 210 x ${thick} mm`, ...over });
    const three = [sheaf(2, 14), sheaf(3, 14), sheaf(4, 14)];

    test('a folder that has grown thicker than it may be is named, to be split', () => {
      const [finding] = findings([sheaf(2, 40), sheaf(3, 14), sheaf(4, 14)], three);
      expect(finding).toMatchObject({ rule: 'housing.tight', place: { component: 'box 1' } });
      // About ¾ in, 19 mm, is the most for a folder (common practice).
      expect(finding?.found).toContain(
        'For folder 1 there are 40 mm now, and not more than 19 mm should lie there.',
      );
      expect(finding?.advice).toContain('Split folder 1: leave in row 2 of the list (“Thing of row 2”)');
      expect(finding?.advice).not.toMatch(/folder [23]|Take the last/);
    });

    test('where no folder is too thick, the last ones are to be taken out', () => {
      const [finding] = findings([...three, sheaf(5, 18, { box: '1' })], three);
      expect(finding).toMatchObject({ rule: 'housing.tight', place: { component: 'box 1' } });
      expect(finding?.advice).toContain('Take the last folders out');
    });
  });

  test('what fits into no box', () => {
    expect(rules([...full, letter(9, { kind: 'map', size: '2 x 3 m' })])).toContain('housing.no-box');
    expect(rules([...full, letter(9, { kind: 'map', size: '60 x 90 cm' })])).not.toContain('housing.no-box');
  });

  test('for what is not to be boxed before somebody has looked at it, no box is asked for, unless it is answered', () => {
    const large = { size: '2 x 3 m' };
    const held: readonly (readonly [rule: string, thing: Thing])[] = [
      ['danger.weapons', letter(9, { title: 'Rifle', kind: 'object', ...large })],
      ['danger.nitrate-film', letter(9, { title: 'Reel', kind: 'film reel', date: dated('1930'), ...large })],
      ['danger.mould', letter(9, { kind: 'map', condition: 'mouldy', ...large })],
    ];
    const because = 'somebody who knows has looked at it';
    for (const [rule, thing] of held) {
      const said = [{}, { check: { answers: [{ rule, because }] } }].map((check) => {
        const catalogue = someCatalogue({ ...US, ...check }, [...full, thing]);
        return reviewHousing(catalogue, arrangement(catalogue, TODAY)).some(
          (finding) => finding.rule === 'housing.no-box',
        );
      });
      expect([rule, ...said]).toEqual([rule, false, true]);
    }
  });
});

describe('settled numbers and the list', () => {
  test('a number to which nothing belongs any more', () => {
    expect(rules(full.slice(1), full)).toContain('numbers.gap');
    expect(rules([...full, letter(9)], full)).not.toContain('numbers.gap');
  });

  test('a thing that would be sorted elsewhere', () => {
    const [first, ...rest] = full;
    if (first === undefined) throw new Error('There is no first thing.');
    expect(rules([{ ...first, date: dated('1950') }, ...rest], full)).toContain('numbers.would-move');
    expect(rules([{ ...first, title: 'Another title' }, ...rest], full)).not.toContain('numbers.would-move');
  });

  test('a list that names another box', () => {
    const inBox = (box: string) => [letter(2, { box })];
    expect(rules(inBox('7'), [letter(2)])).toContain('numbers.other-box');
    expect(rules(inBox('1'), [letter(2)])).not.toContain('numbers.other-box');
  });
});

describe('a list that was numbered anew', () => {
  const titled = (...titles: (string | undefined)[]) =>
    titles.flatMap((title, index) => (title === undefined ? [] : [letter(index + 1, { title })]));
  const list = titled('Ferry licence', 'Orchard in bloom', 'Bell of the ferry', 'Toll book');
  const anew = (things: readonly Thing[]) => rules(things, list).includes('numbers.changed-places');

  test.each([
    ['sorted', titled('Bell of the ferry', 'Ferry licence', 'Orchard in bloom', 'Toll book')],
    [
      'with a row put in',
      titled('Card', 'Ferry licence', 'Orchard in bloom', 'Bell of the ferry', 'Toll book'),
    ],
    ['with a row taken out', titled('Orchard in bloom', 'Bell of the ferry', 'Toll book')],
    [
      'where two titles change places',
      titled('Orchard in bloom', 'Ferry licence', 'Bell of the ferry', 'Toll book'),
    ],
    ['in capitals', titled('BELL OF THE FERRY', 'FERRY LICENCE', 'ORCHARD IN BLOOM', 'TOLL BOOK')],
  ])('%s', (_, things) => expect(anew(things)).toBe(true));

  test.each([
    ['not touched', list],
    ['in another order of rows', list.toReversed()],
    [
      'with one new title',
      titled('Licence of the ferry', 'Orchard in bloom', 'Bell of the ferry', 'Toll book'),
    ],
    ['with new titles all over', titled('A', 'B', 'C', 'D')],
    [
      'with a title that another number has',
      titled('Toll book', 'Orchard in bloom', 'Bell of the ferry', 'Toll book'),
    ],
    ['with a row taken out', titled('Ferry licence', undefined, 'Bell of the ferry', 'Toll book')],
    ['with a row added', [...list, letter(9, { title: 'Ferry licence' })]],
  ])('is none that is %s', (_, things) => expect(anew(things)).toBe(false));

  test('nor where new things bear titles that say little', () => {
    const before = [1, 2, 3, 4, 5, 6].map((row) => letter(row, { title: row < 4 ? 'Letter' : 'Card' }));
    const retitled = before.map((thing) => ({ ...thing, title: `${thing.title} from Ada, ${thing.row}` }));
    const more = [7, 8, 9, 10].map((row) => letter(row, { title: row < 9 ? 'Letter' : 'Card' }));
    expect(rules([...retitled, ...more], before)).not.toContain('numbers.changed-places');
  });
});

describe('a thing that has lost its number in the list', () => {
  const before = [letter(1, { title: 'Toll book' }), letter(2, { title: 'Orchard in bloom' })];
  const blank = (over: Partial<Thing>) => {
    const { number: _, ...thing } = letter(1, { title: 'Toll book', ...over });
    return [thing, ...before.slice(1)];
  };
  const looksAlike = (things: readonly Thing[]) => rules(things, before).includes('numbers.perhaps-settled');

  test('is known by its title and by where it is filed', () => {
    expect(looksAlike(blank({}))).toBe(true);
    expect(looksAlike(blank({ title: 'TOLL BOOK' }))).toBe(true);
    expect(looksAlike(blank({ date: dated('1902') }))).toBe(false);
    expect(looksAlike(blank({ title: 'Toll book of the upper ferry' }))).toBe(false);
    expect(rules(blank({}), before)).not.toContain('numbers.gap');
  });

  test('so too where it has another number, that is not settled', () => {
    expect(looksAlike([letter(9, { title: 'Toll book' }), ...before.slice(1)])).toBe(true);
    expect(looksAlike([...before, letter(9, { title: 'Toll book' })])).toBe(false);
  });

  test('so too where all have numbers of another kind', () => {
    const other = before.map((thing) => ({ ...thing, number: `F${thing.number}` }));
    expect(rules(other, before).filter((rule) => rule.startsWith('numbers.'))).toEqual([
      'numbers.perhaps-settled',
      'numbers.perhaps-settled',
    ]);
  });

  test('is told once where the whole column was lost', () => {
    const many = new Array(30).fill('').map((_, index) => letter(index + 1));
    const lost = many.map(({ number: _, ...thing }) => thing);
    const said = findings(lost, many).filter(({ rule }) => rule === 'numbers.perhaps-settled');
    expect(said.map((one) => one.found)).toEqual([
      expect.stringMatching(/^30 things have no settled number/),
    ]);
  });
});

describe('a row of numbers.csv that was lost', () => {
  const five = [1, 2, 3, 4, 5].map((row) => letter(row, { date: dated(row < 4 ? '1901' : `190${row}`) }));
  const lost = (...numbers: string[]) =>
    found(five, five, (rows) => rows.filter(({ number }) => !numbers.includes(number)))
      .filter(({ rule }) => rule === 'numbers.row-lost')
      .map(({ words }) => words);

  test('is named, with the thing that stands in no row', () => {
    expect(lost()).toEqual([]);
    expect(lost('2')).toEqual([
      'A row has been lost: none is for QF/1/1/2, though a later number of that folder is there. Number 2 of the list, “Thing of row 2”, stands in no row.',
    ]);
    expect(lost('1', '2')[0]).toContain('none is for QF/1/1/1 to QF/1/1/2, though');
  });

  test('so too where it was the only one of its folder', () => {
    expect(lost('4')).toEqual([
      'A row has been lost: none is for folder 2, though a later folder is there. Number 4 of the list, “Thing of row 4”, stands in no row.',
    ]);
  });

  test('keeps numbers from being settled, even where the list has lost it as well', () => {
    const settled = settle(someCatalogue(US, five), false, TODAY).rows.filter(({ number }) => number !== '2');
    const catalogue = {
      ...someCatalogue(
        US,
        five.filter(({ number }) => number !== '2'),
      ),
      settled,
    };
    const settling = settle(catalogue, false, TODAY);
    expect(stopsSettling(catalogue, settling).map(({ rule, weight }) => [rule, weight])).toEqual([
      ['numbers.row-lost', 'must'],
    ]);
    // A catalogue handed over in part has such gaps on purpose, and nothing is said of what they held.
    expect(reviewHousing(catalogue, settling).map(({ rule }) => rule)).not.toContain('numbers.row-lost');
  });
});
