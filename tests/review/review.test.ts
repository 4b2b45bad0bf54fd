import { describe, expect, test } from 'vitest';
import type { Finding } from '../../src/catalogue/finding.ts';
import { dated, reviewOf, someThing } from '../support/catalogue.ts';

/** Everything that DACS requires at the top of a multilevel description and a list cannot tell. */
const FULL = {
  creators: ['Quill family'],
  dates: '1889-1957',
  repository: { name: 'Quill family', address: ['Ellersby'] },
  scope: 'Letters and photographs of the ferry.',
  access: 'Open.',
  languages: ['English'],
  rights: 'CC0 1.0 Universal',
  history: 'They kept the ferry.',
  author: 'Nora',
  custody: 'Ada kept it.',
  acquisition: 'Handed down in the family.',
  use: 'Ask first.',
  subjects: ['Ferries'],
};

// In a box of the list's own, on which nothing is to be said.
const letter = someThing({ row: 2, kind: 'letter', box: '1' });
const rules = (findings: readonly Finding[]) => findings.map(({ rule }) => rule);

describe('what the standards require at the top (DACS, chapter 1)', () => {
  test('nothing is left to say of a description that has it all', () => {
    expect(reviewOf(FULL, [letter])).toEqual([]);
  });

  test.each([
    // The element of DACS, the setting that holds it, what its absence is called.
    ['2.2', 'repository', 'description.repository-place'],
    ['2.4', 'dates', 'description.dates'],
    ['2.6', 'creators', 'description.creator'],
    ['3.1', 'scope', 'description.scope'],
    ['4.1', 'access', 'description.access'],
    ['4.5', 'languages', 'description.language'],
    ['8.2', 'rights', 'description.rights'],
  ])('DACS %s: %s', (number, setting, rule) => {
    const { [setting]: _, ...rest } = { ...FULL } as Record<string, unknown>;
    const findings = reviewOf(rest, [letter]);
    expect(findings).toMatchObject([{ rule, weight: 'must', place: { file: 'collection.yaml' } }]);
    expect(findings[0]?.source).toContain(`DACS ${number}`);
  });

  test('a language of the list counts', () => {
    const { languages: _, ...rest } = FULL;
    expect(reviewOf(rest, [{ ...letter, languages: ['Norwegian'] }])).toEqual([]);
  });
});

test('things that fit no group are named with their row and the column that is blank', () => {
  const findings = reviewOf({ ...FULL, sort: { groups: ['decade'] } }, [letter]);
  expect(findings).toMatchObject([{ rule: 'groups.left-over', place: { row: 2, column: 'date' } }]);
});

test('a language nobody can look up, and words for a group that is not there', () => {
  const findings = reviewOf({ ...FULL, groups: { Corespondence: { scope: 'x' } } }, [
    { ...letter, languages: ['Riverish'] },
  ]);
  expect(rules(findings)).toEqual(['words.unknown-language', 'groups.unused-words']);
});

test('what matters most comes first, what was noticed while reading included', () => {
  const noticed: Finding = { rule: 'list.unknown-column', weight: 'consider', place: {}, found: 'x' };
  const findings = reviewOf(
    { ...FULL, scope: undefined },
    [{ ...letter, languages: ['Riverish'] }],
    [noticed],
  );
  expect(rules(findings)).toEqual(['description.scope', 'words.unknown-language', 'list.unknown-column']);
});

describe('words of the list', () => {
  test('a kind that is not known is named once, with what may be meant', () => {
    const list = [2, 3, 4].map((row) => someThing({ row, kind: 'leter', box: '1' }));
    expect(reviewOf(FULL, list)).toMatchObject([
      {
        rule: 'words.unknown-kind',
        place: { row: 2 },
        found: expect.stringContaining('(and in 2 more rows)'),
        advice: 'Is “letter” meant?',
      },
    ]);
  });

  test('a kind that is not known says how it is housed meanwhile', () => {
    const of = (kind: string, over = {}) =>
      reviewOf(FULL, [someThing({ row: 2, kind, box: '1', ...over })]).filter(
        ({ rule }) => rule === 'words.unknown-kind',
      );
    expect(of('whatsitmajig')).toMatchObject([
      {
        found:
          '“whatsitmajig” is not a kind that is known; it makes a group of its own and is treated as a sheet of paper.',
        advice: 'If it is a thing rather than a paper, write the kind object.',
      },
    ]);
    const [thick] = of('whatsitmajig', { size: '30 x 20 x 10 cm' });
    expect(thick?.found).toMatch(/ is treated as an object\.$/);
    expect(thick).not.toHaveProperty('advice');
    expect(of('lettr')[0]?.advice).toBe('Is “letter” meant?');
    for (const known of ['negs', 'trophy', 'cornet', 'photograph, mounted', 'letter, copy'])
      expect(of(known)).toEqual([]);
  });

  test('names of the list alone are said, people and organisations apart', () => {
    const list = [{ ...letter, people: ['Bea Rook', 'Savings Bank of Ellersby'] }];
    const settings = { ...FULL, people: [{ name: 'Quill family', type: 'family' }] };
    expect(reviewOf(settings, list).map(({ found }) => found)).toEqual([
      'These names of the list are taken for persons: “Bea Rook”.',
      'These names of the list are taken for organisations: “Savings Bank of Ellersby”.',
    ]);
  });

  test('a language of the settings that nobody can look up', () => {
    expect(rules(reviewOf({ ...FULL, languages: ['English', 'Klingonish'] }, [letter]))).toEqual([
      'words.unknown-language-of-all',
    ]);
  });

  test('what is open needs no end of a restriction', () => {
    const list = [{ ...letter, access: 'anyone', until: dated('2050') }];
    expect(reviewOf(FULL, list)).toMatchObject([
      { rule: 'words.open-yet-ending', place: { row: 2, column: 'until' } },
    ]);
  });
});

describe('records that are handed on', () => {
  test('somebody who may be living is pointed out (common practice: a hundred years)', () => {
    const of = (person: object) =>
      rules(reviewOf({ ...FULL, described: 2026, people: [{ name: 'Eve Rook', ...person }] }, [letter]));
    expect(of({ born: 1990 })).toEqual(['records.may-be-living']);
    expect(of({ born: 1990, died: 2020 })).toEqual([]);
    expect(of({ born: 1890 })).toEqual([]);
    expect(of({})).toEqual([]);
  });

  test('a separator that stands in a value', () => {
    const recipient = { name: 'An archive', separator: '; ' };
    const list = [{ ...letter, description: 'On the flood; on the frost.' }];
    expect(reviewOf({ ...FULL, recipient }, list)).toMatchObject([
      { rule: 'records.separator-in-value', place: { component: 'QF/1/1/1' } },
    ]);
    expect(reviewOf({ ...FULL, recipient: { name: 'An archive' } }, list)).toEqual([]);
  });
});
