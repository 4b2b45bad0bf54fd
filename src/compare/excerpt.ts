/** In UTF-16 units: a text that is longer is told by the part that changed. */
const LONG = 120;
/** In words: how much stands before and behind what changed. */
const AROUND = 6;

/** Two texts on one line each, of long ones only what differs with a few words around it. */
export function excerpts(was: string, now: string): [was: string, now: string] {
  const [one, other] = [wordsOf(was), wordsOf(now)];
  if (was.length <= LONG && now.length <= LONG) return [one.join(' '), other.join(' ')];
  const most = Math.min(one.length, other.length);
  let before = 0;
  while (before < most && one[before] === other[before]) before++;
  let behind = 0;
  while (behind < most - before && one.at(-1 - behind) === other.at(-1 - behind)) behind++;
  // Only the blanks between the words differ.
  if (before === one.length && before === other.length) return [was, now];
  const part = (words: readonly string[]) => {
    const from = Math.max(0, before - AROUND);
    const to = Math.min(words.length, words.length - behind + AROUND);
    return `${from > 0 ? '… ' : ''}${words.slice(from, to).join(' ')}${to < words.length ? ' …' : ''}`;
  };
  return [part(one), part(other)];
}

const wordsOf = (text: string): string[] => text.split(/\s+/).filter((word) => word !== '');
