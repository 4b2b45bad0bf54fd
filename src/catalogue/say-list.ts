/** Several words in one sentence: A, B and C. Blank where there are none. */
export function sayList(words: readonly string[], joint: 'and' | 'or' = 'and'): string {
  const [last = ''] = words.slice(-1);
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} ${joint} ${last}`;
}
