import { describe, expect, test } from 'vitest';
import { arrangement } from '../../src/arrange/index.ts';
import type { Weight } from '../../src/catalogue/finding.ts';
import type { Settled } from '../../src/catalogue/settled.ts';
import type { Traces } from '../../src/catalogue/traces.ts';
import { labelsOf } from '../../src/export/labels/labels-of.ts';
import { textOf } from '../../src/export/labels/printed.ts';
import { review } from '../../src/review/index.ts';
import { nextStep } from '../../src/review/next-step.ts';
import { sayNextStep, sayStatus } from '../../src/review/say-status.ts';
import { type Status, statusOf } from '../../src/review/status.ts';
import { dated, someCatalogue, someThing } from '../support/catalogue.ts';

const TODAY = '2026-06-01';
const NOTHING: Traces = { printed: new Map(), changed: { at: 5, day: '2026-05-05' }, packages: [] };

const THINGS = [
  someThing({ row: 2, number: '1', kind: 'letter', date: dated('1913') }),
  someThing({ row: 3, number: '2', kind: 'letter' }),
  someThing({ row: 4, kind: 'letter', date: dated('undated') }),
  someThing({ row: 5 }),
];

const settled = (number: string, over: Partial<Settled> = {}): Settled => ({
  number,
  title: `Thing ${number}`,
  place: [1, 1, Number(number)],
  groups: ['Letters'],
  ...over,
});

function status(rows: readonly Settled[] = [], traces: Traces = NOTHING): Status {
  const catalogue = { ...someCatalogue({}, THINGS), settled: rows };
  return statusOf(catalogue, arrangement(catalogue, TODAY), [], traces);
}

describe('where things stand', () => {
  test('what the list lacks: a thing said to be undated has its date', () => {
    // Counted by hand from THINGS.
    expect(status().list).toEqual({ file: 'list.csv', things: 4, withoutKind: 1, withoutDate: 2 });
  });

  test('numbers: settled, not yet, and settled but not in the list any more', () => {
    expect(status().numbers).toEqual({ settled: 0, notSettled: 4, notListed: 0 });
    expect(status([settled('1')]).numbers).toEqual({ settled: 1, notSettled: 3, notListed: 0 });
    // Thing 9 is in no row of the list; thing 2 was marked as gone before, so it has no place to go by.
    const rows = [settled('1'), settled('9'), settled('2', { gone: 'removed' })];
    expect(status(rows).numbers).toEqual({ settled: 1, notSettled: 3, notListed: 1 });
  });

  test('what is not to be boxed, unless the owner has answered for it', () => {
    const things = [
      someThing({ row: 2, number: '1', condition: 'mouldy' }),
      someThing({ row: 3, condition: 'rolled' }),
    ];
    const care = (answers: Record<string, unknown>) => {
      const catalogue = { ...someCatalogue(answers, things), settled: [] };
      const arranged = arrangement(catalogue, TODAY);
      return statusOf(catalogue, arranged, review(catalogue, arranged).findings, NOTHING).notBoxed;
    };
    expect(care({})).toEqual(['mould']);
    const answer = { rule: 'danger.mould', because: 'a conservator has cleaned it' };
    expect(care({ check: { answers: [answer] } })).toEqual([]);
  });

  test('numbers to be filled in by hand, where the program cannot: the next after all that were ever used', () => {
    const of = (listFile: string, rows: readonly Settled[]) => {
      const catalogue = { ...someCatalogue({}, THINGS), listFile, settled: rows };
      return statusOf(catalogue, arrangement(catalogue, TODAY), [], NOTHING).numbers.toFillIn;
    };
    // Two of THINGS have no number, and 9 was given before to a thing that is gone.
    expect(of('list.xlsx', [])).toEqual(['3', '4']);
    expect(of('list.xlsx', [settled('9', { gone: 'removed' })])).toEqual(['10', '11']);
    expect(of('list.csv', [])).toBeUndefined();
  });

  test('copies: files that the list names, each once, without addresses on the web', () => {
    const things = [
      someThing({ row: 2, copies: ['copies/a.jpg', 'https://example.org/b.jpg'] }),
      someThing({ row: 3, copies: ['copies/a.jpg', 'copies/c.jpg'] }),
    ];
    const catalogue = someCatalogue({}, things);
    expect(statusOf(catalogue, arrangement(catalogue, TODAY), [], NOTHING).copies).toBe(2);
  });

  test('labels: new ones, those with other words, those as printed', () => {
    const labels = labelsOf(arrangement(someCatalogue({}, THINGS), TODAY).aid);
    expect(labels.length).toBeGreaterThan(1);
    const [first, ...others] = labels.map((label) => [label.key, textOf(label)] as const);
    expect(status().labels).toEqual({ fresh: labels.length, changed: 0, printed: 0 });
    const printed = new Map([...others, [first?.[0] ?? '', 'other words']]);
    expect(status([], { ...NOTHING, printed }).labels).toEqual({
      fresh: 0,
      changed: 1,
      printed: labels.length - 1,
    });
  });

  test('findings by their weight, and those that are not on the collection as a whole', () => {
    const catalogue = someCatalogue({}, THINGS);
    const said = (weight: Weight, file: string) => ({
      rule: 'a.rule',
      weight,
      place: { file },
      found: 'Something.',
    });
    const findings = [
      said('must', 'collection.yaml'),
      said('should', 'list.csv'),
      said('should', 'collection.yaml'),
      said('caution', 'list.csv'),
    ];
    expect(statusOf(catalogue, arrangement(catalogue, TODAY), findings, NOTHING)).toMatchObject({
      findings: { must: 1, should: 2, consider: 0, caution: 1 },
      onThings: 1,
    });
  });

  test('an export and a package are told from the changes after them, and the last package is told of', () => {
    const exported = { folder: 'finding-aid', at: 4, day: '2026-05-05' };
    const packages = [
      { path: '../a', day: '2026-05-04' },
      { path: '../c', day: '2026-05-05' },
      { path: '../b', day: '2025-12-31' },
    ];
    expect(status([], { ...NOTHING, exported, packages })).toMatchObject({
      exported: { folder: 'finding-aid', day: '2026-05-05', before: true },
      handedOver: { path: '../c', day: '2026-05-05', before: false },
    });
    expect(status([], { ...NOTHING, exported: { ...exported, at: 6 } }).exported?.before).toBe(false);
    expect(status([], { ...NOTHING, packages: packages.slice(0, 1) }).handedOver?.before).toBe(true);
  });
});

