import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { CROSSWALK } from '../../src/export/crosswalk.ts';
import { crosswalkPage } from '../support/crosswalk-page.ts';

const PAGE = fileURLToPath(new URL('../../docs/crosswalk.md', import.meta.url));

// After a change of the crosswalk: npx vitest run tests/standards/crosswalk-page.test.ts -u
it('docs/crosswalk.md is the page that the crosswalk gives', async () => {
  await expect(crosswalkPage()).toMatchFileSnapshot(PAGE);
});

it('the page has a line for each row, and no cell is broken', () => {
  const lines = crosswalkPage().split('\n');
  for (const { field } of CROSSWALK) {
    expect(lines.filter((line) => line.startsWith(`| \`${field}\``)).length, field).toBeGreaterThan(0);
  }
  const widths = lines.filter((line) => line.startsWith('|')).map((line) => line.split(' | ').length);
  expect(new Set(widths)).toEqual(new Set([8, 3]));
});
