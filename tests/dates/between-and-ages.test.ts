import { describe, expect, it } from 'vitest';
import { type DateContext, readDate } from '../../src/dates/index.ts';

/** The EDTF of a phrase that leaves no doubt; else what kind of reading it has. */
function edtfOf(phrase: string, context: DateContext = {}): string {
  const reading = readDate(phrase, context);
  return reading.kind === 'date' && !reading.alternatives ? reading.edtf : reading.kind;
}

// DACS 2.4.15: "before" and "after" leave out the year they name. ISO 8601-2, 6.4: [a..b] is one time from a to b.
describe('a time on the near side of two others', () => {
  it.each([
    'after 1950 and before 1960',
    'after 1950 but before 1960',
    'before 1960 and after 1950',
    'before 1960 but after 1950',
    'not before 1951 and not after 1959',
    'not after 1959 and not before 1951',
  ])('%s lies between them', (phrase) => expect(edtfOf(phrase)).toBe('[1951..1959]'));

  it('but before one year and after a later one are two times', () => {
    expect(edtfOf('before 1950 and after 1960')).toBe('{..1949,1961..}');
    expect(edtfOf('after 1960 and before 1950')).toBe('unreadable');
  });

  it('and two dates of which one has no side are not made one time', () => {
    expect(edtfOf('1950 and before 1960')).not.toContain('[');
    expect(edtfOf('after 1950 and 1960')).not.toContain('[');
  });
});

// Common practice, with the months of the seasons north of the equator: December, January and February.
describe('a winter in two years', () => {
  it.each(['winter 1962-63', '1962-63 winter', 'winter 1962/63', 'winter 1962-1963', '1962-1963 winter'])(
    '%s is one winter',
    (phrase) => expect(edtfOf(phrase)).toBe('1962-12~/1963-02~'),
  );

  it('but other seasons are not, nor winters further apart', () => {
    for (const phrase of ['winter 1962-64', 'summer 1962-63', 'winter 1962-winter 1963'])
      expect(edtfOf(phrase)).not.toContain('-12');
  });
});

it.each(["1950 '51", "'50 '51", '1950 1951', '1950 May 1951'])(
  '%s, two years with no word between, is none',
  (phrase) => {
    expect(edtfOf(phrase)).toBe('unreadable');
  },
);

// ISO 8601-2, 4.4: `..` is an end that is open, nothing one that is not known. Usage: what is "to date" goes on.
describe('a span of which one end is not said', () => {
  it.each([
    '1950-',
    '1950-present',
    '1950 to date',
    '1950-date',
    '1950 to the present',
    '(1950-)',
    '[1950-]',
  ])('%s goes on', (phrase) => expect(edtfOf(phrase)).toBe('1950/..'));

  it.each(['1950-?', '1950-unknown', '1950 to ?'])('%s has an end that is not known', (phrase) => {
    expect(edtfOf(phrase)).toBe('1950/');
  });

  it('nobody who writes "?-1962" means a year before Christ without a word of doubt', () => {
    expect(edtfOf('?-1962', { earliestYear: 1800 })).toBe('/1962');
    expect(readDate('?-1962')).toMatchObject({ edtf: '/1962', alternatives: ['/1962', '-1962?'] });
    expect(edtfOf('unknown-1962')).toBe('/1962');
  });
});

// Arithmetic: from the thirtieth birthday to the day before the fortieth.
describe('an age in tens', () => {
  const people = [{ name: 'Nils', born: '1902-03-14' }];
  it.each(['his', 'her', 'their', 'his early'])('in %s thirties is counted from the birth', (whose) => {
    expect(edtfOf(`Nils in ${whose} thirties`, { people })).toBe('1932-03-14~/1942-03-13~');
  });

  it('is not meant by the thirties of the century', () => {
    for (const phrase of ['Nils in the thirties', 'Nils in the early thirties', 'Nils, thirties'])
      expect(readDate(phrase, { people })).not.toMatchObject({ edtf: '1932-03-14~/1942-03-13~' });
  });
});

// From memory, as it is in most of North America: who is six by the autumn begins the first grade then, and whoever is
// born from September on a year later. There is no grade above 13, which Ontario had.
describe('a school grade', () => {
  const inGrade = (grade: string, born: string) =>
    edtfOf(`Nils in ${grade}`, { people: [{ name: 'Nils', born }] });

  it.each([
    ['1st grade', '1952-08-31', '1958~/1959~'],
    ['1st grade', '1952-09-01', '1959~/1960~'],
    ['1st grade', '1952-08', '1958~/1959~'],
    ['1st grade', '1952-09', '1959~/1960~'],
    ['1st grade', '1952', '1958~/1959~'],
    ['kindergarten', '1952-08-31', '1957~/1958~'],
    ['kindergarten', '1952-12-24', '1958~/1959~'],
    ['13th grade', '1952-08-31', '1970~/1971~'],
    ['14th grade', '1952-08-31', 'unreadable'],
  ])('%s of somebody born %s is %s', (grade, born, expected) => {
    expect(inGrade(grade, born)).toBe(expected);
  });
});
