import { nearest } from '../catalogue/nearest.ts';
import type { Index } from './open-index.ts';
import type { Unit } from './question.ts';

/** A word that is in the list, for one that is not. */
export interface Proposal {
  typed: string;
  /** In small letters and without accents. */
  nearest: string;
}

/** The nearest word of the list for each word that it does not have, where one is near enough to have been meant. */
export function proposalsFor(index: Index, unknown: readonly Unit[]): Proposal[] {
  const words = unknown.flatMap(({ typed, words }) => words.map((word) => ({ typed, word })));
  if (words.length === 0) return [];
  const known: string[] = [];
  const cursor = index.terms.from('a');
  while (cursor.next()) known.push(cursor.term().word);
  return words.flatMap(({ typed, word }) => {
    const near = nearest(word, known);
    return near === undefined || near === word ? [] : [{ typed, nearest: near }];
  });
}
