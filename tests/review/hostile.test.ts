import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import { reviewDates } from '../../src/review/dates.ts';
import { reviewDescription } from '../../src/review/description.ts';
import { reviewDoubles } from '../../src/review/doubles.ts';
import { reviewRuns } from '../../src/review/runs.ts';
import { titleRules } from '../../src/review/titles.ts';
import { VAGUE_WORDS } from '../../src/review/vague-words.ts';
import { dated, someCatalogue, someThing } from '../support/catalogue.ts';
import { nastyText } from '../support/hostile-text.ts';
import { times } from '../support/times.ts';

const FAMILIES = [reviewDescription, titleRules(VAGUE_WORDS), reviewDates, reviewRuns, reviewDoubles];

function reviewAll(titles: readonly string[]) {
  const things = titles.map((title, index) =>
    someThing({ row: index + 2, title, people: [title], places: [title], date: dated(title.slice(0, 200)) }),
  );
  const catalogue = someCatalogue({}, things);
  const aid = arrange(catalogue, '2026-01-01');
  const started = performance.now();
  const findings = FAMILIES.flatMap((rules) => rules(catalogue, aid));
  return { findings, took: performance.now() - started };
}

describe('whatever a list holds', () => {
  test('every finding is a sentence with a place, advice and a source', () => {
    fc.assert(
      fc.property(fc.array(nastyText, { minLength: 1, maxLength: 12 }), (titles) => {
        for (const { found, advice, source, place } of reviewAll([...titles, ...titles]).findings) {
          expect(found).toMatch(/[.]$/);
          expect(advice).toMatch(/[.”]$/);
          expect(source).toBeTruthy();
          expect(place.file ?? place.component).toBeTruthy();
        }
      }),
      { numRuns: times(200) },
    );
  });

  // A safety limit, not a measure.
  test.each([
    ['one long word', 'a'.repeat(50_000)],
    ['many words', 'quill ferry '.repeat(5_000)],
    ['small words', `Diary${' of'.repeat(20_000)} 1923`],
    ['figures', '1908 '.repeat(10_000)],
    ['numbers', 'no. 1 to 99999, '.repeat(5_000)],
    ['blanks', `no.${' '.repeat(20_000)}x`],
    ['points', '.,;:('.repeat(10_000)],
    ['long words of one letter', Array.from({ length: 2000 }, (_, at) => 'b'.repeat(at % 60)).join(' ')],
  ])('%s hold nothing up', (_, title) => {
    const titles = Array.from({ length: 6 }, (_, at) => (at % 2 === 0 ? title : `${title}x`));
    expect(reviewAll(titles).took).toBeLessThan(3000);
  });
});
