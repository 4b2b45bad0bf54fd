import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { fold } from '../../src/catalogue/fold.ts';
import { COLUMNS, type Column } from '../../src/catalogue/thing.ts';
import { localeOf } from '../../src/dates/month-names.ts';
import { columnOf, comparable } from '../../src/intake/columns.ts';
import { EVERYDAY_HEADINGS } from '../../src/intake/headings.ts';
import { HEADINGS_ABROAD, languagesOfHeadings } from '../../src/intake/headings-abroad.ts';
import { KINDS } from '../../src/kinds/kinds.ts';
import { KINDS_ABROAD } from '../../src/kinds/kinds-abroad.ts';

const abroad = Object.entries(HEADINGS_ABROAD).flatMap(([language, columns]) =>
  COLUMNS.flatMap((column) => (columns[column] ?? []).map((word) => ({ language, column, word }))),
);

describe('headings in other languages', () => {
  it('name in each language every column that a list of old papers needs', () => {
    const needed: readonly Column[] = [
      'title',
      'date',
      'kind',
      'people',
      'place',
      'description',
      'quantity',
      'note',
    ];
    const missing = Object.entries(HEADINGS_ABROAD).flatMap(([language, columns]) =>
      needed
        .filter((column) => (columns[column] ?? []).length === 0)
        .map((column) => `${language}: ${column}`),
    );
    expect(missing, 'These columns need a word in src/intake/headings-abroad.ts').toEqual([]);
  });

  it('are each of a language with a code', () => {
    const without = Object.keys(HEADINGS_ABROAD).filter((language) => {
      const others = new Set(abroad.filter((one) => one.language !== language).map(({ word }) => word));
      const own = abroad.filter((one) => one.language === language && !others.has(one.word));
      return languagesOfHeadings(own.map(({ word }) => word)).length === 0;
    });
    expect(without, 'These need a code in CODES of src/intake/headings-abroad.ts').toEqual([]);
  });

  it('are of the languages that README names', () => {
    const names = new Intl.DisplayNames('en', { type: 'language' });
    const codes = languagesOfHeadings(abroad.map(({ word }) => word));
    const languages = ['English', ...codes.map((code) => names.of(localeOf(code) ?? code) ?? code)];
    const said = /^Headings are understood in (.+)\.$/m.exec(readFileSync('README.md', 'utf8'))?.[1];
    expect(
      said?.split(/, | and /).sort(),
      'README.md, “Columns of the list”, is to name these in the sentence “Headings are understood in …”',
    ).toEqual(languages.sort());
  });

  it('are written as they are compared', () =>
    expect(abroad.filter(({ word }) => comparable(word) !== word)).toEqual([]));

  it('mean one column each, in whichever language, and never another than in English', () => {
    const meanings = new Map<string, Set<Column>>();
    const add = (word: string, column: Column) =>
      meanings.set(word, (meanings.get(word) ?? new Set()).add(column));
    for (const { word, column } of abroad) add(word, column);
    for (const column of COLUMNS)
      for (const word of [column, ...EVERYDAY_HEADINGS[column]]) add(word, column);
    expect([...meanings].filter(([, columns]) => columns.size > 1)).toEqual([]);
  });

  // What the words mean, by any dictionary.
  it.each<[string, Column]>([
    ['Lfd. Nr.', 'number'],
    ['Bezeichnung', 'title'],
    ['Größe', 'size'],
    ['N° d’ordre', 'number'],
    ['Année', 'date'],
    ['Où', 'place'],
    ['Título', 'title'],
    ['Año', 'date'],
    ['¿Quién?', 'people'],
    ['Località', 'place'],
    ['Quantità', 'quantity'],
    ['Omschrijving', 'description'],
    ['Aantal', 'quantity'],
    ['Løpenummer', 'number'],
    ['År', 'date'],
    ['Språk', 'language'],
  ])('%s means %s', (heading, column) => expect(columnOf(heading)).toBe(column));

  it('tell the language of dates, two of them at least', () => {
    expect(languagesOfHeadings(['titel', 'jahr'])).toContain('ger');
    expect(languagesOfHeadings(['jahr', 'title'])).toEqual([]);
    expect(languagesOfHeadings(['title', 'date', 'note', 'description'])).toEqual([]);
  });
});

describe('kinds in other languages', () => {
  it('are kinds that there are', () => {
    const known = new Set(KINDS.map(({ one }) => one));
    expect(KINDS_ABROAD.filter(({ kind }) => !known.has(kind))).toEqual([]);
  });

  it('stand once each, and in the place of no English word of another kind', () => {
    const words = KINDS_ABROAD.flatMap(({ kind, one, many }) =>
      [...one, ...many].map((word) => ({ word: fold(word), kind })),
    );
    const english = KINDS.flatMap(({ one, many, also }) =>
      [one, many, ...also].map((word) => ({ word: fold(word), kind: one })),
    );
    const clashes = words.flatMap(({ word, kind }) =>
      [...words, ...english]
        .filter((other) => other.word === word && other.kind !== kind)
        .map((other) => `“${word}” stands with “${kind}” and with “${other.kind}”`),
    );
    expect(clashes, 'Take these out of src/kinds/kinds-abroad.ts').toEqual([]);
  });
});
