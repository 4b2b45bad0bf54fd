// Benchmarks as ratios against a public tool in the same run. Run by hand: npm run bench
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'rolldown';
import { bundledInto } from '../bundling.mjs';
import { writeCatalogue } from './list-of-things.mjs';

const schemas = process.env.KINFONDS_SCHEMAS;
const xsd = schemas === undefined ? undefined : join(schemas, 'ead3', 'ead3.xsd');
// In memory where the system has such a place: xmllint reads what is in memory too, and a disk's moods are neither's.
const MEMORY = '/dev/shm';
const place = process.env.TMPDIR ?? (existsSync(MEMORY) ? MEMORY : tmpdir());
const work = mkdtempSync(join(place, 'kinfonds-bench-'));
process.stdout.write(`Files are written below ${place}; TMPDIR chooses another place.\n`);

/** The best of several runs, in seconds, and what the last one printed. */
function time(runs, command, ...args) {
  let best = Number.POSITIVE_INFINITY;
  let printed = '';
  for (let run = 0; run < runs; run++) {
    const start = performance.now();
    const { status, stdout, stderr, error } = spawnSync(command, args, { encoding: 'utf8' });
    if (error !== undefined) throw error;
    if (status !== 0) throw new Error(`${command} ${args.join(' ')} ended with ${status}: ${stderr}`);
    best = Math.min(best, (performance.now() - start) / 1000);
    printed = stdout;
  }
  return { seconds: best, printed };
}

function say(what, figure, goal) {
  process.stdout.write(`${what.padEnd(64)} ${figure.padStart(9)}   ${goal}\n`);
}

const main = join('dist', 'cli', 'main.js');
// Of few files, as the command line is: what is measured starts as it does. The packages it takes lie above it.
const bundled = join('out', 'bench');
const writer = join(bundled, 'list-to-files.js');
await build({ input: 'bench/list-to-files.mjs', ...bundledInto(bundled) });

try {
  const written = {};
  for (const rows of [10, 10_000, 100_000]) {
    const folder = join(work, String(rows));
    writeCatalogue(folder, rows);
    const out = join(folder, 'out');
    const run = time(3, process.execPath, writer, folder, out, 'ead3');
    written[rows] = { folder, file: join(out, 'ead3.xml'), ...run };
  }
  const large = written[100_000];
  say('100,000 rows to ead3.xml, start-up included', `${large.seconds.toFixed(2)} s`, '');
  say('  size of that file', `${Math.round(statSync(large.file).size / 1e6)} MB`, '');
  say('  peak memory', `${large.printed} MB`, 'at most 500 MB');
  const start = written[10].seconds;
  const exponent = Math.log10((large.seconds - start) / (written[10_000].seconds - start));
  say(
    '  growth from 10,000 to 100,000 rows, start-up taken off',
    exponent.toFixed(2),
    'exponent at most 1.1',
  );

  if (xsd === undefined)
    process.stdout.write('Left out: ratios against xmllint; KINFONDS_SCHEMAS is not set.\n');
  else {
    const lint = time(3, 'xmllint', '--noout', '--nonet', '--schema', xsd, large.file);
    say('xmllint --noout --schema ead3.xsd on it', `${lint.seconds.toFixed(2)} s`, '');
    say('  ratio of writing to that', (large.seconds / lint.seconds).toFixed(2), 'at most 1.0');
    const validate = time(3, process.execPath, main, 'validate', large.file, '--schemas', schemas);
    say('  ratio of kinfonds validate to that', (validate.seconds / lint.seconds).toFixed(2), 'at most 1.3');
    const whole = time(
      1,
      process.execPath,
      main,
      'export',
      join(work, '100000'),
      '--to',
      'ead3',
      '--out',
      join(work, 'out'),
      '--schemas',
      schemas,
    );
    say(
      '  ratio of kinfonds export --to ead3, validation included',
      (whole.seconds / lint.seconds).toFixed(2),
      'for information',
    );
    const all = 'ead3,ead2002,dc,dcterms,eac-cpf,json,csv';
    const files = time(2, process.execPath, writer, large.folder, join(work, 'all'), all);
    say('all formats together, start-up included', `${files.seconds.toFixed(2)} s`, '');
    say('  ratio of that to xmllint on the EAD3', (files.seconds / lint.seconds).toFixed(2), 'at most 2.5');
    say('  peak memory', `${files.printed} MB`, 'for information');
  }

  const nothing = time(10, process.execPath, '-e', '0');
  const help = time(10, process.execPath, main, '--help');
  say('kinfonds --help against node -e 0', (help.seconds / nothing.seconds).toFixed(2), 'at most 2.5');
} finally {
  rmSync(work, { recursive: true });
}
