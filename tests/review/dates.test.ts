import { describe, expect, test } from 'vitest';
import { KINDS } from '../../src/kinds/kinds.ts';
import { EARLIEST_YEARS } from '../../src/review/earliest-years.ts';
import { dated, reviewOf, someThing } from '../support/catalogue.ts';

/** The findings on the date of one thing. */
function on(kind: string, written: string, over: Record<string, unknown> = {}) {
  const things = [someThing({ row: 7, title: 'Boat', kind, date: dated(written) })];
  return reviewOf(over, things).filter(({ rule }) => rule.startsWith('dates.'));
}

describe('a thing older than its kind', () => {
  test('a photograph from 1790 is found, with its row and column', () => {
    expect(on('photo', '1790')).toMatchObject([
      { rule: 'dates.before-its-kind', place: { file: 'list.csv', row: 7, column: 'date' } },
    ]);
  });

  test.each(['1890', '1820s', 'before 1830', 'undated', 'when it was new'])(
    'a photograph dated %s may be right',
    (written) => {
      expect(on('photograph', written)).toEqual([]);
    },
  );

  test('other kinds have their own first years (from memory)', () => {
    expect(on('video', '1938')).toHaveLength(1);
    expect(on('postcard', 'c. 1850')).toHaveLength(1);
    expect(on('letter', '1790')).toEqual([]);
  });

  test('every row of the table is a kind', () => {
    const kinds = KINDS.map(({ one }) => one);
    expect(EARLIEST_YEARS.filter(({ kind }) => !kinds.includes(kind))).toEqual([]);
  });
});

describe('a part outside the dates given for the whole (DACS 2.4.9)', () => {
  test.each(['1933', '1961-05', '1930-1950'])('%s is not within 1934-1960', (written) => {
    expect(on('letter', written, { dates: '1934-1960' })).toMatchObject([
      { rule: 'dates.outside-the-whole' },
    ]);
  });

  test.each(['1934', '1960-12-31', '1950s', 'before 1950', 'after 1940'])('%s may be', (written) => {
    expect(on('letter', written, { dates: '1934-1960' })).toEqual([]);
  });

  test('without dates of its own, the whole takes in every part', () => {
    expect(on('letter', '1933')).toEqual([]);
  });
});
