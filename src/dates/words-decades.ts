import { simple, USAGE, type WordRow } from './word-row.ts';

const NORDIC = ['tjue', 'tretti', 'forti', 'femti', 'seksti', 'sytti', 'atti', 'nitti'];
const SWEDISH = ['tjugo', 'trettio', 'fyrtio', 'femtio', 'sextio', 'sjuttio', 'attio', 'nittio'];
const DANISH =
  'tyverne|trediverne|fyrrerne|halvtredserne|tresserne|halvfjerdserne|firserne|halvfemserne'.split('|');
const GERMAN = [
  'zwanziger',
  'dreissiger',
  'vierziger',
  'funfziger',
  'sechziger',
  'siebziger',
  'achtziger',
  'neunziger',
];
const DUTCH = ['twintig', 'dertig', 'veertig', 'vijftig', 'zestig', 'zeventig', 'tachtig', 'negentig'];
const FRENCH = 'vingt|trente|quarante|cinquante|soixante|soixante dix|quatre vingt|quatre vingt dix'.split(
  '|',
);
const SPANISH = ['veinte', 'treinta', 'cuarenta', 'cincuenta', 'sesenta', 'setenta', 'ochenta', 'noventa'];
const ITALIAN = ['venti', 'trenta', 'quaranta', 'cinquanta', 'sessanta', 'settanta', 'ottanta', 'novanta'];
const ENGLISH = 'twenties|thirties|forties|fifties|sixties|seventies|eighties|nineties'.split('|');

/** The decades from the twenties to the nineties. */
const DECADES = ENGLISH.map((en, index) => ({
  en,
  de: `${GERMAN[index]}|${GERMAN[index]} jahre|${GERMAN[index]} jahren`,
  fr: `annees ${FRENCH[index]}`,
  es: `anos ${SPANISH[index]}`,
  it: `anni ${ITALIAN[index]}`,
  nl: `jaren ${DUTCH[index]}`,
  nb: `${NORDIC[index]}arene|${NORDIC[index]}ara|${NORDIC[index]}tallet`,
  sv: `${SWEDISH[index]}talet`,
  da: `${DANISH[index]}`,
}));

/** Decades and centuries in words, and the numerals that go with them. */
export const DECADE_WORDS: readonly WordRow[] = [
  ...DECADES.map((words, index) => ({
    sense: { is: 'decade' as const, tens: index + 2 },
    words,
    source: USAGE,
  })),
  ...['thirteen', 'fourteen', 'fifteen', 'sixteen', 'seventeen', 'eighteen', 'nineteen'].map(
    (word, index) => ({
      sense: { is: 'hundreds' as const, value: index + 13 },
      words: { en: word },
      source: USAGE,
    }),
  ),
  ...'first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|eleventh|twelfth|thirteenth|fourteenth|fifteenth|sixteenth|seventeenth|eighteenth|nineteenth|twentieth|twenty first'
    .split('|')
    .map((word, index) => ({
      sense: { is: 'ordinal' as const, value: index + 1 },
      words: { en: word },
      source: USAGE,
    })),
  {
    sense: simple('century'),
    words: {
      en: 'century|cent|centuries',
      de: 'jahrhundert|jahrhunderts|jh|jhs|jhdt|jhd',
      fr: 'siecle',
      es: 'siglo',
      it: 'secolo',
      nl: 'eeuw',
      nb: 'arhundre',
      sv: 'arhundradet',
      da: 'arhundrede',
    },
    source: USAGE,
  },
  {
    sense: { is: 'decadeTail' },
    words: { en: 's', de: 'er|er jahre', nb: 'tallet|arene|ara', sv: 'tal|talet', da: 'tallet|erne' },
    source: USAGE,
  },
  {
    sense: { is: 'decadeHead' },
    words: { en: 'decade of', fr: 'annees', es: 'anos|decada de|decada de los', it: 'anni', nl: 'jaren' },
    source: USAGE,
  },
  { sense: simple('hundredWord'), words: { en: 'hundreds' }, source: USAGE },
];
