import type { Feast } from './feast-days.ts';

const BCP = 'Book of Common Prayer (1662), tables of feasts';
const CUSTOM = 'common calendar';

/** Feasts on the same day every year, and Advent, which hangs on one of them. */
export const FIXED_FEASTS: readonly Feast[] = [
  {
    names: {
      en: 'christmas|christmas day|xmas|xmas day',
      de: 'weihnachten|1 weihnachtstag|erster weihnachtstag',
      fr: 'noel|jour de noel',
      es: 'navidad|dia de navidad',
      it: 'natale',
      nl: 'kerstmis|kerst|eerste kerstdag|1 kerstdag',
      nb: 'jul|julen|jula|1 juledag|forste juledag',
      sv: 'jul|julen|juldagen',
      da: 'jul|julen|1 juledag|forste juledag|juledag',
    },
    rule: { month: 12, day: 25 },
    source: BCP,
  },
  {
    names: {
      en: 'christmas eve|xmas eve',
      de: 'heiligabend|heilig abend',
      fr: 'veille de noel|reveillon de noel',
      es: 'nochebuena',
      it: 'vigilia di natale',
      nl: 'kerstavond',
      nb: 'julaften|julekvelden',
      sv: 'julafton',
      da: 'juleaften',
    },
    rule: { month: 12, day: 24 },
    source: CUSTOM,
  },
  {
    names: {
      en: "boxing day|st stephen's day",
      de: '2 weihnachtstag|zweiter weihnachtstag',
      nl: 'tweede kerstdag|2 kerstdag',
      nb: '2 juledag|andre juledag',
      sv: 'annandag jul',
      da: '2 juledag|anden juledag',
    },
    rule: { month: 12, day: 26 },
    source: BCP,
  },
  {
    names: {
      en: "new year|new year's day|new years day|new year's",
      de: 'neujahr|neujahrstag',
      fr: "nouvel an|jour de l'an",
      es: 'ano nuevo',
      it: 'capodanno',
      nl: 'nieuwjaar|nieuwjaarsdag',
      nb: 'nyttar|nyttarsdag|1 nyttarsdag',
      sv: 'nyar|nyarsdagen',
      da: 'nytar|nytarsdag',
    },
    rule: { month: 1, day: 1 },
    source: CUSTOM,
  },
  {
    names: {
      en: "new year's eve|new years eve|hogmanay",
      de: 'silvester',
      fr: 'saint sylvestre',
      es: 'nochevieja',
      nl: 'oudejaarsavond',
      nb: 'nyttarsaften',
      sv: 'nyarsafton',
      da: 'nytarsaften',
    },
    rule: { month: 12, day: 31 },
    source: CUSTOM,
  },
  {
    names: { en: 'epiphany|twelfth day|three kings', de: 'dreikonigstag|heilige drei konige' },
    rule: { month: 1, day: 6 },
    source: BCP,
  },
  { names: { en: 'candlemas', nb: 'kyndelsmesse' }, rule: { month: 2, day: 2 }, source: BCP },
  {
    names: { en: "valentine's day|valentines day|st valentine's day|st valentine's" },
    rule: { month: 2, day: 14 },
    source: CUSTOM,
  },
  { names: { en: "st patrick's day|st patricks day" }, rule: { month: 3, day: 17 }, source: CUSTOM },
  { names: { en: 'lady day|annunciation' }, rule: { month: 3, day: 25 }, source: BCP },
  { names: { en: 'may day' }, rule: { month: 5, day: 1 }, source: CUSTOM },
  {
    names: { en: "midsummer day|st john's day|st johns day", de: 'johannistag', nb: 'sankthansdagen' },
    rule: { month: 6, day: 24 },
    source: BCP,
  },
  { names: { en: 'michaelmas|michaelmas day' }, rule: { month: 9, day: 29 }, source: BCP },
  { names: { en: "halloween|hallowe'en|all hallows' eve" }, rule: { month: 10, day: 31 }, source: CUSTOM },
  {
    names: { en: "all saints' day|all saints day|all saints", de: 'allerheiligen', fr: 'toussaint' },
    rule: { month: 11, day: 1 },
    source: BCP,
  },
  {
    names: { en: "all souls' day|all souls day|all souls", de: 'allerseelen' },
    rule: { month: 11, day: 2 },
    source: CUSTOM,
  },
  {
    names: { en: "martinmas|st martin's day", de: 'martinstag' },
    rule: { month: 11, day: 11 },
    source: CUSTOM,
  },
  {
    names: { en: "st nicholas day|st nicholas' day", de: 'nikolaustag', nl: 'sinterklaas' },
    rule: { month: 12, day: 6 },
    source: CUSTOM,
  },
  {
    names: {
      en: 'advent sunday|first sunday in advent|first advent',
      de: '1 advent|erster advent',
      nb: '1 sondag i advent',
      sv: 'forsta advent',
    },
    rule: { advent: true },
    source: BCP,
  },
];
