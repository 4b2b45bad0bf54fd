/**
 * Other forms of a word, one and many of them, as English makes them: letter and letters, diary and diaries, box and
 * boxes. Of other languages the beginning of a word has to serve.
 */
export function otherForms(word: string): string[] {
  if (word.length < 3 || !/[a-z]$/.test(word)) return [];
  if (word.endsWith('ies')) return [`${word.slice(0, -3)}y`, word.slice(0, -1)];
  if (/(?:s|x|z|ch|sh)es$/.test(word)) return [word.slice(0, -2), word.slice(0, -1)];
  if (/[^s]s$/.test(word)) return [word.slice(0, -1)];
  if (/[^aeiou]y$/.test(word)) return [`${word.slice(0, -1)}ies`, `${word}s`];
  return [/(?:s|x|z|ch|sh)$/.test(word) ? `${word}es` : `${word}s`];
}
