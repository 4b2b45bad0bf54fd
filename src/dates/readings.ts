import type { Piece } from './pieces.ts';
import { type Attempt, attempt } from './read-phrase.ts';
import type { DateContext } from './reading.ts';

/** Readings tried of one phrase at most. */
const MOST_READINGS = 24;

/** A reading that gave a date, and the answers that led to it. */
export interface Found {
  attempt: Attempt;
  edtf: string;
  choices: ReadonlyMap<string, number>;
}

/** All readings of a phrase, one for every combination of answers to what it leaves open. */
export function readings(pieces: readonly Piece[], context: DateContext): { found: Found[]; reason: string } {
  const found: Found[] = [];
  let reason: string | undefined;
  const waiting: ReadonlyMap<string, number>[] = [new Map()];
  for (let tried = 0; tried < MOST_READINGS && tried < waiting.length; tried++) {
    const choices = waiting[tried] ?? new Map();
    const one = attempt(pieces, context, choices);
    if (one.edtf !== undefined) found.push({ attempt: one, edtf: one.edtf, choices });
    else reason ??= one.reason;
    for (const [question, options] of one.asked) {
      if (choices.has(question)) continue;
      // The first reading answers every question with its first option; each other answer opens a reading of its own.
      for (let option = 1; option < options; option++)
        waiting.push(withAnswer(choices, one.asked, question, option));
    }
  }
  return { found, reason: reason ?? 'It is not understood.' };
}

function withAnswer(
  choices: ReadonlyMap<string, number>,
  asked: ReadonlyMap<string, number>,
  question: string,
  option: number,
) {
  const next = new Map(choices);
  // Questions before this one keep their answer, so that no combination comes twice.
  for (const earlier of asked.keys()) {
    if (earlier === question) break;
    if (!next.has(earlier)) next.set(earlier, 0);
  }
  return next.set(question, option);
}
