import { NUMBER_RULES, type NumberRule } from './private-number-rules.ts';
import { wordFinder } from './word-finder.ts';

/** A number found in a text, and where it stands; what it is must never be said. */
interface FoundNumber {
  rule: NumberRule;
  at: number;
  end: number;
}

const none: never[] = [];

// Nearly every text ends here: six digits with no more than one sign between them, or the middle of an Italian tax code.
const MAY_HOLD = /\d(?:[ ./-]?\d){5}|\d\d[A-Za-z]\d\d/;
const SEPARATORS = /[ ./+-]/g;

const READY = NUMBER_RULES.map((rule) => ({
  rule,
  pattern: new RegExp(`(?<![\\p{L}\\p{N}]|\\d[-./])(?:${rule.form})(?![\\p{L}\\p{N}]|[-./]\\d)`, 'gu'),
  isBeside: rule.beside === undefined ? undefined : wordFinder([{ words: rule.beside }]),
}));

/** Numbers by which people or their money can be got at, in the order in which they stand. */
export function findNumbers(text: string): readonly FoundNumber[] {
  if (!MAY_HOLD.test(text)) return none;
  // Not every capital letter has as many signs as its small one; the digits must stay where they are.
  const capitals = text.replace(/[a-z]+/g, (letters) => letters.toUpperCase());
  const found: FoundNumber[] = [];
  for (const { rule, pattern, isBeside } of READY) {
    if (isBeside !== undefined && isBeside(text).length === 0) continue;
    for (const match of capitals.matchAll(pattern)) {
      const written = longestThatHolds(rule, match[0]);
      if (written === undefined) continue;
      const [at, end] = [match.index, match.index + written.length];
      if (found.every((other) => end <= other.at || at >= other.end)) found.push({ rule, at, end });
    }
  }
  return found.sort((a, b) => a.at - b.at);
}

/** An account number is of no fixed length, and a word in capitals behind it looks like more of it. */
function longestThatHolds(rule: NumberRule, written: string): string | undefined {
  for (let text = written; text !== ''; text = text.replace(/ ?[^ ]+$/, '')) {
    if (text.length < written.length && !/^[A-Z]{2}\d{2}.{11}/.test(text)) return undefined;
    if (rule.holds(text.replace(SEPARATORS, ''))) return text;
  }
  return undefined;
}

/** The text with every digit and letter of such numbers blotted out. */
export function maskNumbers(text: string): string {
  let masked = '';
  let from = 0;
  for (const { at, end } of findNumbers(text)) {
    masked += text.slice(from, at) + text.slice(at, end).replace(/[\p{L}\p{N}]/gu, '•');
    from = end;
  }
  return masked + text.slice(from);
}
