import { describe, expect, test } from 'vitest';
import { arrangement } from '../../src/arrange/index.ts';
import { handlingList, sayHandling } from '../../src/review/handling.ts';
import { HANDLING_WORDS, TASKS } from '../../src/review/handling-words.ts';
import { wordTables } from '../../src/review/own-words.ts';
import { dated, someCatalogue, someThing } from '../support/catalogue.ts';

const listOf = (conditions: readonly string[], over: Record<string, unknown> = {}) => {
  const things = conditions.map((condition, index) =>
    someThing({ row: index + 2, kind: 'letter', date: dated('1901'), condition }),
  );
  const catalogue = someCatalogue(over, things);
  return handlingList(arrangement(catalogue, '2026-01-01'), wordTables(catalogue.settings).handling);
};

const tasks = (condition: string) => listOf([condition])[0]?.tasks ?? [];

describe('what the condition says must be done (common practice, CHECKS: order and handling)', () => {
  test.each([
    ['folded in four', ['unfold']],
    ['rusty paper clips on about half', ['unpin']],
    ['staples, one corner creased', ['unpin', 'flatten']],
    ['mended with tape', ['tape']],
    ['damp, mouldy', ['isolate']],
    ['rolled tight', ['leave']],
    ['dusty; loose pages', ['dust', 'support']],
    ['broken glass', ['mark']],
  ])('%s', (condition, expected) => {
    expect(tasks(condition)).toEqual(expected);
  });

  test.each(['good', 'staples removed', 'no mould', 'never folded', 'clipped hedge'])(
    '%s asks for nothing',
    (condition) => {
      expect(tasks(condition)).toEqual([]);
    },
  );

  test('every word of the table is found by itself, and means its task', () => {
    for (const { words, task } of HANDLING_WORDS) {
      for (const word of words) expect([word, tasks(word)]).toEqual([word, expect.arrayContaining([task])]);
    }
  });

  test('words of collection.yaml are added', () => {
    const check = { words: [{ words: ['Treacle'], mean: 'dust' }] };
    expect(listOf(['treacle on it'], { check })[0]?.tasks).toEqual(['dust']);
  });
});

test('the work is in the order of the shelf, box by box', () => {
  const catalogue = someCatalogue({}, [
    someThing({ row: 2, title: 'Plan', kind: 'map', size: '60 x 90 cm', condition: 'creased' }),
    someThing({ row: 3, title: 'Card', kind: 'postcard', condition: 'pin' }),
    someThing({ row: 4, title: 'Letter', kind: 'letter', condition: 'folded' }),
  ]);
  const lines = [...sayHandling(handlingList(arrangement(catalogue, '2026-01-01')))];
  expect(lines.filter((line) => !line.startsWith('        '))).toEqual([
    'Box 1',
    '  [ ] QF/1/1/1  Card, folder 1 (pin)',
    '  [ ] QF/1/1/2  Letter, folder 1 (folded)',
    '',
    'Box 2',
    '  [ ] QF/2/1/1  Plan (creased)',
  ]);
  expect(lines).toContain(`        ${TASKS.unfold}`);
});
