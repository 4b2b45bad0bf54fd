import { describe, expect, it } from 'vitest';
import { datesOfWhole, inclusiveDates } from '../../src/dates/index.ts';

/** Bulk dates of parts that are listed one by one. */
const bulkOf = (parts: readonly string[]) =>
  datesOfWhole(new Map(parts.map((part) => [part, parts.filter((other) => other === part).length]))).bulk;
const withGaps = (parts: readonly string[]) =>
  datesOfWhole(new Map(parts.map((part) => [part, 1]))).inclusive;

describe('inclusive dates', () => {
  it.each([
    // DACS 2.4.7: from the earliest to the latest, in years where years part them.
    [['1950-03-14', '1948', '1951-07'], '1948/1951'],
    [['1950'], '1950'],
    [['1950-03-14', '1950-03-14'], '1950-03-14'],
    // DACS 2.4.13: months where all is in one year, days where all is in one month.
    [['1975-03', '1975-08-02'], '1975-03/1975-08'],
    [['1906-03-20', '1906-03-17'], '1906-03-17/1906-03-20'],
    [['1975-03', '1975'], '1975'],
    [['1975-21', '1975-10'], '1975-03/1975-10'],
    // A decade at an end stays one; one that holds all the rest is the whole.
    [['189X', '1903'], '189X/1903'],
    [['1950', '195X', '1957-03'], '195X'],
    // DACS 2.4.12: an approximate end makes the end approximate, unless something certain is as early.
    [['1950~', '1960'], '1950~/1960'],
    [['1950', '1960?'], '1950/1960?'],
    [['1950~', '1950', '1960'], '1950/1960'],
    [['1890~/1899~', '1903'], '1890~/1903'],
    // Of doubts at the same place the least, whichever comes first.
    [['1950%', '1950~', '1960?', '1960%'], '1950~/1960?'],
    [['1950~', '1960%', '1950%', '1960?'], '1950~/1960?'],
    // Spans and sets count with their ends.
    [['1950/1955', '1953/1958'], '1950/1958'],
    [['[1892,1893]', '1890'], '1890/1893'],
    [['{1827,1952..1978}', '1900'], '1827/1978'],
    // Open ends are carried upward.
    [['1962/..', '1950'], '1950/..'],
    [['../1962', '1970'], '../1970'],
    [['1962/', '1950'], '1950/'],
    [['1962/', '1950/..'], '1950/..'],
    [['../1950', '1962/..'], '../..'],
    // One that goes on says more than one of which the end is not known (ISO 8601-2, 4.4).
    [['1950/..', '1962/'], '1950/..'],
    [['1962/', '1950/'], '1950/'],
    [['/1962', '../1950'], '../1962'],
    [['../1950', '/1962'], '../1962'],
    [['/1950', '/1962'], '/1962'],
    // Of what is only known to lie before or after something the limit is kept beside the rest.
    [['[..1866]', '1880', '1890'], '{..1866,1880..1890}'],
    [['[..1866]', '[..1850]'], '[..1866]'],
    // All of a set stay all (ISO 8601-2, 6.4).
    [['{..1866}', '[..1850]'], '{..1866}'],
    [['{1950..}', '[1962..]'], '{1950..}'],
    [['1880', '[1901..]'], '{1880,1901..}'],
    [['[..1866]', '[1901..]'], '{..1866,1901..}'],
    [['[..1866]', '1880/..'], '{..1866,1880..}'],
    [['../1950', '[1962..]'], '{..1950,1962..}'],
    // Whichever end lies further out is kept, since the bounds of the whole hold those of every part (DACS 2.4.9).
    [['../1950', '[..1962]'], '../1962'],
    [['../1962', '[..1950]'], '../1962'],
    [['1950/..', '[1940..]'], '1940/..'],
    [['1940/..', '[1950..]'], '1940/..'],
    // A decade that is only near is told by the year at that end.
    [['[..195X~]', '1980'], '{..1959~,1980}'],
    [['[195X~..]', '1940'], '{1940,1950~..}'],
    [['[..195X]', '1980'], '{..195X,1980}'],
    // What is no date is passed over.
    [['1950', 'some day'], '1950'],
    [['some day'], undefined],
    [[], undefined],
  ])('of %j are %s', (parts, whole) => {
    expect(inclusiveDates(parts)).toBe(whole);
  });
});

