import { cpSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { makeWorkbook } from '../intake/make-workbook.ts';
import { contentsOf, freshFolder, kinfonds } from '../support/kinfonds.ts';
import { longTest } from '../support/times.ts';

const EXAMPLE = 'examples/quill-ferry';

/** A copy of the example in which a cousin changed three things. */
let cousin: string;
/** The example as it is exported. */
let exported: Record<'ead3' | 'ead2002' | 'json', string>;

beforeAll(() => {
  const out = freshFolder();
  expect(kinfonds(['export', EXAMPLE, '--to', 'ead3,ead2002,json', '--out', out]).code).toBe(0);
  exported = {
    ead3: join(out, 'ead3.xml'),
    ead2002: join(out, 'ead2002.xml'),
    json: join(out, 'finding-aid.json'),
  };
  cousin = join(freshFolder(), 'ellens-list');
  cpSync(EXAMPLE, cousin, { recursive: true });
  change(cousin, 'list.csv', [
    ['marks in place of two of the names', 'marks in place of three of the names'],
    ['Letter from Anders to Ingrid about their mother', 'A letter from Anders to Ingrid about their mother'],
  ]);
  change(cousin, 'collection.yaml', [['- Emigration\n', '- Emigrants\n']]);
});

function change(folder: string, file: string, edits: readonly (readonly [was: string, now: string])[]): void {
  const path = join(folder, file);
  let text = readFileSync(path, 'utf8');
  for (const [was, now] of edits) {
    expect(text).toContain(was);
    text = text.replace(was, now);
  }
  writeFileSync(path, text);
}

describe('kinfonds compare', () => {
  test('nothing, of a catalogue and its copy, or of its own export', () => {
    expect(kinfonds(['compare', EXAMPLE, EXAMPLE])).toMatchObject({
      code: 0,
      out: 'No difference.\n',
      err: '',
    });
    expect(kinfonds(['compare', EXAMPLE, exported.json])).toMatchObject({ code: 0, out: 'No difference.\n' });
  });

  test('an export of another day is no difference where the catalogue names no day', () => {
    const folder = freshFolder();
    writeFileSync(
      join(folder, 'collection.yaml'),
      'title: Quill papers\nprefix: QF\nrepository: { name: Quill }\n',
    );
    writeFileSync(join(folder, 'list.csv'), 'title\nFerry bell\n');
    const out = freshFolder();
    kinfonds(['export', folder, '--to', 'json', '--out', out]);
    const aid = join(out, 'finding-aid.json');
    writeFileSync(aid, readFileSync(aid, 'utf8').replaceAll(/"20\d\d-\d\d-\d\d"/g, '"2020-02-02"'));
    expect(readFileSync(aid, 'utf8')).toContain('2020-02-02');
    expect(kinfonds(['compare', folder, aid])).toMatchObject({ code: 0, out: 'No difference.\n' });
  });

  longTest(
    'a file in EAD, with the catalogue it was exported from, with its JSON, and with the other version',
    () => {
      const { ead3, ead2002, json } = exported;
      const compare = (...args: string[]) => kinfonds(['compare', ...args]);
      for (const [a, b] of [
        [EXAMPLE, ead3],
        [ead2002, EXAMPLE],
        [json, ead2002],
        [ead3, ead3],
      ] as const)
        expect([a, b, compare(a, b)]).toMatchObject([a, b, { code: 0, err: '' }]);
      expect(compare(ead3, ead3).out).toBe('No difference.\n');
      expect(compare(EXAMPLE, ead3).out).toMatch(/^No difference\.\n\nOne of the two is in EAD3: .*\n$/);

      // What the two versions say in another form only is no difference.
      expect(compare(ead3, ead2002).out).toMatch(/^No difference\.\n\nOne of the two is in EAD3, the other/);
      expect(JSON.parse(compare(ead3, ead2002, '--json').out)).toMatchObject({
        changed: [],
        comparedAs: 'ead2002',
      });

      const edited = join(freshFolder(), 'edited.xml');
      writeFileSync(edited, readFileSync(ead3, 'utf8').replace('two of the names', 'three of the names'));
      const changed = compare(EXAMPLE, edited);
      expect([changed.code, changed.out.split('\n')[0]]).toEqual([1, '1 unit changed.']);
    },
  );

  longTest('a finding aid that was taken in, with the file it was taken from', () => {
    const folder = join(freshFolder(), 'taken');
    kinfonds(['take-in', exported.ead2002, '--into', folder]);
    expect(kinfonds(['compare', folder, exported.ead2002]).code).toBe(0);
    writeFileSync(join(folder, 'list.csv'), 'title,series\nA ferry ticket,Correspondence\n');
    const { code, out: said } = kinfonds(['compare', exported.ead2002, folder]);
    expect(code).toBe(1);
    expect(said).toContain('A ferry ticket');
  });

  test('what a cousin changed, in words and for machines; every file stays as it was', () => {
    const before = contentsOf(cousin);
    const { code, out, err } = kinfonds(['compare', EXAMPLE, cousin]);
    expect([code, err]).toEqual([1, '']);
    expect(out.split('\n')[0]).toBe('3 units changed.');
    expect(out).toContain('removed: Emigration (subject)\n');
    expect(out).toContain("now  A letter from Anders to Ingrid about their mother's cough\n");
    const json = JSON.parse(kinfonds(['compare', EXAMPLE, cousin, '--json']).out);
    expect(json).toMatchObject({ added: [], removed: [], moved: [] });
    expect(json.changed).toHaveLength(3);
    expect(contentsOf(cousin)).toEqual(before);
  });

  test('one list of both, which is a list again', () => {
    const folder = join(freshFolder(), 'both');
    cpSync(EXAMPLE, folder, { recursive: true });
    const file = join(freshFolder(), 'both.csv');
    const { code, out } = kinfonds(['compare', EXAMPLE, cousin, '--merge', file]);
    expect(code).toBe(1);
    // Of 219 rows one has another title, and two titles of one date may be one thing; another differs in a cell.
    expect(out).toMatch(
      /both\.csv: \d+ rows, \d+ in both lists, 1 only in quill-ferry, 1 only in ellens-list\.\n/,
    );
    expect(out).toContain('About: “One sheet');
    expect(out).toContain('One pair of rows that may be of one thing each');
    writeFileSync(join(folder, 'list.csv'), readFileSync(file));
    const again = JSON.parse(kinfonds(['compare', EXAMPLE, folder, '--json']).out);
    expect([again.added.length, again.removed.length]).toEqual([1, 0]);
  });

  test('a list in a workbook is merged too', () => {
    const [mine, hers] = ['mine', 'hers'].map((name) => join(freshFolder(), name));
    if (mine === undefined || hers === undefined) throw new Error('Two folders.');
    const settings = 'title: Quill papers\nprefix: QF\nrepository: { name: Quill }\n';
    for (const folder of [mine, hers]) {
      mkdirSync(folder);
      writeFileSync(join(folder, 'collection.yaml'), settings);
    }
    writeFileSync(
      join(mine, 'list.xlsx'),
      makeWorkbook([
        {
          name: 'Letters',
          rows: [
            ['title', 'date'],
            ['Ada to Nils', '1962'],
          ],
        },
        {
          name: 'Maps',
          rows: [
            ['title', 'scale'],
            ['Tollbridge', '1:500'],
          ],
        },
      ]),
    );
    writeFileSync(join(hers, 'list.csv'), 'title;date;size\nAda to Nils;1962;A5\nFerry bell;1898;\n');
    const file = join(freshFolder(), 'both.csv');
    const run = kinfonds(['compare', mine, hers, '--merge', file]);
    expect(run).toMatchObject({ code: 1, err: '' });
    expect(run.out).toContain('both.csv: 3 rows, 1 in both lists, 1 only in mine, 1 only in hers.');
    expect(readFileSync(file, 'utf8')).toBe(
      '\uFEFFtitle,date,series,scale,size\r\nAda to Nils,1962,Letters,,A5\r\nTollbridge,,Maps,1:500,\r\nFerry bell,1898,,,\r\n',
    );
  });

  test('wrong usage ends with 2 and writes nothing', () => {
    const there = join(freshFolder(), 'there.csv');
    writeFileSync(there, 'title\n');
    const fresh = join(freshFolder(), 'both.csv');
    for (const args of [
      ['compare', EXAMPLE],
      ['compare', EXAMPLE, cousin, '--merge', there],
      ['compare', EXAMPLE, exported.json, '--merge', fresh],
    ]) {
      const run = kinfonds(args);
      expect([args, run.code, run.out]).toEqual([args, 2, '']);
      expect(run.err).toMatch(/^error: /);
    }
    expect(readFileSync(there, 'utf8')).toBe('title\n');
    expect(existsSync(fresh)).toBe(false);
  });

  describe('packages for handing over', () => {
    /** A bag, as far as it is looked at (RFC 8493, 2.1.1), with these files as its finding aid. */
    function bagWith(files: Readonly<Record<string, string>>): string {
      const bag = freshFolder();
      writeFileSync(join(bag, 'bagit.txt'), 'BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n');
      const inside = join(bag, 'data', 'finding-aid');
      mkdirSync(inside, { recursive: true });
      for (const [name, content] of Object.entries(files)) writeFileSync(join(inside, name), content);
      return bag;
    }

    test('are compared by the finding aid in them, JSON before EAD', () => {
      const json = readFileSync(exported.json, 'utf8');
      expect(json).toContain('two of the names');
      const [one, other] = [
        bagWith({ 'finding-aid.json': json, 'ead3.xml': 'this is not read' }),
        bagWith({ 'finding-aid.json': json.replace('two of the names', 'three of the names') }),
      ];
      expect(kinfonds(['compare', one, one])).toMatchObject({ code: 0, out: 'No difference.\n', err: '' });
      const { code, out } = kinfonds(['compare', one, other]);
      expect([code, out.split('\n')[0]]).toEqual([1, '1 unit changed.']);
    });

    test('and by EAD where there is no JSON', () => {
      const bag = bagWith({ 'ead3.xml': readFileSync(exported.ead3, 'utf8') });
      expect(kinfonds(['compare', bag, exported.ead3])).toMatchObject({ code: 0, out: 'No difference.\n' });
    });

    test('of which one has no finding aid, it is said where that was looked for, and never to begin there', () => {
      const { code, out, err } = kinfonds(['compare', bagWith({}), EXAMPLE]);
      expect([code, out]).toEqual([1, '']);
      expect(err).toContain('data/finding-aid/finding-aid.json, data/finding-aid/ead3.xml');
      expect(err).not.toContain('kinfonds begin');
    });
  });

  test('what is neither a catalogue nor a finding aid is said so', () => {
    const { code, err } = kinfonds(['compare', EXAMPLE, join(EXAMPLE, 'list.csv')]);
    expect(code).toBe(1);
    expect(err).toContain('This is no finding aid that can be read here.');
    expect(kinfonds(['compare', EXAMPLE, join(EXAMPLE, 'nowhere')]).err).toContain(
      'This folder is not there.',
    );
    const lost = kinfonds(['compare', EXAMPLE, join(EXAMPLE, 'nowhere.xml')]);
    expect([lost.code, lost.out]).toEqual([1, '']);
    expect(lost.err).toContain('nowhere.xml: There is no such file.');
    const page = join(freshFolder(), 'page.xml');
    writeFileSync(page, '<html><body></body></html>');
    const other = kinfonds(['compare', EXAMPLE, page]);
    expect([other.code, other.out]).toEqual([1, '']);
    expect(other.err).toContain('What can be compared is <ead>');
  });
});
