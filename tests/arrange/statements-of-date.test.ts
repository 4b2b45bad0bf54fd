import { describe, expect, test } from 'vitest';
import { datesOf } from '../../src/arrange/statements-of-date.ts';
import { dated } from '../support/catalogue.ts';

const noteOn = (written: string) => datesOf(dated(written))[0]?.note;

// DACS 2.4.15 wants what is doubtful said. 3/4/1962 is March in America and April elsewhere: common practice.
describe('the note on a date for whoever reads the finding aid', () => {
  test('names every day that the words may mean', () => {
    const note = noteOn('3/4/1962');
    expect(note).toContain('“3/4/1962”, which may be ');
    expect(note?.split('may be ')[1]?.split(', or ').toSorted()).toEqual(['1962 April 3', '1962 March 4.']);
  });

  test('gives the words from which a day was worked out', () => {
    expect(noteOn('Christmas 1955')).toBe('The list has “Christmas 1955”; the date is worked out from that.');
  });

  test('is none where the words name the day, or none was worked out', () => {
    for (const written of [
      '14 May 1952',
      '1952-05-14',
      '14.5.1952',
      '19520514',
      '1952',
      'May 1952',
      'undated',
    ])
      expect(noteOn(written)).toBeUndefined();
  });
});

// DACS 2.4.10, whose own example this is: bulk dates stand beside the inclusive ones, and are named as such.
test('bulk dates are a statement of their own', () => {
  expect(datesOf(dated('1785-1960, bulk 1916-1958'))).toEqual([
    { type: 'inclusive', expression: '1785-1960', edtf: '1785/1960' },
    { type: 'bulk', expression: 'bulk 1916-1958', edtf: '1916/1958' },
  ]);
});