/** A catalogue in which all is done, but for what is given. */
const done = (over: Partial<Status> = {}): Status => ({
  title: 'Quill family papers',
  list: { file: 'list.xlsx', things: 214, withoutKind: 0, withoutDate: 3 },
  shelf: { folders: 61, boxes: 1, packages: 0 },
  numbers: { settled: 214, notSettled: 0, notListed: 0 },
  findings: { must: 0, should: 0, consider: 4, caution: 1 },
  copies: 0,
  notBoxed: [],
  onThings: 0,
  labels: { fresh: 0, changed: 0, printed: 62 },
  exported: { folder: 'finding-aid', day: '2026-05-05', before: false },
  isPromised: false,
  ...over,
});

const without = <Key extends keyof Status>(key: Key, over: Partial<Status> = {}): Status => {
  const { [key]: _, ...rest } = done(over);
  return rest as Status;
};

describe('what to do next', () => {
  const unprinted = { fresh: 62, changed: 0, printed: 0 };
  const loose = { settled: 0, notSettled: 214, notListed: 0 };
  const made = { path: '../q-2025', day: '2026-05-05', before: false };
  const findings = { must: 0, should: 0, consider: 0, caution: 0 };

  // The order of the work is that of docs/first-afternoon.md: ask the list, settle, label, find or hand over.
  test.each<[string, Status, string]>([
    ['what is said of things, before numbers are fixed', done({ onThings: 1, numbers: loose }), 'check'],
    [
      'what is said of the whole can wait',
      done({ findings: { ...findings, must: 2 }, numbers: loose }),
      'arrange --settle',
    ],
    ['but not past the export', without('exported', { findings: { ...findings, must: 2 } }), 'check'],
    ['nothing settled', done({ numbers: loose }), 'arrange --settle'],
    [
      'a new thing, whatever should be mended',
      done({ onThings: 1, numbers: { ...loose, settled: 3 } }),
      'arrange --settle',
    ],
    [
      'a thing taken out',
      done({ numbers: { settled: 213, notSettled: 0, notListed: 1 } }),
      'arrange --settle',
    ],
    ['no labels yet', without('exported', { labels: unprinted }), 'labels --out labels.pdf'],
    [
      'labels changed',
      done({ labels: { fresh: 0, changed: 1, printed: 61 } }),
      'labels --new --out labels.pdf',
    ],
    ['labels not wanted, since the work went on without', done({ labels: unprinted }), 'find WORDS'],
    ['no export', without('exported'), 'export'],
    [
      'an export older than the list',
      done({ exported: { folder: 'finding-aid', day: '2026-05-05', before: true } }),
      'export',
    ],
    [
      'what should be mended, before it is handed over',
      done({ findings: { ...findings, should: 1 }, isPromised: true }),
      'check',
    ],
    ['promised to somebody', done({ isPromised: true }), 'hand-over --out ../quill-papers-2026-06-01'],
    [
      'a package older than the list',
      done({ handedOver: { ...made, before: true } }),
      'hand-over --out ../quill-papers-2026-06-01',
    ],
    ['a package', done({ handedOver: made }), 'verify ../q-2025'],
    ['nothing is left, and the family keeps it', done(), 'find WORDS'],
  ])('%s', (_, where, command) => {
    expect(nextStep(where, 'quill-papers', TODAY).command).toBe(`kinfonds ${command}`);
  });

  test('in a workbook the numbers are filled in first, and it is said which', () => {
    const numbers = { settled: 0, notSettled: 214, notListed: 0, toFillIn: ['31', '32', '33', '34'] };
    const { command, why } = nextStep(done({ numbers }), 'quill-papers', TODAY);
    expect(command).toBe('kinfonds arrange --settle');
    expect(why).toMatch(/^First .* column “number” of list\.xlsx: downwards 31, 32 and so on to 34;/);
    expect(nextStep(done({ numbers: loose }), 'quill-papers', TODAY).why).not.toContain('First give');
  });

  test.each([
    ['before settling', { numbers: loose }],
    ['before handing over', { isPromised: true }],
    ['at the end', {}],
  ])('%s it sends to the copies, where there are any', (_, over) => {
    const why = (copies: number) => nextStep(done({ ...over, copies }), 'quill-papers', TODAY).why;
    expect(why(3)).toMatch(/copies.*kinfonds check|kinfonds check.*copies/);
    expect(why(0)).not.toContain('copies');
  });

  test('a folder with a blank in its name can be typed as shown', () => {
    const { command } = nextStep(done({ isPromised: true }), 'quill papers', TODAY);
    expect(command).toBe('kinfonds hand-over --out "../quill papers-2026-06-01"');
  });
});

