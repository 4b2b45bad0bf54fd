import { JOINING_WORDS } from './joining-words.ts';
import { type Word, wordsOf } from './words.ts';

/** One thing asked for: a word, or several that are to stand together. */
export interface Unit {
  /** As it was typed. */
  typed: string;
  /** In the form in which words are compared; of a span of years none. */
  words: readonly string[];
  /** What may be a reference code or the number of a thing. */
  code?: string;
  /** Where it is a code, it stands in the place of these. */
  insteadOf?: readonly Unit[];
  /** First and last year, where it is a year, a decade or a span. */
  years?: readonly [number, number];
  /** A word that a thing need not have. */
  optional?: true;
}

/** What the things that are found have to be. */
export interface Filters {
  kind?: string;
  person?: string;
  box?: string;
  /** Years; a thing whose dates reach into the span passes, one without a date does not. */
  from?: number;
  to?: number;
}

export interface Question extends Filters {
  units: readonly Unit[];
}

const QUOTED = /"([^"]*)"|“([^”]*)”|„([^“”]*)[“”]|«([^»]*)»/;
const SPAN = /^([12]\d{3})(?:[-–—/]|\.\.)([12]\d{3})$/;
const YEAR = /^[12]\d{3}$/;
const DECADE = /^[12]\d\d0s$/;

/**
 * Reads what was typed: words, phrases in quotation marks, years (1927), decades (1920s), spans (1915-1920), reference
 * codes.
 */
export function questionOf(typed: readonly string[], filters: Filters = {}): Question {
  const units = typed.flatMap((text) =>
    text.split(new RegExp(QUOTED, 'g')).flatMap((part = '', place) => {
      // Of every five parts the first is between quotations, the others are what stood in each kind of marks.
      if (place % 5 !== 0) return phraseOf(part);
      return part.split(/\s+/).flatMap(unitsOf);
    }),
  );
  // Whoever types nothing but such words means them.
  const optional = units.some(({ words: [word] }) => word === undefined || !JOINING_WORDS.has(word));
  return { ...filters, units: optional ? units.map(lessened) : units };
}

const lessened = (unit: Unit): Unit =>
  unit.words.length === 1 && JOINING_WORDS.has(unit.words[0] ?? '') ? { ...unit, optional: true } : unit;

function phraseOf(text: string): Unit[] {
  // Where the phrase ends, the letters two by two may go on; before a word of another script they do not.
  const words = wordsOf(text).filter(({ last }, at, all) => !last || at < all.length - 1);
  return words.length === 0 ? [] : [{ typed: text.trim(), words: words.map(({ word }) => word) }];
}

function unitsOf(piece: string): Unit[] {
  const [, first, last] = SPAN.exec(piece) ?? [];
  if (first !== undefined && last !== undefined && first <= last)
    return [{ typed: piece, words: [], years: [Number(first), Number(last)] }];
  const units = runsOf(wordsOf(piece).filter(({ last: half }) => !half)).map((run) => unitOf(run, piece));
  const [one, two] = units;
  if (one === undefined) return [];
  const code = piece.replace(/^[.,;:!?()'"]+|[.,;:!?()'"]+$/g, '');
  if (two === undefined) return [{ ...one, code }];
  return [{ typed: piece, words: [], code, insteadOf: units }];
}

/** Letters taken two by two overlap, and belong together. */
function runsOf(words: readonly Word[]): Word[][] {
  const runs: Word[][] = [];
  for (const word of words) {
    const run = runs.at(-1);
    if (run !== undefined && word.at < (run.at(-1)?.end ?? 0)) run.push(word);
    else runs.push([word]);
  }
  return runs;
}

function unitOf(run: readonly Word[], piece: string): Unit {
  const words = run.map(({ word }) => word);
  const typed = piece.slice(run[0]?.at, run.at(-1)?.end);
  const [word = ''] = words;
  if (YEAR.test(word)) return { typed, words, years: [Number(word), Number(word)] };
  if (DECADE.test(word))
    return { typed, words, years: [Number.parseInt(word, 10), Number.parseInt(word, 10) + 9] };
  return { typed, words };
}
