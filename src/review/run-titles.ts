import { KINDS } from '../arrange/index.ts';
import { plainWords } from './plain-words.ts';
import { RUN_KINDS } from './run-kinds.ts';
import type { Filled } from './run-regular.ts';

/** A title without what tells it from the others of a series. */
export interface Head {
  /** As it is compared: "ferry account book" for books and a book, with years and numbers taken out. */
  key: string;
  /** As it is shown. */
  shown: string;
  /** Whether it says what the thing is, and not just its volume. */
  isNamed: boolean;
}

const YEARS = /\(?(?<!\d)(?:1[4-9]|20)\d\d(?:\s*[-–/]\s*\d{2,4})?(?!\d)\)?/gu;
const MONTHS = 'jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec|spring|summer|autumn|fall|winter';
/** What goes with a year: the month and the day before it. */
const MONTH_BEFORE_YEAR = new RegExp(
  `\\b(?:${MONTHS})[a-z]*\\.?(?:\\s+\\d{1,2})?,?\\s+(?=(?:1[4-9]|20)\\d\\d)`,
  'giu',
);
/** A title goes on after these with what is particular to one thing. */
const FIRST_PART = /^[\s,;:(–—-]*([^,;:(–—]*)/u;
const LEFT_AT_END = new Set(['of', 'for', 'from', 'in', 'the', 'year', 'dated', 'and']);

/** The head of a title: its first part without years, months and a number. */
export function headOf(title: string): Head {
  const bare = closed(title).replace(MONTH_BEFORE_YEAR, ' ').replace(YEARS, ' ');
  const words = (FIRST_PART.exec(bare)?.[1] ?? '').trim().split(/\s+/);
  while (words.length > 1 && LEFT_AT_END.has(words.at(-1)?.toLowerCase() ?? '')) words.pop();
  const shown = words.join(' ');
  const key = plainWords(shown).split(' ').map(singular).join(' ');
  return { key, shown, isNamed: key !== '' };
}

/** Without runs of blanks, which would hold the patterns up. */
const closed = (title: string) => title.replace(/\s{2,}/g, ' ');

const singular = (word: string) =>
  word.length < 4 || word.endsWith('ss') ? word : word.replace(/ies$/, 'y').replace(/s$/, '');

const ROMAN_DIGITS: Record<string, number> = { i: 1, v: 5, x: 10, l: 50 };

// By their longest words first, so that "account book 3" is not read as "book 3".
const NUMBERED_KINDS = KINDS.filter(({ one }) =>
  RUN_KINDS.some(({ kind, by }) => kind === one && by.includes('number')),
)
  .flatMap(({ one, many, also }) => [one, many, ...also])
  .sort((a, b) => b.length - a.length)
  .map((word) => word.replace(/[^\p{L}\p{N} ]/gu, '.'));

const MARK = 'nos?|nrs?|numbers?|n[º°]|vols?|volumes?|bd|parts?|pt|issues?';
const END = '(?![\\p{L}\\p{N}]|[-./]\\d)';
const MARKED = new RegExp(
  `(?<![\\p{L}\\p{N}])(?:(?:${MARK})\\.?\\s*#?|#)\\s*(\\d{1,5})(?:\\s*(?:-|–|to|and|&)\\s*(\\d{1,5}))?${END}`,
  'giu',
);
const ROMAN = new RegExp(`(?<![\\p{L}\\p{N}])(?:vol|volume|part|book)\\.?\\s+([ivxl]{1,7})${END}`, 'giu');
/** “Diary 3” is numbered; “Diary 1931” is not. */
const AFTER_KIND = new RegExp(
  `(?<![\\p{L}\\p{N}])(${NUMBERED_KINDS.join('|')})\\s+(\\d{1,3})(?=\\s*(?:$|[,;:(–—]))`,
  'iu',
);
const VOLUME = /^(?:vols?|volumes?|bd)\b/iu;
const MAY_BE_NUMBERED = /\d|\s[ivxl]+(?![\p{L}])/iu;

/** The number that a title gives to one of a series, with its head; undefined where it gives none. */
export function numberIn(written: string): { place: Omit<Filled, 'row'>; head: Head } | undefined {
  const title = closed(written);
  if (!MAY_BE_NUMBERED.test(title)) return undefined;
  // "Vol. 3, no. 4": the last is the number, and what stands before it belongs to the head.
  const marked = [...title.matchAll(MARKED)].at(-1) ?? [...title.matchAll(ROMAN)].at(-1);
  const match = marked ?? AFTER_KIND.exec(title);
  if (match === null) return undefined;
  const [whole, one = '', two] = match;
  const [from, to] = marked === undefined ? [two ?? '', two ?? ''] : [one, two ?? one];
  const [first, last] = [numberOf(from), numberOf(to)];
  if (first === undefined || last === undefined || last < first) return undefined;
  const kept = marked === undefined ? one : '';
  const rest = `${title.slice(0, match.index)}${kept}${title.slice(match.index + whole.length)}`;
  const head = headOf(rest);
  const volume = rest.match(MARKED)?.[0] ?? rest.match(ROMAN)?.[0] ?? '';
  return {
    place: {
      from: first,
      to: last,
      isProof: true,
      said: `${first}-${last}`,
      ...(VOLUME.test(whole) && { isVolume: true }),
    },
    head: {
      key: `${head.key}, ${plainWords(volume)}`,
      shown: head.shown.includes(volume) ? head.shown : `${head.shown}, ${volume}`,
      isNamed: headOf(rest.replace(MARKED, '').replace(ROMAN, '')).isNamed,
    },
  };
}

function numberOf(written: string): number | undefined {
  if (/^\d+$/.test(written)) return Number(written);
  const digits = [...written.toLowerCase()].map((letter) => ROMAN_DIGITS[letter] ?? 0);
  const value = digits.reduce((sum, digit, at) => sum + (digit < (digits[at + 1] ?? 0) ? -digit : digit), 0);
  return value > 0 ? value : undefined;
}
