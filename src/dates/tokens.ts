/** A piece of a phrase: figures (`195X` counts as one), a word, or a single sign. */
export interface Token {
  readonly kind: 'number' | 'word' | 'sign';
  /** As folded; every dash longer than a hyphen is `–`, every apostrophe `'`. */
  readonly text: string;
  /** Whether no space stands before it. */
  readonly glued: boolean;
}

// Letters that no decomposition takes apart.
const LETTERS: Readonly<Record<string, string>> = {
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
const SIGNS: readonly [RegExp, string][] = [
  [/[‐‑]/g, '-'],
  [/[‒–—―−]/g, '–'],
  [/[‘’‛′´`ʼ]/g, "'"],
  // The sign of degrees, which keyboards have, for the raised o of an ordinal: 1° maggio.
  [/°/g, 'º'],
];
const PLAIN = /^[\x20-\x7E]*$/;

/** A text with case, accents and typographic variants folded: what people write in the same sense becomes the same. */
export function fold(text: string): string {
  if (PLAIN.test(text)) return text.toLowerCase().replaceAll('`', "'");
  let folded = text;
  for (const [signs, sign] of SIGNS) folded = folded.replace(signs, sign);
  folded = folded
    .normalize('NFKD')
    .replaceAll(/\p{M}+/gu, '')
    .toLowerCase();
  return folded.replaceAll(/[ßøæœłđðþı]/g, (letter) => LETTERS[letter] ?? letter);
}

const isDigit = (code: number) => code >= 48 && code <= 57;
const isLetterX = (code: number) => code === 120;
const LETTER = /^\p{L}/u;
const SPACE = /^\s/;

function isLetter(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  if (code < 128) return code >= 97 && code <= 122;
  return LETTER.test(text.slice(at, at + 2));
}

const isSpace = (text: string, at: number): boolean => {
  const code = text.charCodeAt(at);
  return code < 128 ? code === 32 || (code >= 9 && code <= 13) : SPACE.test(text.slice(at, at + 1));
};

/** Where the figures that begin at a place end; `195x` is four figures, the last of them not known. */
function endOfNumber(text: string, start: number): number {
  let end = start;
  while (isDigit(text.charCodeAt(end))) end++;
  let reach = end;
  while (isDigit(text.charCodeAt(reach)) || isLetterX(text.charCodeAt(reach))) reach++;
  const length = reach - start;
  return reach > end && (length === 4 || length === 2) && !isLetter(text, reach) ? reach : end;
}

function endOfWord(text: string, start: number): number {
  let end = start;
  while (end < text.length && isLetter(text, end)) end += (text.codePointAt(end) ?? 0) > 0xffff ? 2 : 1;
  return end;
}

/** Takes a folded text apart, in one pass. A full stop right after a word marks an abbreviation and is dropped. */
export function tokenise(text: string): Token[] {
  const tokens: Token[] = [];
  let glued = false;
  let at = 0;
  while (at < text.length) {
    if (isSpace(text, at)) {
      glued = false;
      at++;
      continue;
    }
    const start = at;
    if (isDigit(text.charCodeAt(at))) {
      at = endOfNumber(text, at);
      tokens.push({ kind: 'number', text: text.slice(start, at).replaceAll('x', 'X'), glued });
    } else if (isLetter(text, at)) {
      at = endOfWord(text, at);
      tokens.push({ kind: 'word', text: text.slice(start, at), glued });
      if (text[at] === '.' && text[at + 1] !== '.') at++;
    } else {
      at++;
      tokens.push({ kind: 'sign', text: text.slice(start, at), glued });
    }
    glued = true;
  }
  return tokens;
}
