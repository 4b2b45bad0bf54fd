const HOLDING = 'bundle packet pack set pile batch lot box envelope folder'.split(' ');

const inBothNumbers = (word: string) => `${word}(?:${/(?:x|ch)$/.test(word) ? 'es' : 's'})?`;

/**
 * A pattern for words that say what holds things, and what things: "bundle of letters", "2 boxes of slides". Its groups
 * are the two.
 * @param more words, in the singular, for what holds things here beside what always does, parted by blanks
 */
export function heldIn(more = ''): RegExp {
  const words = [...HOLDING, ...more.split(' ').filter((word) => word !== '')].map(inBothNumbers);
  return new RegExp(`^(?:(?:an?|one|the|\\d+) )?(${words.join('|')}) of (.+)$`, 'i');
}
