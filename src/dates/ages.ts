import { type Birth, birthday, birthOf, spanOfAge, spanOfGrade } from './births.ts';
import type { DateContext } from './reading.ts';
import { choose, fail, numberAt, peek, type Scanner, senseAt, takeSign } from './scanner.ts';
import { fold, tokenise } from './tokens.ts';

type Person = NonNullable<DateContext['people']>[number];

const NUMBERS =
  'zero|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty'.split(
    '|',
  );
const wordsOf = (name: string) => tokenise(fold(name)).map(({ text }) => text);

const startsWith = (s: Scanner, words: readonly string[], at: number): boolean =>
  words.length > 0 && words.every((word, index) => s.pieces[at + index]?.text === word);

/** The people a phrase may mean at a place, and how many words name them; the longest name wins. */
function peopleAt(s: Scanner, at: number): { people: Person[]; length: number } | undefined {
  let people: Person[] = [];
  let length = 0;
  for (const person of s.context.people ?? []) {
    const names = [person.name, ...(person.also ?? [])].map(wordsOf);
    const first = names[0]?.slice(0, 1) ?? [];
    for (const words of [...names, first]) {
      if (!startsWith(s, words, at) || words.length < length) continue;
      people = words.length > length ? [person] : people.includes(person) ? people : [...people, person];
      length = words.length;
    }
  }
  return length === 0 ? undefined : { people, length };
}

/** Goes past the words given, as many as stand there. */
function skip(s: Scanner, ...words: readonly string[]): boolean {
  const start = s.at;
  while (words.includes(peek(s)?.text ?? '')) s.at++;
  return s.at > start;
}

/** A number of years in figures or words, or an ordinal; goes past it. */
function takeCount(s: Scanner): number | undefined {
  const digits = numberAt(s, 0, 1, 2, 3);
  const sense = senseAt(s);
  const word = NUMBERS.indexOf(peek(s)?.text ?? '');
  const inWords = sense?.is === 'hundreds' || sense?.is === 'ordinal' ? sense.value : undefined;
  const count = digits === undefined ? (inWords ?? (word >= 0 ? word : undefined)) : Number(digits);
  if (count === undefined || Number.isNaN(count)) return undefined;
  s.at++;
  if (digits !== undefined && peek(s)?.glued === true) skip(s, 'st', 'nd', 'rd', 'th');
  return count;
}

function takeGrade(s: Scanner): number | undefined {
  const start = s.at;
  skip(s, 'in', 'the', 'at');
  if (skip(s, 'kindergarten')) return 0;
  const isFirst = skip(s, 'grade');
  const count = takeCount(s);
  if (count !== undefined && (isFirst || skip(s, 'grade'))) return count;
  s.at = start;
  return undefined;
}

/** "In her thirties": from the first birthday of the ten to the day before that of the next. */
function readTens(s: Scanner, birth: Birth): string | undefined {
  const start = s.at;
  skip(s, 'in');
  // "In the thirties" are those of the century, and nobody's age.
  const isAge = skip(s, 'her', 'his', 'their');
  skip(s, 'early');
  const sense = senseAt(s);
  if (sense?.is === 'decade' && isAge) {
    s.at++;
    return spanOfAge(s, birth, 10 * sense.tens, 10 * sense.tens + 9);
  }
  s.at = start;
  return undefined;
}

const ABOUT = ['about', 'c', 'circa', 'approximately', 'around', 'ca'];

/** An age in years or months: "aged 6", "6 years old", "aged 6 or 7", "(6)". */
function readYears(s: Scanner, birth: Birth): string | undefined {
  const bracket = takeSign(s, '(');
  const said = skip(s, 'aged', 'age', 'at', 'the', 'of', ...ABOUT);
  const from = takeCount(s);
  if (from === undefined) return undefined;
  const more = takeSign(s, '-') || takeSign(s, '–') || skip(s, 'or', 'to');
  const next = more ? takeCount(s) : undefined;
  // "6-year-old" has the hyphen and no second number.
  if (more && next === undefined && peek(s)?.text !== 'year') return undefined;
  const to = next ?? from;
  const months = skip(s, 'months', 'month');
  const unit = skip(s, 'years', 'year', 'yrs', 'yr', 'old', 'of', 'age', '-');
  if (bracket && !takeSign(s, ')')) return undefined;
  return said || unit || months || bracket ? spanOfAge(s, birth, from, to, months) : undefined;
}

/** What follows a name: an age, a birthday, a grade. */
function readAfterName(s: Scanner, birth: Birth): string | undefined {
  if (takeSign(s, "'")) {
    skip(s, 's');
    const age = takeCount(s);
    return age !== undefined && skip(s, 'birthday') ? birthday(s, birth, age) : undefined;
  }
  takeSign(s, ',');
  skip(s, 'is', 'was', 'when');
  const grade = takeGrade(s);
  if (grade !== undefined) return spanOfGrade(s, birth, grade);
  const start = s.at;
  const age = takeCount(s);
  if (age !== undefined && skip(s, 'birthday')) return birthday(s, birth, age);
  s.at = start;
  return readTens(s, birth) ?? readYears(s, birth);
}

const AGE_WORDS = new Set(['aged', 'age', 'old', 'birthday', 'grade', 'kindergarten']);
const AGE_WORD = new RegExp(`\\b(?:${[...AGE_WORDS].join('|')})\\b`, 'i');

/** Whether a phrase has a word by which ages, birthdays or grades are told. */
export const hasAgeWord = (phrase: string): boolean => AGE_WORD.test(phrase);

/**
 * Reads a person's age or school grade as the time in which they had it: "Ada aged 6", "Ada's 6th birthday",
 * "Ada in 3rd grade".
 * @returns EDTF; undefined where the phrase is none of these (with a reason noted where it nearly is)
 */
export function readAge(s: Scanner): string | undefined {
  const asks = s.pieces.some(({ text }) => AGE_WORDS.has(text));
  if (!asks && s.context.people === undefined) return undefined;
  skip(s, 'when', 'with', 'of', 'the');
  const { ageOf } = s.context;
  const found = peopleAt(s, s.at) ?? (ageOf && asks ? { people: [ageOf], length: 0 } : undefined);
  if (!found) {
    if (!asks) return undefined;
    return fail(s, 'It tells an age, but of nobody whose birth date stands under people in collection.yaml.');
  }
  s.at += found.length;
  const [first, ...rest] = found.people;
  if (!first) return undefined;
  const person = rest.length === 0 ? first : choose(s, 'person', [first, ...rest]);
  const birth = birthOf(s, person);
  if (found.length === 0) {
    skip(s, 'her', 'his', 'their', 'on');
    s.notes.push(`This is taken as the age of ${person.name}.`);
  }
  if (!birth) return undefined;
  const text = readAfterName(s, birth);
  if (text === undefined || s.at < s.pieces.length)
    return fail(s, `What it says of ${person.name} is not understood.`);
  return text;
}
