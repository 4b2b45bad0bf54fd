import { describe, expect, test } from 'vitest';
import { stepsOf, wordsOf } from './readme.ts';
import { partingOf } from './shown.ts';

describe('what is shown against what is printed', () => {
  test.each([
    ['the same', ['one', 'two'], 'one\ntwo\n', undefined],
    ['a line left out', ['one', '…', 'four'], 'one\ntwo\nthree\nfour\n', undefined],
    ['nothing where lines are left out', ['one', '…'], 'one\n', undefined],
    ['text left out', ['one …, three'], 'one (1), two (2), three\n', undefined],
    ['another word', ['one', 'two'], 'one\nzwei\n', { at: 1, printed: 'zwei' }],
    ['a line too many', ['one'], 'one\ntwo\n', { at: 1, printed: 'two' }],
    ['a line too few', ['one', 'two'], 'one\n', { at: 1, printed: undefined }],
    ['a line missing behind a gap', ['one', '…', 'five'], 'one\ntwo\n', { at: 2, printed: 'two' }],
    ['the end not shown', ['…', 'two'], 'one\ntwo\nthree\n', { at: 2, printed: 'three' }],
    ['signs that mean something in a pattern', ['a.c (1)'], 'abc (1)\n', { at: 0, printed: 'abc (1)' }],
    ['something where nothing is shown', [], 'one\n', { at: 0, printed: 'one' }],
  ])('%s', (_title, shown, output, parting) => {
    expect(partingOf(shown, output)).toEqual(parting);
  });

  test('the last of several places may be the one meant', () => {
    expect(partingOf(['…', 'one', 'two'], 'one\nthree\none\ntwo\n')).toBeUndefined();
  });
});

test('steps are read with the lines on which they stand', () => {
  const document = [
    '# Title',
    'Into `a/list.csv`:',
    '```csv',
    'title',
    'Letter from Ada',
    '```',
    'Then',
    '```console',
    '$ kinfonds check "my papers"',
    'one',
    '$ kinfonds find x',
    '```',
    'It ends with exit code 1.',
  ].join('\n');
  expect(stepsOf(document)).toEqual([
    { do: 'type', line: 4, file: 'a/list.csv', text: 'title\nLetter from Ada\n' },
    { do: 'run', line: 9, command: 'kinfonds check "my papers"', output: ['one'], exitCode: 0 },
    { do: 'run', line: 11, command: 'kinfonds find x', output: [], exitCode: 1 },
  ]);
  expect(wordsOf('kinfonds check "my papers" --work')).toEqual(['kinfonds', 'check', 'my papers', '--work']);
  expect(() => stepsOf('```\nx\n```\n')).toThrow('Line 2');
});
