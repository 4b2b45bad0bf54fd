import { expect, test } from 'vitest';
import { WORDS } from '../../src/dates/words.ts';
import { LANGUAGES_OF_DATES } from '../../src/intake/date-languages.ts';
import { readList } from '../../src/intake/list.ts';

const adviceOn = (date: string, languages: string[] = []) => {
  const bytes = Buffer.from(`title,date\nA letter,"${date}"\n`);
  const { findings } = readList(bytes, 'list.csv', { dates: { languages } });
  return findings.find(({ rule }) => rule === 'list.date-unreadable')?.advice;
};

test.each([
  ['19. mars 1936', /Norwegian|Swedish/],
  ['høsten 1931', /Norwegian/],
  ['im Sommer 1931', /German/],
  ['printemps 1912', /French/],
])('%s is not read in English, and the advice names the language that would', (date, language) => {
  expect(adviceOn(date)).toMatch(language);
});

test('the languages are those that have words for joining dates', () => {
  const codes = new Set(WORDS.flatMap(({ words }) => Object.keys(words)));
  expect([...codes].filter((code) => code !== 'en' && code !== 'la').sort()).toEqual(
    Object.keys(LANGUAGES_OF_DATES).sort(),
  );
});

test('a language of the list is not named, and what no language reads gets the usual advice', () => {
  expect(adviceOn('im Sommer 1931', ['ger'])).toBeUndefined();
  expect(adviceOn('when the ferry sank')).toContain('Write it like 1962');
});
