import { describe, expect, it } from 'vitest';
import { readDate } from '../../src/dates/index.ts';
import { lexiconOf } from '../../src/dates/lexicon.ts';
import { withSenses } from '../../src/dates/pieces.ts';
import { tokenise } from '../../src/dates/tokens.ts';
import { WORDS } from '../../src/dates/words.ts';

const LANGUAGES = [...new Set(WORDS.flatMap(({ words }) => Object.keys(words)))];

describe('the tables of words', () => {
  it('hold English, Latin and the languages in which README says that headings are understood', () =>
    expect(LANGUAGES.sort()).toEqual(['da', 'de', 'en', 'es', 'fr', 'it', 'la', 'nb', 'nl', 'sv']));

  // A word that another row has claimed first does nothing where it stands.
  it.each(LANGUAGES)('hold no word of %s that another row has claimed', (language) => {
    const lexicon = lexiconOf([language]);
    const dead = WORDS.flatMap(({ sense, words }) =>
      (words[language]?.split('|') ?? []).flatMap((word) => {
        const [piece, ...more] = withSenses(tokenise(word), lexicon);
        const found = more.length === 0 ? piece?.sense : undefined;
        // "Of" is English too: which of the two is meant, what stands about it tells.
        const asked = found !== undefined && 'or' in found && sense.is === 'or';
        return asked || JSON.stringify(found) === JSON.stringify(sense) ? [] : [word];
      }),
    );
    expect(dead).toEqual([]);
  });
});

// The form with the day first, in which no comma parts a day from its year, is the second opinion.
describe('an American list of days', () => {
  const days = [1, 5, 9, 10, 12, 28];
  const pairs = days.flatMap((one) => days.filter((other) => other > one).map((other) => [one, other]));

  it.each([
    ['May A, B and 30, 1950', 'A, B and 30 May 1950'],
    ['May A, B, and 30, 1950', 'A, B and 30 May 1950'],
    ['May A, B, 30, 1950', 'A, B, 30 May 1950'],
    ['May A-B and 30, 1950', 'A-B and 30 May 1950'],
    ['May A and B-30, 1950', 'A and B-30 May 1950'],
    ['May A, B or 30, 1950', 'A, B or 30 May 1950'],
    ['May A & B, 1950', 'A & B May 1950'],
    ['May A, B, 1950', 'A, B May 1950'],
  ])('%s is what %s is', (american, dayFirst) => {
    for (const [one, other] of pairs) {
      const put = (phrase: string) => phrase.replace('A', String(one)).replace('B', String(other));
      const reading = readDate(put(american));
      expect(reading, put(american)).toMatchObject({ kind: 'date', assumed: [] });
      expect(reading, put(american)).toEqual(readDate(put(dayFirst)));
    }
  });
});
