/** A piece of HTML that is safe to send: whatever text went into it was escaped. Only this file makes one. */
export interface Markup {
  readonly html: string;
}

/** What may stand in the gaps of a template; undefined and false leave nothing. */
type Filling = string | number | Markup | readonly Markup[] | undefined | false;

// HTML Standard, 13.1.2 and 13.1.2.3: what has a meaning of its own in text and in quoted values.
const MEANS = /[&<>"']/;
const REFERENCES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

// HTML Standard, 13.2.3.5 with the definitions of the Infra Standard: surrogates that stand alone, noncharacters and
// controls other than blanks are errors in the input stream. They are shown as a replacement character.
const NO_TEXT =
  /[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F-\u009F\uD800-\uDFFF\uFDD0-\uFDEF\p{Noncharacter_Code_Point}]/gu;
const DOUBTFUL =
  /[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F-\u009F\uD800-\uDFFF\uFDD0-\uFDEF\uFFFE\uFFFF]/;

/** A text without the characters that no page may hold. */
export const legalText = (text: string): string =>
  DOUBTFUL.test(text) ? text.replace(NO_TEXT, '\uFFFD') : text;

/** A text, escaped for the places between tags and between the quotes of an attribute alike. */
export function escaped(text: string): string {
  const legal = legalText(text);
  return MEANS.test(legal) ? legal.replace(/[&<>"']/g, (mark) => REFERENCES[mark] ?? mark) : legal;
}

/** HTML with texts in its gaps, every one of them escaped. Attributes are always quoted in the templates. */
export function h(parts: TemplateStringsArray, ...fillings: readonly Filling[]): Markup {
  let html = parts[0] ?? '';
  for (const [at, filling] of fillings.entries()) html += filled(filling) + (parts[at + 1] ?? '');
  return { html };
}

function filled(filling: Filling): string {
  if (filling === undefined || filling === false) return '';
  if (typeof filling === 'string') return escaped(filling);
  if (typeof filling === 'number') return String(filling);
  if ('html' in filling) return filling.html;
  let html = '';
  for (const one of filling) html += one.html;
  return html;
}

/** Pieces with the same between every two of them. */
export const joined = (pieces: readonly Markup[], between: string): Markup => ({
  html: pieces.map(({ html }) => html).join(escaped(between)),
});

/** A text that is already HTML, script or style, made by this project and not by a catalogue. */
export const ours = (html: string): Markup => ({ html });
