import { LETTERS } from './letters.ts';

/** In UTF-16 units: of anything longer only so much is compared. */
const LONGEST_WORD = 48;

/** Latin letters without loose accents, and the punctuation that goes with them: quick to tell, and nearly all there is. */
export const EUROPEAN = /^[\0-\u024F\u2010-\u2027\u2030-\u205E]*$/;
const PLAIN = /^[0-9a-z]*$/;
const ASCII = /^[\0-\x7F]*$/;
const POSSESSIVE = /['\u2019\u02BC][sS]$/;
const APOSTROPHE = /['\u2019]/g;
// What the decomposition of a Latin letter leaves: accents, the dot of a Catalan l, the stroke of a fraction.
const LEFT = /[\u0300-\u036F]|[\u00AD\u00B7\u2044]/g;

const OWN_LETTER = new RegExp(`[${Object.keys(LETTERS).join('')}]`, 'g');

/**
 * A word in the form in which it is compared: without case, accents, apostrophes, the possessive s, and noughts before
 * a number. Empty where nothing is left.
 */
export function foldWord(raw: string): string {
  const lower = raw.toLowerCase();
  if (PLAIN.test(lower)) return finished(lower);
  const bare = raw.replace(POSSESSIVE, '');
  if (ASCII.test(bare)) return finished(bare.toLowerCase().replace(APOSTROPHE, ''));
  return finished(EUROPEAN.test(bare) ? foldEuropean(bare) : foldAnyScript(bare));
}

const foldEuropean = (word: string): string =>
  ownLetters(word.replace(APOSTROPHE, '').normalize('NFKD').replace(LEFT, '').toLowerCase());

/** The same for every script; only slower, for it needs Unicode's tables. */
export function foldAnyScript(word: string): string {
  patterns ??= patternsOfAnyScript();
  const { notSeen, accent, article } = patterns;
  const bare = word
    .normalize('NFKD')
    .replace(notSeen, '')
    .replace(accent, '$1')
    .toLowerCase()
    .replace(accent, '$1')
    .normalize('NFC');
  return ownLetters(bare).replace(article, '');
}

// Made when first needed: to read Unicode's classes takes as long as to answer a question.
let patterns: ReturnType<typeof patternsOfAnyScript> | undefined;
const patternsOfAnyScript = () => ({
  notSeen: /[^\p{L}\p{N}\p{M}]+/gu,
  // Where marks are accents, or vowels that may be left out; in other scripts they make another letter.
  accent: new RegExp(
    `([${['Latin', 'Greek', 'Cyrillic', 'Hebrew', 'Arabic'].map((script) => `\\p{Script=${script}}`).join('')}])\\p{M}+`,
    'gu',
  ),
  // Before a word long enough to be one without it.
  article: /^ال(?=\p{Script=Arabic}{3})/u,
});

const ownLetters = (word: string): string => word.replace(OWN_LETTER, (letter) => LETTERS[letter] ?? letter);

function finished(word: string): string {
  const bare = word.charCodeAt(0) === 0x30 ? word.replace(/^0+(?=\d+$)/, '') : word;
  return bare.length <= LONGEST_WORD ? bare : bare.slice(0, LONGEST_WORD);
}
