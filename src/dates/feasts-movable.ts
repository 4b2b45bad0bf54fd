import type { Feast } from './feast-days.ts';

const BCP = 'Book of Common Prayer (1662), tables of feasts';
const CUSTOM = 'common calendar';
const THANKSGIVING = { en: 'thanksgiving|thanksgiving day' };

/** Feasts that hang on Easter, and those of single countries. */
export const MOVABLE_FEASTS: readonly Feast[] = [
  {
    names: {
      en: 'shrove tuesday|pancake day|mardi gras',
      fr: 'mardi gras',
      de: 'fastnacht',
      nb: 'fetetirsdag',
    },
    rule: { easter: -47 },
    source: BCP,
  },
  {
    names: { en: 'ash wednesday', de: 'aschermittwoch', fr: 'mercredi des cendres', nb: 'askeonsdag' },
    rule: { easter: -46 },
    source: BCP,
  },
  { names: { en: 'mothering sunday' }, rule: { easter: -21 }, source: CUSTOM },
  {
    names: {
      en: 'palm sunday',
      de: 'palmsonntag',
      fr: 'dimanche des rameaux',
      nb: 'palmesondag',
      sv: 'palmsondagen',
    },
    rule: { easter: -7 },
    source: BCP,
  },
  {
    names: {
      en: 'maundy thursday',
      de: 'grundonnerstag',
      fr: 'jeudi saint',
      nb: 'skjaertorsdag',
      sv: 'skartorsdagen',
    },
    rule: { easter: -3 },
    source: BCP,
  },
  {
    names: {
      en: 'good friday',
      de: 'karfreitag',
      fr: 'vendredi saint',
      es: 'viernes santo',
      it: 'venerdi santo',
      nl: 'goede vrijdag',
      nb: 'langfredag',
      sv: 'langfredagen',
      da: 'langfredag',
    },
    rule: { easter: -2 },
    source: BCP,
  },
  {
    names: {
      en: 'holy saturday|easter eve|easter saturday',
      de: 'karsamstag',
      nb: 'paskeaften',
      sv: 'paskafton',
    },
    rule: { easter: -1 },
    source: BCP,
  },
  {
    names: {
      en: 'easter|easter sunday|easter day',
      de: 'ostern|ostersonntag',
      fr: 'paques|dimanche de paques',
      es: 'pascua|domingo de pascua',
      it: 'pasqua',
      nl: 'pasen|eerste paasdag',
      nb: 'paske|paska|pasken|1 paskedag|forste paskedag',
      sv: 'pask|pasken|paskdagen',
      da: 'paske|pasken|1 paskedag|paskedag',
    },
    rule: { easter: 0 },
    source: BCP,
  },
  {
    names: {
      en: 'easter monday',
      de: 'ostermontag',
      fr: 'lundi de paques',
      it: 'pasquetta',
      nl: 'tweede paasdag',
      nb: '2 paskedag|andre paskedag',
      sv: 'annandag pask',
      da: '2 paskedag',
    },
    rule: { easter: 1 },
    source: BCP,
  },
  { names: { en: 'low sunday' }, rule: { easter: 7 }, source: CUSTOM },
  {
    names: {
      en: 'ascension|ascension day',
      de: 'himmelfahrt|christi himmelfahrt',
      fr: 'ascension',
      nl: 'hemelvaartsdag|hemelvaart',
      nb: 'kristi himmelfartsdag',
      sv: 'kristi himmelsfardsdag',
      da: 'kristi himmelfartsdag',
    },
    rule: { easter: 39 },
    source: BCP,
  },
  {
    names: {
      en: 'whitsun|whitsunday|whit sunday|pentecost',
      de: 'pfingsten|pfingstsonntag',
      fr: 'pentecote',
      es: 'pentecostes',
      it: 'pentecoste',
      nl: 'pinksteren',
      nb: 'pinse|pinsen|1 pinsedag',
      sv: 'pingst|pingstdagen',
      da: 'pinse|pinsen',
    },
    rule: { easter: 49 },
    source: BCP,
  },
  {
    names: {
      en: 'whit monday',
      de: 'pfingstmontag',
      fr: 'lundi de pentecote',
      nb: '2 pinsedag|andre pinsedag',
    },
    rule: { easter: 50 },
    source: BCP,
  },
  { names: { en: 'trinity sunday' }, rule: { easter: 56 }, source: BCP },
  { names: { en: 'corpus christi', de: 'fronleichnam' }, rule: { easter: 60 }, source: CUSTOM },

  {
    names: THANKSGIVING,
    rule: { month: 11, weekday: 4, nth: -1 },
    country: 'US',
    since: 1863,
    until: 1938,
    source: 'proclamations of the presidents, from 1863 on; from memory',
  },
  // From 1939 to 1941 the president named the last Thursday but one, and some states kept the last.
  {
    names: THANKSGIVING,
    rule: { month: 11, weekday: 4, nth: -2 },
    country: 'US',
    since: 1939,
    until: 1941,
    source: 'proclamations of 1939 to 1941; from memory',
  },
  {
    names: THANKSGIVING,
    rule: { month: 11, weekday: 4, nth: -1 },
    country: 'US',
    since: 1939,
    until: 1941,
    source: 'custom of some states; from memory',
  },
  {
    names: THANKSGIVING,
    rule: { month: 11, weekday: 4, nth: 4 },
    country: 'US',
    since: 1942,
    source: '55 Stat. 862 (1941); from memory',
  },
  {
    names: THANKSGIVING,
    rule: { month: 10, weekday: 1, nth: 2 },
    country: 'CA',
    since: 1957,
    source: 'proclamation of 31 January 1957; from memory',
  },
  {
    names: { en: 'independence day' },
    rule: { month: 7, day: 4 },
    country: 'US',
    since: 1776,
    source: CUSTOM,
  },
  {
    names: { en: 'labor day' },
    rule: { month: 9, weekday: 1, nth: 1 },
    country: 'US',
    since: 1894,
    source: '28 Stat. 96 (1894); from memory',
  },
  {
    names: { en: "mother's day|mothers day" },
    rule: { month: 5, weekday: 0, nth: 2 },
    country: 'US',
    since: 1914,
    source: '38 Stat. 770 (1914); from memory',
  },
];
