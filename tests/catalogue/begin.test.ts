import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { beginCatalogue } from '../../src/catalogue/begin.ts';
import { CatalogueError } from '../../src/catalogue/finding.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { keysAt } from '../../src/catalogue/schema-at.ts';
import { settings } from '../../src/catalogue/settings.ts';
import { COLUMNS } from '../../src/catalogue/thing.ts';

let root = '';
let folder = '';
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'kinfonds-begin-'));
  folder = join(root, 'quill');
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

const rulesOf = async (work: Promise<unknown>) => {
  const error = await work.catch((thrown: unknown) => thrown);
  if (!(error instanceof CatalogueError)) throw new Error(`no clear word, but ${error}`);
  return error.findings.map(({ rule }) => rule);
};
const yaml = () => readFileSync(join(folder, 'collection.yaml'), 'utf8');
const start = { title: 'Quill family papers', repository: 'The Ferry House' };

describe('a new catalogue', () => {
  it('loads as soon as the list holds a thing', async () => {
    expect(await beginCatalogue(folder, start)).toEqual([
      join(folder, 'collection.yaml'),
      join(folder, 'list.csv'),
    ]);
    expect(readdirSync(folder).sort()).toEqual(['collection.yaml', 'list.csv']);
    expect(await rulesOf(loadCatalogue(folder))).toEqual(['list.no-things']);
    writeFileSync(
      join(folder, 'list.csv'),
      `${readFileSync(join(folder, 'list.csv'), 'utf8')}1,A letter\r\n`,
    );
    const { settings, things, findings } = await loadCatalogue(folder);
    expect(settings).toMatchObject({
      title: 'Quill family papers',
      prefix: 'QFP',
      repository: { name: 'The Ferry House' },
    });
    expect([things.length, findings.length]).toEqual([1, 0]);
  });

  it('asks for what was not given, and for nothing else', async () => {
    await beginCatalogue(folder);
    const error = await loadCatalogue(folder).catch((thrown: unknown) => thrown);
    expect(String(error)).toMatch(
      /“title” must be there.*\n.*“prefix” must be there.*\n.*“name” in “repository” must be/,
    );
    expect(await rulesOf(loadCatalogue(folder))).toEqual([
      ...Array(3).fill('settings.entry'),
      'list.no-things',
    ]);
  });

  it.each([
    ['Quill family papers', 'QFP'],
    ['The Papers of the Quill Family at the River', 'PQFR'],
    ['Østergård letters', 'ØL'],
    ['quill', 'Q'],
    ['Papers of three generations of ferrymen at Sallow Reach', 'PTGF'],
  ])('%s has the prefix %s', async (title, prefix) => {
    await beginCatalogue(folder, { ...start, title });
    expect(parse(yaml()).prefix).toBe(prefix);
  });

  it('keeps a title with signs that mean something to YAML', async () => {
    const title = 'Quill: "letters" # & {papers}\\ \'x\' 🍎';
    await beginCatalogue(folder, { ...start, title });
    expect(parse(yaml()).title).toBe(title);
  });

  it('has every column of the list, and a byte order mark for spreadsheet programs', async () => {
    await beginCatalogue(folder);
    expect(readFileSync(join(folder, 'list.csv'), 'utf8')).toBe(`\uFEFF${COLUMNS.join(',')}\r\n`);
  });

  it('explains every setting, with an example that is right', async () => {
    await beginCatalogue(folder, start);
    // What its first lines say: take away one hash and its blank.
    const used = yaml().replace(/^# /gm, '');
    writeFileSync(join(folder, 'collection.yaml'), used);
    // With the headings of which the example under "list" says what they mean.
    writeFileSync(join(folder, 'list.csv'), 'title,On the back,Shelf\nA letter,,\n');
    const { findings } = await loadCatalogue(folder);
    expect(findings).toEqual([]);

    const data = parse(used);
    const keys = (path: (string | number)[], value: object) =>
      expect(Object.keys(value).sort()).toEqual(keysAt(settings, path).sort());
    keys([], data);
    keys(['repository'], data.repository);
    keys(['people', 0], data.people[0]);
    keys(['people', 0, 'relations', 0], data.people[0].relations[0]);
    keys(['recipient'], data.recipient);
    keys(['list'], data.list);
    keys(['sort'], data.sort);
    keys(['groups', 'Correspondence'], data.groups.Correspondence);
    keys(['access'], data.access);

    const lines = used.split('\n');
    const entries = lines.filter((line) => /^[a-zA-Z]+:/.test(line));
    expect(entries.length).toBe(Object.keys(data).length);
  });

  it('examples stay away until they are wanted', async () => {
    await beginCatalogue(folder, start);
    expect(parse(yaml())).toEqual({
      title: start.title,
      prefix: 'QFP',
      repository: { name: 'The Ferry House' },
    });
  });
});

describe('nothing is overwritten', () => {
  it('where there is a catalogue already', async () => {
    await beginCatalogue(folder, start);
    const before = yaml();
    const error = await beginCatalogue(folder, { title: 'Other' }).catch((thrown: unknown) => thrown);
    expect(error).toBeInstanceOf(CatalogueError);
    expect(String(error)).toContain('collection.yaml and list.csv');
    expect(yaml()).toBe(before);
  });

  it.each(['list.csv', 'list.xlsx', 'List.csv'])('%s that is there already is left alone', async (name) => {
    mkdirSync(folder);
    writeFileSync(join(folder, name), 'mine');
    expect(await beginCatalogue(folder, start)).toEqual([join(folder, 'collection.yaml')]);
    expect(readdirSync(folder).sort()).toEqual([name, 'collection.yaml'].sort());
    expect(readFileSync(join(folder, name), 'utf8')).toBe('mine');
  });

  it('where an option cannot be used: all of them are named, and no folder is made', async () => {
    const work = beginCatalogue(folder, { title: ' ', prefix: '??', repository: '\u0001' });
    expect(await rulesOf(work)).toEqual(['begin.option', 'begin.option', 'begin.option']);
    expect(existsSync(folder)).toBe(false);
  });

  it('where a file stands in the place of the folder', async () => {
    writeFileSync(folder, 'mine');
    expect(await rulesOf(beginCatalogue(folder, start))).toEqual(['write.file-in-the-way']);
    expect(await rulesOf(beginCatalogue(join(folder, 'below'), start))).toEqual(['write.file-in-the-way']);
    expect(readFileSync(folder, 'utf8')).toBe('mine');
  });
});
