/** An end that a statement on access names: its year, where it names one. */
export interface EndSaid {
  year?: number;
}

// All from memory, in the languages in which headings of lists are read. Swedish `till` and Norwegian `til` mean "to"
// as well, so they tell an end only before a year.
const UNTIL = "until|bis|jusqu['’]?\\p{L}*|hasta|fino al?|sino al?|inntil|indtil|tot en met|totdat|tills";
const UNTIL_A_YEAR = new RegExp(`(?<!\\p{L})(?:${UNTIL}|till?|tot)(?!\\p{L})[^;]{0,40}$`, 'iu');
/** A year, by itself or with its day: 2060, 31.12.2060, 2060-12-31. */
const YEAR =
  /(?<![\p{L}\p{N}])(?:\d{1,2}[./] ?\d{1,2}[./] ?)?((?:19|20|21)\d\d)(?:-\d\d(?:-\d\d)?)?(?![\p{L}\p{N}])/gu;

const NUMBER =
  '\\d{1,3}|ten|twenty(?:[ -]five)?|thirty|forty|fifty|sixty|seventy(?:[ -]five)?|eighty|ninety|(?:a |one )?hundred';
const YEARS = 'years?|yrs?|jahren?|jahre|ans|años|anni|jaar|år|decades?';
// "Not for anybody under 18 years" and "100 years old" tell an age.
const SPAN = new RegExp(
  `(?<![\\p{L}\\p{N}])(?<!(?:under|over|above|below|aged|unter|über|ab) )(?:${NUMBER})[ -](?:${YEARS})(?!\\p{L})(?! (?:old|of age|alt))`,
  'iu',
);
const EVENT = new RegExp(
  `(?<!\\p{L})(?:(?:${UNTIL})(?!\\p{L})(?! further notice| auf weiteres| nouvel ordre| nuevo aviso)[ ]+\\p{L}|as long as |(?:during|in) (?:her|his|their|my|our) life)`,
  'iu',
);

/**
 * The end that a statement on access names in figures or in words, as “not to be shown until 2060”, “closed for 75
 * years”, “until her death”; undefined where it names none.
 * @param thisYear a later one that stands in it is an end, however it is said
 */
export function endSaid(statement: string | undefined, thisYear: number): EndSaid | undefined {
  if (statement === undefined) return undefined;
  const said = [...statement.matchAll(YEAR)].map(({ 1: year, index }) => ({ year: Number(year), index }));
  const later = said.filter(({ year }) => year > thisYear);
  const ended = said.filter(({ index }) => UNTIL_A_YEAR.test(statement.slice(0, index)));
  const years = (later.length > 0 ? later : ended).map(({ year }) => year);
  const year = years.length === 0 ? undefined : Math.max(...years);
  if (year !== undefined) return { year };
  return SPAN.test(statement) || EVENT.test(statement) ? {} : undefined;
}

/**
 * Whether a statement on access names an end, in figures or in words.
 * @param today YYYY-MM-DD
 */
export const namesEnd = (statement: string, today: string): boolean =>
  endSaid(statement, Number(today.slice(0, 4))) !== undefined;
