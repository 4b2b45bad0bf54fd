import { FEASTS, type Feast } from './feast-days.ts';
import { localeOf, monthNames, weekdayNames } from './month-names.ts';
import type { Sense } from './senses.ts';
import { tokenise } from './tokens.ts';
import { WORDS } from './words.ts';

/** One way in which a run of words is to be taken. */
export interface Entry {
  readonly words: readonly string[];
  readonly sense: Sense;
}

/** All that begins with a word, the longest first. */
export type Lexicon = ReadonlyMap<string, readonly Entry[]>;

// A hyphen or a point between the words of an entry changes nothing: "new-year", "1. juledag".
export const SKIPPED: ReadonlySet<string> = new Set(['-', '.']);

const wordsOf = (text: string) =>
  tokenise(text)
    .filter(({ text: one }) => !SKIPPED.has(one))
    .map(({ text: one }) => one);

/** Beginnings of the names of months or weekdays, so many letters and more, that belong to one only. */
function* beginnings(names: readonly [string, number][], least = 3): Generator<[string, number]> {
  for (const [name, month] of names) {
    for (let length = least; length < name.length; length++) {
      const beginning = name.slice(0, length);
      if (names.every(([other, of]) => of === month || !other.startsWith(beginning)))
        yield [beginning, month];
    }
  }
}

/** The names of feasts in a language, each with all the rows it stands in. */
function feastsOf(language: string): Map<string, Feast[]> {
  const feasts = new Map<string, Feast[]>();
  for (const feast of FEASTS) {
    for (const name of feast.names[language]?.split('|') ?? []) {
      feasts.set(name, [...(feasts.get(name) ?? []), feast]);
    }
  }
  return feasts;
}

/** What a word means that has one sense in English and another in a later language; most keep the first. */
function bothSenses(claimed: Sense, sense: Sense): Sense | undefined {
  // "Jul" is Christmas in Norwegian and July in English: the reader of the phrase has to ask.
  if (claimed.is === 'month' && sense.is === 'feast') return { ...claimed, feast: sense.rows };
  return claimed.is === 'filler' && sense.is === 'or' ? { is: 'filler', or: true } : undefined;
}

function build(locales: readonly string[]): Lexicon {
  const lexicon = new Map<string, Entry[]>();
  const known = new Map<string, Sense>();
  const add = (text: string, sense: Sense) => {
    const words = wordsOf(text);
    const [first] = words;
    const key = words.join(' ');
    // The languages come in the order of the collection after English: the first to claim a word keeps it.
    if (first === undefined) return;
    const claimed = known.get(key);
    const both = claimed && bothSenses(claimed, sense);
    if (both) {
      const entries = lexicon.get(first) ?? [];
      lexicon.set(
        first,
        entries.map((entry) => (entry.sense === claimed ? { ...entry, sense: both } : entry)),
      );
    }
    if (claimed) return;
    known.set(key, sense);
    lexicon.set(first, [...(lexicon.get(first) ?? []), { words, sense }]);
  };
  const months = new Map<string, Set<number>>();
  for (const locale of locales) {
    const names = monthNames(locale);
    for (const [name, month] of [...names, ...beginnings(names)]) {
      months.set(name, (months.get(name) ?? new Set()).add(month));
    }
  }
  for (const [name, values] of months) add(name, { is: 'month', values: [...values] });
  for (const locale of locales) {
    const language = locale.split('-')[0] ?? locale;
    const code = language === 'no' || language === 'nn' ? 'nb' : language;
    for (const { words, sense } of WORDS) {
      for (const word of words[code]?.split('|') ?? []) add(word, sense);
    }
    for (const [name, value] of weekdayNames(locale)) add(name, { is: 'weekday', value });
    for (const [name, rows] of feastsOf(code)) add(name, { is: 'feast', rows });
    for (const [name, value] of beginnings(weekdayNames(locale), 4)) add(name, { is: 'weekday', value });
  }
  for (const entries of lexicon.values()) entries.sort((one, other) => other.words.length - one.words.length);
  return lexicon;
}

const built = new Map<string, Lexicon>();
const KEPT = 50;

/** The words of English and of the languages given (codes of ISO 639); unknown codes add nothing. */
export function lexiconOf(languages: readonly string[] = []): Lexicon {
  const key = languages.join(' ');
  const known = built.get(key);
  if (known) return known;
  const locales = new Set(['en', 'la']);
  for (const locale of languages.map(localeOf)) if (locale !== undefined) locales.add(locale);
  const lexicon = build([...locales]);
  if (built.size >= KEPT) built.clear();
  built.set(key, lexicon);
  return lexicon;
}
