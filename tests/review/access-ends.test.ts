import { describe, expect, test } from 'vitest';
import { endSaid } from '../../src/review/end-said.ts';
import { dated, reviewOf, someThing } from '../support/catalogue.ts';

// What each says is judged by reading it, in 2026; the phrases from memory.
describe('an end that access names', () => {
  test.each<[said: string, year: number]>([
    ['not to be shown until 2060', 2060],
    ['closed until 2060', 2060],
    ['Closed until 31 December 2060.', 2060],
    ['closed until 31.12.2060', 2060],
    ['closed until 2060-12-31', 2060],
    ['closed 2020-2060', 2060],
    ['nobody may see it before 2050', 2050],
    ['opens 2045', 2045],
    ['closed until 2019', 2019],
    ['nicht zeigen bis 2050', 2050],
    ['gesperrt bis zum 1. Mai 2050', 2050],
    ['fermé jusqu’en 2050', 2050],
    ['cerrado hasta 2050', 2050],
    ['chiuso fino al 2050', 2050],
    ['gesloten tot 2050', 2050],
    ['lukket til 2050', 2050],
    ['stängt till 2019', 2019],
    ['health; closed until 2040, her letters until 2070', 2070],
  ])('%s', (said, year) => {
    expect(endSaid(said, 2026)).toEqual({ year });
  });

  test.each([
    'closed for 75 years',
    'closed for seventy-five years',
    '30 years',
    '75 Jahre gesperrt',
    'fermé 75 ans',
    'lukket i 75 år',
    'until her death',
    'until Bea has died',
    'as long as Tom lives',
    'not in her lifetime',
    'bis zu seinem Tod',
  ])('%s: without a year', (said) => {
    expect(endSaid(said, 2026)).toEqual({});
  });

  test.each([
    undefined,
    'closed',
    'family only',
    'closed: see Bea’s letter of 1999',
    'letters before 1990 are closed',
    'not for anybody under 18 years',
    'she is 100 years old and may not want it',
    'closed until further notice',
    'nur für die Familie, bis auf weiteres',
    'til familien',
    'till familjen',
    'ask the 3 sisters first',
  ])('%s: none', (said) => {
    expect(endSaid(said, 2026)).toBeUndefined();
  });
});

describe('check', () => {
  const RULE = 'access.end-not-under-until';
  const rules = (over: Parameters<typeof someThing>[0]) =>
    reviewOf({}, [
      someThing({ title: 'Medical report of Bea', kind: 'letter', date: dated('1990'), ...over }),
    ]).map(({ rule }) => rule);

  test('asks for the year in its own column, and names the year that it read', () => {
    const things = [
      someThing({ row: 2, title: 'Diary', access: 'not to be shown until 2060' }),
      someThing({ row: 3, title: 'Notebook', access: 'closed for 75 years' }),
      someThing({ row: 4, title: 'Scrapbook', access: 'closed until 2060', until: dated('2060') }),
    ];
    const found = reviewOf({}, things).filter(({ rule }) => rule === RULE);
    expect(found).toMatchObject([
      { weight: 'should', place: { file: 'list.csv', row: 2, column: 'access' } },
    ]);
    expect(found[0]?.found).toContain(
      '“Diary” (row 2; read as 2060) and “Notebook” (row 3; no year is named).',
    );
    expect(found[0]?.advice).toContain('column “until”');
  });

  test('does not say besides that nobody has said until when', () => {
    expect(rules({ row: 2, access: 'nicht zeigen bis 2050' })).toContain(RULE);
    expect(rules({ row: 2, access: 'nicht zeigen bis 2050' })).not.toContain('private.no-end');
    expect(rules({ row: 2, access: 'closed' })).toContain('private.no-end');
    expect(rules({ row: 2, access: 'closed' })).not.toContain(RULE);
    expect(rules({ row: 2, access: 'open' })).not.toContain(RULE);
  });
});
