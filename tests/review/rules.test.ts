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

/** The names of rules that stand in the code of the rooms in which findings are made. */
function inCode(): Set<string> {
  const names = new Set<string>();
  for (const room of ['src/review', 'src/intake', 'src/housing', 'src/catalogue']) {
    for (const file of readdirSync(room, { recursive: true, encoding: 'utf8' })) {
      if (!file.endsWith('.ts') || file.endsWith('rules.ts')) continue;
      const code = readFileSync(join(room, file), 'utf8');
      for (const [, name] of code.matchAll(/'((?:[a-z]+)\.[a-z]+(?:-[a-z]+)*)'/g)) {
        if (name !== undefined) names.add(name);
      }
    }
  }
  return names;
}

describe('docs/rules.md', () => {
  test('is what the table of rules gives (npx vitest run tests/review/rules.test.ts -u makes it anew)', async () => {
    await expect(rulesPage()).toMatchFileSnapshot('../../docs/rules.md');
  });

  test('every rule stands once', () => {
    expect(named.size).toBe(all.length);
  });

  test('every rule of the table is in the code, save those made of a table of words', () => {
    const code = inCode();
    const made =
      /^(?:danger\.|private\.(?:health|school|bank|legal|adoption|identity|password|identity-number|money-number)$|words\.taken-for-)/;
    for (const { rule } of all) if (!made.test(rule)) expect(code).toContain(rule);
  });

  test('every rule of the review is in the table', () => {
    const families =
      /^(?:list|settings|description|titles|words|groups|dates|numbers|housing|runs|doubles|copies|private|access|danger|records|check)\./;
    // Those of the list, of the settings and of numbers.csv that stop the reading altogether.
    const stops =
      /^(?:housing\.(?:unknown|own|folder|box)|numbers\.|list\.(?:no-title|number-twice|copy-outside|no-things|empty|forbidden-character|unclosed-quote|column-unclear|column-twice|size-impossible|end-uncertain|numbers-not-written|no-such-sheet|no-heading-row)|settings\.(?:none|entry|end-uncertain|date-unreadable|name-twice))/;
    for (const name of inCode()) {
      if (
        families.test(name) &&
        !stops.test(name) &&
        !/\.(?:yaml|csv|tsv|xlsx|ods|json|ts|before-numbers)$/.test(name)
      ) {
        expect([...named.keys()]).toContain(name);
      }
    }
  });
});

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
    // Its settings are as they should be, and its list is no workbook.
    expect(without).toEqual(['Reading a workbook', 'Reading collection.yaml']);
  });
});
