import { fold } from './tokens.ts';

/**
 * ISO 639-2 has two codes for some languages; `Intl` knows the terminological one only.
 * Source: ISO 639-2, the codes marked B and T.
 */
const BIBLIOGRAPHIC: Readonly<Record<string, string>> = {
  alb: 'sq',
  arm: 'hy',
  baq: 'eu',
  bur: 'my',
  chi: 'zh',
  cze: 'cs',
  dut: 'nl',
  fre: 'fr',
  geo: 'ka',
  ger: 'de',
  gre: 'el',
  ice: 'is',
  mac: 'mk',
  may: 'ms',
  per: 'fa',
  rum: 'ro',
  slo: 'sk',
  tib: 'bo',
  wel: 'cy',
};

/** The code under which `Intl` knows a language (`ger` and `deu` give `de`); undefined where it is no code at all. */
export function localeOf(language: string): string | undefined {
  const code = language.trim().toLowerCase();
  try {
    return Intl.getCanonicalLocales(BIBLIOGRAPHIC[code] ?? code)[0];
  } catch {
    return undefined;
  }
}

// English is written in two ways, Sep in America and Sept in Britain; January in Austria is Jänner.
const VARIANTS: Readonly<Record<string, readonly string[]>> = { en: ['en-US', 'en-GB'], de: ['de', 'de-AT'] };
const variants = (locale: string) => VARIANTS[locale] ?? [locale];

const STYLES: readonly Intl.DateTimeFormatOptions[] = [
  { month: 'long' },
  { month: 'short' },
  // Many languages decline the month beside a day: styczeń, but 5 stycznia.
  { day: 'numeric', month: 'long' },
  { day: 'numeric', month: 'short' },
];

function namesOf(
  locale: string,
  styles: readonly Intl.DateTimeFormatOptions[],
  part: 'month' | 'weekday',
  dates: readonly Date[],
): [string, number][] {
  const names: [string, number][] = [];
  // Without names of its own a language would get those of the machine's.
  if (Intl.DateTimeFormat.supportedLocalesOf([locale]).length === 0) return names;
  for (const one of variants(locale)) {
    for (const style of styles) {
      const format = new Intl.DateTimeFormat(one, { ...style, timeZone: 'UTC', calendar: 'gregory' });
      for (const [index, date] of dates.entries()) {
        const said = format.formatToParts(date).find(({ type }) => type === part)?.value ?? '';
        const name = fold(said).replaceAll('.', '').trim();
        if (/^\p{L}{2,}(?:[ '-]\p{L}+)*$/u.test(name)) names.push([name, index]);
      }
    }
  }
  return names;
}

const FIRSTS = Array.from({ length: 12 }, (_, month) => new Date(Date.UTC(2001, month, 1)));
// 7 January 2001 was a Sunday.
const WEEK = Array.from({ length: 7 }, (_, day) => new Date(Date.UTC(2001, 0, 7 + day)));

/** Names of the months of a language, long and short, each with its number from 1; as folded by `fold`. */
export const monthNames = (locale: string): [string, number][] =>
  namesOf(locale, STYLES, 'month', FIRSTS).map(([name, index]) => [name, index + 1]);

/** Names of the days of the week, long and short, each with its number, 0 being Sunday. */
export const weekdayNames = (locale: string): [string, number][] =>
  namesOf(locale, [{ weekday: 'long' }, { weekday: 'short' }], 'weekday', WEEK);
