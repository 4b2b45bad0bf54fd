import { DOUBTFUL, forbiddenCharacter } from '../catalogue/text.ts';

/** Where a text stands: between tags, or between the quotes of an attribute. */
type Setting = 'text' | 'attribute';

/**
 * Which characters do not survive as they are, where, and what stands for them. XML 1.0 (Fifth Edition): 2.4 for the
 * marks of markup and for `]]>`; 2.11 for the carriage return, which a reader turns into a line feed; 3.3.3 for white
 * space in attributes, which a reader turns into spaces.
 */
const UNSAFE: readonly { character: string; written: string; where: readonly Setting[] }[] = [
  { character: '&', written: '&amp;', where: ['text', 'attribute'] },
  { character: '<', written: '&lt;', where: ['text', 'attribute'] },
  { character: '>', written: '&gt;', where: ['text'] },
  { character: '"', written: '&quot;', where: ['attribute'] },
  { character: '\r', written: '&#13;', where: ['text', 'attribute'] },
  { character: '\n', written: '&#10;', where: ['attribute'] },
  { character: '\t', written: '&#9;', where: ['attribute'] },
];

interface Rule {
  /** Finds out whether anything has to be looked at; most texts are written as they are. */
  test: RegExp;
  /** What stands for what; the ampersand first, since what stands for others begins with one. */
  written: readonly (readonly [string, string])[];
}

function rule(setting: Setting): Rule {
  const rows = UNSAFE.filter(({ where }) => where.includes(setting));
  const characters = rows.map(({ character }) => character).join('');
  return {
    test: new RegExp(`[${characters}${DOUBTFUL}]`),
    written: rows.map(({ character, written }) => [character, written]),
  };
}

const RULES: Readonly<Record<Setting, Rule>> = { text: rule('text'), attribute: rule('attribute') };

// Looked at once for each text, and each is a regular expression without memory (no g or y flag).
/** Whether a text may stand as it is; most may. */
export const isPlainText = (text: string): boolean => !RULES.text.test.test(text);

/** The same for the value of an attribute. */
export const isPlainValue = (value: string): boolean => !RULES.attribute.test.test(value);

/**
 * A text as it may stand in an XML file, so that a reader gets back what went in, to the letter.
 * @param where says, for the message, which text it is: "The text of /ead/control/recordid"
 * @throws Error where the text holds a character that XML cannot hold in any form
 */
export function safe(text: string, setting: Setting, where: () => string): string {
  const forbidden = forbiddenCharacter(text);
  if (forbidden !== undefined) {
    const code = forbidden.codePoint.toString(16).toUpperCase().padStart(4, '0');
    throw new Error(`${where()} holds the character U+${code}, which no XML document can hold.`);
  }
  let escaped = text;
  for (const [character, written] of RULES[setting].written) escaped = escaped.replaceAll(character, written);
  return escaped;
}

// XML 1.0, 2.3, productions [4] NameStartChar and [4a] NameChar; a colon parts prefix and local name.
const START = 'A-Z_a-z\\u{C0}-\\u{D6}\\u{D8}-\\u{F6}\\u{F8}-\\u{2FF}\\u{370}-\\u{37D}\\u{37F}-\\u{1FFF}';
const MORE =
  '\\u{200C}\\u{200D}\\u{2070}-\\u{218F}\\u{2C00}-\\u{2FEF}\\u{3001}-\\u{D7FF}\\u{F900}-\\u{FDCF}\\u{FDF0}-\\u{FFFD}\\u{10000}-\\u{EFFFF}';
const PART = `[${START}${MORE}][${START}${MORE}\\-.0-9\\u{B7}\\u{300}-\\u{36F}\\u{203F}\\u{2040}]*`;
const NAME = new RegExp(`^${PART}(?::${PART})?$`, 'u');

/** Whether an element or attribute can bear this name. */
export function isName(name: string): boolean {
  return NAME.test(name);
}
