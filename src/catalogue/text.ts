import { z } from 'zod';

/**
 * What XML 1.0 (Fifth Edition) forbids, 2.2, production [2] Char, and every surrogate: as the inside of a class of a
 * regular expression.
 */
export const DOUBTFUL = '\\u0000-\\u0008\\u000B\\u000C\\u000E-\\u001F\\uD800-\\uDFFF\\uFFFE\\uFFFF';
// By code units, without a look at code points: what it does not match holds nothing forbidden.
const PERHAPS = new RegExp(`[${DOUBTFUL}]`);
// With the u flag a surrogate matches only where it stands alone, and then it is no character at all.
const FORBIDDEN = new RegExp(`[${DOUBTFUL}]`, 'u');

/**
 * The first character of a text that XML 1.0 cannot hold in any form, not even as a reference.
 * @returns its position (in UTF-16 units) and its code point, or undefined where the text is clean
 */
export function forbiddenCharacter(text: string): { at: number; codePoint: number } | undefined {
  const at = PERHAPS.test(text) ? text.search(FORBIDDEN) : -1;
  return at < 0 ? undefined : { at, codePoint: text.charCodeAt(at) };
}

const clean = (text: string) => forbiddenCharacter(text) === undefined;
// What is neither a blank nor invisible: a zero-width space alone is no title.
const notBlank = (text: string) => /[^\s\p{Cf}]/u.test(text);
const FORBIDDEN_MESSAGE =
  'holds a character that no XML document can hold (a control character, for instance)';

/** A text without a line break that means anything: a title, a name, a number. Never blank. */
export const line = z.string().refine(notBlank, 'must not be blank').refine(clean, FORBIDDEN_MESSAGE);

/** Running text; paragraphs are parted by an empty line. Never blank. */
export const prose = line;

/** Short identifier, fit for an `xml:id` (an NCName of plain letters, digits, `-`, `_`, `.`). */
export const id = z
  .string()
  .regex(/^[A-Za-z_][A-Za-z0-9_.-]*$/, 'must begin with a letter and hold only letters, digits, - _ and .');

/** The paragraphs of a running text, blank ones left out. */
export function paragraphs(text: string): string[] {
  if (!text.includes('\n')) return text.trim() === '' ? [] : [text.trim()];
  return text
    .split(/\r?\n[ \t]*(?:\r?\n[ \t]*)+/)
    .map((paragraph) => paragraph.trim())
    .filter((paragraph) => paragraph !== '');
}
