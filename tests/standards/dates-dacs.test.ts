import { describe, expect, it } from 'vitest';
import { bounds, displayDate, displayDates, isWithin, readDate } from '../../src/dates/index.ts';

/** DACS (Describing Archives: A Content Standard), chapter 2.4: the rule, the expression, what it means in EDTF. */
const EXPRESSIONS = [
  ['2.4.7', '1849-1851', '1849/1851'],
  ['2.4.11', '1827, 1952-1978', '{1827,1952..1978}'],
  ['2.4.12', 'approximately 1952-1978', '1952~/1978~'],
  ['2.4.12', 'circa 1870-1879', '1870~/1879~'],
  ['2.4.13', '1975 March-August', '1975-03/1975-08'],
  ['2.4.14', '1906 March 17', '1906-03-17'],
  ['2.4.15', 'probably 1867', '1867?'],
  ['2.4.15', 'approximately 1925', '1925~'],
  ['2.4.15', '1892 or 1893', '[1892,1893]'],
  ['2.4.15', '1890s', '189X'],
  ['2.4.15', 'circa August 1975', '1975-08~'],
] as const;

const edtfOf = (phrase: string) => {
  const reading = readDate(phrase);
  return reading.kind === 'date' ? reading.edtf : reading.kind;
};

describe('DACS 2.4', () => {
  it.each(EXPRESSIONS)('%s: “%s” means %s, with nothing assumed', (_rule, expression, edtf) => {
    expect(readDate(expression)).toEqual({ kind: 'date', edtf, assumed: [] });
  });

  // Where the rules leave a choice of words ("approximately" or "circa", the month before or after the year) one is
  // used throughout; both mean the same.
  it.each(EXPRESSIONS)('%s: “%s” is shown in the same form', (_rule, expression, edtf) => {
    const uniform = expression.replace('approximately', 'circa').replace('August 1975', '1975 August');
    expect(displayDate(edtf)).toBe(uniform);
  });

  it('2.4.15: “before 1867” ends with the day before', () => {
    expect(bounds(edtfOf('before 1867'))).toEqual({ latest: '1866-12-31' });
    expect(displayDate(edtfOf('before 1867'))).toBe('before 1867');
  });

  it('2.4.15: “after 1867 January 5” begins with the day after', () => {
    expect(bounds(edtfOf('after 1867 January 5'))).toEqual({ earliest: '1867-01-06' });
    expect(displayDate(edtfOf('after 1867 January 5'))).toBe('after 1867 January 5');
  });

  it('2.4.10: bulk dates stand beside inclusive dates', () => {
    const reading = readDate('1785-1960, bulk 1916-1958');
    expect(reading).toMatchObject({ kind: 'date', edtf: '1785/1960', bulk: '1916/1958' });
    expect(displayDates('1785/1960', '1916/1958')).toBe('1785-1960, bulk 1916-1958');
    expect(readDate('bulk 1916-1958').kind).toBe('unreadable');
  });

  it('2.4.9: the dates of a part fall within those of its whole', () => {
    expect(isWithin('1950/1955', '1945/1960')).toBe(true);
    expect(isWithin('1945/1960', '1934/1985')).toBe(true);
    expect(isWithin('1934/1985', '1945/1960')).toBe(false);
    expect(isWithin('1950/..', '1945/1960')).toBe(false);
  });

  it.each(['undated', 'n.d.', 's.d.'])('2.4.16: “%s” is no date, to be shown as “undated”', (phrase) => {
    expect(readDate(phrase)).toEqual({ kind: 'undated' });
  });
});
