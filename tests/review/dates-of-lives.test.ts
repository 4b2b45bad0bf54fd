import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { bounds } from '../../src/dates/index.ts';
import { reviewDates } from '../../src/review/dates.ts';
import { isCertainlyBefore } from '../../src/review/dates-of-lives.ts';
import { edtfDate } from '../support/arbitrary-dates.ts';
import { dated, someCatalogue, someThing } from '../support/catalogue.ts';

const ADA = { name: 'Ada Quill', also: ['Aunt Ada'], born: '1902-05-14', died: '1988-02-09' };
const COMPANY = { name: 'Ferry Company', type: 'corporateBody', born: '1898', died: '1957' };

function datesOf(settings: Record<string, unknown>, ...things: readonly Partial<Thing>[]) {
  const catalogue = someCatalogue(
    settings,
    things.map((thing, index) => someThing({ row: index + 2, title: 'Boat', ...thing })),
  );
  return reviewDates(catalogue, arrange(catalogue, '2026-01-01'));
}

/** A day as a number that sorts. */
function dayNumber(day = ''): number {
  const [, year, month, of] = /^([+-]?\d+)-(\d\d)-(\d\d)$/.exec(day) ?? [];
  return Number(year) * 10_000 + Number(month) * 100 + Number(of);
}

const by = (creator: string, written: string, over: Partial<Thing> = {}) =>
  datesOf({ people: [ADA, COMPANY] }, { creators: [creator], date: dated(written), ...over });

describe('a thing and the life of its maker (arithmetic)', () => {
  test.each(['1901', '1902-05-13', 'before 1900', '1890s', 'c. 1890', '1899-1911', '1890 or 1891'])(
    '%s is before the birth',
    (written) => {
      expect(by('Aunt Ada', written)).toMatchObject([
        { rule: 'dates.before-birth', weight: 'should', place: { file: 'list.csv', row: 2, column: 'date' } },
      ]);
    },
  );

  test.each([
    '1902',
    '1902-05-14',
    '1900s',
    'c. 1895',
    'before 1910',
    '1890 or 1910',
    'undated',
    'when small',
  ])('%s may be in the life', (written) => {
    expect(by('Ada Quill', written)).toEqual([]);
  });

  test.each(['1989', '1988-02-10', 'after 1990', '1980-1990', 'c. 2000'])(
    '%s is after the death',
    (written) => {
      expect(by('Ada Quill', written)).toMatchObject([{ rule: 'dates.after-death' }]);
    },
  );

  test.each(['1988', '1980s', 'c. 1995', 'after 1985', '1980-1988'])('%s may not be', (written) => {
    expect(by('Ada Quill', written)).toEqual([]);
  });

  test('the sentence names the maker and the year', () => {
    expect(by('Ada Quill', '1901')[0]?.found).toBe(
      '“Boat” is dated “1901”, and so before the birth (1902) of its maker, Ada Quill.',
    );
    expect(by('Ferry Company', '1890')[0]?.found).toContain('before the beginning (1898)');
    expect(by('Ferry Company', '1960')[0]?.found).toContain('after the end (1957)');
  });

  test('who is only in the picture may be long dead, and a book is printed later', () => {
    expect(datesOf({ people: [ADA] }, { people: ['Ada Quill'], date: dated('1995') })).toEqual([]);
    expect(by('Ada Quill', '1995', { kind: 'book' })).toEqual([]);
    expect(by('Ada Quill', '1901', { kind: 'book' })).toHaveLength(1);
  });

  test('one of several readings that falls into the life is enough', () => {
    const inDoubt: NonNullable<Thing['date']> = {
      written: "'61",
      reading: { kind: 'date', edtf: '1861', assumed: [], alternatives: ['1861', '1961'] },
    };
    expect(datesOf({ people: [ADA] }, { creators: ['Ada Quill'], date: inDoubt })).toEqual([]);
  });

  test('the one is before the other only where every day of it is', () => {
    fc.assert(
      fc.property(edtfDate, edtfDate, (one, other) => {
        if (!isCertainlyBefore(one, other)) return;
        expect(dayNumber(bounds(one).latest)).toBeLessThan(dayNumber(bounds(other).earliest));
        expect(isCertainlyBefore(other, one)).toBe(false);
      }),
      { numRuns: 2000 },
    );
  });
});

describe('lives that cannot have been', () => {
  const life = (born: string, died: string, type = 'person') =>
    datesOf({ people: [{ name: 'Ada Quill', type, born, died }] }).map(({ rule }) => rule);

  test('death before birth, and a life longer than any known (122 years; from memory)', () => {
    expect(life('1902', '1888')).toEqual(['dates.life-backwards']);
    expect(life('1802', '1926')).toEqual(['dates.life-too-long']);
  });

  test('what may be', () => {
    expect(life('1902', '1902')).toEqual([]);
    expect(life('1802', '1925')).toEqual([]);
    expect(life('c. 1900', '1895')).toEqual([]);
    expect(life('1698', '1957', 'corporateBody')).toEqual([]);
  });
});

describe('dates within one row or one setting', () => {
  test('a restriction that ends before the thing was made', () => {
    const closed = (until: string) =>
      datesOf({}, { date: dated('1994'), access: 'private', until: dated(until) });
    expect(closed('1990')).toMatchObject([
      { rule: 'dates.restriction-before-the-thing', place: { row: 2, column: 'until' } },
    ]);
    expect(closed('1994')).toEqual([]);
    expect(closed('2065')).toEqual([]);
  });

  test('bulk dates outside the inclusive ones (DACS 2.4.10)', () => {
    expect(datesOf({ dates: '1876-1950, bulk 1960-1970' })).toMatchObject([
      { rule: 'dates.bulk-outside', place: { file: 'collection.yaml' } },
    ]);
    expect(datesOf({ dates: '1876-1950, bulk 1898-1950' })).toEqual([]);
    expect(datesOf({}, { date: dated('1900-1910, bulk 1911-1912') })).toMatchObject([{ place: { row: 2 } }]);
  });

  test('a decade that may lie within the whole is not outside it (DACS 2.4.9)', () => {
    expect(datesOf({ dates: '1934-1960' }, { date: dated('1930s') })).toEqual([]);
    expect(datesOf({ dates: '1934-1960' }, { date: dated('1920s') })).toHaveLength(1);
  });
});
