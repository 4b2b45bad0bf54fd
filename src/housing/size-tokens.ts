import { fold } from '../catalogue/fold.ts';
import { CROSSES, LABELS, RANGES, UNIT_WORDS } from './size-units.ts';

/** A piece of a phrase that says how large something is. */
export type SizeToken =
  | { is: 'number'; value: number; text: string; unit?: number | 'other'; negative: boolean }
  | { is: 'cross' | 'range' | 'break' }
  | { is: 'label' | 'word'; word: string };

const VULGAR = /[¼-¾⅐-⅞]/g;
// 8 1/2, 8-1/2, 1/2
const FRACTION = /(?:(\d+)[ -])?(\d{1,2})\/(\d{1,2})(?!\d)/y;
const DECIMAL = /\d+(?:[.,]\d+)?|[.,]\d+/y;
const UNIT = /[ -]?("|'|[a-z]+?)(?=x[ \d.,]|[^a-z]|$)\.?/y;
const WORD = /[xх](?=[ \d.,]|$)|[\p{L}\p{M}][\p{L}\p{M}\d]*|[×✕✖*/⌀&+-]|[,;:()[\]]/uy;
const BREAK = /^[,;:()[\]]$/;
// "A 4" is paper, but not in "a 4 x 5 negative".
const PAPER_LETTER = /\b([abc]) (10|\d)(?![\d.,/]| ?(?:x|×|by|["'-]|[cm]?m\b|in|ft))/g;
const PLATE = /\b1\/(2|4|6|9|16)(?:th)?[ -]plate\b/g;
const PLATE_PARTS: Readonly<Record<string, string>> = {
  2: 'half',
  4: 'quarter',
  6: 'sixth',
  9: 'ninth',
  16: 'sixteenth',
};
// The parts of an inch that a ruler has, and thirds. "9/12" is no fraction: it is 9 by 12.
const PARTS = new Set([2, 3, 4, 8, 16, 32, 64]);

/** A phrase with one sign for each thing that has several: quotes and primes, dashes, written fractions. */
function plain(phrase: string): string {
  return fold(phrase.replace(VULGAR, (sign) => ` ${sign.normalize('NFKD')}`))
    .replace(/⁄/g, '/')
    .replace(/[‘’′`´]/g, "'")
    .replace(/[“”„″]|''/g, '"')
    .replace(/[‐-―−]/g, '-')
    .replace(/(?<=\d)'s\b/g, '')
    .replace(/ +/g, ' ')
    .replace(PAPER_LETTER, '$1$2')
    .replace(PLATE, (_, part: string) => `${PLATE_PARTS[part] ?? ''} plate`);
}

/** Takes a phrase of the size column apart. Never throws. */
export function sizeTokens(phrase: string): SizeToken[] {
  const text = plain(phrase);
  const tokens: SizeToken[] = [];
  let at = 0;
  while (at < text.length) {
    const number = numberAt(text, at);
    if (number === undefined) {
      WORD.lastIndex = at;
      const word = WORD.exec(text)?.[0];
      const token = word && tokenOf(word, tokens.at(-1), text[at + word.length]);
      if (token) tokens.push(token);
      at += word?.length ?? 1;
      continue;
    }
    at += number.length;
    UNIT.lastIndex = at;
    const unit = UNIT.exec(text);
    const mm = UNIT_WORDS.get(unit?.[1] ?? '');
    if (mm !== undefined) at += unit?.[0].length ?? 0;
    const negative = tokens.at(-1) === MINUS;
    if (negative) tokens.pop();
    const { value, text: written } = number;
    tokens.push({ is: 'number', value, text: written, negative, ...(mm !== undefined && { unit: mm }) });
  }
  return tokens;
}

const MINUS: SizeToken = { is: 'word', word: 'minus' };

interface Figure {
  value: number;
  text: string;
  length: number;
}

function numberAt(text: string, at: number): Figure | undefined {
  FRACTION.lastIndex = at;
  const fraction = FRACTION.exec(text);
  if (fraction !== null) {
    const [all, whole = '0', over, under] = fraction;
    if (PARTS.has(Number(under)) && Number(over) < Number(under))
      return { value: Number(whole) + Number(over) / Number(under), text: all, length: all.length };
  }
  DECIMAL.lastIndex = at;
  const decimal = DECIMAL.exec(text)?.[0];
  if (decimal === undefined) return undefined;
  return { value: Number(decimal.replace(',', '.')), text: decimal, length: decimal.length };
}

function tokenOf(
  word: string,
  before: SizeToken | undefined,
  next: string | undefined,
): SizeToken | undefined {
  if (BREAK.test(word)) return { is: 'break' };
  if (CROSSES.has(word) && before?.is !== undefined && before.is !== 'word') return { is: 'cross' };
  if (word === '/') return { is: 'range' };
  // "-5 cm" is less than nothing, "5 - 8 cm" is a range, and "half-plate" is a word.
  if (word === '-' && before?.is !== 'number')
    return next !== undefined && /\d/.test(next) && before?.is !== 'word' ? MINUS : undefined;
  if (RANGES.has(word)) return { is: 'range' };
  return { is: LABELS.has(word) ? 'label' : 'word', word };
}
