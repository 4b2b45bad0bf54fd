/** What ends in one s and is one thing; any other word that does is taken for a plural already: minutes, accounts. */
const ONE_IN_S = /(?:atlas|abacus|canvas|lens|bus)$/;

/**
 * Several of them, in English, where that follows the rules: bank books, bodies, boxes; orders of service. Irregular
 * plurals stand in the tables.
 */
export function pluralOf(words: string): string {
  const [head = '', ...rest] = words.split(/(?= (?:of|for|in|on|under) )/);
  return [pluralOfWord(head), ...rest].join('');
}

function pluralOfWord(word: string): string {
  if (/[^s]s$/.test(word) && !ONE_IN_S.test(word)) return word;
  if (/[^aeiou]y$/.test(word)) return `${word.slice(0, -1)}ies`;
  return `${word}${/(?:s|x|ch|sh)$/.test(word) ? 'es' : 's'}`;
}

/** A word for one thing, for several of it, and other spellings of the latter, all in small letters. */
export interface WordForms {
  one: string;
  many: string;
  alsoMany: readonly string[];
}

/** Reads an entry of a table: `violin`, or `knife/knives`, or `scarf/scarves/scarfs` where the plural is irregular. */
export function wordForms(entry: string): WordForms {
  const [one = '', many = pluralOf(one), ...alsoMany] = entry.split('/');
  return { one, many, alsoMany };
}
