// Taking in a finding aid of 3 MB, as a ratio against xmllint parsing and validating the same file in the same run.
// Run by hand: npm run build && KINFONDS_SCHEMAS=… node bench/take-in.mjs
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const SIZE = 3_000_000;
const RUNS = 5;
const schemas = process.env.KINFONDS_SCHEMAS;
const MEMORY = '/dev/shm';
const work = mkdtempSync(
  join(process.env.TMPDIR ?? (existsSync(MEMORY) ? MEMORY : tmpdir()), 'kinfonds-bench-'),
);
const file = join(work, 'foreign.xml');

const LEAST = `
  import { readFileSync, writeFileSync } from 'node:fs';
  import { XMLParser } from 'fast-xml-parser';
  const [file, out] = process.argv.slice(-2);
  const parser = new XMLParser({ ignoreAttributes: false, preserveOrder: true });
  writeFileSync(out, JSON.stringify(parser.parse(readFileSync(file, 'utf8'))));
`;

/** A component as other programs write them: labels, dates in words and in structure, two containers. */
const component = (number) => {
  const year = 1850 + (number % 120);
  const note =
    number % 20 === 0
      ? `<scopecontent id="n${number}"><head>Scope</head><p>Crossings of the <emph render="italic">Heron</emph> in ${year}, with the tolls.</p></scopecontent>`
      : '';
  return `      <c id="c${number}" level="file"><did><unittitle label="Title">Letter ${number} to the ferryman</unittitle><unitdate>${year}</unitdate><unitdatestructured><datesingle>${year}</datesingle></unitdatestructured><container localtype="box">${Math.floor(number / 400) + 1}</container><container localtype="folder">${number % 400}</container></did>${note}</c>\n`;
};

function write() {
  let components = '';
  for (let number = 1; components.length < SIZE; number++) components += component(number);
  writeFileSync(
    file,
    `<?xml version="1.0" encoding="UTF-8"?>
<ead xmlns="http://ead3.archivists.org/schema/">
  <control><recordid>quill-bench</recordid><filedesc><titlestmt><titleproper>Heron papers</titleproper></titlestmt></filedesc><maintenancestatus value="new"/><maintenanceagency><agencyname>Applegarth Historical Society</agencyname></maintenanceagency><maintenancehistory><maintenanceevent><eventtype value="created"/><eventdatetime standarddatetime="2014">2014</eventdatetime><agenttype value="human"/><agent>Ada Quill</agent></maintenanceevent></maintenancehistory></control>
  <archdesc level="collection"><did><unittitle>Heron papers</unittitle></did>
    <dsc><c level="series"><did><unittitle>Letters</unittitle></did>
${components}    </c></dsc></archdesc>
</ead>
`,
  );
}

/** The best of several runs, in seconds. */
function time(command, argsOf) {
  let best = Number.POSITIVE_INFINITY;
  for (let run = 0; run < RUNS; run++) {
    const args = argsOf(run);
    const start = performance.now();
    const { status, stderr, error } = spawnSync(command, args, { encoding: 'utf8' });
    if (error !== undefined) throw error;
    if (status !== 0) throw new Error(`${command} ${args.join(' ')} ended with ${status}: ${stderr}`);
    best = Math.min(best, (performance.now() - start) / 1000);
  }
  return best;
}

try {
  if (schemas === undefined) process.stdout.write('Left out: KINFONDS_SCHEMAS is not set.\n');
  else {
    write();
    const xsd = join(schemas, 'ead3', 'ead3.xsd');
    const lint = time('xmllint', () => ['--noout', '--nonet', '--schema', xsd, file]);
    const main = join('dist', 'cli', 'main.js');
    const taken = time(process.execPath, (run) => [
      main,
      'take-in',
      file,
      '--into',
      join(work, `into-${run}`),
    ]);
    const start = time(process.execPath, () => [main, '--help']);
    // What the least work costs that could be called taking in: a tree from a parser in common use, written as JSON.
    const least = time(process.execPath, () => [
      '--input-type=module',
      '--eval',
      LEAST,
      file,
      join(work, 'tree.json'),
    ]);
    process.stdout.write(`xmllint --noout --schema on 3 MB of EAD3: ${lint.toFixed(3)} s\n`);
    process.stdout.write(`kinfonds take-in of it, start-up and all files included: ${taken.toFixed(3)} s\n`);
    process.stdout.write(`  of that, start-up (kinfonds --help): ${start.toFixed(3)} s\n`);
    process.stdout.write(`fast-xml-parser reading it, the tree written as JSON: ${least.toFixed(3)} s\n`);
    process.stdout.write(`  ratio of that to xmllint: ${(least / lint).toFixed(1)}   for information\n`);
    process.stdout.write(`  ratio of taking in to xmllint: ${(taken / lint).toFixed(1)}   goal: at most 3\n`);
  }
} finally {
  rmSync(work, { recursive: true });
}
