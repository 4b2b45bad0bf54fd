import { USAGE, type WordRow } from './word-row.ts';

/** The first to fifth of something in languages other than English, whose numerals stand with those of centuries. */
const NTH: readonly Readonly<Record<string, string>>[] = [
  {
    de: 'erste|erster|ersten',
    fr: 'premier',
    es: 'primer|primero',
    it: 'prima|primo',
    nl: 'eerste',
    nb: 'forste',
    sv: 'forsta',
    da: 'forste',
  },
  {
    de: 'zweite|zweiter|zweiten',
    fr: 'deuxieme',
    es: 'segundo',
    it: 'seconda|secondo',
    nl: 'tweede',
    nb: 'andre',
    sv: 'andra',
    da: 'anden',
  },
  {
    de: 'dritte|dritter|dritten',
    fr: 'troisieme',
    es: 'tercer|tercero',
    it: 'terza|terzo',
    nl: 'derde',
    nb: 'tredje',
    sv: 'tredje',
    da: 'tredje',
  },
  {
    de: 'vierte|vierter|vierten',
    fr: 'quatrieme',
    es: 'cuarto',
    it: 'quarta|quarto',
    nl: 'vierde',
    nb: 'fjerde',
    sv: 'fjarde',
    da: 'fjerde',
  },
  {
    de: 'funfte|funfter|funften',
    fr: 'cinquieme',
    es: 'quinto',
    it: 'quinta|quinto',
    nl: 'vijfde',
    nb: 'femte',
    sv: 'femte',
    da: 'femte',
  },
];

const each = (nths: string, part: string) =>
  nths
    .split('|')
    .map((nth) => `${nth} ${part}`)
    .join('|');

/** Halves, by how each language counts them; the full stop of "2. Hälfte" needs no saying. */
const HALVES: readonly Readonly<Record<string, string>>[] = [
  {
    de: each('erste|ersten|1', 'halfte'),
    fr: each('premiere|1re|1ere', 'moitie'),
    es: each('primera|1a', 'mitad'),
    it: each('prima|1a', 'meta'),
    nl: each('eerste|1e', 'helft'),
    nb: each('forste|1', 'halvdel'),
    sv: each('forsta|1', 'halften'),
    da: each('forste|1', 'halvdel'),
  },
  {
    de: each('zweite|zweiten|2', 'halfte'),
    fr: each('deuxieme|seconde|2e|2eme', 'moitie'),
    es: each('segunda|2a', 'mitad'),
    it: each('seconda|2a', 'meta'),
    nl: each('tweede|2e', 'helft'),
    nb: each('andre|siste|2', 'halvdel'),
    sv: each('andra|senare|2', 'halften'),
    da: each('anden|sidste|2', 'halvdel'),
  },
];

/** What is counted: days of the week in a month ("second Sunday"), and halves of a year, decade or century. */
export const NTH_WORDS: readonly WordRow[] = [
  ...NTH.map((words, index) => ({
    sense: { is: 'ordinal' as const, value: index + 1 },
    words,
    source: USAGE,
  })),
  {
    sense: { is: 'last' },
    words: {
      en: 'last',
      de: 'letzte|letzter|letzten',
      fr: 'dernier',
      es: 'ultimo',
      it: 'ultima|ultimo',
      nl: 'laatste',
      nb: 'siste',
      sv: 'sista',
      da: 'sidste',
    },
    source: USAGE,
  },
  ...HALVES.map((words, index) => ({
    sense: { is: 'fraction' as const, fraction: { nth: index + 1, of: 2 as const, rough: false } },
    words,
    source: USAGE,
  })),
];
