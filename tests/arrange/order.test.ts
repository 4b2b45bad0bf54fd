import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compareNaturally, inOrder } from '../../src/arrange/order.ts';
import type { OrderKey } from '../../src/catalogue/settings.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { dated, someThing } from '../support/catalogue.ts';

/** The titles in order, from the list as given and from the same rows turned about: the answer must be one. */
function titles(keys: readonly OrderKey[], rows: readonly Partial<Thing>[]): string[] {
  const things = rows.map((over, index) => someThing({ row: index + 2, ...over }));
  const said = inOrder(things, keys).map(({ title }) => title);
  expect(inOrder(things.toReversed(), keys).map(({ title }) => title)).toEqual(said);
  return said;
}

// What comes first is common practice: earliest to latest, and what is not known after what is.
describe('the order of things in a folder', () => {
  const ferry = { title: 'Ferry', date: dated('1934'), kind: 'photograph' };
  const bell = { title: 'Bell', date: dated('1934'), kind: 'letter' };
  const orchard = { title: 'Orchard', date: dated('1912'), kind: 'photograph' };
  const undated = { title: 'Anchor', kind: 'letter' };

  test('goes by the second key where the first says the same, and by no other', () => {
    expect(titles(['date', 'title'], [ferry, undated, bell, orchard])).toEqual([
      'Orchard',
      'Bell',
      'Ferry',
      'Anchor',
    ]);
    expect(titles(['kind', 'date'], [ferry, undated, bell, orchard])).toEqual([
      'Bell',
      'Anchor',
      'Orchard',
      'Ferry',
    ]);
  });

  test('puts what is blank last by every key, wherever in the list it stands', () => {
    const early = { title: 'Known', number: '7', kind: 'map', places: ['Millrace'], occasion: 'Regatta' };
    const late = { title: 'Known', number: 'Z7', kind: 'yoke', places: ['Wharf'], occasion: 'Wedding' };
    for (const key of ['number', 'kind', 'place', 'occasion'] as const)
      for (const known of [early, late])
        expect(titles([key], [{ title: 'Blank' }, known])).toEqual(['Known', 'Blank']);
    for (const name of ['Ada Quill', 'Wilma Rook'])
      expect(titles(['person'], [{ title: 'Blank' }, { title: 'Known', people: [name] }])).toEqual([
        'Known',
        'Blank',
      ]);
  });

  test('is that of the list for what is equal by every key, and for all things where that is asked', () => {
    const rows = [ferry, bell, orchard, undated];
    expect(titles(['list'], rows)).toEqual(['Ferry', 'Bell', 'Orchard', 'Anchor']);
    expect(titles(['date'], [ferry, bell, orchard])).toEqual(['Orchard', 'Ferry', 'Bell']);
  });

  test('files by the maker before whoever else is named', () => {
    const byNils = { title: 'By Nils', creators: ['Nils Quill'], people: ['Ada Quill'] };
    const ofBruno = { title: 'Of Bruno', people: ['Bruno Heron', 'Ada Quill'] };
    expect(titles(['person'], [byNils, ofBruno])).toEqual(['Of Bruno', 'By Nils']);
  });

  test('takes numbers as numbers, and capitals and accents for nothing', () => {
    const rows = ['Book 10', 'book 9', 'Épaves', 'Eel traps', 'Ferry'].map((title) => ({ title }));
    expect(titles(['title'], rows)).toEqual(['book 9', 'Book 10', 'Eel traps', 'Épaves', 'Ferry']);
  });
});

// The reference: the collation of Unicode (UTS #10) for English, as ECMA-402 has it.
test('texts are in the order of the collation of English, in which digits are numbers', () => {
  const reference = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });
  const sign = fc.constantFrom(
    ..."aAbBzZ  -_'’.,;019éÉåæßøœıŁ",
    ...[
      'e\u0301',
      '\u0301',
      '\u00AD',
      '\u200D',
      'l·',
      'ﬁ',
      '10',
      '9',
      'Б',
      'あ',
      '😀',
      '\uD83D',
      '[',
      '`',
      '{',
      '@',
      '\t',
    ],
  );
  const text = fc.array(sign, { maxLength: 8 }).map((signs) => signs.join(''));
  fc.assert(
    fc.property(text, text, text, (start, one, other) => {
      const [a, b] = [start + one, start + other];
      const expected = Math.sign(reference.compare(a, b));
      if (expected !== 0) expect([a, b, Math.sign(compareNaturally(a, b))]).toEqual([a, b, expected]);
    }),
    { numRuns: 20_000 },
  );
});
