import { describe, expect, test } from 'vitest';
import { type Gap, notesOnGaps, sayGone } from '../../src/arrange/number-history.ts';

const codeOf = (place: readonly number[]) => `QF/${place.join('/')}`;
const gap = (place: string, why = 'removed', folder?: string): Gap => ({
  place: place.split('/').map(Number),
  why,
  ...(folder !== undefined && { folder }),
});
const note = (...gaps: Gap[]) => notesOnGaps(gaps, codeOf).map(({ text }) => text);

// A reader must be able to tell from the note which numbers are gone and which are not: a run names nothing that is
// still there, and nothing with another reason or from another folder.
describe('the note on numbers that are not used any more', () => {
  test('is none where no number is gone', () => expect(notesOnGaps([], codeOf)).toEqual([]));

  test('tells numbers that follow each other as one run', () => {
    expect(note(gap('1/2/3'), gap('1/2/4'), gap('1/2/5'))).toEqual(['QF/1/2/3 to QF/1/2/5 (removed)']);
  });

  test.each([
    ['a number between them is still there', gap('1/2/3'), gap('1/2/5')],
    ['they went for another reason', gap('1/2/3'), gap('1/2/4', 'burnt')],
    ['they lay in another folder', gap('1/2/3'), gap('1/3/4')],
    ['they lay in a folder of another group', gap('1/2/3'), gap('2/2/4')],
    ['the folder bore another number', gap('1/2/3', 'removed', '8'), gap('1/2/4', 'removed', '9')],
    ['they come in the other order', gap('1/2/4'), gap('1/2/3')],
  ])('tells them apart where %s', (_, one, other) => {
    const [text = ''] = note(one, other);
    expect(text.split('; ')).toEqual([...note(one), ...note(other)]);
  });

  test('begins a new run behind one that has ended', () => {
    expect(note(gap('1/1/1'), gap('1/1/2'), gap('1/1/4'), gap('1/1/5'))).toEqual([
      'QF/1/1/1 to QF/1/1/2 (removed); QF/1/1/4 to QF/1/1/5 (removed)',
    ]);
  });

  test('names the folder that was emptied, or its folders', () => {
    expect(note(gap('1/2/3', 'removed', '8'))).toEqual(['QF/1/2/3, folder 8 (removed)']);
    expect(note(gap('1/2/3', 'removed', '8-11'))).toEqual(['QF/1/2/3, folders 8-11 (removed)']);
  });

  test('gives the whole code of where a thing was moved to, and any other reason as it is', () => {
    expect(sayGone('moved to 1/4/12', codeOf)).toBe('moved to QF/1/4/12');
    expect(sayGone('moved to the attic', codeOf)).toBe('moved to the attic');
    expect(sayGone('removed', codeOf)).toBe('removed');
  });
});
