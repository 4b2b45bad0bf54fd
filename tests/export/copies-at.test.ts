import { expect, test } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import { withCopiesAt } from '../../src/export/copies-at.ts';
import { someSettings, someThing } from '../support/catalogue.ts';

test('copies stand under their new address, those on the web as they are, and the finding aid given is untouched', () => {
  const things = [
    someThing({ row: 2, kind: 'letter', copies: ['copies/a.jpg', 'https://example.org/b.jpg'] }),
    someThing({ row: 3, kind: 'diary' }),
  ];
  const aid = arrange({ settings: someSettings(), things }, '2026-01-01');
  const before = JSON.stringify(aid);
  const moved = withCopiesAt(aid, (file) => `../${file}`);
  const files = moved.collection.children[0]?.children[0]?.children[0]?.digitalCopies.map(({ file }) => file);
  expect(files).toEqual(['../copies/a.jpg', 'https://example.org/b.jpg']);
  expect(moved.collection.children[1]).toBe(aid.collection.children[1]);
  expect(JSON.stringify(aid)).toBe(before);
});
