import { once } from '../../catalogue/once.ts';

// Letters, digits and marks that name characters of XML have always held, by the fourth edition of XML 1.0 (appendix
// B) as well as by the fifth: Latin, Greek, Cyrillic, Hebrew, Arabic, kana, Han and Hangul. Validators go by either.
const NOT_IN_TOKEN =
  /[^A-Za-z0-9._:\-\u00C0-\u00D6\u00D8-\u00F6\u00F8-\u0131\u0134-\u013E\u0141-\u0148\u014A-\u017E\u038E-\u03A1\u03A3-\u03CE\u0401-\u040C\u040E-\u044F\u05D0-\u05EA\u0621-\u063A\u0641-\u064A\u3041-\u3094\u30A1-\u30FA\u4E00-\u9FA5\uAC00-\uD7A3]+/g;

/**
 * A text as one token (NMTOKEN of XML 1.0), for the attributes of EAD 2002 that take nothing else: what cannot stand
 * in it becomes a hyphen, `oversize folder` becomes `oversize-folder`.
 * @returns undefined where nothing of the text can stand in a token
 */
export const token = once((text: string): string | undefined => {
  const made = text
    .normalize('NFC')
    .replace(NOT_IN_TOKEN, '-')
    .replace(/^-+|-+$/g, '');
  return made === '' ? undefined : made;
});

/** The text itself where it is a token, and undefined where it is none: for codes, which may not be changed. */
export const tokenOnly = (text: string | undefined): string | undefined =>
  text !== undefined && token(text) === text ? text : undefined;
