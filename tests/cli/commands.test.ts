import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { FORMAT_NAMES } from '../../src/catalogue/format-names.ts';
import { contentsOf, freshFolder, kinfonds } from '../support/kinfonds.ts';
import { codeIn, rowsUnder } from '../support/tables.ts';
import { longTest } from '../support/times.ts';

const EXAMPLE = 'examples/quill-ferry';

/** A catalogue folder with this list. */
function catalogueWith(
  list: string,
  yaml = 'title: Rook family papers\nprefix: RF\nrepository:\n  name: Rook family\n',
): string {
  const folder = freshFolder();
  writeFileSync(join(folder, 'collection.yaml'), yaml);
  writeFileSync(join(folder, 'list.csv'), list);
  return folder;
}

/** The files that an export says it wrote, without the verdict on each. */
const pathsIn = (out: string): string[] =>
  out
    .trimEnd()
    .split('\n')
    .map((line) => line.replace(/: valid .*$/, ''));

describe('kinfonds', () => {
  test('help of every command, with an example', () => {
    const commands = [
      'begin',
      'arrange',
      'check',
      'supplies',
      'labels',
      'find',
      'export',
      'validate',
      'take-in',
      'compare',
      'hand-over',
      'verify',
      'schemas',
      'completion',
    ];
    const { code, out } = kinfonds(['--help']);
    expect(code).toBe(0);
    for (const command of commands) {
      expect(out).toContain(`  ${command} `);
      const help = kinfonds([command, '--help']);
      expect(help.code).toBe(0);
      expect(help.out).toContain(`Example: kinfonds ${command}`);
    }
  });

  test.each([
    ['arrange', '--compare', '--things'],
    ['arrange', '--settle', '--boxes'],
    ['check', '--work', '--out', 'report.html'],
    ['begin', '--copies', 'scans', '--from', 'list.csv'],
    ['begin', '--copies', 'scans', '--preview'],
  ])('options that would silently do nothing together are wrong usage: %s %s %s', (command, ...options) => {
    const { code, out, err } = kinfonds([command, ...options], { cwd: freshFolder() });
    expect([code, out, err]).toEqual([2, '', expect.stringContaining('cannot be used with option')]);
  });

  test('wrong usage ends with 2', () => {
    for (const args of [
      ['unfold'],
      ['export', '--to', 'parchment', '.'],
      ['validate'],
      ['arrange', '--sideways'],
    ]) {
      const { code, err, out } = kinfonds(args);
      expect([args, code, out]).toEqual([args, 2, '']);
      expect(err).toMatch(/^error: /);
    }
    expect(kinfonds(['export', '--to', 'parchment']).err).toContain(
      `The formats are ${FORMAT_NAMES.join(', ')}; all takes them all.`,
    );
  });

  test('from begin to a finding aid, using only what the messages say', () => {
    const folder = join(freshFolder(), 'rook papers');
    const began = kinfonds([
      'begin',
      folder,
      '--title',
      'Rook family papers',
      '--prefix',
      'RF',
      '--repository',
      'Rook family',
    ]);
    expect(began).toMatchObject({ code: 0, err: '' });
    expect(kinfonds(['arrange', folder])).toMatchObject({ code: 1, out: '' });
    const list = join(folder, 'list.csv');
    writeFileSync(
      list,
      `${readFileSync(list, 'utf8').trimEnd()}\r\n,Bea to Tom on the thaw,1962-05-14,letter\r\n`,
    );
    const arranged = kinfonds(['arrange', folder, '--things']);
    expect(arranged.out).toContain('RF/1/1/1  Bea to Tom on the thaw');
    const out = join(folder, 'out');
    const exported = kinfonds(['export', folder, '--to', 'all', '--out', out]);
    expect(exported).toMatchObject({
      code: 0,
    });
    for (const file of [
      'ead3.xml',
      'ead2002.xml',
      'dublin-core.csv',
      'finding-aid.json',
      'finding-aid.csv',
    ]) {
      expect(pathsIn(exported.out)).toContain(join(out, file));
    }
    expect(exported.out).toContain('ead3.xml: valid EAD3, by the');
    expect(kinfonds(['validate', join(out, 'ead3.xml')]).code).toBe(0);
  });

  test('the folder defaults to the current one', () => {
    const folder = catalogueWith('what,when\nFerry bell,1891\n');
    expect(kinfonds(['arrange'], { cwd: folder }).out).toContain(
      'RF/1/1  Things whose kind is not yet noted, 1891',
    );
  });

  longTest('the same catalogue gives the same bytes', () => {
    const [one, two] = [freshFolder(), freshFolder()];
    for (const out of [one, two])
      expect(kinfonds(['export', EXAMPLE, '--to', 'all', '--out', out]).code).toBe(0);
    expect(contentsOf(one)).toEqual(contentsOf(two));
    const said = rowsUnder(readFileSync('README.md', 'utf8'), '`--to`').flatMap(([, what]) => codeIn(what));
    expect(readdirSync(one).sort()).toEqual(said.map((path) => path.split('/')[0]).sort());
  });

  test('every command speaks JSON on standard output', () => {
    const run = (...args: string[]) => JSON.parse(kinfonds(args).out);
    expect(run('arrange', EXAMPLE, '--json')).toMatchObject({
      collection: { referenceCode: 'QF', level: 'collection' },
    });
    expect(run('arrange', EXAMPLE, '--compare', '--json')[0]).toHaveProperty('leftOver');
    expect(run('check', EXAMPLE, '--json')[0]).toMatchObject({ place: { file: 'list.csv' } });
    const out = freshFolder();
    expect(run('export', EXAMPLE, '--out', out, '--json').written[0]).toMatchObject({
      format: 'ead3',
      validation: { valid: true },
    });
    expect(run('validate', join(out, 'ead3.xml'), '--json')[0]).toMatchObject({
      format: 'EAD3',
      valid: true,
    });
    expect(run('schemas', '--json')[0]).toHaveProperty('profile');
    expect(run('begin', join(freshFolder(), 'new'), '--title', 'T', '--json')).toHaveProperty('files');
  });

  test('problems of the settings and of the list are reported together, and nothing is written', () => {
    const folder = catalogueWith('title,number,kind\n,1,letter\nBell,2,\nOar,2,\n', 'titel: x\nprefix: RF\n');
    const before = contentsOf(folder);
    const { code, out, err } = kinfonds(['export', folder]);
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain('collection.yaml');
    expect(err).toContain('list.csv, row 2');
    expect(err).toContain('row 4');
    expect(err).toMatch(/\d+ problems; nothing was changed\.\n$/);
    expect(contentsOf(folder)).toEqual(before);
    expect(existsSync(join(folder, 'finding-aid'))).toBe(false);
  });

  test('an earlier export stays where the new one cannot be written', () => {
    const out = freshFolder();
    expect(kinfonds(['export', EXAMPLE, '--out', out]).code).toBe(0);
    const before = contentsOf(out);
    mkdirSync(join(out, 'finding-aid.csv'));
    const { code, err } = kinfonds(['export', EXAMPLE, '--to', 'all', '--out', out]);
    expect(code).toBe(1);
    expect(err).toContain('finding-aid.csv');
    expect(contentsOf(out)).toEqual(before);
  });

  test('check ends with 1 and says what to do, in plain words', () => {
    const folder = catalogueWith('what\nFerry bell\n');
    const { code, out } = kinfonds(['check', folder]);
    expect(code).toBe(1);
    expect(out).toContain('The collection has no scope and content');
    expect(out).toContain('(DACS 3.1, ISAD(G) 3.3.1)');
    expect(out).toContain('“Ferry bell” fits no group');
  });

  test('validate names what is wrong in each of several files, the readable and the unreadable', () => {
    const folder = freshFolder();
    const broken = join(folder, 'broken.xml');
    writeFileSync(broken, '<ead xmlns="http://ead3.archivists.org/schema/"><archdesc/></ead>');
    const { code, out } = kinfonds(['validate', broken, join(folder, 'not-there.xml')]);
    expect(code).toBe(1);
    expect(out).toContain('not valid EAD3, by the');
    expect(out).toContain('/ead/archdesc');
    expect(out).toContain('There is no such file.');
  });

  test('validate shows twenty faults of a file, and counts the rest', () => {
    const file = join(freshFolder(), 'many.xml');
    const faults = '<c><did><unittitle>Bell</unittitel></did></c>'.repeat(40);
    writeFileSync(file, `<ead xmlns="http://ead3.archivists.org/schema/">${faults}</ead>`);
    const { out } = kinfonds(['validate', file]);
    expect(out.match(/closes nothing here/g)).toHaveLength(20);
    expect(out).toMatch(/… and \d+ more;/);
    expect(JSON.parse(kinfonds(['validate', file, '--json']).out)[0].messages.length).toBeGreaterThan(39);
  });

  test('export says so where there is nothing for a format to write', () => {
    const folder = freshFolder();
    const yaml = 'title: Quill family papers\nprefix: QF\nrepository:\n  name: Quill family\n';
    writeFileSync(join(folder, 'collection.yaml'), yaml);
    writeFileSync(join(folder, 'list.csv'), 'title,people\nFerry bell,Ada Quill\n');
    const { code, err } = kinfonds(['export', folder, '--to', 'eac-cpf']);
    expect([code, err]).toEqual([0, expect.stringContaining('eac-cpf: there is nothing to write')]);
  });

  test('no colour where no terminal is', () => {
    expect(kinfonds(['check', EXAMPLE]).out).not.toContain('\x1b[');
  });
});

