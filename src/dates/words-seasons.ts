import type { Sense } from './senses.ts';
import { simple, USAGE, type WordRow } from './word-row.ts';

const part = (nth: number, of: 2 | 3 | 4, rough = false): Sense => ({
  is: 'fraction',
  fraction: { nth, of, rough },
});

/** Seasons, and parts of a month, year, decade or century. */
export const SEASON_WORDS: readonly WordRow[] = [
  {
    sense: { is: 'season', code: 21 },
    words: {
      en: 'spring|springtime',
      de: 'fruhling|fruhjahr',
      fr: 'printemps',
      es: 'primavera',
      it: 'primavera',
      nl: 'lente|voorjaar',
      nb: 'var|varen',
      sv: 'var|varen',
      da: 'forar',
    },
    source: 'ISO 8601-2, 4.8',
  },
  {
    sense: { is: 'season', code: 22 },
    words: {
      en: 'summer|summertime|summer holidays',
      de: 'sommer',
      fr: 'ete',
      es: 'verano',
      it: 'estate',
      nl: 'zomer',
      nb: 'sommer|sommeren',
      sv: 'sommar|sommaren',
      da: 'sommer',
    },
    source: 'ISO 8601-2, 4.8',
  },
  {
    sense: { is: 'season', code: 23 },
    words: {
      en: 'autumn|fall',
      de: 'herbst',
      fr: 'automne',
      es: 'otono',
      it: 'autunno',
      nl: 'herfst|najaar',
      nb: 'host|hosten',
      sv: 'host|hosten',
      da: 'efterar',
    },
    source: 'ISO 8601-2, 4.8',
  },
  {
    sense: { is: 'season', code: 24 },
    words: {
      en: 'winter|wintertime',
      de: 'winter',
      fr: 'hiver',
      es: 'invierno',
      it: 'inverno',
      nl: 'winter',
      nb: 'vinter|vinteren',
      sv: 'vinter|vintern',
      da: 'vinter',
    },
    source: 'ISO 8601-2, 4.8',
  },
  ...['northern', 'southern'].flatMap((half, index) =>
    ['spring', 'summer', 'autumn', 'winter'].map((name, season) => ({
      sense: { is: 'season' as const, code: 25 + 4 * index + season },
      words: { en: `${half} ${name}` },
      source: 'ISO 8601-2, 4.8',
    })),
  ),
  {
    sense: part(1, 3, true),
    words: {
      en: 'early|the early|beginning of|the beginning of|start of|the start of|at the start of|at the beginning of',
      de: 'anfang|fruhe',
      fr: 'debut|debut de',
      nb: 'tidlig|tidlig i|tidlig pa|begynnelsen av|starten av',
      sv: 'tidigt|borjan av',
      nl: 'begin',
      es: 'principios de',
      it: 'inizio',
    },
    source: USAGE,
  },
  {
    sense: part(2, 3, true),
    words: {
      en: 'mid|middle|the mid|the middle of|middle of|in the middle of',
      de: 'mitte',
      fr: 'milieu|milieu de|mi',
      nb: 'midten av|midt pa|midt i',
      sv: 'mitten av|mitten pa',
      nl: 'midden',
      es: 'mediados de',
      it: 'meta',
    },
    source: USAGE,
  },
  {
    sense: part(3, 3, true),
    words: {
      en: 'late|the late|end of|the end of|at the end of|latter part of',
      de: 'ende|spate',
      fr: 'fin|fin de',
      nb: 'sent i|sent pa|slutten av',
      sv: 'slutet av',
      nl: 'eind|einde',
      es: 'finales de|fines de',
      it: 'fine',
    },
    source: USAGE,
  },
  ...(['first|1st', 'second|2nd|latter|last'] as const).map((words, index) => ({
    sense: part(index + 1, 2),
    words: {
      en: words
        .split('|')
        .map((word) => `${word} half|the ${word} half`)
        .join('|'),
    },
    source: USAGE,
  })),
  ...(['first|1st', 'second|2nd', 'third|3rd', 'fourth|4th|last'] as const).map((words, index) => ({
    sense: part(index + 1, 4),
    words: {
      en: words
        .split('|')
        .map((word) => `${word} quarter|the ${word} quarter`)
        .join('|'),
    },
    source: USAGE,
  })),
  ...(['first', 'second|middle', 'last'] as const).map((words, index) => ({
    sense: part(index + 1, 3),
    words: {
      en: words
        .split('|')
        .map((word) => `${word} third|the ${word} third`)
        .join('|'),
    },
    source: USAGE,
  })),
  { sense: simple('quarterLetter'), words: { en: 'q' }, source: USAGE },
  {
    sense: simple('quarterWord'),
    words: {
      en: 'quarter|qtr',
      de: 'quartal',
      fr: 'trimestre',
      es: 'trimestre',
      it: 'trimestre',
      nl: 'kwartaal',
      nb: 'kvartal',
      sv: 'kvartal',
      da: 'kvartal',
    },
    source: USAGE,
  },
];
