import { describe, expect, test } from 'vitest';
import { arrangement } from '../../src/arrange/index.ts';
import type { Component } from '../../src/catalogue/component.ts';
import { HAZARDS } from '../../src/review/danger-hazards.ts';
import { handlingList } from '../../src/review/handling.ts';
import { HANDLING_WORDS, TASKS } from '../../src/review/handling-words.ts';
import { notToBeBoxed } from '../../src/review/not-to-be-boxed.ts';
import { wordTables } from '../../src/review/own-words.ts';
import { reportPage } from '../../src/review/report.ts';
import { sayHandling } from '../../src/review/say-handling.ts';
import { smallComponent } from '../find/small-component.ts';
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

  test.each([
    ['spine broken', ['binding']],
    ['spine is badly cracked', ['binding']],
    ['cover loose', ['binding']],
    ['the covers are loose', ['binding']],
    ['spine fine, loose pages', ['support']],
    ['spine fine, glass broken', ['mark']],
    ['no loose cover', []],
    ['wax seal', ['seal']],
    ['folded, wax seal', ['seal', 'unfold']],
    ['folded, creased, seal cracked', ['seal', 'unfold']],
    ['folded, seal missing', ['unfold']],
  ])('%s: what is done depends on the part', (condition, expected) => {
    expect(tasks(condition)).toEqual(expected);
  });

  // Common practice of conservators: glue and adhesive tape do more harm than a loose board; wax breaks under weight.
  test('a binding is tied or wrapped, never glued; a seal is neither pressed nor forced open', () => {
    expect(TASKS.binding).toMatch(/cotton tape.*paper.*Never use glue or adhesive tape.*conservator/);
    expect(TASKS.seal).toMatch(/first.*press nothing.*soft.*do not force/);
  });

  test('words of collection.yaml are added', () => {
    const check = { words: [{ words: ['Treacle'], mean: 'dust' }] };
    expect(listOf(['treacle on it'], { check })[0]?.tasks).toEqual(['dust']);
  });
});

describe('what suits the thing', () => {
  const of = (kind: string, condition: string, title = 'T') => {
    const catalogue = someCatalogue({}, [someThing({ row: 2, title, kind, date: dated('1999'), condition })]);
    return handlingList(arrangement(catalogue, '2026-01-01'))[0]?.tasks ?? [];
  };

  test('nothing is slid off film, glass or a tintype, and nothing laid flat that is an object', () => {
    for (const kind of ['tintype', 'glass plate', 'negatives'])
      expect([kind, of(kind, 'paper clip')]).toEqual([kind, ['leave']]);
    expect(of('letter', 'paper clip')).toEqual(['unpin']);
    expect(of('object', 'folded, pin bent')).toEqual([]);
    expect(of('object', 'loose')).toEqual(['support']);
  });

  test('a seal that the title names is seen to before anything is unfolded', () => {
    expect(of('letter', 'folded', 'Deed with wax seal')).toEqual(['seal', 'unfold']);
    expect(of('letter', 'creased', 'Lease with the seals of both')).toEqual(['seal']);
    expect(of('letter', 'folded', 'Deed without wax seal')).toEqual(['unfold']);
    expect(of('letter', 'folded', 'Letter on seal hunting')).toEqual(['unfold']);
    expect(of('letter', 'dusty', 'Deed with wax seal')).toEqual(['dust']);
  });

  test('an object has no binding and no seal', () => {
    expect(of('object', 'cover loose')).toEqual(['support']);
    expect(of('object', 'broken spine')).toEqual(['mark']);
    expect(of('object', 'seal gone stiff')).toEqual([]);
    expect(of('book', 'cover loose')).toEqual(['binding']);
    expect(of('photograph album', 'spine broken')).toEqual(['binding']);
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

test('a folder is no box, however its type is written, and is in the box of the unit above it', () => {
  const unit = (over: Partial<Component>) => smallComponent({ level: 'file', ...over });
  const item = unit({
    containers: [{ type: 'Folder', number: '7' }],
    physicalCharacteristics: 'folded',
    children: [],
  });
  const handled = (containers: Component['containers']) => {
    const collection = unit({ level: 'collection', children: [unit({ containers, children: [item] })] });
    const { aid, boxes } = arrangement(someCatalogue({}, []), '2026-01-01');
    return handlingList({ aid: { ...aid, collection }, boxes })[0];
  };
  expect(handled([])).toMatchObject({ folder: '7' });
  expect(handled([])).not.toHaveProperty('box');
  expect(handled([{ type: 'Box', number: '2' }])).toMatchObject({ box: '2', folder: '7' });
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