test('without --to, what the recipient wants is written, under the prefix it gives', () => {
  const recipient =
    'recipient:\n  name: Osier County Historical Society\n  formats: [ead2002, csv]\n  prefix: MS 412\n';
  const folder = catalogueWith('title\nBell\n', `title: T\nprefix: RF\nrepository: {name: R}\n${recipient}`);
  const { code, out } = kinfonds(['export', folder]);
  expect([code, pathsIn(out)]).toEqual([
    0,
    ['ead2002.xml', 'finding-aid.csv'].map((file) => join(folder, 'finding-aid', file)),
  ]);
  expect(readFileSync(join(folder, 'finding-aid', 'ead2002.xml'), 'utf8')).toContain('MS 412/1/1/1');
});

test('a folder of records is replaced as a whole, so that nothing of an earlier export stays', () => {
  const person = 'people:\n  - {name: Ada, born: 1902}\n';
  const settings = 'title: T\nprefix: RF\nrepository: {name: R}\n';
  const folder = catalogueWith('title,people\nBell,Ada\n', settings + person);
  const out = join(folder, 'out');
  kinfonds(['export', folder, '--to', 'eac-cpf', '--out', out]);
  expect(readdirSync(join(out, 'eac-cpf'))).toEqual(['ada.xml']);
  writeFileSync(join(folder, 'collection.yaml'), settings);
  kinfonds(['export', folder, '--to', 'eac-cpf', '--out', out]);
  expect(readdirSync(join(out, 'eac-cpf'))).toEqual([]);
});
