/** Words that tell nobody what a thing is. A title of nothing but these, of numbers and of small words says nothing. */
export interface VagueWords {
  words: readonly string[];
  source: string;
}

const P = 'common practice';

/** Extend it a row at a time; small letters, without points or apostrophes, singular and plural both. */
export const VAGUE_WORDS: readonly VagueWords[] = [
  { words: ['misc', 'miscellaneous', 'miscellany', 'various', 'varia', 'assorted', 'mixed'], source: P },
  {
    words: ['stuff', 'thing', 'things', 'item', 'items', 'odds', 'ends', 'bits', 'pieces', 'junk'],
    source: P,
  },
  {
    words: ['unknown', 'unidentified', 'untitled', 'unnamed', 'unsorted', 'unlabelled', 'unlabeled'],
    source: P,
  },
  {
    words: ['other', 'others', 'rest', 'remainder', 'etc', 'more', 'sundry', 'sundries', 'oddments'],
    source: P,
  },
  { words: ['todo', 'tbd', 'tba', 'n', 'na', 'xxx', 'nothing', 'something', 'whatever'], source: P },
  { words: ['paper', 'papers', 'material', 'materials', 'memorabilia', 'ephemera', 'keepsakes'], source: P },
  // Where a thing lies is no word on what it is, and changes.
  {
    words: ['box', 'boxes', 'folder', 'folders', 'drawer', 'drawers', 'carton', 'cartons', 'binder'],
    source: P,
  },
  { words: ['bundle', 'bundles', 'packet', 'packets', 'pile', 'piles', 'lot', 'lots', 'batch'], source: P },
  // Languages in which families keep such lists; from memory.
  {
    words: ['diverse', 'verschiedenes', 'sonstiges', 'unbekannt', 'divers', 'inconnu'],
    source: 'from memory',
  },
  {
    words: ['diverses', 'autres', 'varios', 'vario', 'desconocido', 'ukjent', 'blandet'],
    source: 'from memory',
  },
];

/** Words that may stand in any title and say nothing by themselves. */
export const SMALL_WORDS: VagueWords = {
  words: [
    'a',
    'an',
    'the',
    'of',
    'and',
    'in',
    'from',
    'with',
    'some',
    'old',
    'new',
    'no',
    'nr',
    'number',
    'to',
    'for',
  ],
  source: P,
};
