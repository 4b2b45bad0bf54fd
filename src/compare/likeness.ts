import { plainWords } from '../review/plain-words.ts';

/** What two descriptions of perhaps one thing are compared by. */
interface Described {
  title: string;
  /** Its date, in one way of writing; undefined where it has none. */
  date?: string | undefined;
}

/**
 * Whether two descriptions that bear the same number may be of one thing. Two people who go on numbering the same list
 * give the same number to different things, so a number alone is not enough. The bounds are our own: a title may be
 * reworded by half while the date stays, or mended while the date is corrected.
 */
export function mayBeOne(one: Described, other: Described): boolean {
  const likeness = wordsInCommon(one.title, other.title);
  if (one.date === undefined || other.date === undefined) return likeness >= 0.5;
  return likeness >= (one.date === other.date ? 0.3 : 0.8);
}

/** The share of the words of two titles that both have, from 0 to 1. */
export function wordsInCommon(one: string, other: string): number {
  if (one === other) return 1;
  const [these, those] = [new Set(plainWords(one).split(' ')), new Set(plainWords(other).split(' '))];
  let common = 0;
  for (const word of these) if (those.has(word)) common++;
  return (2 * common) / (these.size + those.size);
}
