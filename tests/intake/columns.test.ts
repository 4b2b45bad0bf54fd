import { describe, expect, it } from 'vitest';
import { COLUMNS } from '../../src/catalogue/thing.ts';
import { columnOf, comparable } from '../../src/intake/columns.ts';
import { EVERYDAY_HEADINGS } from '../../src/intake/headings.ts';
import { layoutOf } from '../../src/intake/layout.ts';

const layout = (headings: string[]) => layoutOf(headings, { file: 'list.csv', row: 1 });
const rules = (headings: string[]) =>
  layout(headings).findings.map(({ rule, weight }) => `${weight} ${rule}`);

describe('everyday headings', () => {
  const words = COLUMNS.flatMap((column) => [column, ...EVERYDAY_HEADINGS[column]]);

  it('stand each under one column', () => {
    expect(words.filter((word, at) => words.indexOf(word) !== at)).toEqual([]);
  });

  it('are written as they are compared', () =>
    expect(words.filter((word) => comparable(word) !== word)).toEqual([]));

  it.each([
    ['Title', 'title'],
    ['WHAT?', 'title'],
    ['  what  is it ', 'title'],
    ['Who', 'people'],
    ['When', 'date'],
    ['Year:', 'date'],
    ['Date (about)', 'date'],
    ['How many', 'quantity'],
    ['# of items', 'quantity'],
    ['No. of pieces', 'quantity'],
    ['No.', 'number'],
    ['Nr', 'number'],
    ['#', 'number'],
    ['№', 'number'],
    ['Item #', 'number'],
    ['Óccasion', 'occasion'],
    ['what-for', 'occasion'],
    ['Notes', 'note'],
    ['By', 'creator'],
    ['With', 'people'],
    ['Private', 'access'],
    ['Closed until', 'until'],
    ['Scan', 'copy'],
    ['Box no.', 'box'],
    ['Lang.', 'language'],
  ])('%s means %s', (heading, column) => expect(columnOf(heading)).toBe(column));

  it.each(['', 'colour', 'notebook', 'note to self', 'nothing', 'unknown'])(
    '%j means no column',
    (heading) => {
      expect(columnOf(heading)).toBeUndefined();
    },
  );
});

describe('columns of a list', () => {
  it('are found in any order', () => {
    expect(Object.fromEntries(layout(['year', 'who', 'what']).at)).toEqual({ date: 0, people: 1, title: 2 });
  });

  it('with one heading twice are an error that names both', () => {
    const { findings } = layout(['title', 'Date', 'date.']);
    expect(findings).toHaveLength(1);
    expect(findings[0]).toMatchObject({ rule: 'list.column-twice', weight: 'must', place: { row: 1 } });
    expect(findings[0]?.found).toMatch(/“Date”.* B and C/);
  });

  it('with an unknown heading twice are one error and mentioned once', () => {
    expect(rules(['title', 'colour', 'colour'])).toEqual([
      'must list.column-twice',
      'consider list.column-unknown',
    ]);
  });

  it('with two words for one column are an error that names both', () => {
    const { findings } = layout(['thing', 'what', 'when']);
    expect(findings.map(({ rule, weight }) => `${weight} ${rule}`)).toEqual(['must list.column-unclear']);
    expect(findings[0]?.found).toMatch(/“thing” and “what”.*title/);
  });

  it('prefer the proper heading, keep the other and say so', () => {
    const { at, extra, findings } = layout(['what', 'title', 'who', 'with', 'people']);
    expect([at.get('title'), at.get('people')]).toEqual([1, 4]);
    expect(extra).toEqual([
      { index: 0, heading: 'what' },
      { index: 2, heading: 'who' },
      { index: 3, heading: 'with' },
    ]);
    expect(findings.map(({ rule, weight }) => `${weight} ${rule}`)).toEqual([
      'should list.column-doubled',
      'should list.column-doubled',
    ]);
  });

  it('without a known heading are kept and mentioned once each, with the likely word', () => {
    const { extra, findings } = layout(['title', 'colour', 'pepole']);
    expect(extra.map(({ heading }) => heading)).toEqual(['colour', 'pepole']);
    expect(findings.map(({ rule }) => rule)).toEqual(['list.column-unknown', 'list.column-unknown']);
    expect(findings[0]?.advice).toBeUndefined();
    expect(findings[1]?.advice).toContain('“people”');
  });

  it('without any heading are kept under their letter', () => {
    expect(layout(['title', '']).extra).toEqual([{ index: 1, heading: 'Column B', made: true }]);
  });

  it('must have a title; a slip in it is pointed out', () => {
    const none = layout(['date', 'tilte']).findings.find(({ rule }) => rule === 'list.no-title-column');
    expect(none?.weight).toBe('must');
    expect(none?.found).toContain('“date”, “tilte”');
    expect(none?.advice).toContain('“tilte”');
  });
});
