import { bounds } from './bounds.ts';
import { sayDate } from './display.ts';
import { parseEdtf } from './edtf.ts';
import { isFuture, outOfRange } from './plausible.ts';
import type { DateContext, DateReading } from './reading.ts';
import type { Found } from './readings.ts';
import { settle, unreadable } from './settle.ts';

/** What to write where a question is left open, by the name of the question. */
export const ADVICE = {
  order:
    'Day and month may be meant the other way round; write the month in letters, or set dateOrder in collection.yaml.',
  century: 'The century is not said; write all four figures of the year.',
  second: 'It may be a month or the last year of a span; write the month in letters, or both years in full.',
  feast:
    'The feast fell on different days in different places; write the day, or name the country in collection.yaml.',
  word: 'The word has two meanings; write the date in figures, such as 1962-05-14.',
  shared: 'It is not said whether the month holds for both years; write it with both.',
  hundreds: 'It may be a decade or a century; write “1900-1909” or “20th century”.',
  month: 'The name of the month is that of another month in another language; write it in English.',
  person: 'More than one person has that name; write the whole name.',
};

/** One reading of several: alternatives of day and month are kept side by side, never chosen between. */
export function weigh(found: readonly Found[], context: DateContext): DateReading {
  const likely = found.filter(
    ({ edtf }) => !isFuture(edtf, context) && outOfRange(edtf, context) === undefined,
  );
  const kept = likely.length > 0 ? likely : found;
  const [first] = kept;
  if (!first) return unreadable('It is not understood.');
  const alternatives = [...new Set(kept.map(({ edtf }) => edtf))];
  const { notes, bulk } = first.attempt;
  if (alternatives.length === 1) return settle(first.edtf, notes, context, [], bulk);
  const questions = [...first.attempt.asked.keys()].filter((question) => differs(kept, question));
  const sayings = questions
    .map((question) => ADVICE[question as keyof typeof ADVICE] ?? '')
    .filter((saying) => saying !== '');
  const said = `It may be ${alternatives.map(sayDate).join(', or ')}.`;
  const edtf = together(kept, first);
  if (edtf === undefined) return unreadable([said, ...sayings].join(' '));
  return settle(edtf, [...notes, said, ...sayings], context, alternatives, bulk);
}

const differs = (kept: readonly Found[], question: string) =>
  new Set(kept.map(({ choices }) => choices.get(question) ?? 0)).size > 1;

/** Questions of which no answer is the likelier: whether day or month goes first, and which of its meanings a word has. */
const EVEN = new Set(['order', 'word', 'month']);

/** What may as well be the one as the other: all of it, as one of these dates, in the likeliest century. */
function together(kept: readonly Found[], first: Found): string | undefined {
  const same = kept.filter(({ choices }) =>
    [...first.attempt.asked.keys()].every(
      (question) => EVEN.has(question) || (choices.get(question) ?? 0) === (first.choices.get(question) ?? 0),
    ),
  );
  const dates = [...new Set(same.map(({ edtf }) => edtf))];
  if (dates.length === 1) return first.edtf;
  const points = dates.map(parseEdtf).filter((date) => date?.kind === 'point' && date.mark === '');
  if (points.length < dates.length) return around(dates);
  const start = (edtf: string) => parseEdtf(edtf)?.earliest ?? 0;
  return `[${dates.sort((one, other) => start(one) - start(other)).join(',')}]`;
}

/** The span that holds all of several dates, by whole days. */
function around(dates: readonly string[]): string | undefined {
  const spans = dates.map((edtf) => bounds(edtf));
  const [first] = spans.map(({ earliest }) => earliest ?? '').sort();
  const last = spans
    .map(({ latest }) => latest ?? '')
    .sort()
    .at(-1);
  return spans.every(({ earliest, latest }) => earliest && latest) ? `${first}/${last}` : undefined;
}
