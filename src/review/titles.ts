import { KINDS } from '../arrange/index.ts';
import type { Finding } from '../catalogue/finding.ts';
import type { Thing } from '../catalogue/thing.ts';
import { yearOf } from '../dates/index.ts';
import type { Rules } from './index.ts';
import { plainWords } from './plain-words.ts';
import { sayThings } from './said-together.ts';
import { SMALL_WORDS, VAGUE_WORDS, type VagueWords } from './vague-words.ts';

const SMALL = new Set(SMALL_WORDS.words);
const KIND_WORDS = new Set(KINDS.flatMap(({ one, many, also }) => [one, many, ...also]).map(plainWords));
const NUMBER = /^\d+$/;
const ONLY_YEARS = /^(?:1[4-9]|20)\d\d(?: (?:\d{2}|(?:1[4-9]|20)\d\d))?$/;
// A title this long says something, whatever its words.
const LONGEST = 60;

/** What a title fails to say: anything at all, anything but the kind, anything but the date. */
type Emptiness = 'nothing' | 'kind' | 'date';

/** The words of a text without numbers and small words. */
const wordsOf = (text: string) =>
  plainWords(text)
    .split(' ')
    .filter((word) => word !== '' && !NUMBER.test(word) && !SMALL.has(word));

const asCompared = (table: readonly VagueWords[]): ReadonlySet<string> =>
  new Set(table.flatMap(({ words }) => words).map((words) => wordsOf(words).join(' ')));
const VAGUE = asCompared(VAGUE_WORDS);

/**
 * What the title of a thing fails to say; undefined where it says something.
 * @param vague words that say nothing, or several together that say nothing
 */
export function emptinessOf({ title }: Pick<Thing, 'title'>, vague = VAGUE): Emptiness | undefined {
  if (title.length > LONGEST) return undefined;
  if (ONLY_YEARS.test(plainWords(title))) return 'date';
  const words = wordsOf(title);
  const telling = words.filter((word) => !vague.has(word)).join(' ');
  if (telling === '' || vague.has(words.join(' '))) return 'nothing';
  return KIND_WORDS.has(telling) ? 'kind' : undefined;
}

interface TitleRule {
  rule: string;
  weight: Finding['weight'];
  is: (thing: Thing, emptiness: Emptiness | undefined) => boolean;
  /** The sentence, of one title and of several. */
  found: (said: string, several: boolean) => string;
  advice: string;
  source: string;
}

const TITLE_RULES: readonly TitleRule[] = [
  {
    rule: 'titles.say-nothing',
    weight: 'should',
    is: (_, emptiness) => emptiness === 'nothing',
    found: (said, several) =>
      `${several ? 'These titles do' : 'This title does'} not say what the thing is: ${said}.`,
    advice:
      'Say in a few words what it is, whose it was, and what it is about, such as “Tickets of the ferry”.',
    source: 'DACS 2.3',
  },
  {
    rule: 'titles.say-only-the-date',
    weight: 'should',
    is: (_, emptiness) => emptiness === 'date',
    found: (said, several) => `${several ? 'These titles are' : 'This title is'} only a date: ${said}.`,
    advice: 'Put the date into the column “date”, and let the title say what the thing is.',
    source: 'DACS 2.3, 2.4',
  },
  {
    rule: 'titles.say-only-the-kind',
    weight: 'consider',
    is: (_, emptiness) => emptiness === 'kind',
    found: (said, several) =>
      `${several ? 'These titles say' : 'This title says'} only of what kind the thing is: ${said}.`,
    advice:
      'Add from whom and to whom, or what it shows or is about, such as “Letter from Ada to her brother”.',
    source: 'DACS 2.3',
  },
  {
    rule: 'titles.repeat-the-date',
    weight: 'consider',
    is: repeatsDate,
    found: (said, several) =>
      `${several ? 'These titles repeat' : 'This title repeats'} the date that stands in the column “date”: ${said}.`,
    advice:
      'Leave it out of the title, unless it is written on the thing: the date is shown beside the title.',
    source: 'DACS 2.3, 2.4',
  },
];

/**
 * Titles that say nothing, or say what stands in another column. One finding for each rule, however many titles.
 * @param vague the table of words that say nothing, with those of the catalogue's own
 */
export function titleRules(vague: readonly VagueWords[]): Rules {
  const words = asCompared(vague);
  return ({ things }) => {
    const read = things.map((thing) => ({ thing, emptiness: emptinessOf(thing, words) }));
    return TITLE_RULES.flatMap(({ rule, weight, is, found, advice, source }): Finding[] => {
      const some = read.filter(({ thing, emptiness }) => is(thing, emptiness)).map(({ thing }) => thing);
      const [first] = some;
      if (first === undefined) return [];
      const place = { file: 'list.csv', row: first.row, column: 'title' };
      return [{ rule, weight, place, found: found(sayThings(some), some.length > 1), advice, source }];
    });
  };
}

const YEAR_AT_AN_END = /^(\d{4})\b[\s,:;.)–-]|(?<!\b(?:no|nr|number)\.?)[\s,:;.(–-](\d{4})\)?$/i;

function repeatsDate({ title, date }: Thing, emptiness: Emptiness | undefined): boolean {
  if (date?.reading.kind !== 'date' || emptiness !== undefined) return false;
  const { written, reading } = date;
  if (written.length > 4 && /\d/.test(written) && title.toLowerCase().includes(written.toLowerCase()))
    return true;
  const found = YEAR_AT_AN_END.exec(title);
  const year = found?.[1] ?? found?.[2];
  if (year === undefined || Number(year) !== yearOf(reading.edtf)) return false;
  // “The frost of 1938” is what people call it; “Diary of 1938” repeats a date.
  const [last, named] = plainWords(title.slice(0, found?.index)).split(' ').reverse();
  return last !== 'of' || KIND_WORDS.has(named ?? '');
}
