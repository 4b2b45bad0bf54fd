import { describe, expect, it, test } from 'vitest';
import { datesOf } from '../../src/arrange/statements-of-date.ts';
import { readDate } from '../../src/dates/index.ts';
import { readList } from '../../src/intake/list.ts';
import { dated } from '../support/catalogue.ts';

const assumedOf = (phrase: string) => {
  const reading = readDate(phrase);
  return reading.kind === 'date' ? reading.assumed : [JSON.stringify(reading)];
};

// Common practice: what somebody noted behind a date is no part of it, and is not lost.
describe('a remark in brackets behind a date', () => {
  it.each([
    ['1931-1938 (1934 missing)', 'The remark “(1934 missing)” is left in words.'],
    ['May 1940 (postmark).', 'The remark “(postmark)” is left in words.'],
    ['c. 1890 [from the mount]', 'The remark “[from the mount]” is left in words.'],
    ['1962 (copy of 1912)', 'The remark “(copy of 1912)”, which names another date, is left in words.'],
  ])('%s: it is said', (phrase, note) => expect(assumedOf(phrase)).toEqual([note]));

  it('goes with every reading of a date in doubt', () => {
    const reading = readDate('3/4/1962 (postmark)');
    expect(reading).toMatchObject({ alternatives: ['1962-04-03', '1962-03-04'] });
    expect(assumedOf('3/4/1962 (postmark)').at(-1)).toContain('“(postmark)”');
  });

  it.each(['1962 (1963)', '1962 [i.e. 1963]', '1962 (recte May 1963)'])(
    '%s: another date in the brackets is never passed over',
    (phrase) => {
      const reading = readDate(phrase);
      expect(reading).toMatchObject({ kind: 'unreadable', reason: expect.stringContaining('1963') });
    },
  );

  // ISO 8601-2: [..] is one of a set, and [1950..] some time from 1950 on.
  it.each([
    ['1962 (or 1963)', '[1962,1963]'],
    ['1950 (or later)', '[1950..]'],
  ])('%s goes on with the date', (phrase, edtf) => {
    expect(readDate(phrase)).toEqual({ kind: 'date', edtf, assumed: [] });
  });

  it('“or” with what is not understood is not passed over', () => {
    expect(readDate('1962 (or when the ferry sank)')).toMatchObject({ kind: 'unreadable' });
  });

  it.each([
    'the flood (1934 missing)',
    '(postmark)',
    '1962 (a) (b)',
    '1785-1960, bulk 1916-1958 (some lost)',
  ])('%s is no date with a remark', (phrase) => expect(readDate(phrase).kind).toBe('unreadable'));

  it('leaves the words in the description, with a note', () => {
    expect(datesOf(dated('1931-1938 (1934 missing)'))).toEqual([
      {
        type: 'inclusive',
        expression: '1931-1938',
        edtf: '1931/1938',
        written: '1931-1938 (1934 missing)',
        note: 'The list has “1931-1938 (1934 missing)”; the date is worked out from that.',
      },
    ]);
  });
});

test('in a list the remark is something to consider; the end of a restriction must have none', () => {
  const list = 'title,date,until\nLog,1931-1938 (1934 missing),2050 (as Thea wished)\n';
  const { things, findings } = readList(Buffer.from(list), 'list.csv');
  expect(findings.map(({ rule, weight }) => [rule, weight]).sort()).toEqual([
    ['list.date-assumed', 'consider'],
    ['list.date-unreadable', 'should'],
  ]);
  expect(findings.find(({ weight }) => weight === 'consider')?.found).toBe(
    'The date “1931-1938 (1934 missing)” was read as 1931-1938: The remark “(1934 missing)” is left in words.',
  );
  expect(things[0]).toMatchObject({ until: { reading: { kind: 'unreadable' } } });
});
