/** Letters that are looked for as others: they are no letter with a mark (Unicode has no decomposition for them). */
export const LETTERS: Readonly<Record<string, string>> = {
  // Latin: how Unicode's CLDR transliterates them to ASCII (Latin-ASCII; from memory).
  ø: 'o',
  æ: 'ae',
  œ: 'oe',
  ß: 'ss',
  đ: 'd',
  ð: 'd',
  þ: 'th',
  ł: 'l',
  ħ: 'h',
  ŧ: 't',
  ŋ: 'n',
  ı: 'i',
  ĸ: 'k',
  // Greek: the form that a letter has at the end of a word.
  ς: 'σ',
  // Cyrillic: letters often written as another one, or in older spelling (the reform of 1918; from memory).
  ѣ: 'е',
  і: 'и',
  ѳ: 'ф',
  ѵ: 'и',
  // Hebrew: the forms at the end of a word.
  ך: 'כ',
  ם: 'מ',
  ן: 'נ',
  ף: 'פ',
  ץ: 'צ',
  // Arabic: letters commonly written for one another, and the stroke that only stretches a word (from memory).
  ٱ: 'ا',
  ة: 'ه',
  ى: 'ي',
  ی: 'ي',
  ک: 'ك',
  ـ: '',
};
