import { expect, test } from 'vitest';
import { housingSettings } from '../../src/catalogue/housing-settings.ts';
import { partFolder } from '../../src/housing/part-folder.ts';
import { pieceOf } from '../../src/housing/piece.ts';
import { stockFrom } from '../../src/housing/stock.ts';
import { readKind } from '../../src/kinds/kind-words.ts';
import { finderOfHazards } from '../../src/review/danger-found.ts';
import { DANGER_WORDS } from '../../src/review/danger-words.ts';
import { THING_WORDS_ABROAD } from '../../src/review/danger-words-abroad.ts';
import { STATE_WORDS_ABROAD } from '../../src/review/danger-words-abroad-state.ts';
import { someThing } from '../support/catalogue.ts';

// What is dangerous must not come between papers because the tables of kinds do not know the word for it.

/** How a thing is, and not what it is; paper can be so too. */
const QUALITIES = new Set([
  ...['arsenic green', 'arsenical green', 'arsenical cloth', 'green with arsenic', "scheele's green"],
  ...['emerald green wallpaper', 'luminous', 'luminous hands', 'luminous figures', 'luminous numerals'],
  ...['glows in the dark', 'glow in the dark', 'taxidermied', 'stuffed and mounted'],
]);
const hazardsOf = finderOfHazards(DANGER_WORDS);
const stock = stockFrom(housingSettings.parse({}), 'NO');
const isApart = (kind: string) => {
  const { parts, apart } = partFolder([pieceOf(someThing({ row: 2, kind }))], stock);
  return parts.length === 0 && apart.every(({ shelf }) => !['papers', 'volumes', 'oversize'].includes(shelf));
};

const abroad = new Set([...THING_WORDS_ABROAD, ...STATE_WORDS_ABROAD]);
const ofKind = DANGER_WORDS.filter(({ columns }) => columns.includes('kind'));
const words = ofKind.filter((row) => !abroad.has(row)).flatMap((row) => row.words);

test.each(words.filter((word) => !QUALITIES.has(word)))(
  '%s in the column of kinds is a kind, and lies apart from paper',
  (word) => {
    expect(readKind(word)).toBeDefined();
    expect(isApart(word)).toBe(true);
  },
);

// The tables of kinds hold few words of other languages; what they do not know must not keep a danger from being seen.
test.each(
  ofKind
    .filter((row) => abroad.has(row))
    .flatMap(({ hazard, words }) => words.map((word) => [word, hazard] as const)),
)('%s in the column of kinds is %s, whether or not the word is a kind', (word, hazard) => {
  expect([...hazardsOf(someThing({ row: 2, kind: word })).keys()]).toContain(hazard);
});

test('every quality is a word of the tables', () => {
  expect([...QUALITIES].filter((word) => !words.includes(word))).toEqual([]);
});

// Film is known by patterns, not by a table of words. The words are those that families write, from memory.
const FILM = [
  ...[
    'negs',
    'neg',
    'Negs',
    'film negs',
    'old negs',
    'box of negs',
    'strip of negatives',
    'strips of negs',
    'neg strips',
  ],
  ...[
    'negatives',
    '12 strips of negatives',
    'nitrate negs',
    'negs, nitrate',
    'colour negatives',
    'photo negatives',
  ],
  ...[
    'glass negs',
    'negatives, glass',
    'negs on glass',
    'glass plates',
    'lantern slides',
    'glass slides',
    'ambrotypes',
  ],
  ...[
    'cine film',
    'cine films',
    'cine',
    'movie reels',
    'home movie',
    'reels of film',
    'reel of old film',
    'can of film',
  ],
  ...['nitrate film', 'film', '16 mm film'],
];
test.each(FILM)('“%s” is film or glass for the rules on danger, and for housing', (kind) => {
  const found = [...hazardsOf(someThing({ row: 2, kind })).keys()];
  expect(found.some((hazard) => /^(?:nitrate|acetate|glass)/.test(hazard))).toBe(true);
  expect(isApart(kind)).toBe(true);
});

test('a letter, a print and an album lie on paper still', () => {
  expect(['letter', 'photograph', 'legal paper', 'letters about the negatives'].filter(isApart)).toEqual([]);
});