describe('in words', () => {
  test('one line each, and the next step last', () => {
    const shelf = { folders: 61, boxes: 1, packages: 1 };
    const where = done({ shelf, handedOver: { path: '../q', day: '2026-01-01', before: true } });
    const next = { command: 'kinfonds check', why: 'So it is.' };
    expect([...sayStatus(where), ...sayNextStep(next)]).toEqual([
      'Quill family papers',
      '',
      'list       214 things in list.xlsx, 3 without date',
      'order      61 folders in 1 box, 1 package too large for a box',
      'numbers    settled',
      'findings   4 consider, 1 caution',
      'labels     printed',
      'export     finding-aid, of 2026-05-05',
      'hand-over  ../q, of 2026-01-01, before the catalogue was last changed',
      '',
      'Next:      kinfonds check',
      '           So it is.',
    ]);
  });

  test('nothing done yet', () => {
    const { exported: _, ...fresh } = done({
      numbers: { settled: 0, notSettled: 3, notListed: 0 },
      labels: { fresh: 4, changed: 0, printed: 0 },
      findings: { must: 0, should: 0, consider: 0, caution: 0 },
    });
    expect([...sayStatus(fresh)].slice(4, 9)).toEqual([
      'numbers    not settled',
      'findings   none',
      'labels     not printed',
      'export     none',
      'hand-over  no package beside this folder',
    ]);
  });

  test('what is not to be boxed is named at once', () => {
    const lines = [...sayStatus(done({ notBoxed: ['mould', 'insects or mice'] }))];
    const care = lines.indexOf('findings   4 consider, 1 caution') + 1;
    expect(lines[care]).toMatch(/^take care {2}not to be boxed .*: mould, insects or mice \(kinfonds check/);
  });

  test('a workbook without numbers, and copies that were not looked at', () => {
    const numbers = { settled: 0, notSettled: 3, notListed: 0, toFillIn: ['1', '2'] };
    const lines = [...sayStatus(done({ numbers, copies: 1 }))];
    expect(lines).toContain('numbers    not settled; 2 still to be filled in, in list.xlsx');
    expect(lines).toContain('findings   4 consider, 1 caution (kinfonds check looks at the copies too)');
  });

  test('half done', () => {
    const where = done({
      numbers: { settled: 3, notSettled: 2, notListed: 1 },
      labels: { fresh: 1, changed: 2, printed: 3 },
    });
    const lines = [...sayStatus(where)];
    expect(lines).toContain('numbers    3 settled, 2 not yet; 1 settled before and not in the list any more');
    expect(lines).toContain('labels     3 printed, 1 new, 2 changed since they were printed');
    expect([...sayStatus(done({ labels: { fresh: 0, changed: 0, printed: 0 } }))]).toContain(
      'labels     none needed',
    );
  });
});
