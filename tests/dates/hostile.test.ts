import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as dates from '../../src/dates/index.ts';

/** Every function of the room on one text. */
function runAll(text: string): void {
  dates.readDate(text);
  dates.readDate(text, {
    languages: ['nor', 'ger', 'no such language'],
    people: [{ name: text, born: text }],
    country: text,
    today: text,
  });
  dates.isEdtf(text);
  dates.bounds(text);
  dates.displayDate(text);
  dates.structuredDate(text);
  dates.normalDate(text);
  dates.w3cDate(text);
  dates.yearOf(text);
  dates.decadeOf(text);
  dates.dateRank(text);
  dates.isWithin(text, text);
  dates.inclusiveDates([text, text]);
  dates.datesOfWhole(
    new Map([
      [text, 20],
      ['1962', 1],
    ]),
  );
}

// A safety limit, not a measure: usual texts take microseconds. The best of three, so that a pause of the machine
// does not count.
const LIMIT = 50;
function best(work: () => void): number {
  return Math.min(
    ...[1, 2, 3].map(() => {
      const start = performance.now();
      work();
      return performance.now() - start;
    }),
  );
}

const words = [
  '1962',
  '62',
  '5',
  '14',
  '195X',
  '19XX',
  'May',
  'circa',
  'c.',
  'before',
  'after',
  'between',
  'and',
  'or',
  'to',
  'until',
  '-',
  '–',
  '/',
  '..',
  ',',
  '[',
  ']',
  '(',
  ')',
  '{',
  '}',
  '?',
  '~',
  '%',
  "'",
  's',
  'th',
  'early',
  'century',
  'fifties',
  'Easter',
  'summer',
  'first',
  'quarter',
  'bulk',
  'undated',
  'unknown',
  'aged',
  '6',
  'BC',
  'the',
  'of',
  'XIX',
  '±',
  '+',
]; // prettier-ignore
const salad = fc.array(fc.constantFrom(...words), { maxLength: 60 }).map((all) => all.join(' '));
const glued = fc.array(fc.constantFrom(...words), { maxLength: 60 }).map((all) => all.join(''));

describe('no text', () => {
  it.each([
    ['of any kind', fc.string({ unit: 'binary', maxLength: 500 })],
    ['of words of dates', salad],
    ['of words of dates run together', glued],
  ])('%s makes anything throw', (_name, text) => {
    fc.assert(
      fc.property(text, (one) => {
        runAll(one);
      }),
      { numRuns: 2000 },
    );
  });

  const repeated = words.flatMap((word) => [word.repeat(200), `${word} `.repeat(200), `${word},`.repeat(60)]);
  const hostile = [
    ...repeated,
    ' '.repeat(1_000_000),
    '1'.repeat(1_000_000),
    '1x'.repeat(100_000),
    'a\u0301'.repeat(50_000),
    '\u{1F4F7}'.repeat(50_000),
    '\uFDFA'.repeat(390),
    '\uD800'.repeat(390),
    '3/4/62-'.repeat(57),
    `{${'XXXX-02-29,'.repeat(2_000)}1962}`,
    `[${'1962,'.repeat(20_000)}1962]`,
    'XXX1-02-29',
    'Y99999999999E99',
  ];

  it.each(hostile.map((text) => [text.slice(0, 20), text.length, text] as const))(
    '“%s…” of %i units takes over 50 ms to read',
    (_start, _length, text) => {
      dates.readDate('warm up');
      expect(best(() => dates.readDate(text))).toBeLessThan(LIMIT);
    },
  );
});
