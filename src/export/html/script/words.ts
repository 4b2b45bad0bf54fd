/** How texts are compared. */
export interface WordReader {
  /** A text in small letters, without accents. */
  fold(text: string): string;
  /** The words of a text as they are compared. */
  wordsOf(text: string): string[];
}

/** Makes a reader of words. This function goes into the page as it is written, so it leans on nothing outside itself. */
export function wordReader(): WordReader {
  /** Letters that Unicode does not take apart into a plain one and an accent. */
  const plain: Readonly<Record<string, string>> = {
    ß: 'ss',
    ø: 'o',
    æ: 'ae',
    œ: 'oe',
    ł: 'l',
    đ: 'd',
    ð: 'd',
    þ: 'th',
    ı: 'i',
  };
  const fold = (text: string): string =>
    // Most texts need no more.
    /^[\x00-\x7F]*$/.test(text)
      ? text.toLowerCase()
      : text
          .normalize('NFKD')
          .replace(/([\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}])\p{M}+/gu, '$1')
          .toLowerCase()
          .replace(/[ßøæœłđðþı]/g, (letter) => plain[letter] ?? letter);
  // Han characters stand without blanks between words, so each is a word.
  const wordsOf = (text: string): string[] => fold(text).match(/\p{Script=Han}|[\p{L}\p{M}\p{N}]+/gu) ?? [];
  return { fold, wordsOf };
}
