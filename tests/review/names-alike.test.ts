import { describe, expect, test } from 'vitest';
import type { AgentType } from '../../src/catalogue/agent.ts';
import { namesAlike, readName } from '../../src/review/names-alike.ts';

const alike = (one: string, other: string, type: AgentType = 'person') => {
  const [read, its] = [readName(one, type), readName(other, type)];
  expect(namesAlike(its, read)).toBe(namesAlike(read, its));
  // Names with different keys are never compared.
  return read.key === its.key && namesAlike(read, its);
};

describe('names that may be one (common practice)', () => {
  test.each([
    ['Ada Quill', 'A. Quill'],
    ['Ada Quill', 'Ada Quil'],
    ['Ada Quill', 'Quill, Ada'],
    ['Ada Quill', 'Quill Ada'],
    ['Ada Quill', 'Ada M. Quill'],
    ['Ada Mary Quill', 'Ada M. Quill'],
    ['Ada Mary Quill', 'A. M. Quill'],
    ['Samuel Quill', 'Sam Quill'],
    ['Samuel Quill', 'Samual Quill'],
    ['Kari Nygård', 'Kari Nygard'],
    ['Miss Ada Quill', 'Ada Quill'],
    ['Dr. Averill Pell', 'Averill Pell'],
    ['Thomas Quill jr.', 'T. Quill junior'.replace('junior', 'jr')],
  ])('%s, %s', (one, other) => {
    expect(alike(one, other)).toBe(true);
  });

  test.each([
    ['Ada Quill', 'Ida Quill'],
    ['Ada Quill', 'E. Quill'],
    ['Ada Quill', 'Ada Rook'],
    ['Ada Mary Quill', 'Ada Ruth Quill'],
    ['A. Quill', 'Ada Quil'],
    ['Thomas Quill', 'Mrs. Thomas Quill'],
    ['Thomas Quill', 'Thomas Quill jr.'],
    ['Tom Rook', 'Tim Rook'],
    ['Grandmother Quill', 'Grandfather Quill'],
    ['Ada', 'Ada'.concat('m')],
  ])('%s is not %s', (one, other) => {
    expect(alike(one, other)).toBe(false);
  });

  test('organisations by their long and short forms, and with a slip', () => {
    expect(alike('Sallow River Ferry Co.', 'Sallow River Ferry Company', 'corporateBody')).toBe(true);
    expect(alike('Ellersby Savings Bank', 'Ellersby Savigns Bank', 'corporateBody')).toBe(true);
    expect(alike('Ellersby Savings Bank', 'Ellersby Trade Bank', 'corporateBody')).toBe(false);
    expect(alike('Bank 1', 'Bank 2', 'corporateBody')).toBe(false);
  });

  test('a person is no family', () => {
    expect(namesAlike(readName('Quill family', 'family'), readName('Quill family', 'person'))).toBe(false);
  });
});
