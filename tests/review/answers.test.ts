import { describe, expect, test } from 'vitest';
import { arrangement } from '../../src/arrange/index.ts';
import { checkSettings } from '../../src/catalogue/check-settings.ts';
import { review, verdict } from '../../src/review/index.ts';
import { reportPage } from '../../src/review/report.ts';
import { dated, someCatalogue, someThing } from '../support/catalogue.ts';

const DAY = '2026-01-01';
const things = [
  someThing({ row: 2, title: 'Packet', number: '7', kind: 'letter', condition: 'mouldy', box: '1' }),
  someThing({ row: 3, title: 'Ledger', kind: 'account book', condition: 'mouldy', box: '1' }),
];

function reviewed(answers: readonly object[], words: readonly object[] = []) {
  const catalogue = someCatalogue({ check: { answers, words } }, things);
  return review(catalogue, arrangement(catalogue, DAY), undefined, DAY);
}

const mould = (answers: readonly object[]) =>
  reviewed(answers)
    .findings.filter(({ rule }) => rule === 'danger.mould')
    .map(({ found }) => found);

describe('answers in collection.yaml', () => {
  test('without one, the finding stands and names both', () => {
    expect(mould([])).toEqual([expect.stringMatching(/“Packet” \(no\. 7, row 2\) and “Ledger” \(row 3\)/)]);
  });

  test('a rule is quiet as a whole, and the reason is kept', () => {
    const because = 'A conservator froze it in 2025.';
    expect(mould([{ rule: 'danger.mould', because }])).toEqual([]);
    expect(reviewed([{ rule: 'danger.mould', because }]).answered).toMatchObject([
      { finding: { rule: 'danger.mould' }, because },
    ]);
  });

  // The first group, its first folder, the first thing in it. YAML reads 7 without quotation marks as a number.
  test.each(['7', 7, 'Packet', 'packet', 'QF/1/1/1'])(
    'one thing is answered by its number, title or reference code (%s); the other stands',
    (of) => {
      const [found, ...more] = mould([{ rule: 'danger.mould', of, because: 'Dry and dead.' }]);
      expect(found).toContain('Ledger');
      expect(found).not.toContain('Packet');
      expect(more).toEqual([]);
    },
  );

  test('the number of a row is not the number of a thing, and a code is that of one thing', () => {
    for (const of of ['2', 'QF/1/1/2', 'QF/1/1']) {
      const [found] = mould([{ rule: 'danger.mould', of, because: 'Dry.' }]);
      expect([of, found]).toEqual([of, expect.stringContaining('“Packet”')]);
    }
  });

  test.each([[2.5], [true], ['']])('of: %j is refused', (of) => {
    expect(
      checkSettings.safeParse({ answers: [{ rule: 'danger.mould', of, because: 'Dry.' }] }).success,
    ).toBe(false);
  });

  test('answers about two things quiet both', () => {
    const answers = ['7', 'Ledger'].map((of) => ({ rule: 'danger.mould', of, because: 'Dry.' }));
    expect(mould(answers)).toEqual([]);
    expect(reviewed(answers).findings.map(({ rule }) => rule)).not.toContain('check.unused-answer');
  });

  test('a gap in a run is answered by its first thing, and makes no other gap', () => {
    const diaries = [1908, 1909, 1910, 1912, 1913].map((year, index) =>
      someThing({ row: index + 2, title: `Diary ${year}`, kind: 'diary', date: dated(`${year}`), box: '1' }),
    );
    const runs = (answers: readonly object[]) => {
      const catalogue = someCatalogue({ check: { answers } }, diaries);
      return review(catalogue, arrangement(catalogue, DAY), undefined, DAY).findings.filter(
        ({ rule }) => rule === 'runs.incomplete',
      );
    };
    expect(runs([])).toHaveLength(1);
    expect(
      runs([
        { rule: 'runs.incomplete', of: 'Diary 1908', because: 'The one of 1911 went down with the boat.' },
      ]),
    ).toEqual([]);
  });

  test('what was found in reading one row is answered there alone, though another says the same', () => {
    const rows = [2, 3].map((row) => someThing({ row, number: String(row), title: `Rope ${row}`, box: '1' }));
    const read = rows.map(({ row }) => ({
      rule: 'list.size-unknown',
      weight: 'should' as const,
      place: { file: 'list.csv', row, column: 'size' },
      found: '“double crown” is not a size that is known.',
    }));
    const answers = [{ rule: 'list.size-unknown', of: '2', because: 'Measured: 38 × 50 cm.' }];
    const catalogue = someCatalogue({ check: { answers } }, rows, read);
    const { findings, answered } = review(catalogue, arrangement(catalogue, DAY), undefined, DAY);
    expect(findings.filter(({ rule }) => rule === 'list.size-unknown').map(({ place }) => place.row)).toEqual(
      [3],
    );
    expect(answered.map(({ finding }) => finding.place.row)).toEqual([2]);
  });

  test('an answer to nothing is said', () => {
    expect(reviewed([{ rule: 'danger.glass', because: 'None.' }]).findings).toContainEqual(
      expect.objectContaining({ rule: 'check.unused-answer' }),
    );
  });

  test('words of one’s own that mean nothing known', () => {
    const rules = (mean: string) =>
      reviewed([], [{ words: ['packet'], mean }]).findings.map(({ rule }) => rule);
    expect(rules('chemicles')).toContain('check.unknown-meaning');
    expect(rules('chemicals')).toContain('danger.chemicals');
  });
});

describe('the report', () => {
  test.each([
    [[], 'Ready to be handed over.'],
    [['caution'], 'Ready to be handed over. One finding asks for care.'],
    [
      ['should', 'consider'],
      'Nearly ready to be handed over: one finding should be mended or answered first.',
    ],
    [['must', 'must', 'should'], 'Not ready to be handed over: 2 findings stand in the way.'],
  ] as const)('ends with what stands in the way: %j', (weights, line) => {
    const findings = weights.map((weight) => ({ rule: 'x', weight, place: {}, found: 'X.' }));
    expect(verdict(findings)).toBe(line);
  });

  test('is a page on which every text is text', () => {
    const found = {
      findings: [
        {
          rule: 'x',
          weight: 'must' as const,
          place: { file: '<b>' },
          found: '<script>1</script>',
          advice: '"&"',
        },
      ],
      answered: [],
    };
    const page = reportPage('Quill & <Rook>', DAY, found, []);
    expect(page).toContain('&lt;script&gt;1&lt;/script&gt;');
    expect(page).not.toContain('<script');
    expect(page).toContain('default-src &#39;none&#39;');
  });

  test('names the rule, and its source where there is one', () => {
    const finding = { rule: 'danger.glass', weight: 'caution' as const, place: {}, found: 'Glass.' };
    const page = (over: object) =>
      reportPage('Quill', DAY, { findings: [{ ...finding, ...over }], answered: [] }, []);
    expect(page({ source: 'from memory' })).toContain(
      '<p class="rule">danger.glass; source: from memory</p>',
    );
    expect(page({})).toContain('<p class="rule">danger.glass</p>');
  });
});
