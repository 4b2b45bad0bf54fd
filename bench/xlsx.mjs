// How long a workbook of 100,000 rows takes to read, against the comma-separated values of the same rows; each is read in
// a process of its own, start-up left out. Run by hand: npm run build && node bench/xlsx.mjs
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { strToU8, zipSync } from 'fflate';
import { readRows } from '../dist/intake/csv-rows.js';
import { readList } from '../dist/intake/list.js';
import { writeCatalogue } from './list-of-things.mjs';

const ROWS = 100_000;
const RUNS = 5;
const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006/relationships';

/** The rows of a list as a workbook, in the way of spreadsheet programs: texts shared, numbers as numbers. */
function workbookOf(csv) {
  const strings = new Map();
  const share = (text) => {
    const at = strings.get(text) ?? strings.size;
    strings.set(text, at);
    return at;
  };
  const cell = (text, at) =>
    text === ''
      ? ''
      : /^\d{1,9}$/.test(text)
        ? `<c r="${at}" s="0"><v>${text}</v></c>`
        : `<c r="${at}" s="0" t="s"><v>${share(text)}</v></c>`;
  const rows = [...readRows(csv, ',')].map(({ row, cells }) => {
    const inside = cells.map((text, index) => cell(text, `${String.fromCharCode(65 + index)}${row}`));
    return `<row r="${row}" spans="1:13">${inside.join('')}</row>`;
  });
  const escaped = (text) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
  const shared = [...strings.keys()].map((text) => `<si><t xml:space="preserve">${escaped(text)}</t></si>`);
  const related = (to) =>
    `<Relationships xmlns="${PACKAGE}">${to.map(([type, target], at) => `<Relationship Id="r${at}" Type="${OFFICE}/${type}" Target="${target}"/>`).join('')}</Relationships>`;
  const parts = {
    '_rels/.rels': related([['officeDocument', 'xl/workbook.xml']]),
    'xl/workbook.xml': `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets><sheet name="List" sheetId="1" r:id="r0"/></sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': related([
      ['worksheet', 'worksheets/sheet1.xml'],
      ['sharedStrings', 'sharedStrings.xml'],
    ]),
    'xl/sharedStrings.xml': `<sst xmlns="${MAIN}">${shared.join('')}</sst>`,
    'xl/worksheets/sheet1.xml': `<worksheet xmlns="${MAIN}"><sheetData>${rows.join('')}</sheetData></worksheet>`,
  };
  return zipSync(Object.fromEntries(Object.entries(parts).map(([name, xml]) => [name, strToU8(xml)])));
}

function readOnce(file) {
  const bytes = readFileSync(file);
  const start = performance.now();
  const { things } = readList(bytes, basename(file));
  const seconds = (performance.now() - start) / 1000;
  if (things.length !== ROWS) throw new Error(`${file} has ${things.length} things`);
  return { seconds, memory: Math.round(process.resourceUsage().maxRSS / 1024) };
}

/** The best of several runs. */
function best(file) {
  const runs = Array.from({ length: RUNS }, () => {
    const { stdout, stderr, status } = spawnSync(process.execPath, [import.meta.filename, file], {
      encoding: 'utf8',
    });
    if (status !== 0) throw new Error(stderr);
    return JSON.parse(stdout);
  });
  return runs.reduce((one, other) => (other.seconds < one.seconds ? other : one));
}

const [file] = process.argv.slice(2);
if (file !== undefined) process.stdout.write(JSON.stringify(readOnce(file)));
else {
  const work = mkdtempSync(join(tmpdir(), 'kinfonds-bench-'));
  try {
    writeCatalogue(work, ROWS);
    const csv = join(work, 'list.csv');
    const xlsx = join(work, 'list.xlsx');
    writeFileSync(xlsx, workbookOf(readFileSync(csv, 'utf8')));
    const text = best(csv);
    const book = best(xlsx);
    const say = (what, figure, goal = '') =>
      process.stdout.write(`${what.padEnd(64)} ${figure.padStart(9)}   ${goal}\n`);
    const megabytes = (path) => `${Math.round(statSync(path).size / 1e5) / 10} MB`;
    say(`${ROWS} rows of list.csv, ${megabytes(csv)}`, `${text.seconds.toFixed(2)} s`);
    say('  peak memory', `${text.memory} MB`);
    say(`${ROWS} rows of list.xlsx, ${megabytes(xlsx)}`, `${book.seconds.toFixed(2)} s`);
    say('  peak memory', `${book.memory} MB`);
    say('  ratio of the two', (book.seconds / text.seconds).toFixed(2), 'at most 4.0');
  } finally {
    rmSync(work, { recursive: true });
  }
}
