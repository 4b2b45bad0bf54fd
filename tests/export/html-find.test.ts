import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeFinder } from '../../src/export/html/script/find.ts';
import { mistakes } from '../../src/export/html/script/mistakes.ts';
import { wordReader } from '../../src/export/html/script/words.ts';

const TEXTS = [
  ['Letter from Edmund to Samuel: the crossing to Norway', 'QF/2/7/4 Kari sick for five days'],
  ['Ferry account book, 1919', 'wagons, motors, cattle, foot'],
  ['Recipe for apple butter', 'forty quarts, by Hester Quill'],
  ['Letter from Kari Nygård about her wedding', 'Ternesund, Norway'],
  ['Map of the river bend', 'the ferry line in red'],
  ['日記', 'Åse på fergen, Straße, Ærø'],
] as const;

function finder() {
  const made = makeFinder({ words: wordReader(), mistakes });
  for (const [title, rest] of TEXTS) made.add(title, rest);
  return made;
}

const find = (typed: string, isAllowed: (text: number) => boolean = () => true) =>
  finder().find(typed, isAllowed);

// The answers follow from the rules that the function states: all words, beginnings, then mistakes.
describe('search in the page', () => {
  test.each([
    ['ferry', [1, 4]], // in a title before elsewhere
    ['letter norway', [0, 3]],
    ['lett', [0, 3]],
    ['apple butter', [2]],
    ['apple wedding', []],
    ['NYGARD', [3]],
    ['nygård', [3]],
    ['strasse', [5]],
    ['aero', [5]],
    ['日', [5]],
    ['1919', [1]],
    ['QF/2/7/4', [0]],
  ])('%s', (typed, order) => {
    expect(find(typed).order).toEqual(order);
    expect(find(typed).isNear).toBe(order.length === 0);
  });

  test.each([
    ['ferrt', 1], // another letter, four letters or more
    ['fery', 1], // a letter missing
    ['feerry', 1], // a letter too many
    ['feryr', 1], // two letters swapped
    ['ternsumd', 3], // two mistakes in eight letters
    ['appel buter', 2],
  ])('forgives %s', (typed, first) => {
    const { order, isNear } = find(typed);
    expect(order[0]).toBe(first);
    expect(isNear).toBe(true);
  });

  test('forgives f for ph and ph for f, which the ear does not tell apart', () => {
    const made = makeFinder({ words: wordReader(), mistakes });
    made.add('Trophy of the regatta', '');
    made.add('Photographs', '');
    made.add('Ferry', '');
    for (const [typed, order] of [
      ['trofy', [0]],
      ['fotograf', [1]],
      ['pherry', [2]],
    ] as const)
      expect(made.find(typed, () => true).order).toEqual(order);
  });

  test('a whole reference code: the unit that has it, then what is in it, and nothing that only comes near', () => {
    const made = makeFinder({ words: wordReader(), mistakes });
    const codes = ['RK/9', 'RK/9/3', 'RK/9/3/1', 'RK/9/30', 'RK/3', 'RK/3/9', '1913'];
    for (const code of codes) made.add('Letter', `${code} flood of 1913`, code);
    const found = (typed: string, isAllowed = (_: number) => true) =>
      made.find(typed, isAllowed).order.map((at) => codes[at]);
    expect(found('RK/9/3')).toEqual(['RK/9/3', 'RK/9/3/1']);
    expect(found(' rk/9/3 ')).toEqual(['RK/9/3', 'RK/9/3/1']);
    expect(found('RK/9')).toEqual(['RK/9', 'RK/9/3', 'RK/9/3/1', 'RK/9/30']);
    expect(found('RK/9/3', (at) => at > 1)).toEqual(['RK/9/3/1']);
    // What is one number only is a word like others.
    expect(found('1913')).toHaveLength(codes.length);
  });

  test('forgives nothing in three letters, and not two mistakes in a short word', () => {
    expect(find('mqp').order).toEqual([]);
    expect(find('fyrrx').order).toEqual([]);
  });

  test('does not offer what comes near while there is what was typed', () => {
    const made = makeFinder({ words: wordReader(), mistakes });
    made.add('A boat', '');
    made.add('A boar', '');
    expect(made.find('boat', () => true).order).toEqual([0]);
  });

  test('keeps to what is allowed', () => {
    expect(find('ferry', (text) => text === 4).order).toEqual([4]);
  });

  test('finds nothing for nothing typed', () => {
    expect(find(' -- ').words.size).toBe(0);
  });

  test('a text is found by each of its words, and by each with one letter changed', () => {
    const word = fc.string({ unit: fc.constantFrom(...'abcdefghij'), minLength: 5, maxLength: 9 });
    fc.assert(
      fc.property(fc.array(word, { minLength: 1, maxLength: 8 }), fc.nat(), fc.nat(), (words, which, at) => {
        const made = makeFinder({ words: wordReader(), mistakes });
        made.add(words.join(' '), '');
        const typed = words[which % words.length] ?? '';
        expect(made.find(typed, () => true).order).toEqual([0]);
        const place = at % typed.length;
        const changed = `${typed.slice(0, place)}z${typed.slice(place + 1)}`;
        expect(made.find(changed, () => true).order).toEqual([0]);
      }),
    );
  });
});
