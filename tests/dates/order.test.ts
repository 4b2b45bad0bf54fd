import { describe, expect, it } from 'vitest';
import {
  bounds,
  compareRanks,
  dateRank,
  decadeOf,
  displayDate,
  firstYear,
  isWithin,
  lastYear,
  yearOf,
} from '../../src/dates/index.ts';

describe('the order of dates', () => {
  it('goes by the first day, then by the last', () => {
    const inOrder = [
      '-0044',
      '1827',
      '[..1866]',
      '1867',
      '1950-01-01',
      '1950-01',
      '1950',
      '1950~',
      '1950/1953',
      '195X',
      '1950/..',
      '1951',
      '1959',
      '1960',
      'Y170000002',
      'no EDTF at all',
    ];
    const sorted = inOrder.toReversed().map(dateRank).sort(compareRanks);
    expect(sorted.map(({ edtf }) => edtf)).toEqual(inOrder);
  });
});

describe('grouping', () => {
  it.each([
    ['1950-03-14', 1950, 1950, 1950, 1950],
    ['1950-24', 1950, 1950, 1950, 1950],
    ['195X', undefined, 1950, 1950, 1959],
    ['1950/1953', undefined, 1950, 1950, 1953],
    ['1958/1962', undefined, undefined, 1958, 1962],
    ['[1892,1893]', undefined, 1890, 1892, 1893],
    ['1962/..', undefined, undefined, 1962, undefined],
    ['[..1866]', undefined, undefined, undefined, 1866],
    ['-0044', -44, -50, -44, -44],
    ['no date', undefined, undefined, undefined, undefined],
  ])('%s: year %s, decade %s, from %s to %s', (edtf, year, decade, first, last) => {
    expect(yearOf(edtf)).toBe(year);
    expect(decadeOf(edtf)).toBe(decade);
    expect(firstYear(edtf)).toBe(first);
    expect(lastYear(edtf)).toBe(last);
  });
});

describe('display', () => {
  // DACS 2.4.14 wants words for months; the rest is the plainest English that can be read back.
  it.each([
    ['1906-03-17/1906-03-20', '1906 March 17-20'],
    ['1906-03-17/1906-04-02', '1906 March 17-April 2'],
    ['1906-03-17/1907-04-02', '1906 March 17-1907 April 2'],
    ['1852-21', '1852 spring'],
    ['1962-33', '1962 first quarter'],
    ['190X', '1900s (decade)'],
    ['18XX', '19th century'],
    ['20XX', '21st century'],
    ['1870~/1879', '[circa 1870]-1879'],
    ['1870/1879~', '1870-circa 1879'],
    ['[1906..1912]', 'between 1906 and 1912'],
    ['[1892?,1893?]', 'probably 1892 or 1893'],
    ['[1892?,1893]', '[probably 1892] or 1893'],
    ['{..1866,1870..1912}', 'before 1867, 1870-1912'],
    ['[..189X]', 'not after 1890s'],
    ['1962/..', '1962-ongoing'],
    ['../1962', 'until 1962'],
    ['1962/', '1962-unknown'],
    ['-0044', '45 BC'],
    ['1984%', 'probably circa 1984'],
    ['no EDTF', 'no EDTF'],
  ])('%s is shown as “%s”', (edtf, shown) => {
    expect(displayDate(edtf)).toBe(shown);
  });
});

describe('what is no EDTF', () => {
  it('has no bounds and lies within nothing', () => {
    expect(bounds('some day')).toEqual({});
    expect(isWithin('some day', '1950')).toBe(false);
    expect(isWithin('1950', 'some day')).toBe(false);
  });
});
