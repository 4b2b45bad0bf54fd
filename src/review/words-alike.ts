/** Words that are a letter or two apart and yet no slip of each other. */
interface WordsAlike {
  words: readonly string[];
  source: string;
}

const P = 'common practice';

/** Extend it a row at a time. Words that begin with different letters are never taken for slips, nor is a plural in -s. */
export const WORDS_ALIKE: readonly WordsAlike[] = [
  { words: ['woman', 'women'], source: P },
  { words: ['grandmother', 'grandfather'], source: P },
  { words: ['grandmothers', 'grandfathers'], source: P },
  { words: ['stepmother', 'stepfather'], source: P },
  { words: ['sixth', 'sixty'], source: P },
  { words: ['seventh', 'seventy'], source: P },
  { words: ['eighth', 'eighty'], source: P },
  { words: ['ninth', 'ninety'], source: P },
  { words: ['thirteen', 'thirteenth'], source: P },
  { words: ['fourteen', 'fourteenth'], source: P },
  { words: ['fifteen', 'fifteenth'], source: P },
  { words: ['sixteen', 'sixteenth'], source: P },
  { words: ['seventeen', 'seventeenth'], source: P },
  { words: ['eighteen', 'eighteenth'], source: P },
  { words: ['nineteen', 'nineteenth'], source: P },
  { words: ['from', 'form'], source: P },
  { words: ['there', 'three', 'these', 'those'], source: P },
  { words: ['front', 'frost'], source: P },
  { words: ['house', 'horse', 'hours'], source: P },
  { words: ['ferry', 'fairy'], source: P },
  { words: ['march', 'marsh'], source: P },
  { words: ['sent', 'send', 'seen'], source: P },
  { words: ['when', 'went', 'were', 'where'], source: P },
  { words: ['boat', 'boot', 'boats', 'boots'], source: P },
  { words: ['bridge', 'bride', 'brides'], source: P },
  { words: ['letter', 'later', 'latter'], source: P },
];
