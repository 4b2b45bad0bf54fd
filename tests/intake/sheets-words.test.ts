import { describe, expect, it } from 'vitest';
import { fold } from '../../src/catalogue/fold.ts';
import { COLUMNS, type Column } from '../../src/catalogue/thing.ts';
import { columnOf, comparable } from '../../src/intake/columns.ts';
import { EVERYDAY_HEADINGS } from '../../src/intake/headings.ts';
import { HEADINGS_ABROAD, languagesOfHeadings } from '../../src/intake/headings-abroad.ts';
import { KINDS } from '../../src/kinds/kinds.ts';
import { KINDS_ABROAD } from '../../src/kinds/kinds-abroad.ts';

const abroad = Object.entries(HEADINGS_ABROAD).flatMap(([language, columns]) =>
  COLUMNS.flatMap((column) => (columns[column] ?? []).map((word) => ({ language, column, word }))),
);

describe('headings in other languages', () => {
  it('are of six languages, and name every column in each that a list of old papers needs', () => {
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
    expect(Object.keys(HEADINGS_ABROAD)).toHaveLength(6);
    for (const columns of Object.values(HEADINGS_ABROAD)) {
      expect(needed.filter((column) => (columns[column] ?? []).length === 0)).toEqual([]);
    }
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
      [...one, ...many].map((word) => [fold(word), kind]),
    );
    const english = KINDS.flatMap(({ one, many, also }) =>
      [one, many, ...also].map((word) => [fold(word), one]),
    );
    const kinds = new Map<string, Set<string>>();
    for (const [word = '', kind = ''] of [...words, ...english])
      kinds.set(word, (kinds.get(word) ?? new Set()).add(kind));
    expect([...kinds].filter(([, of]) => of.size > 1)).toEqual([]);
  });
});
