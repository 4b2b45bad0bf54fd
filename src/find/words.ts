import { EUROPEAN, foldWord } from './fold-word.ts';

/** A word of a text: where it stands there, and how it is compared. */
export interface Word {
  /** In UTF-16 units. */
  at: number;
  end: number;
  /** In the form in which words are compared. */
  word: string;
  /** Of letters taken two by two, the last one alone: it is there to be found, and is no word of its own. */
  last?: true;
}

// The letters and numbers below U+0250, by their ranges: no table of Unicode is needed. Soft hyphens are not seen.
const EUROPEAN_WORD =
  /[0-9A-Za-z\xAA\xAD\xB2\xB3\xB5\xB9\xBA\xBC-\xBE\xC0-\xD6\xD8-\xF6\xF8-\u024F]+(?:['\u2019][0-9A-Za-z\xAA\xAD\xB2\xB3\xB5\xB9\xBA\xBC-\xBE\xC0-\xD6\xD8-\xF6\xF8-\u024F]+)*/g;
/** The words of a text in the order in which they stand. */
export function wordsOf(text: string): Word[] {
  if (!EUROPEAN.test(text)) return wordsInAnyScript(text);
  const found: Word[] = [];
  for (const { 0: raw, index } of text.matchAll(EUROPEAN_WORD)) add(found, raw, index);
  return found;
}

/** The same for every script; only slower. */
export function wordsInAnyScript(text: string): Word[] {
  const found: Word[] = [];
  patterns ??= patternsOfAnyScript();
  const { anyWord, unparted } = patterns;
  for (const { 0: raw, index } of text.matchAll(anyWord)) {
    let [rest, at] = [raw, index];
    for (let run = unparted.exec(rest); run !== null; run = unparted.exec(rest)) {
      add(found, rest.slice(0, run.index), at);
      found.push(...pairsOf(run[0], at + run.index));
      const end = run.index + run[0].length;
      [rest, at] = [rest.slice(end), at + end];
    }
    add(found, rest, at);
  }
  return found;
}

// Joiners too stand within words and are not seen.
const LETTER = '[\\p{L}\\p{N}\\p{M}\\u00AD\\u200B-\\u200D\\u2060]+';
/** Scripts that part no words by blanks: their letters are taken two by two. Korean does, but joins endings to words. */
const UNPARTED = ['Han', 'Hiragana', 'Katakana', 'Hangul', 'Thai', 'Lao', 'Khmer', 'Myanmar'];

// Made when first needed: to read Unicode's classes takes as long as to answer a question.
let patterns: ReturnType<typeof patternsOfAnyScript> | undefined;
const patternsOfAnyScript = () => ({
  anyWord: new RegExp(`${LETTER}(?:['\\u2019\\u02BC]${LETTER})*`, 'gu'),
  unparted: new RegExp(`[${UNPARTED.map((script) => `\\p{scx=${script}}`).join('')}]+`, 'u'),
});

function add(found: Word[], raw: string, at: number): void {
  const word = foldWord(raw);
  if (word !== '') found.push({ at, end: at + raw.length, word });
}

/** A run of letters two by two; the last one also alone, so that every letter begins something. */
function pairsOf(run: string, start: number): Word[] {
  const letters = [...run];
  let at = start;
  return letters.flatMap((letter, place): Word[] => {
    const next = letters[place + 1] ?? '';
    const from = at;
    at += letter.length;
    const word = foldWord(letter + next);
    if (word === '') return [];
    const pair = { at: from, end: at + next.length, word };
    return [next === '' && place > 0 ? { ...pair, last: true } : pair];
  });
}
