import { addTo } from '../catalogue/add-to.ts';
import { fold } from '../catalogue/fold.ts';

/** A word of a table, met in a text. */
export interface Met<Row> {
  row: Row;
  /** The text as it was searched: without capitals and accents. */
  text: string;
  /** Where the word begins in that text, and where it ends. */
  at: number;
  end: number;
}

const none: never[] = [];
const ASCII = /^\p{ASCII}*$/u;

/** Without capitals and accents. A hundred thousand rows have texts of their own, nearly all of them in plain letters. */
export function searchable(text: string): string {
  return ASCII.test(text) ? text.toLowerCase() : fold(text.replaceAll('’', "'"));
}

// "paper-clip", and a phrase that a line break parts, are the same words.
const joined = (word: string) => word.replace(/[\s-]+/g, ' ');

/** The words as a regular expression: the longest first, and parted by their first letter, which makes it twice as quick. */
function patternOf(words: readonly string[]): string {
  const literal = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replaceAll(' ', '[\\s-]+');
  return [...new Set(words.map((word) => word.charAt(0)))]
    .map((letter) => {
      const those = words.filter((word) => word.startsWith(letter)).sort((a, b) => b.length - a.length);
      return `${literal(letter)}(?:${those.map((word) => literal(word.slice(1))).join('|')})`;
    })
    .join('|');
}

/**
 * Finds the words of a table in a text, as whole words, whatever their capitals and accents, and of several that begin
 * at one place the longest. One pass over the text, however many words there are.
 */
export function wordFinder<Row extends { words: readonly string[] }>(
  table: readonly Row[],
): (text: string) => readonly Met<Row>[] {
  const rows = new Map<string, Row[]>();
  for (const row of table) {
    for (const word of row.words) {
      const key = joined(searchable(word));
      addTo(rows, key, row);
    }
  }
  const words = patternOf([...rows.keys()]);
  // The edge of a word is found far quicker where there are plain letters only.
  const inPlain = new RegExp(`\\b(?:${words})\\b`, 'gu');
  const inAny = new RegExp(`(?<![\\p{L}\\p{N}])(?:${words})(?![\\p{L}\\p{N}])`, 'gu');

  return (written) => {
    const text = searchable(written);
    const pattern = ASCII.test(text) ? inPlain : inAny;
    pattern.lastIndex = 0;
    if (rows.size === 0 || !pattern.test(text)) return none;
    return [...text.matchAll(new RegExp(pattern))].flatMap((match) => {
      const found = { text, at: match.index, end: match.index + match[0].length };
      return (rows.get(joined(match[0])) ?? none).map((row) => ({ row, ...found }));
    });
  };
}
