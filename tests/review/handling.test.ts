import { describe, expect, test } from 'vitest';
import { arrangement } from '../../src/arrange/index.ts';
import { HAZARDS } from '../../src/review/danger-hazards.ts';
import { handlingList } from '../../src/review/handling.ts';
import { HANDLING_WORDS, TASKS } from '../../src/review/handling-words.ts';
import { notToBeBoxed } from '../../src/review/not-to-be-boxed.ts';
import { wordTables } from '../../src/review/own-words.ts';
import { reportPage } from '../../src/review/report.ts';
import { sayHandling } from '../../src/review/say-handling.ts';
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

describe('what suits the thing', () => {
  const of = (kind: string, condition: string) => {
    const catalogue = someCatalogue({}, [someThing({ row: 2, kind, date: dated('1999'), condition })]);
    return handlingList(arrangement(catalogue, '2026-01-01'))[0]?.tasks ?? [];
  };

  test('nothing is slid off film, glass or a tintype, and nothing laid flat that is an object', () => {
    for (const kind of ['tintype', 'glass plate', 'negatives'])
      expect([kind, of(kind, 'paper clip')]).toEqual([kind, ['leave']]);
    expect(of('letter', 'paper clip')).toEqual(['unpin']);
    expect(of('object', 'folded, pin bent')).toEqual([]);
    expect(of('object', 'loose')).toEqual(['support']);
  });

  test('what is mouldy or has insects is not brushed, unfolded or flattened', () => {
    expect(of('letter', 'mouldy, dusty, folded')).toEqual(['isolate']);
    expect(of('letter', 'silverfish, dusty')).toEqual(['enclose']);
    expect(of('letter', 'dusty, folded')).toEqual(['unfold', 'dust']);
  });

  test('the advice is that of the cautions: mould in paper, insects in a closed bag', () => {
    const advice = (name: string) => HAZARDS.find((hazard) => hazard.name === name)?.advice ?? '';
    for (const text of [advice('mould'), TASKS.isolate]) {
      expect(text).toMatch(/in paper,? (?:and )?not in plastic/);
      expect(text).not.toMatch(/\bbag\b/);
    }
    for (const text of [advice('pests'), TASKS.enclose]) expect(text).toContain('closed bag');
  });
});

describe('what is not to be boxed', () => {
  const things = [
    someThing({ row: 2, title: 'Card', kind: 'postcard', condition: 'pin' }),
    someThing({ row: 3, title: 'Grenade', kind: 'object', number: '9' }),
    someThing({ row: 4, title: 'Packet', kind: 'letter', condition: 'mouldy, stapled' }),
    someThing({ row: 5, title: 'Plan', kind: 'map', condition: 'brittle' }),
  ];
  const listed = (answers: readonly object[] = []) => {
    const catalogue = someCatalogue({ check: { answers } }, things);
    const arranged = arrangement(catalogue, '2026-01-01');
    return handlingList(arranged, undefined, notToBeBoxed(catalogue, arranged));
  };

  test('comes first, with what the caution says and nothing else to do', () => {
    const lines = [...sayHandling(listed())];
    expect(lines[0]).toBe('First, not to be boxed before somebody has looked at it');
    expect(listed().map(({ title, notBoxed, tasks }) => [title, notBoxed?.has, tasks])).toEqual([
      ['Grenade', 'ammunition', []],
      ['Packet', 'mould', []],
      ['Card', undefined, ['unpin']],
      ['Plan', undefined, ['leave']],
    ]);
    expect(lines.join('\n')).toMatch(
      /Grenade(?:, folder \d+)?: ammunition\n {8}Do not move, open, clean or box it\./,
    );
  });

  test.each(['9', 'Grenade'])('what was answered (%s) has been looked at', (of) => {
    const titles = listed([{ rule: 'danger.ammunition', of, because: 'The police looked at it.' }])
      .filter(({ notBoxed }) => notBoxed !== undefined)
      .map(({ title }) => title);
    expect(titles).toEqual(['Packet']);
  });

  test('stands in the report too', () => {
    const page = reportPage('Quill', '2026-01-01', { findings: [], answered: [] }, listed());
    expect(page).toContain('Grenade: not to be boxed before somebody has looked at it: ammunition');
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
