// Packing and verifying a bag, as ratios against cp, sha512sum on the same files, in the same run.
// Run by hand: node bench/bag.mjs [MEGABYTES] [RUNS]. It needs five times as much room below TMPDIR.
import { execFileSync } from 'node:child_process';
import { randomFillSync } from 'node:crypto';
import { closeSync, mkdirSync, mkdtempSync, openSync, rmSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const megabytes = Number(process.argv[2] ?? 2000);
const runs = Number(process.argv[3] ?? 3);
const dist = new URL('../dist', import.meta.url).pathname;
const work = mkdtempSync(join(process.env.TMPDIR ?? tmpdir(), 'kinfonds-bench-bag-'));
const copies = join(work, 'copies');
const bag = join(work, 'bag');

/** Scans of a few megabytes, as a family has them, and one film of a quarter of all. */
function writeCopies() {
  mkdirSync(copies);
  const megabyte = Buffer.alloc(1_000_000);
  const write = (name, size) => {
    const file = openSync(join(copies, name), 'w');
    for (let done = 0; done < size; done++) writeSync(file, randomFillSync(megabyte));
    closeSync(file);
  };
  const film = Math.floor(megabytes / 4);
  write('film.mov', film);
  for (let number = 0, left = megabytes - film; left > 0; number++) {
    const size = Math.min(left, 2 + (number % 9));
    write(`scan-${number}.tif`, size);
    left -= size;
  }
}

/** A run of a program, in seconds. */
function time(command, args, options = {}) {
  const start = performance.now();
  execFileSync(command, args, { stdio: ['ignore', 'ignore', 'inherit'], ...options });
  return (performance.now() - start) / 1000;
}

const module = (file) => JSON.stringify(new URL(`file://${join(dist, file)}`).href);
const script = (text) => ['--input-type=module', '-e', text];
const packing = `const { writeBag } = await import(${module('handover/bag/index.js')});
  const { readdirSync } = await import('node:fs');
  const entries = readdirSync(${JSON.stringify(copies)}).map((name) => ({ path: 'copies/' + name, from: ${JSON.stringify(`${copies}/`)} + name }));
  await writeBag(${JSON.stringify(bag)}, entries, [['Bagging-Date', '2026-01-01']]);`;
const verifying = `const { verifyBag } = await import(${module('handover/bag/index.js')});
  const { valid } = await verifyBag(${JSON.stringify(bag)});
  if (!valid) throw new Error('the bag is not valid');`;

function measure() {
  const copied = join(work, 'copied');
  const sums = join(work, 'sums');
  const cp = time('cp', ['-r', copies, copied]);
  const sum = time('bash', ['-c', `sha512sum copied/* > ${sums}`], { cwd: work });
  const check = time('sha512sum', ['--quiet', '-c', sums], { cwd: work });
  rmSync(copied, { recursive: true });
  rmSync(bag, { recursive: true, force: true });
  const pack = time(process.execPath, script(packing));
  const verify = time(process.execPath, script(verifying));
  return { reference: cp + sum, check, pack, verify };
}

function say(what, seconds, other, goal) {
  const figures = `${seconds.toFixed(1)} s : ${other.toFixed(1)} s = ${(seconds / other).toFixed(2)}`;
  process.stdout.write(`${what.padEnd(44)} ${figures}   ${goal}\n`);
}

try {
  writeCopies();
  // What waits to be written to the disk is none of the first run's business.
  execFileSync('sync');
  const best = {};
  for (let run = 1; run <= runs; run++) {
    const times = measure();
    for (const [what, seconds] of Object.entries(times))
      best[what] = Math.min(best[what] ?? seconds, seconds);
    process.stdout.write(`Run ${run} of ${runs}, ${megabytes} MB\n`);
    say('  packed, against cp -r and sha512sum', times.pack, times.reference, '');
    say('  verified, against sha512sum -c', times.verify, times.check, '');
  }
  process.stdout.write('The best of each\n');
  say('  packed, against cp -r and sha512sum', best.pack, best.reference, 'at most 1.3');
  say('  verified, against sha512sum -c', best.verify, best.check, 'at most 1.1');
} finally {
  rmSync(work, { recursive: true, force: true });
}
