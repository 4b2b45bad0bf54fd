import { type Entry, type Lexicon, SKIPPED } from './lexicon.ts';
import type { Sense } from './senses.ts';
import type { Token } from './tokens.ts';

/** A token, or several that have a sense together. */
export interface Piece extends Token {
  readonly sense?: Sense;
}

/** How many tokens from a place make up an entry's words, hyphens between them aside; 0 where they do not. */
function reach(tokens: readonly Token[], at: number, { words }: Entry): number {
  let place = at;
  for (const [index, word] of words.entries()) {
    if (index > 0 && SKIPPED.has(tokens[place]?.text ?? '')) place++;
    if (tokens[place]?.text !== word) return 0;
    place++;
  }
  return place - at;
}

/** What a piece is beside "of": a year, a day, or what its sense is. */
function partOf(piece: Piece | undefined): string | undefined {
  if (piece?.kind !== 'number') return piece?.sense?.is;
  return piece.text.length === 4 || Number(piece.text) > 31 ? 'year' : 'day';
}

/** Whether what stands about "of" are two dates, "1892 of 1893" or "mei of juni", and not one, as "17 of March 1912". */
function joinsAlike(before: Piece | undefined, after: Piece | undefined): boolean {
  const [one, other] = [partOf(before), partOf(after)];
  if (one === other) return one !== undefined;
  return (one === 'year' && (other === 'month' || other === 'day')) || (one === 'month' && other === 'day');
}

/** Gives the words of a phrase their senses, the longest run of words first. */
export function withSenses(tokens: readonly Token[], lexicon: Lexicon): Piece[] {
  const pieces: Piece[] = [];
  let at = 0;
  while (at < tokens.length) {
    const token = tokens[at];
    if (!token) break;
    let taken = 0;
    for (const entry of lexicon.get(token.text) ?? []) {
      taken = reach(tokens, at, entry);
      if (taken > 0) {
        const { sense } = entry;
        const isOr =
          sense.is === 'filler' &&
          'or' in sense &&
          joinsAlike(pieces.at(-1), withSenses(tokens.slice(at + 1, at + 2), lexicon)[0]);
        pieces.push({
          ...token,
          kind: 'word',
          text: entry.words.join(' '),
          sense: isOr ? { is: 'or' } : sense,
        });
        break;
      }
    }
    if (taken === 0) pieces.push(token);
    at += Math.max(1, taken);
  }
  return pieces;
}