const times = (count: number, edtf: string) => Array.from({ length: count }, () => edtf);
const years = (from: number, to: number) =>
  Array.from({ length: to - from + 1 }, (_, index) => String(from + index));

describe('bulk dates (DACS 2.4.10)', () => {
  it('are the years into which most things fall', () => {
    // The standard's own example: 1785-1960, bulk 1916-1958.
    expect(bulkOf(['1785', ...years(1916, 1958), '1960'])).toBe('1916/1958');
    expect(bulkOf(['1785', ...times(3, '1916'), ...times(4, '1958'), '1960', '1917', '1930'])).toBe(
      '1916/1958',
    );
  });

  it('leave out thin years on either side', () => {
    expect(bulkOf([...years(1900, 1960), ...years(1921, 1930).flatMap((year) => times(50, year))])).toBe(
      '1921/1930',
    );
  });

  it.each([
    ['fewer than ten things', ['1785', ...times(8, '1916')]],
    ['a span of under twenty years', ['1950', ...times(20, '1951'), '1968']],
    ['an even spread', years(1900, 1960)],
    ['no dates at all', []],
  ])('are not told for %s', (_case, parts) => {
    expect(bulkOf(parts)).toBeUndefined();
  });

  // The thresholds of this project: ten parts, a whole of twenty years, a run of half of it at most.
  it('are told from ten parts and twenty years on, where they are half of the whole at most', () => {
    expect(bulkOf([...times(9, '1950'), '1969'])).toBe('1950');
    expect(bulkOf([...times(8, '1950'), '1969'])).toBeUndefined();
    expect(bulkOf([...times(9, '1950'), '1968'])).toBeUndefined();
    expect(bulkOf([...years(1950, 1959), '1969'])).toBe('1950/1959');
    expect(bulkOf([...years(1950, 1960), '1970'])).toBeUndefined();
  });

  it('count a year however it is marked, and nothing with an open end', () => {
    expect(bulkOf([...times(3, '1950'), ...times(3, '1950~'), ...times(3, '1950?'), '1975'])).toBe('1950');
    expect(bulkOf([...times(9, '1950'), '1975/..'])).toBeUndefined();
    expect(bulkOf([...times(9, '1950'), '[..1920]'])).toBeUndefined();
  });

  it('may be one year, and leave out what has an open end', () => {
    expect(bulkOf([...times(20, '1916'), '1950', '1962/..'])).toBe('1916');
  });
});

describe('inclusive dates with gaps (DACS 2.4.11)', () => {
  it('show a large gap', () => {
    expect(withGaps(['1827', '1952', '1978', '1960'])).toBe('{1827,1952..1978}');
    // The threshold of this project: 25 years of which nothing is dated.
    expect(withGaps(['1930', '1956'])).toBe('{1930,1956}');
    expect(withGaps(['1827', '1890~', '1900', '1960'])).toBe('{1827,1890~..1900,1960}');
  });

  it('show it in whatever order the dates come, and none that is short beside it', () => {
    expect(withGaps(['1960', '1827', '1952', '1978'])).toBe('{1827,1952..1978}');
    expect(withGaps(['1930', '1955', '1990'])).toBe('{1930..1955,1990}');
    expect(withGaps(['1800', '1831', '1952'])).toBe('{1800..1831,1952}');
    // 27 years of 81 are a third.
    expect(withGaps(['1900/1926', '1954/1980'])).toBe('{1900..1926,1954..1980}');
    expect(withGaps(['1900/1927', '1954/1980'])).toBe('1900/1980');
  });

  it.each([
    ['a short gap', ['1930', '1952', '1970'], '1930/1970'],
    ['a gap of 24 years', ['1930', '1955'], '1930/1955'],
    ['what is no date', ['some day', '1930', 'another'], '1930'],
    [
      'a gap that is short beside the whole',
      [...years(1800, 1850), '1880', ...years(1881, 1950)],
      '1800/1950',
    ],
    ['an open end', ['1827', '1952/..'], '1827/..'],
  ])('do not show %s', (_case, parts, whole) => {
    expect(withGaps(parts)).toBe(whole);
  });
});
