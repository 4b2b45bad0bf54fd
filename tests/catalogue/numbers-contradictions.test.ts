import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { CatalogueError } from '../../src/catalogue/finding.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { NUMBER_COLUMNS } from '../../src/catalogue/numbers-file.ts';
import { readNumbers } from '../../src/intake/numbers.ts';

const HEAD = NUMBER_COLUMNS.join(',');
const read = (...lines: string[]) =>
  readNumbers(Buffer.from([HEAD, ...lines].join('\n')), 'numbers.csv').findings;
const said = (...lines: string[]) =>
  read(...lines).map(({ rule, weight, place: { file, row, column } }) => [rule, weight, file, row, column]);
const must = (rule: string, row: number, column?: string) => [
  `numbers.${rule}`,
  'must',
  'numbers.csv',
  row,
  column,
];

// number,title,reference code,place,groups,filed under,folder,folder kind,box,box kind,gone
const GOOD = ['1,a,,/1/1/1,G,1950,1,k,1,bk,', '2,b,,/1/1/2,G,1950,1,k,1,bk,', '3,c,,/1/2/1,G,1951,2,k,2,bk,'];

describe('numbers that agree', () => {
  it.each([
    ['as they come', []],
    ['a place left by what was moved', ['1,a,,/1/3/1,G,,3,k,1,bk,moved to 1/1/1']],
    ['what is gone need not know where its folder is now', ['9,z,,/1/1/9,G,1950,1,old,7,older,removed']],
    ['what lies apart from its folder', ['4,d,,/1/1/4,G,1950,,k2,9,,', '5,e,,/1/1/5,G,1950,,,,,']],
    ['a title of a group in other letters', ['4,d,,/1/1/4,g,1950,1,k,1,bk,']],
    ['a group in another of the same title', ['4,d,,/1/3/1/1,G > G,1950,3,k,1,bk,']],
  ])('%s', (_, more) => expect(said(...GOOD, ...more)).toEqual([]));
});

describe('numbers edited by hand so that they contradict each other', () => {
  it.each<[string, string[], unknown[][]]>([
    ['the same number twice', ['1,d,,/1/1/4,G,1950,1,k,1,bk,'], [must('number-disagrees', 5, 'number')]],
    [
      'the same number twice, once removed',
      ['1,d,,/1/1/4,G,1950,1,k,1,bk,removed'],
      [must('number-disagrees', 5, 'number')],
    ],
    ['the same place twice', ['4,d,,/1/1/2,G,1950,1,k,1,bk,'], [must('place-disagrees', 5, 'place')]],
    [
      'the place of what is gone once more',
      ['4,d,,/1/1/2,G,1950,1,k,1,bk,removed'],
      [must('place-disagrees', 5, 'place')],
    ],
    ['one folder with two boxes', ['4,d,,/1/1/4,G,1950,1,k,2,bk,'], [must('box-disagrees', 5, 'box')]],
    ['one folder in a box and in none', ['4,d,,/1/1/4,G,1950,1,k,,,'], [must('box-disagrees', 5, 'box')]],
    [
      'one folder of two kinds',
      ['4,d,,/1/1/4,G,1950,1,k2,1,bk,'],
      [must('folder-kind-disagrees', 5, 'folder kind')],
    ],
    [
      'one folder filed under two years',
      ['4,d,,/1/1/4,G,1951,1,k,1,bk,'],
      [must('filed-under-disagrees', 5, 'filed under')],
    ],
    [
      'one folder with two numbers',
      ['4,d,,/1/1/4,G,1950,3,k,1,bk,'],
      [must('folder-disagrees', 5, 'folder')],
    ],
    ['one box of two kinds', ['4,d,,/1/3/1,G,1952,3,k,1,bk2,'], [must('box-kind-disagrees', 5, 'box kind')]],
    ['a folder number in two places', ['4,d,,/1/3/1,G,1952,2,k,1,bk,'], [must('folder-shared', 5, 'folder')]],
    [
      'one folder among several of a bundle',
      ['4,d,,/1/3/1,G,1952,2 to 4,k,1,bk,'],
      [must('folder-shared', 5, 'folder')],
    ],
    ['one group with two titles', ['4,d,,/1/3/1,H,1952,3,k,1,bk,'], [must('groups-disagrees', 5, 'groups')]],
    ['one title for two groups', ['4,d,,/2/1/1,G,1952,3,k,1,bk,'], [must('groups-disagrees', 5, 'groups')]],
    [
      'a folder that is a group as well',
      ['4,d,,/1/2/1/1,G > H,1952,3,k,1,bk,'],
      [must('group-and-folder', 4, 'place')],
    ],
    ['fewer titles than groups', ['4,d,,/1/2/1/1,G,1952,3,k,1,bk,'], [must('groups-and-place', 5, 'groups')]],
  ])('%s', (_, more, expected) => expect(said(...GOOD, ...more)).toEqual(expected));

  it.each<[string, string, unknown[][]]>([
    ['no number', ',d,,/1/1/4,G,1950,1,k,1,bk,', [must('no-number', 5, 'number')]],
    ['no place', '4,d,,,G,1950,1,k,1,bk,', [must('place-unreadable', 5, 'place')]],
    ['a place from zero', '4,d,,/1/0/1,G,,,,,,', [must('place-unreadable', 5, 'place')]],
    ['a negative place', '4,d,,/1/-1/1,G,,,,,,', [must('place-unreadable', 5, 'place')]],
    ['a place in words', '4,d,,first,G,,,,,,', [must('place-unreadable', 5, 'place')]],
    ['a place of two numbers', '4,d,,/1/1,G,,,,,,', [must('place-unreadable', 5, 'place')]],
    ['a place made a date', '4,d,,2013-02-05,G,,,,,,', [must('place-unreadable', 5, 'place')]],
    [
      'a place made a date with strokes',
      '4,d,QF/1/5/13,1/5/2013,G,,,,,,',
      [must('place-and-code', 5, 'place')],
    ],
    ['a negative folder', '4,d,,/1/3/1,G,,-3,,,,', [must('folder-unreadable', 5, 'folder')]],
    ['a folder zero', '4,d,,/1/3/1,G,,0,,,,', [must('folder-unreadable', 5, 'folder')]],
    ['a folder in words', '4,d,,/1/3/1,G,,three,,,,', [must('folder-unreadable', 5, 'folder')]],
    ['half a folder', '4,d,,/1/3/1,G,,3.5,,,,', [must('folder-unreadable', 5, 'folder')]],
    [
      'folders from the last to the first',
      '4,d,,/1/3/1,G,,5 to 3,,,,',
      [must('folder-unreadable', 5, 'folder')],
    ],
    [
      'a cell too many',
      '4,d, e,,/1/3/1,G,,3,,,,,x',
      [must('place-unreadable', 5, 'place'), must('row-too-long', 5)],
    ],
    ['an open quotation mark', '4,"d,,/1/3/1,G,,,,,,', [must('unclosed-quote', 5)]],
    ['a control character', '4,d\u0001,,/1/3/1,G,,,,,,', [must('forbidden-character', 5, 'title')]],
  ])('%s', (_, row, expected) => expect(said(...GOOD, row)).toEqual(expected));

  it('are all said together, down the file, each once', () => {
    const wrong = [
      '3,d,,/1/1/2,G,1950,1,k,1,bk,',
      '5,e,,x,H,1950,0,k,1,bk,',
      '6,f,,/1/1/6,G,1950,1,k,8,bk,',
      '7,g,,/1/1/7,G,1950,1,k,8,bk,',
    ];
    expect(said(...GOOD, ...wrong)).toEqual([
      must('number-disagrees', 5, 'number'),
      must('place-disagrees', 5, 'place'),
      must('place-unreadable', 6, 'place'),
      must('folder-unreadable', 6, 'folder'),
      must('box-disagrees', 7, 'box'),
    ]);
  });

  it('say what stands where, and what to do', () => {
    const [finding] = read(...GOOD, '4,d,,/1/1/4,G,1950,1,k,2,bk,');
    expect(finding?.found).toBe('The box of the folder at /1/1 is “2” here and “1” in row 2.');
    expect(finding?.advice).toBe(
      'See what is written on the folder or the box, and mend the row that is wrong.',
    );
  });
});

