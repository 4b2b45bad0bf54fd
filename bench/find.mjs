// `kinfonds find` on a list of 100,000 things, beside `grep -c` on the same list and the bare start of Node, in one run.
// By hand, after `npm run build`: node bench/find.mjs
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { writeCatalogue } from './list-of-things.mjs';

const ROWS = 100_000;
const RUNS = 25;
const GOAL = 1.5;
const MEMORY = '/dev/shm';
const place = process.env.TMPDIR ?? (existsSync(MEMORY) ? MEMORY : tmpdir());
const folder = mkdtempSync(join(place, 'kinfonds-bench-'));
const main = join('dist', 'cli', 'main.js');

/** Milliseconds of one run. Its output is read, since grep stops at the first line found where nobody reads. */
function time(command, args) {
  const start = performance.now();
  const { status, stderr, error } = spawnSync(command, args, { maxBuffer: 1 << 28 });
  if (error !== undefined) throw error;
  if (status !== 0) throw new Error(`${command} ${args.join(' ')} ended with ${status}: ${stderr}`);
  return performance.now() - start;
}

const say = (what, figure, goal = '') =>
  process.stdout.write(`${what.padEnd(64)} ${figure.padStart(9)}   ${goal}\n`);

const find = (...words) => [process.execPath, [main, 'find', folder, ...words]];

/** What is asked: rare words and such as three of four things have, with slips, a year, a phrase, a filter. */
const QUESTIONS = {
  'a word of three things in four': find('bridge'),
  'two such words': find('bridge', 'winter'),
  'such a word misspelt': find('brigde'),
  'a name, a place and a year': find('signe', 'nordvik', '1912'),
  'one thing by its number': find('about', '54321'),
  'a phrase of two such words': find('"river ferry"'),
  'somebody’s things, without a word': find('--person', 'nils'),
};

try {
  writeCatalogue(folder, ROWS);
  const list = join(folder, 'list.csv');
  say('the first answer, with the index to be made', `${(time(...find('bridge')) / 1000).toFixed(1)} s`);
  const size = statSync(join(folder, '.kinfonds-find')).size / statSync(list).size;
  say('  size of the index to that of the list', size.toFixed(1));
  const all = {
    grep: ['grep', ['-c', 'bridge', list]],
    node: [process.execPath, ['-e', '0']],
    'the program alone, `kinfonds --version`': [process.execPath, [main, '--version']],
    ...QUESTIONS,
  };
  const best = Object.fromEntries(Object.keys(all).map((name) => [name, Number.POSITIVE_INFINITY]));
  // In turns, so that what else the machine does meets all of them alike.
  for (let run = 0; run < RUNS; run++) {
    for (const [name, [command, args]] of Object.entries(all)) {
      best[name] = Math.min(best[name], time(command, args));
    }
  }
  const { grep, node, ...ours } = best;
  say('grep -c on the list, and node -e 0', `${(grep + node).toFixed(0)} ms`);
  for (const [name, milliseconds] of Object.entries(ours)) {
    const goal = name in QUESTIONS ? `at most ${GOAL}` : 'for information';
    say(`  ratio of ${name} to both`, (milliseconds / (grep + node)).toFixed(2), goal);
  }
} finally {
  rmSync(folder, { recursive: true });
}
