import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { writeCatalogue } from './list-of-things.mjs';

export const ROWS = 100_000;
const RUNS = 3;

/**
 * Measures something on a catalogue of `ROWS` rows, each time in a fresh process: the script that calls this is started
 * again with the folder, in which case `run` measures, and what it returns is passed on. In the end `report` gets it all.
 */
export async function freshRuns(script, run, report) {
  const [, , given] = process.argv;
  if (given !== undefined) return void process.stdout.write(JSON.stringify(await run(given)));
  // In memory where the system has such a place.
  const place = process.env.TMPDIR ?? (existsSync('/dev/shm') ? '/dev/shm' : tmpdir());
  const folder = mkdtempSync(join(place, 'kinfonds-bench-'));
  try {
    writeCatalogue(folder, ROWS);
    report(Array.from({ length: RUNS }, () => oneRun(fileURLToPath(script), folder)));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function oneRun(script, folder) {
  const { status, stdout, stderr, error } = spawnSync(process.execPath, [script, folder], {
    encoding: 'utf8',
  });
  if (error !== undefined) throw error;
  if (status !== 0) throw new Error(`${script} ${folder} ended with ${status}: ${stderr}`);
  return JSON.parse(stdout);
}

/** What some work returns, and how long it took in seconds. */
export function timed(work) {
  const start = performance.now();
  const result = work();
  return [result, (performance.now() - start) / 1000];
}

export function say(what, figure, goal = '') {
  process.stdout.write(`${what.padEnd(64)} ${figure.padStart(9)}   ${goal}\n`);
}

export const inSeconds = (seconds) => `${seconds.toFixed(2)} s`;
export const counted = (number) => number.toLocaleString('en');
