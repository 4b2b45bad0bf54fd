import { wordsInCommon } from '../review/plain-words.ts';

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
