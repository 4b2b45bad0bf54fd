import { chmodSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { CatalogueError, type Finding } from '../../src/catalogue/finding.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { built, runAsAnyone } from './own-program.ts';

const YAML = 'title: Quill family papers\nprefix: QF\nrepository:\n  name: The Ferry House\n';
const LIST = 'title,date\nA letter,1952\n';
type Files = Readonly<Record<string, string | Uint8Array>>;
let folder = '';

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'kinfonds-load-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const put = (files: Files) => {
  for (const [name, content] of Object.entries(files)) writeFileSync(join(folder, name), content);
};

/** What is found in a folder that cannot be loaded; checks that not a byte in it has changed. */
async function troubles(files: Files): Promise<readonly Finding[]> {
  put(files);
  const error: unknown = await loadCatalogue(folder).then(
    () => undefined,
    (thrown: unknown) => thrown,
  );
  expect(readdirSync(folder).sort()).toEqual(Object.keys(files).sort());
  for (const [name, content] of Object.entries(files)) {
    expect(readFileSync(join(folder, name)).equals(Buffer.from(content))).toBe(true);
  }
  if (!(error instanceof CatalogueError)) throw new Error(`no clear word, but ${error}`);
  return error.findings;
}
const places = (findings: readonly Finding[]) =>
  findings.map(({ rule, place: { file, row, line } }) => [rule, file, row ?? line]);

describe('a catalogue folder', () => {
  it('loads, with what was noticed', async () => {
    put({ 'collection.yaml': YAML, 'list.csv': `\uFEFF${LIST.replace('date', 'date,shelf')}` });
    const { settings, things, findings, folder: path } = await loadCatalogue(folder);
    expect([path, settings.title, things.map(({ title }) => title)]).toEqual([
      folder,
      'Quill family papers',
      ['A letter'],
    ]);
    expect(places(findings)).toEqual([['list.column-unknown', 'list.csv', 1]]);
  });

  it('lets the people in collection.yaml help to part the names in the list', async () => {
    put({
      'collection.yaml': `${YAML}people:\n  - name: Ada Quill\n  - name: Nils Quill\n    also: [Uncle Nils]\n`,
      'list.csv': 'title,who\nA letter,Ada Quill and Uncle Nils\n',
    });
    expect((await loadCatalogue(folder)).things[0]?.people).toEqual(['Ada Quill', 'Uncle Nils']);
  });

  it('reports all problems of both files together, what stops the work first', async () => {
    const found = await troubles({
      'collection.yaml': 'titel: x\nprefix: QF\nrepository:\n  name: y\n',
      'list.csv': 'no,title,when,shelf\n1,a,whenever,\n1,,x,\n1,b,,\n',
    });
    expect(places(found)).toEqual([
      ['settings.entry', 'collection.yaml', 1],
      ['settings.entry', 'collection.yaml', 1],
      ['list.number-twice', 'list.csv', 2],
      ['list.no-title', 'list.csv', 3],
      ['list.column-unknown', 'list.csv', 1],
      ['list.date-unreadable', 'list.csv', 2],
    ]);
  });
});

