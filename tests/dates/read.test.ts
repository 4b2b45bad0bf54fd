import { describe, expect, it } from 'vitest';
import { type DateContext, readDate } from '../../src/dates/index.ts';

const reasonOf = (phrase: string, context?: DateContext) => {
  const reading = readDate(phrase, context);
  return reading.kind === 'unreadable' ? reading.reason : `${phrase} was read: ${JSON.stringify(reading)}`;
};
const dateOf = (phrase: string, context?: DateContext) => {
  const reading = readDate(phrase, context);
  if (reading.kind !== 'date') throw new Error(`${phrase}: ${JSON.stringify(reading)}`);
  return reading;
};

describe('an ambiguous phrase', () => {
  it('keeps both orders of day and month side by side', () => {
    const reading = dateOf('5/6/1962');
    expect(reading.edtf).toBe('[1962-05-06,1962-06-05]');
    expect(reading.alternatives).toEqual(['1962-06-05', '1962-05-06']);
    expect(reading.assumed.join(' ')).toContain('dateOrder');
  });

  it('says what else the century may be', () => {
    const reading = dateOf('14 May 62');
    expect(reading.alternatives).toEqual(['1962-05-14', '1862-05-14']);
    expect(reading.assumed.join(' ')).toContain('all four figures');
  });

  it('is none where the collection settles it', () => {
    const known: DateContext = { dateOrder: 'month-day', earliestYear: 1900, latestYear: 1990 };
    expect(readDate('5/6/62', known)).toEqual({ kind: 'date', edtf: '1962-05-06', assumed: [] });
  });

  it('leaves out what cannot be', () => {
    expect(readDate('29/2/1960')).toEqual({ kind: 'date', edtf: '1960-02-29', assumed: [] });
    // 1900 had no 29 February, 2000 had; with today known 1800 remains out for the same reason.
    expect(dateOf('29 Feb 00', { today: '2026-01-01' }).edtf).toBe('2000-02-29');
  });

  // Both meanings are as good: neither is used alone.
  it.each([
    ['jul 1938', 'nor', ['1938-07', '1938-12-25']],
    ['listopad 1938', 'hrv pol', ['1938-10', '1938-11']],
  ])('%s keeps both meanings of its word side by side', (phrase, languages, both) => {
    const reading = dateOf(phrase, { languages: languages.split(' ') });
    expect(reading.edtf).toBe(`[${both.join(',')}]`);
    expect(reading.alternatives).toEqual(both);
    expect(reading.assumed[0]).toMatch(/^It may be 1938 \w+, or 1938 /);
  });

  it('offers nothing after today', () => {
    const { alternatives = [] } = dateOf('5.3.34', { today: '2026-01-01' });
    expect([...alternatives].sort()).toEqual(['1834-03-05', '1834-05-03', '1934-03-05', '1934-05-03']);
  });

  it('of a span holds all of both readings', () => {
    expect(dateOf('3/4/1962-5/6/1962').edtf).toBe('1962-03-04/1962-06-05');
  });
});

describe('what is assumed', () => {
  it('is said', () => {
    expect(dateOf('early 1950s').assumed).toEqual(['This is taken as 1950-1953.']);
    expect(dateOf('Sunday 14 May 1962').assumed).toEqual(['14 May 1962 was a Monday, not a Sunday.']);
    expect(dateOf('1962-05-14 10:30').assumed).toEqual(['The time of day is left out.']);
    expect(dateOf('1790', { earliestYear: 1850 }).assumed).toEqual([
      'It lies before 1850, the earliest year to be expected.',
    ]);
    expect(dateOf('2061', { today: '2026-01-01' }).assumed).toEqual(['It lies in the future.']);
    expect(dateOf('2061').assumed).toEqual([]);
  });

  it('is said of a day that was worked out', () => {
    expect(dateOf('2nd Sunday of June 1950').assumed).toEqual([
      'The day is worked out: the second Sunday of June 1950.',
    ]);
    expect(dateOf('last Sunday in June 1950').assumed).toEqual([
      'The day is worked out: the last Sunday of June 1950.',
    ]);
  });

  it('is said of a start whose year is not', () => {
    expect(dateOf('30 Dec - 2 Jan 1951').assumed).toEqual([
      'The year stands at the end only; the start is taken as December 1950.',
    ]);
    expect(dateOf('Dec 1950-Jan 1951').assumed).toEqual([]);
  });
});

describe('the reason why a phrase cannot be read', () => {
  it.each([
    ['31 June 1962', 'June has 30 days, so there is no 31 June.'],
    ['29 February 1900', 'February 1900 has 28 days, so there is no 29 February 1900.'],
    ['1963-1958', 'It ends before it begins.'],
    ['14 May', 'It names no year.'],
    ['13/13/1962', 'There is no month 13.'],
    ['between 1950', 'It says “between”, but not between what.'],
    ['1962 wedding', '“wedding” is not understood here.'],
    ['[1952', 'A bracket is opened and not closed.'],
    ['Easter 1500', 'The day of Easter in 1500 follows no rule known here; write the day.'],
    ['second Sunday 1950', 'It names a day of the week, but not of which month.'],
    ['second Sunday 11 June 1950', 'It names a day of the week and another part of the month.'],
    ['second Sunday in early June 1950', 'It names a day of the week and another part of the month.'],
    ['fifth Sunday in February 1950', 'February 1950 has not so many Sundays.'],
    ['second Sunday in June 195X', 'Which day it was can only be found for a year that is known.'],
  ])('%s: %s', (phrase, reason) => {
    expect(reasonOf(phrase)).toBe(reason);
  });

  it('tells whose birth date is wanted', () => {
    expect(reasonOf('Ada aged 6', { people: [{ name: 'Ada Quill' }] })).toContain('Ada Quill');
    expect(reasonOf('aged 6')).toContain('collection.yaml');
  });
});

describe('months in the languages of the collection', () => {
  it.each([
    ['14. mars 1958', ['nor'], '1958-03-14'],
    ['14 août 1958', ['fre'], '1958-08-14'],
    ['14. März 1958', ['ger'], '1958-03-14'],
    ['5 stycznia 1958', ['pol'], '1958-01-05'],
    ['14 мая 1958', ['rus'], '1958-05-14'],
  ])('%s', (phrase, languages, edtf) => {
    expect(dateOf(phrase, { languages }).edtf).toBe(edtf);
  });

  it('are not known where the language is not', () => {
    expect(readDate('14 août 1958').kind).toBe('unreadable');
  });
});
