import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foldAnyScript, foldWord } from '../../src/find/fold-word.ts';
import { wordsInAnyScript, wordsOf } from '../../src/find/words.ts';

const words = (text: string) => wordsOf(text).map(({ word }) => word);

describe('words as they are compared', () => {
  // How a search should take them: common practice; the languages from memory.
  test.each([
    ["Ada's BOX-camera", ['ada', 'box', 'camera']],
    ['Kjære farmor, frøken Nygård', ['kjaere', 'farmor', 'froken', 'nygard']],
    ['Straße, Łódź, Ðuro, Þór, œuvre', ['strasse', 'lodz', 'duro', 'thor', 'oeuvre']],
    ["O’Brien O'Brien", ['obrien', 'obrien']],
    ['e\u0301te\u0301 été ÉTÉ', ['ete', 'ete', 'ete']],
    ['no. 007, 0, 1922', ['no', '7', '0', '1922']],
    ['Nor\u00ADway fer\u200Dry', ['norway', 'ferry']],
    ['Паром Ёлка паромЪ', ['паром', 'елка', 'паромъ']],
    ['Σόλεμ ΣΟΛΕΜΣ σολεμς', ['σολεμ', 'σολεμσ', 'σολεμσ']],
    // With points and without; the form at the end of a word.
    ['אָדָה שלום', ['אדה', 'שלומ']],
    // With vowel signs and without, with the article and without, stretched.
    ['العَبَّارة عبارة عـبارة', ['عباره', 'عباره', 'عباره']],
    // Two letters at a time, and the last alone.
    ['渡し船', ['渡し', 'し船', '船']],
    ['船', ['船']],
    ['Ada渡船1922', ['ada', '渡船', '船', '1922']],
    ['ﾌｪﾘｰ', ['フェ', 'ェリ', 'リー', 'ー']],
    // Vowel signs of Indic scripts make another letter.
    ['की का', ['की', 'का']],
    ['— … “ ” 👩‍👩‍👧', []],
  ])('%s', (text, expected) => {
    expect(words(text)).toEqual(expected);
  });

  test('where each stands', () => {
    const text = 'The Hester, Ada’s 渡し船';
    expect(wordsOf(text).map(({ at, end }) => text.slice(at, end))).toEqual([
      'The',
      'Hester',
      'Ada’s',
      '渡し',
      'し船',
      '船',
    ]);
  });

  test('European texts give the same by the quick way and by Unicode’s tables', () => {
    const letter = fc.oneof(
      fc.integer({ min: 0x20, max: 0x24f }).map((code) => String.fromCharCode(code)),
      fc.constantFrom("'", '’', ' ', 's', 'S', '“', '…', '‐'),
    );
    fc.assert(
      fc.property(fc.string({ unit: letter, maxLength: 30 }), (text) => {
        const quick = wordsOf(text);
        expect(wordsInAnyScript(text)).toEqual(quick);
        for (const { at, end } of quick) {
          const raw = text.slice(at, end);
          const bare = raw.replace(/['’]s$/i, '');
          expect(foldAnyScript(bare).replace(/^0+(?=\d+$)/, '')).toBe(foldWord(raw));
        }
      }),
      { numRuns: 2000 },
    );
  });

  test('of any text the words stand within it, one after another, and folding again changes nothing', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 40 }), (text) => {
        let before = 0;
        for (const { at, end, word } of wordsOf(text)) {
          expect(at).toBeGreaterThanOrEqual(before);
          expect(end).toBeGreaterThan(at);
          expect(end).toBeLessThanOrEqual(text.length);
          expect(word).not.toBe('');
          before = at;
        }
      }),
    );
  });
});
