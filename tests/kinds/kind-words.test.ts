import { describe, expect, test } from 'vitest';
import { OBJECTS_BY_WORD } from '../../src/housing/object-words.ts';
import { pieceOf } from '../../src/housing/piece.ts';
import { usualOf } from '../../src/housing/usual-form.ts';
import { FURTHER_WORDS } from '../../src/kinds/further-words.ts';
import { readKind } from '../../src/kinds/kind-words.ts';
import { KINDS } from '../../src/kinds/kinds.ts';
import { OBJECT_WORDS } from '../../src/kinds/object-words.ts';
import { someThing } from '../support/catalogue.ts';

const formOf = (kind: string) => pieceOf(someThing({ row: 2, kind })).form;

// Common practice: what is no paper is counted among the objects, and lies with them.
describe('everyday things', () => {
  test.each([
    ['trophy', 'object'],
    ['cup', 'object'],
    ['violins', 'object'],
    ['Cornet', 'object'],
    ['penknives', 'object'],
    ['dolls house', 'object'],
    ['doctor’s bag', 'object'],
    ["doctor's bag", 'object'],
    ['wedding dress', 'textile'],
    ['doilies', 'textile'],
  ])('%s is a kind, and housed as %s', (word, form) => {
    expect(readKind(word)?.kind.one).toBe(form);
    expect(formOf(word)).toBe(form);
  });

  test('every word of the table is housed as what it is counted as', () => {
    const wrong = OBJECT_WORDS.flatMap(({ kind, things }) =>
      things
        .map(({ one }) => one)
        .filter((word) => !['object', 'textile'].includes(formOf(word)) || readKind(word)?.kind.one !== kind),
    );
    expect(wrong).toEqual([]);
  });

  test('no word for a thing takes the place of a kind', () => {
    const kinds = new Set(KINDS.flatMap(({ one, many, also }) => [one, many, ...also]));
    expect(
      [...OBJECT_WORDS, ...FURTHER_WORDS].flatMap(({ things }) =>
        things.filter(({ one, many }) => kinds.has(one) || kinds.has(many)),
      ),
    ).toEqual([]);
  });

  test('whatever housing knows the size of is a kind', () => {
    const unknown = [...OBJECTS_BY_WORD].filter(
      ([word, { form }]) => (form === 'object' || form === 'textile') && readKind(word) === undefined,
    );
    expect(unknown.map(([word]) => word)).toEqual([]);
  });

  test('a violin is larger than a ring', () => {
    const [violin, ring] = ['violin', 'ring'].map((kind) => usualOf(kind)?.usual.size.long ?? 0);
    expect(violin).toBeGreaterThan(ring ?? 0);
  });
});

test('a digital photograph is a file, and no photograph on paper', () => {
  for (const word of ['digital photograph', 'Digital photos'])
    expect(readKind(word)).toMatchObject({ kind: { one: 'digital file' } });
  expect(formOf('digital photos')).toBe('digital');
});

describe('a kind with a qualifier behind a comma', () => {
  test.each([
    ['photograph, mounted', 'photograph', false],
    ['Letters, copies', 'letter', true],
    ['letter , copy', 'letter', false],
    ['negatives, glass', 'glass plate', false],
    ['violin, child’s', 'object', false],
    // On iron, on glass, on silvered copper: three processes, each a term of its own in the trade.
    ['ferrotype, hand-coloured', 'tintype', false],
    ['ambrotypes, cased', 'ambrotype', true],
    ['Daguerreotype, cased', 'daguerreotype', false],
  ])('%s is the kind before it', (word, one, plural) => {
    expect(readKind(word)).toMatchObject({ kind: { one }, plural });
  });

  test('is housed by both', () => {
    expect(formOf('photograph, mounted')).toBe('mounted');
    expect(formOf('photograph, framed')).toBe('framed');
    expect(formOf('ambrotypes, cased')).toBe('glass');
  });

  test('stays unknown where what stands before it is', () => {
    expect(readKind('whatnot, oak')).toBeUndefined();
    expect(readKind(', letter')).toBeUndefined();
  });
});