describe('columns of numbers.csv', () => {
  const rules = (text: string) =>
    readNumbers(Buffer.from(text), 'numbers.csv').findings.map(({ rule, weight }) => `${weight} ${rule}`);

  it('that are missing are all named, and so is what is wrong beside', () => {
    const { findings } = readNumbers(
      Buffer.from('number,title,place,groups\n1,a,/1/1/1,G\n1,b,x,G\n'),
      'numbers.csv',
    );
    expect(findings.map(({ rule }) => rule)).toEqual(['numbers.column-missing', 'numbers.place-unreadable']);
    expect(findings[0]?.found).toBe(
      'No column is headed “filed under”, “folder”, “folder kind”, “box”, “box kind”, “gone”.',
    );
  });

  it('without a column of places, one finding is enough', () => {
    expect(rules(`${HEAD.replace('place', 'where')}\n1,a,,/1/1/1,G,,,,,,\n2,b,,/1/1/2,G,,,,,,\n`)).toEqual([
      'must numbers.column-missing',
      'should numbers.column-unknown',
    ]);
  });

  it('twice, or of somebody’s own', () => {
    expect(rules(`${HEAD},box\n`)).toEqual(['must numbers.column-twice']);
    expect(rules(`${HEAD},my remarks\n`)).toEqual(['should numbers.column-unknown']);
  });

  it.each([
    ['an empty file', '', 'must numbers.empty'],
    ['a workbook', 'PK\u0003\u0004', 'must file.binary'],
  ])('%s', (_, text, rule) => {
    expect(rules(text)).toEqual([rule]);
    const [finding] = readNumbers(Buffer.from(text), 'numbers.csv').findings;
    expect(finding?.advice).not.toMatch(/list\.csv|title/);
  });
});

describe('a catalogue with such numbers', () => {
  it('does not load, and says so with all else that is wrong', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'kinfonds-numbers-'));
    const put = (name: string, text: string) => writeFileSync(join(folder, name), text);
    try {
      put(
        'collection.yaml',
        'title: Quill family papers\nprefix: QF\nrepository:\n  name: The Ferry House\n',
      );
      put('list.csv', 'number,title\n1,a\n1,b\n');
      put('numbers.csv', [HEAD, ...GOOD, '4,d,,/1/1/2,G,1950,1,k,1,bk,'].join('\n'));
      const error = await loadCatalogue(folder).catch((thrown: unknown) => thrown);
      expect(error instanceof CatalogueError && error.findings.map(({ rule }) => rule)).toEqual([
        'list.number-twice',
        'numbers.place-disagrees',
      ]);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});
