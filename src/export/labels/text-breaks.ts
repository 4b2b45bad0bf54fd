// Invisible letters that steer what cannot be seen on paper; the joiners, which shape letters, and the marks of
// direction stay (Unicode, general categories Cc and Cf; UAX #44, Default_Ignorable_Code_Point, which fonts lack).
const UNSEEN = /(?!\u200C|\u200D|\u200E|\u200F|\u061C)[\p{Cc}\p{Cf}\p{Cs}\p{Default_Ignorable_Code_Point}]/gu;

/** A text as it goes onto a label: composed letters, single blanks, nothing invisible. */
export const cleanText = (text: string): string =>
  text
    .normalize('NFC')
    .replace(/[\s\u2028\u2029]+/g, (blank) => (/^\u00A0+$/.test(blank) ? blank : ' '))
    .replace(UNSEEN, '')
    .replace(/ {2,}/g, ' ')
    .trim();

const CJK = '\\p{Script=Han}\\p{Script=Hiragana}\\p{Script=Katakana}\\u30FC';
// After a blank; after a hyphen, dash or slash between words; between two letters of a script without blanks, which
// keep their punctuation with them.
const BREAK = new RegExp(
  [
    '(?<= )(?! )',
    '(?<=[\\p{L}\\p{N}][-\\u2010\\u2013\\u2014/])(?=\\p{L})',
    `(?<=[${CJK}、。，．」』）])(?=[${CJK}「『（])(?![\\u30FC\\u3005ぁぃぅぇぉっゃゅょゎァィゥェォッャュョヮ])`,
  ].join('|'),
  'u',
);

/** Where a line may end, as positions in the text: those between words, then the end of the text. */
export function breaksOf(text: string): number[] {
  let at = 0;
  return text.split(BREAK).map((part) => {
    at += part.length;
    return at;
  });
}

const segmenter = new Intl.Segmenter('en', { granularity: 'grapheme' });
// Marks without end upon one letter are no letter; they may be parted.
const LONGEST = 12;

/** Where letters end, as readers count letters: marks stay with what they stand on. */
export function clustersOf(text: string): number[] {
  const ends: number[] = [];
  for (const { segment, index } of segmenter.segment(text)) {
    if (segment.length <= LONGEST) ends.push(index + segment.length);
    else for (const { at, length } of codePoints(segment)) ends.push(index + at + length);
  }
  return ends;
}

function* codePoints(text: string): Generator<{ at: number; length: number }> {
  let at = 0;
  for (const { length } of text) {
    yield { at, length };
    at += length;
  }
}
