import type { Draft } from './draft.ts';
import { peek, type Scanner, senseAt } from './scanner.ts';

const CENTURIES = ['x', 'xi', 'xii', 'xiii', 'xiv', 'xv', 'xvi', 'xvii', 'xviii', 'xix', 'xx', 'xxi'];
const FIRST = 10;

/** The century of a Roman numeral, with the endings of ordinals in French and Spanish; undefined for any other word. */
function centuryOf(text: string | undefined): number | undefined {
  const at = CENTURIES.indexOf(text?.replace(/(?:e|eme|o)$/, '') ?? '');
  return at < 0 ? undefined : at + FIRST;
}

/** Takes a Roman numeral for a century. */
export function takeRoman(s: Scanner, draft: Draft): boolean {
  const century = centuryOf(peek(s)?.text);
  if (century === undefined || draft.year !== undefined) return false;
  draft.year = `${century - 1}XX`;
  s.at++;
  return true;
}

/** "XIXe siècle": the numeral before its word. */
export function takeRomanCentury(s: Scanner, draft: Draft): boolean {
  if (senseAt(s, 1)?.is !== 'century' || !takeRoman(s, draft)) return false;
  s.at++;
  return true;
}
