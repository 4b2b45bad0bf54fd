import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { freshFolder, kinfonds } from '../support/kinfonds.ts';

const YAML = 'title: Quill family papers\nprefix: QF\nrepository:\n  name: Quill family\n  country: US\n';
const LIST = 'number,title,kind\n24,Live .303 round from the Home Guard,object\n25,Letter from Ada,letter\n';

function catalogueWith(list: string, yaml = YAML): string {
  const folder = freshFolder();
  writeFileSync(join(folder, 'collection.yaml'), yaml);
  writeFileSync(join(folder, 'list.csv'), list);
  return folder;
}

const WORDS = 'not to be boxed before somebody has looked at it';

describe('what check calls dangerous', () => {
  test('supplies says so beside its table, and only then', () => {
    const { err, out } = kinfonds(['supplies', catalogueWith(LIST)]);
    expect(err).toContain(`“Live .303 round from the Home Guard” (no. 24, row 2), ${WORDS}: ammunition`);
    expect(out).not.toContain(WORDS);
    expect(kinfonds(['supplies', catalogueWith(LIST.replace('Live .303 round', 'Badge'))]).err).not.toContain(
      WORDS,
    );
  });

  test('check --work begins with it', () => {
    const { out } = kinfonds(['check', catalogueWith(LIST), '--work']);
    expect(out).toMatch(
      new RegExp(`^First, ${WORDS}\\n.*Live \\.303 round .*: ammunition\\n {8}Do not move`),
    );
  });

  test.each(['24', 'QF/2/1/1'])('an answer of %s, as YAML reads it, quiets all of them', (of) => {
    const answers = `check:\n  answers:\n    - rule: danger.ammunition\n      of: ${of}\n      because: Looked at.\n`;
    const folder = catalogueWith(LIST, YAML + answers);
    expect(kinfonds(['supplies', folder]).err).not.toContain(WORDS);
    const { out } = kinfonds(['check', folder]);
    expect(out).toContain('1 answered in collection.yaml');
    expect(out).not.toContain('danger.ammunition');
  });
});

test('every finding names its rule, those that stand in the way too, so that it can be answered', () => {
  const { out } = kinfonds(['check', catalogueWith(LIST)]);
  expect(out).toMatch(/^must {2}/m);
  expect(out).toContain('        rule: description.scope\n');
});