describe('bad input is said clearly, and every file stays as it was', () => {
  it('no folder', async () => {
    const error = await loadCatalogue(join(folder, 'none')).catch((thrown: unknown) => thrown);
    expect(error).toBeInstanceOf(CatalogueError);
    expect(String(error)).toMatch(/none: This folder is not there\..*kinfonds begin /);
  });

  it('a file in place of the folder', async () => {
    put({ 'list.csv': LIST });
    const error = await loadCatalogue(join(folder, 'list.csv')).catch((thrown: unknown) => thrown);
    expect(String(error)).toContain('This is a file; a catalogue is a folder.');
  });

  it('no collection.yaml', async () => {
    const [finding, ...others] = await troubles({ 'list.csv': LIST });
    expect(others).toEqual([]);
    expect(finding?.found).toContain('There is no collection.yaml here');
    expect(finding?.advice).toContain(`kinfonds begin ${folder}`);
  });

  it('an empty folder, which is to be begun and misses no list by itself', async () => {
    expect(places(await troubles({}))).toEqual([['catalogue.no-settings', folder, undefined]]);
  });

  it.each([
    [
      'a text in place of the workbook',
      'list.xlsx',
      /has the name of a workbook, but it is a text/,
      /list\.csv/,
    ],
    ['an old workbook', 'list.xls', /there is list\.xls/, /save it as list\.xlsx/],
    ['a list under another name', 'List.CSV', /there is List\.CSV/, /rename it to list\.csv/],
    ['no list', 'notes.txt', /There is no list\.csv and no list\.xlsx\.$/, /CSV UTF-8/],
  ])('%s', async (_, name, found, advice) => {
    const findings = await troubles({ 'collection.yaml': YAML, [name]: 'title\na\n' });
    expect(findings).toHaveLength(1);
    expect(findings[0]?.found).toMatch(found);
    expect(findings[0]?.advice).toMatch(advice);
  });

  it.each<[string, string | Uint8Array, [string, number | undefined][]]>([
    ['an empty list', '', [['list.empty', undefined]]],
    ['a list with only headings', 'title,date\n\n', [['list.no-things', 1]]],
    [
      'rows that are only numbered',
      'number,title\n1,\n2,\n',
      [
        ['list.no-things', 1],
        ['list.number-only', 2],
      ],
    ],
    ['a row without title', 'title,date\n,1950\n', [['list.no-title', 2]]],
    ['the same number twice', 'number,title\n1,a\n1,b\n', [['list.number-twice', 2]]],
    ['a column twice', 'title,date,date\na,,\n', [['list.column-twice', 1]]],
    ['no headings', 'A letter,1950\nA quilt,1960\n', [['list.no-title-column', 1]]],
    ['a workbook called list.csv', Uint8Array.from([0x50, 0x4b, 3, 4, 0, 0]), [['file.binary', undefined]]],
    ['a control character', 'title\na\u0007b\n', [['list.forbidden-character', 2]]],
  ])('%s', async (_, list, expected) => {
    const findings = await troubles({ 'collection.yaml': YAML, 'list.csv': list });
    const stops = findings.filter(({ weight }) => weight === 'must' || expected.length > 1);
    expect(stops.map(({ rule, place }) => [rule, place.row])).toEqual(expected);
    expect(findings.every(({ place }) => place.file === 'list.csv')).toBe(true);
  });

  it.each([
    ['a tab', 'title: x\nrepository:\n\tname: y\n', 3, 'tab'],
    ['a duplicate key', `${YAML}title: again\n`, 5, 'twice'],
  ])('YAML with %s', async (_, yaml, line, word) => {
    const findings = await troubles({ 'collection.yaml': yaml, 'list.csv': LIST });
    expect(findings).toHaveLength(1);
    expect(findings[0]).toMatchObject({ place: { file: 'collection.yaml', line } });
    expect(findings[0]?.found).toContain(word);
  });

  it('folders under the names of the files', async () => {
    mkdirSync(join(folder, 'collection.yaml'));
    mkdirSync(join(folder, 'list.csv'));
    const error = await loadCatalogue(folder).catch((thrown: unknown) => thrown);
    expect(String(error)).toContain('list.csv: This is a folder');
    expect(String(error)).toContain('collection.yaml: This is a folder');
  });

  it('files and folders that one may not read', () => {
    const closed = join(folder, 'closed');
    mkdirSync(closed);
    writeFileSync(join(closed, 'collection.yaml'), YAML);
    writeFileSync(join(closed, 'list.csv'), LIST);
    const load = `const { loadCatalogue } = await import(${built('catalogue/load.js')});
      console.log((await loadCatalogue(${JSON.stringify(closed)})).things.length);`;
    expect(runAsAnyone(load)).toBe('1\n');
    chmodSync(join(closed, 'list.csv'), 0);
    expect(runAsAnyone(load)).toBe('CatalogueError: list.csv: You are not permitted to read this file.\n');
    chmodSync(closed, 0);
    expect(runAsAnyone(load)).toMatch(/closed: You are not permitted to look into this folder\./);
  });
});
