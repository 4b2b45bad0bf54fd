import { readAge } from './ages.ts';
import type { Piece } from './pieces.ts';
import { readBulk, readList } from './read-list.ts';
import type { DateContext } from './reading.ts';
import { fail, type Scanner, scannerOf } from './scanner.ts';

/** One way of reading a phrase. */
export interface Attempt {
  readonly edtf: string | undefined;
  readonly bulk: string | undefined;
  readonly notes: readonly string[];
  readonly reason: string | undefined;
  readonly asked: ReadonlyMap<string, number>;
}

/** Reads the pieces of a phrase with one set of choices. */
export function attempt(
  pieces: readonly Piece[],
  context: DateContext,
  choices: ReadonlyMap<string, number>,
): Attempt {
  const s = scannerOf(pieces, context, choices);
  const edtf = read(s);
  const bulk = edtf === undefined ? undefined : readBulk(s);
  if (edtf !== undefined && s.at < pieces.length)
    fail(s, `“${pieces[s.at]?.text ?? ''}” is not understood here.`);
  const reason = edtf === undefined ? (s.reason ?? 'It is not understood.') : s.reason;
  return { edtf: reason === undefined ? edtf : undefined, bulk, notes: s.notes, reason, asked: s.asked };
}

function read(s: Scanner): string | undefined {
  const age = readAge(s);
  if (age !== undefined || s.reason !== undefined) return age;
  s.at = 0;
  return readList(s);
}

const PAIRS: Readonly<Record<string, string>> = { '[': ']', '(': ')', '"': '"', '“': '”', '«': '»' };

/** The pieces without brackets or quotation marks round the whole, and without a full stop at the end. */
export function bare(pieces: readonly Piece[]): readonly Piece[] {
  let inner = pieces;
  for (;;) {
    const [first, last] = [inner[0], inner.at(-1)];
    if (
      inner.length > 1 &&
      (last?.text === '.' || last?.text === ',' || last?.text === ';') &&
      inner.at(-2)?.text !== '.'
    )
      inner = inner.slice(0, -1);
    else if (
      inner.length > 2 &&
      first?.kind === 'sign' &&
      last?.text === PAIRS[first.text] &&
      wraps(inner, first.text)
    ) {
      inner = inner.slice(1, -1);
    } else return inner;
  }
}

const wraps = (pieces: readonly Piece[], open: string) =>
  pieces.slice(1, -1).every(({ text }) => text !== open && text !== PAIRS[open]);

const BLANKS = new Set(['?', '-', '–', '']);

/**
 * Whether a phrase says that there is no date: "undated", "n.d.", "unknown", a lone dash or question mark.
 * @returns the pieces that are left where a date follows ("undated, c. 1950"), or true
 */
export function saysUndated(pieces: readonly Piece[]): boolean | readonly Piece[] {
  const [first, second] = pieces;
  if (!first || pieces.every(({ kind, text }) => kind === 'sign' && BLANKS.has(text))) return true;
  const is = first.sense?.is;
  const isLone = pieces.slice(1).every(({ kind }) => kind === 'sign');
  if (isLone && (is === 'undated' || is === 'unknown')) return true;
  if (is !== 'undated' && !(is === 'unknown' && second?.text === ',')) return false;
  const rest = pieces.slice(second?.kind === 'sign' && second.text !== '[' && second.text !== '(' ? 2 : 1);
  return bare(rest);
}
