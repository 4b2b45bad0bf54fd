import { expect, test } from 'vitest';
import { questionOf } from '../../src/find/question.ts';

const units = (...typed: string[]) =>
  questionOf(typed).units.map(({ words, years, optional }) => [words.join(' '), years, optional === true]);

test('words, whether they come in one argument or in several', () => {
  expect(units('ferry bell')).toEqual(units('ferry', 'bell'));
  expect(units('ferry bell')).toEqual([
    ['ferry', undefined, false],
    ['bell', undefined, false],
  ]);
});

test.each(['"last crossing"', '“last crossing”', '„last crossing“', '«last crossing»'])(
  'a phrase: %s',
  (typed) => {
    expect(units(`the ${typed}`)).toEqual([
      ['the', undefined, true],
      ['last crossing', undefined, false],
    ]);
  },
);

test('a quotation mark that is never closed, and one with nothing in it', () => {
  expect(units('"last crossing')).toEqual(units('last crossing'));
  expect(units('""', '?', ' ')).toEqual([]);
});

test('years', () => {
  expect(units('1927', '1920s', '1915-1920', '1920-1915')).toEqual([
    ['1927', [1927, 1927], false],
    ['1920s', [1920, 1929], false],
    ['', [1915, 1920], false],
    // No span, but what may be a number of the list; else two years.
    ['', undefined, false],
  ]);
});

test('words that join may be missing, save where there are no others', () => {
  expect(units('who is on the ferry').map(([word, , optional]) => [word, optional])).toEqual([
    ['who', true],
    ['is', true],
    ['on', true],
    ['the', true],
    ['ferry', false],
  ]);
  expect(units('the who').every(([, , optional]) => optional === false)).toBe(true);
});
