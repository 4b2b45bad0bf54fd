import { parseEdtf } from './edtf.ts';
import { mayBeSecondYear } from './read-figures.ts';

/** EDTF as it stands; what only looks like EDTF and is more often meant otherwise is left to the reader of phrases. */
export function asEdtf(text: string): string | undefined {
  const first = text.charCodeAt(0);
  // Small letters begin no EDTF; it is not worth parsing words.
  if (first >= 97 && first <= 122) return undefined;
  const date = parseEdtf(text);
  if (!date) return undefined;
  // `?1867` marks the one component there is, so it is the same as `1867?`.
  if (date.kind === 'point' && date.even && date.mark !== '' && /^[?~%]/.test(text)) {
    return `${text.replaceAll(/[?~%]/g, '')}${date.mark}`;
  }
  // `[1952]` is the cataloguer's way to say that the date is supplied, not a choice from one.
  if (date?.kind === 'set' && date.of === 'one' && date.members.length === 1) {
    const [only] = date.members;
    if (only?.kind === 'point') return only.text;
  }
  return text.replaceAll(/\s+/g, '');
}

/** A short second year that lies this many years ahead is not meant as one: 2001-21. */
const LONG_SPAN = 20;

/** Phrases that are EDTF and more likely mean a span: `1921-22`, `1939-41`, and years before Christ, `-1950`, `?-1950`. */
export function doubtfulEdtf(text: string): [string, ...string[]] | undefined {
  // As `1950-?` is a span without a known end, this is one without a known start.
  if (/^\?-[12]\d{3}$/.test(text)) return [`/${text.slice(2)}`, `${text.slice(1)}?`];
  if (/^-[12]\d{3}$/.test(text)) return [text, `../${text.slice(1)}`];
  const found = /^(\d{4})-(\d\d)$/.exec(text);
  const [, year = '', digits = ''] = found ?? [];
  if (!found || !parseEdtf(text) || !mayBeSecondYear(year, digits)) return undefined;
  const span = `${year}/${year.slice(0, 2)}${digits}`;
  const value = Number(digits);
  // Months are level 0 of EDTF, and what this program itself asks people to write; nobody writes codes of seasons.
  return value > 12 && value - Number(year.slice(2)) < LONG_SPAN ? [span, text] : undefined;
}
