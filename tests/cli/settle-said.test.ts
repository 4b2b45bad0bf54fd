import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { beginWorkbook } from '../../src/catalogue/begin-workbook.ts';
import { readWorkbook } from '../../src/intake/sheets/workbook.ts';
import { makeWorkbook } from '../intake/make-workbook.ts';
import { freshFolder, kinfonds } from '../support/kinfonds.ts';

const YAML = 'title: Rook papers\nprefix: RP\nrepository: {name: Rook family}\n';

function catalogue(files: Readonly<Record<string, string | Uint8Array>>): string {
  const folder = join(freshFolder(), 'rook');
  mkdirSync(folder);
  for (const [name, content] of Object.entries({ 'collection.yaml': YAML, ...files }))
    writeFileSync(join(folder, name), content);
  return folder;
}

const settle = (cwd: string) => kinfonds(['arrange', '--settle'], { cwd });
const LIST = 'title,date,kind\nToll of May,1913,letter\nToll of June,1914,letter\n';

describe('what settling says', () => {
  test('the code to write on a folder, and under what name the list is kept', () => {
    const cwd = catalogue({ 'list.csv': LIST });
    const { code, out } = settle(cwd);
    expect(code).toBe(0);
    const [, kept = ''] = /the list as it was is kept beside it as (\S+)\.$/m.exec(out) ?? [];
    expect(readFileSync(join(cwd, kept), 'utf8')).toBe(LIST);
    const [, folder = ''] = /^The code of each folder, such as (\S+), may be written/m.exec(out) ?? [];
    // A code of numbers.csv is that of a thing; that of its folder is one number shorter.
    expect(readFileSync(join(cwd, 'numbers.csv'), 'utf8')).toContain(`,${folder}/1,`);
  });

  test('that nothing is new, and then of new folders only', () => {
    const cwd = catalogue({ 'list.csv': LIST });
    settle(cwd);
    expect(settle(cwd).out).toBe('Nothing new to settle. Settled before: 2 things in 2 folders and 1 box.\n');
    const list = readFileSync(join(cwd, 'list.csv'), 'utf8');
    // One more of 1913 lies with the other; one of 1920 gets a folder.
    writeFileSync(join(cwd, 'list.csv'), `${list},Toll of July,1913,letter\n`);
    const same = settle(cwd).out;
    expect(same).toContain('1 of them new');
    expect(same).not.toContain('The code of each');
    const more = readFileSync(join(cwd, 'list.csv'), 'utf8');
    writeFileSync(join(cwd, 'list.csv'), `${more},Toll of August,1920,letter\n`);
    expect(settle(cwd).out).toContain(
      'The code of each new folder, such as RP/1/3, may be written on it now',
    );
  });

  test('where the new things went, one by one, once something was settled before', () => {
    const cwd = catalogue({ 'list.csv': LIST });
    expect(settle(cwd).out).not.toMatch(/^no\. /m);
    const list = readFileSync(join(cwd, 'list.csv'), 'utf8');
    writeFileSync(join(cwd, 'list.csv'), `${list},Ferry whistle,1920,whistle\n,Toll of July,1913,letter\n`);
    const { out } = settle(cwd);
    const numbers = readFileSync(join(cwd, 'numbers.csv'), 'utf8');
    // number,title,code,groups,filed under,folder,…,box: what numbers.csv has is what is said.
    const [headings = [], ...rows] = numbers
      .replace('\uFEFF', '')
      .trim()
      .split(/\r?\n/)
      .map((line) => line.split(','));
    const cell = (number: string, heading: string) =>
      rows.find(([first]) => first === number)?.[headings.indexOf(heading)];
    const code = (number: string) => cell(number, headings[2] ?? '');
    expect(out.match(/^no\. .*$/gm)?.sort()).toEqual([
      `no. 3 Ferry whistle: ${code('3')}, box ${cell('3', 'box')}`,
      `no. 4 Toll of July: ${code('4')}, folder ${cell('4', 'folder')}, box ${cell('4', 'box')}`,
    ]);
    expect(out).toMatch(/Labels that are new or changed: kinfonds labels .*--out labels\.pdf --new$/m);
    expect(settle(cwd).out).not.toMatch(/^no\. /m);
  });

  test('of more than ten new things the first ten, and how many more', () => {
    const cwd = catalogue({ 'list.csv': LIST });
    settle(cwd);
    const list = readFileSync(join(cwd, 'list.csv'), 'utf8');
    const more = Array.from({ length: 13 }, (_, index) => `,Ticket ${index},1930,ticket\n`).join('');
    writeFileSync(join(cwd, 'list.csv'), list + more);
    const { out } = settle(cwd);
    expect(out.match(/^no\. /gm)).toHaveLength(10);
    expect(out).toMatch(/^and 3 more/m);
  });

  test('what was taken out is something new', () => {
    const cwd = catalogue({ 'list.csv': LIST });
    settle(cwd);
    const list = readFileSync(join(cwd, 'list.csv'), 'utf8');
    writeFileSync(join(cwd, 'list.csv'), list.split('\n').slice(0, 2).join('\n'));
    const { out } = settle(cwd);
    expect(out).toContain('Toll of June');
    expect(out).not.toContain('Nothing new');
    expect(settle(cwd).out).toContain('Nothing new');
  });
});

test('a quantity or a size that cannot be read stops no settling: check says no must either', () => {
  const list = 'title,kind,quantity,size\nTolls,letters,lots,\nThe ferryman’s bed,object,,knee-high\n';
  const cwd = catalogue({ 'list.csv': list });
  const found: { rule: string; weight: string }[] = JSON.parse(kinfonds(['check', '--json'], { cwd }).out);
  const unread = found.filter(({ rule }) => /^list\.(?:size|quantity)/.test(rule));
  expect(unread.map(({ rule, weight }) => `${weight} ${rule}`).sort()).toEqual([
    'should list.quantity-unreadable',
    'should list.size-unknown',
  ]);
  const { code, out } = settle(cwd);
  expect([code, out]).toEqual([0, expect.stringContaining('Settled: 2 things')]);
  expect(JSON.parse(kinfonds(['--json'], { cwd }).out).numbers).toMatchObject({ settled: 2 });
});

describe('a workbook', () => {
  test('says beside “number” who fills in the numbers', () => {
    const guide = readWorkbook(beginWorkbook(), 'list.xlsx').at(-1);
    const row = guide?.rows.find(({ cells }) => cells[0] === 'number');
    expect(row?.cells[1]).toMatch(/in this workbook you .*before you settle; in list\.csv the program/i);
  });

  test('is to have its numbers filled in before it is settled, which is said before', () => {
    const rows = [
      ['number', 'title', 'kind', 'date'],
      ['4', 'Toll of May', 'letter', '1913'],
      ['', 'Toll of June', 'letter', '1914'],
    ];
    const cwd = catalogue({ 'list.xlsx': makeWorkbook([{ rows }]) });
    expect(kinfonds([], { cwd }).out).toMatch(
      /First give the thing that has none its number .*list\.xlsx: downwards 5;/,
    );
    const { code, err } = settle(cwd);
    expect(code).toBe(1);
    expect(err).toContain('downwards 5; or save the list');
    const filled = rows.map((row, at) => (at === 2 ? ['5', ...row.slice(1)] : row));
    writeFileSync(join(cwd, 'list.xlsx'), makeWorkbook([{ rows: filled }]));
    expect(settle(cwd).code).toBe(0);
  });
});
