// What it takes to hold a list of 100,000 rows against every rule, as a ratio to arranging it: the best of three runs.
// Without digital copies; what it takes to read those is for the disk to say. Part of `npm run bench`.
import { arrangement } from '../dist/arrange/index.js';
import { loadCatalogue } from '../dist/catalogue/load.js';
import { review } from '../dist/review/index.js';
import { counted, freshRuns, inSeconds, ROWS, say, timed } from './fresh-runs.mjs';

const DAY = '2026-01-01';

async function run(folder) {
  const catalogue = await loadCatalogue(folder);
  const [arranged, arranging] = timed(() => arrangement(catalogue, DAY));
  const [{ findings }, reviewing] = timed(() => review(catalogue, arranged, undefined, DAY));
  return { arranging, reviewing, findings: findings.length };
}

await freshRuns(import.meta.url, run, (runs) => {
  const arranging = Math.min(...runs.map((one) => one.arranging));
  const reviewing = Math.min(...runs.map((one) => one.reviewing));
  const [{ findings }] = runs;
  say(`${counted(ROWS)} rows arranged`, inSeconds(arranging));
  say(`  held against every rule: ${counted(findings)} findings`, inSeconds(reviewing));
  say('  ratio of that to arranging', (reviewing / arranging).toFixed(2), 'at most 2');
});
