import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { reviewDoubles } from '../../src/review/doubles.ts';
import { reviewRuns } from '../../src/review/runs.ts';
import { dated, someCatalogue, someThing } from '../support/catalogue.ts';
import { describeWithSamples } from '../support/outside.ts';

const textOf = (markup = '') =>
  markup
    .replace(/<[^>]+>|&#?\w+;/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();

/** The titles and dates of a finding aid as a list that says nothing else: no kinds, no makers. */
function listOf(finding: string): Thing[] {
  return [...finding.matchAll(/<did[\s\S]*?<\/did>/g)].flatMap(([did], index) => {
    const title = textOf(
      /<unittitle[\s\S]*?<\/unittitle>/.exec(did)?.[0]?.replace(/<unitdate[\s\S]*?<\/unitdate>/g, ''),
    );
    const date = textOf(/<unitdate[ >][\s\S]*?<\/unitdate>/.exec(did)?.[0]);
    if (title === '') return [];
    return [someThing({ row: index + 2, title, ...(date !== '' && { date: dated(date) }) })];
  });
}

describeWithSamples('titles of real finding aids, all without a kind', (samples) => {
  test('hardly any run is cried, and no slip', () => {
    const files = ['ead3', 'ead2002'].flatMap((folder) =>
      readdirSync(join(samples, folder), { recursive: true, encoding: 'utf8' })
        .filter((name) => name.endsWith('.xml'))
        .map((name) => join(samples, folder, name)),
    );
    let rows = 0;
    const found = files.flatMap((file) => {
      const things = listOf(readFileSync(file, 'utf8'));
      rows += things.length;
      const catalogue = someCatalogue({}, things);
      const aid = arrange(catalogue, '2026-01-01');
      return [...reviewRuns(catalogue, aid), ...reviewDoubles(catalogue, aid)];
    });
    expect(rows).toBeGreaterThan(10_000);
    // Read by eye: yearly minutes of one body, of which three years are not there. That is a run.
    expect(found.filter(({ rule }) => rule === 'runs.incomplete').map(({ found: said }) => said)).toEqual([
      expect.stringContaining('The things called “Minutes” seem to come one a year'),
    ]);
    expect(found.filter(({ rule }) => rule === 'doubles.near-title')).toEqual([]);
  });
});
