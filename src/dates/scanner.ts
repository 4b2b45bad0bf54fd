import type { Piece } from './pieces.ts';
import type { DateContext } from './reading.ts';
import type { Sense } from './senses.ts';

/** A phrase while it is read: where the reading stands, what it had to choose, and what it has to say. */
export interface Scanner {
  readonly pieces: readonly Piece[];
  at: number;
  readonly context: DateContext;
  /** Which of the options of a question is tried in this reading. */
  readonly choices: ReadonlyMap<string, number>;
  /** The questions that came up, each with its number of options. */
  readonly asked: Map<string, number>;
  readonly notes: string[];
  /** Why the phrase cannot be read; the first reason counts. */
  reason: string | undefined;
}

export const scannerOf = (
  pieces: readonly Piece[],
  context: DateContext,
  choices: ReadonlyMap<string, number>,
): Scanner => ({ pieces, at: 0, context, choices, asked: new Map(), notes: [], reason: undefined });

export const peek = (s: Scanner, ahead = 0): Piece | undefined => s.pieces[s.at + ahead];
export const senseAt = (s: Scanner, ahead = 0): Sense | undefined => peek(s, ahead)?.sense;
export const isSign = (s: Scanner, text: string, ahead = 0): boolean => {
  const piece = peek(s, ahead);
  return piece?.kind === 'sign' && piece.text === text;
};

/** Goes on if the next piece is this sign. */
export function takeSign(s: Scanner, text: string): boolean {
  if (!isSign(s, text)) return false;
  s.at++;
  return true;
}

/** Goes on if the next piece has this sense. */
export function takeSense<K extends Sense['is']>(s: Scanner, is: K): Extract<Sense, { is: K }> | undefined {
  const sense = senseAt(s);
  if (sense?.is !== is) return undefined;
  s.at++;
  return sense as Extract<Sense, { is: K }>;
}

/** Whether the next piece is a number, glued to the one before if so asked, of one of these lengths. */
export function numberAt(s: Scanner, ahead: number, ...lengths: readonly number[]): string | undefined {
  const piece = peek(s, ahead);
  return piece?.kind === 'number' && lengths.includes(piece.text.length) ? piece.text : undefined;
}

/** Notes why the phrase cannot be read, and gives nothing. */
export function fail(s: Scanner, reason: string): undefined {
  s.reason ??= reason;
  return undefined;
}

/** Answers a question that the phrase leaves open; every answer is tried in a reading of its own. */
export function choose<T>(s: Scanner, question: string, options: readonly [T, ...T[]]): T {
  s.asked.set(question, options.length);
  return options[s.choices.get(question) ?? 0] ?? options[0];
}
