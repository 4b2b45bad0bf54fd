import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { arrangement } from '../../src/arrange/index.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { copiesIn } from '../../src/copies/index.ts';
import { review } from '../../src/review/index.ts';
import { RULES } from '../../src/review/rules.ts';
import { rulesPage } from '../support/rules-page.ts';

const all = Object.values(RULES).flat();
const named = new Map(all.map((rule) => [rule.rule, rule]));
const families = new Set(all.map(({ rule }) => rule.split('.')[0]));

/** What stands in quotes and has the form of the name of a rule, and whether it stands behind the word `rule`. */
const QUOTED = /(\brule\b[^'\n]*)?'(([a-z]+)\.[a-z]+(?:-[a-z]+)*)'/g;
const FILE = /\.(?:yaml|csv|tsv|xlsx|ods)$|^list\.before-numbers$|^numbers\.before$/;

/**
 * The names of rules that stand in the code of the rooms in which findings are made, each with its file: in the review
 * whatever has the form of one, elsewhere what is called a rule, or has the family of one.
 */
function inCode(): Map<string, string> {
  const names = new Map<string, string>();
  for (const room of ['src/review', 'src/intake', 'src/housing', 'src/catalogue']) {
    for (const name of readdirSync(room, { recursive: true, encoding: 'utf8' })) {
      if (!name.endsWith('.ts') || name.endsWith('rules.ts')) continue;
      const file = join(room, name);
      for (const [, called, rule = '', family] of readFileSync(file, 'utf8').matchAll(QUOTED)) {
        const isRule = room === 'src/review' || called !== undefined || families.has(family);
        if (isRule && !FILE.test(rule)) names.set(rule, file);
      }
    }
  }
  return names;
}

// Of the list, of the settings and of numbers.csv: what stops the reading altogether, so that nothing is reviewed.
const STOPS =
  /^(?:(?:begin|catalogue|file|settle|workbook|write|yaml)\.|housing\.(?:own-|folder-without-box$|box-without-folder$)|numbers\.(?:empty|forbidden-character)$|list\.(?:no-title|no-title-column|number-twice|copy-outside|no-things|empty|forbidden-character|unclosed-quote|column-unclear|column-twice|size-impossible|end-uncertain|numbers-not-written|no-such-sheet|no-heading-row)$|settings\.(?:none|entry|end-uncertain|date-unreadable|name-twice)$)/;

/** Rules whose names are made from a table of words, and so stand nowhere in the code. */
const MADE =
  /^(?:danger\.|private\.(?:health|school|bank|legal|adoption|identity|password|identity-number|money-number)$|words\.taken-for-)/;

describe('docs/rules.md', () => {
  test('is what the table of rules gives (npx vitest run tests/review/rules.test.ts -u makes it anew)', async () => {
    await expect(rulesPage()).toMatchFileSnapshot('../../docs/rules.md');
  });

  test('every rule stands once', () => {
    expect(named.size).toBe(all.length);
  });

  test('every rule of the table is in the code, save those made of a table of words', () => {
    const code = inCode();
    const missing = all.map(({ rule }) => rule).filter((rule) => !MADE.test(rule) && !code.has(rule));
    expect(missing, 'No finding has these rules, which stand in src/review/rules.ts').toEqual([]);
  });

  test('every rule of the review is in the table', () => {
    const missing = [...inCode()].filter(([rule]) => !named.has(rule) && !STOPS.test(rule));
    expect(
      missing,
      'These rules need a row in src/review/rules.ts, in a family that is there or a new one; what stops the reading of a file altogether is named in STOPS in tests/review/rules.test.ts',
    ).toEqual([]);
  });
});

// Its settings are as they should be, and its list is no workbook.
const SILENT: ReadonlySet<string> = new Set(['Reading a workbook', 'Reading collection.yaml']);

describe('the example', async () => {
  const folder = 'examples/quill-ferry';
  const catalogue = await loadCatalogue(folder);
  const copies = await copiesIn(
    folder,
    catalogue.things.flatMap((thing) => thing.copies),
  );
  const { findings } = review(catalogue, arrangement(catalogue, '2026-01-01'), copies, '2026-01-01');

  test('every finding has the weight and the source that the table gives its rule', () => {
    for (const { rule, weight, source } of findings) {
      const known = named.get(rule);
      expect([rule, known?.weight]).toEqual([rule, weight]);
      if (known?.source !== undefined && !known.source.includes('named in the finding')) {
        expect([rule, source]).toEqual([rule, known.source]);
      }
    }
  });

  test('has something for each family of rules', () => {
    const rules = new Set(findings.map(({ rule }) => rule));
    const without = Object.entries(RULES)
      .filter(([, family]) => !family.some(({ rule }) => rules.has(rule)))
      .map(([family]) => family);
    expect(
      without.filter((family) => !SILENT.has(family)),
      'Nothing in examples/quill-ferry triggers a rule of these families. Let its list.csv hold something that does, or, where a good list never would, name the family in SILENT in tests/review/rules.test.ts',
    ).toEqual([]);
    expect(
      [...SILENT].filter((family) => !without.includes(family)),
      'These families are named in SILENT, but the example does trigger them, or they are gone',
    ).toEqual([]);
  });
});
