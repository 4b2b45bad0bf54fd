import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readRecords } from '../support/csv-records.ts';
import { contentsOf, freshFolder, kinfonds } from '../support/kinfonds.ts';

const YAML = 'title: Rook family papers\nprefix: RF\nrepository:\n  name: Rook family\n  country: US\n';

function catalogueWith(list: string, yaml = YAML): string {
  const folder = freshFolder();
  writeFileSync(join(folder, 'collection.yaml'), yaml);
  writeFileSync(join(folder, 'list.csv'), list);
  return folder;
}

const LIST =
  'title,date,kind,size\nBea to Tom on the thaw,1962,letter,\nPlan of the weir,1950,map,60 x 90 cm\n';

describe('kinfonds arrange --settle', () => {
  test('numbers everything, keeps the old list, and changes nothing the second time', () => {
    const folder = catalogueWith(LIST);
    const run = kinfonds(['arrange', folder, '--settle']);
    expect(run).toMatchObject({ code: 0, err: '' });
    expect(run.out).toContain('Settled: 2 things in 1 folder and 2 boxes.');
    expect(readFileSync(join(folder, 'list.csv'), 'utf8')).toBe(
      'number,title,date,kind,size\n1,Bea to Tom on the thaw,1962,letter,\n2,Plan of the weir,1950,map,60 x 90 cm\n',
    );
    expect(readFileSync(join(folder, 'list.before-numbers.csv'), 'utf8')).toBe(LIST);
    expect(readRecords(join(folder, 'numbers.csv'))).toMatchObject([
      { number: '1', 'reference code': 'RF/1/1/1', folder: '1', box: '1' },
      { number: '2', 'reference code': 'RF/2/1/1', folder: '', box: '2' },
    ]);
    const before = contentsOf(folder);
    expect(kinfonds(['arrange', folder, '--settle']).code).toBe(0);
    expect(contentsOf(folder)).toEqual(before);
  });

  test('a gap is explained, a move proposed and made on demand', () => {
    const folder = catalogueWith(
      'number,title,date,kind\n1,Bea to Tom,1962,letter\n2,Tom to Bea,1962,letter\n3,Toll card,1970,postcard\n',
    );
    kinfonds(['arrange', folder, '--settle']);
    writeFileSync(
      join(folder, 'list.csv'),
      'number,title,date,kind\n2,Tom to Bea,1970,letter\n3,Toll card,1970,postcard\n',
    );
    const stayed = kinfonds(['arrange', folder, '--settle']).out;
    expect(stayed).toContain('RF/1/1/1  Bea to Tom: removed. Its number is not used again.');
    expect(stayed).toContain('1 thing would now be sorted elsewhere and stayed');
    expect(kinfonds(['check', folder]).out).toContain('is settled as RF/1/1/2');
    expect(kinfonds(['arrange', folder, '--settle', '--move']).out).toContain(
      'RF/1/1/2  Tom to Bea: moved to RF/1/2/2.',
    );
    expect(kinfonds(['arrange', folder, '--things']).out).toContain('RF/1/2/2  Tom to Bea, 1970');
  });

  test('a thing that was moved is not counted as new, and one stays one', () => {
    const list = 'number,title,date,kind\n1,Bea to Tom,1962,letter\n2,Toll card,1970,postcard\n';
    const folder = catalogueWith(list);
    kinfonds(['arrange', folder, '--settle']);
    writeFileSync(join(folder, 'list.csv'), list.replace('1962', '1970'));
    expect(kinfonds(['arrange', folder]).err).toContain(
      '1 settled thing would now be sorted elsewhere; to see which:',
    );
    expect(kinfonds(['arrange', folder, '--settle', '--move']).out).toContain(
      'Settled: 2 things in 1 folder and 1 box; none of them new, 1 moved.',
    );
  });

  const FOUR =
    'number,title,date,kind\n1,Bea to Tom,1962,letter\n2,Toll card,1962,letter\n3,Weir in ice,1962,letter\n4,Winter,1962,letter\n';

  /** A catalogue with four settled letters, whose list or numbers were changed since. */
  function settledAndChanged(list: string, numbers: (text: string) => string = (text) => text): string {
    const folder = catalogueWith(FOUR);
    kinfonds(['arrange', folder, '--settle']);
    writeFileSync(join(folder, 'list.csv'), list);
    const file = join(folder, 'numbers.csv');
    writeFileSync(file, numbers(readFileSync(file, 'utf8')));
    return folder;
  }

  test.each([
    [
      'a list that was sorted and numbered anew',
      'number,title,date,kind\n1,Winter,1962,letter\n2,Toll card,1962,letter\n3,Weir in ice,1962,letter\n4,Bea to Tom,1962,letter\n',
      undefined,
      '“Winter” was settled as number 4 (RF/1/1/4) and is number 1 now; “Bea to Tom” was',
    ],
    [
      'a row of numbers.csv that was deleted',
      FOUR,
      (text: string) => text.replace(/^2,Toll card.*\r\n/m, ''),
      'A row has been lost: none is for RF/1/1/2,',
    ],
    [
      'a settled number that went blank in the list',
      FOUR.replace('3,Weir', ',Weir'),
      undefined,
      '“Weir in ice” has no settled number, and looks like number 3 (RF/1/1/3)',
    ],
  ])('%s stops settling, and nothing is changed', (_, list, numbers, words) => {
    const folder = settledAndChanged(list, numbers);
    const before = contentsOf(folder);
    const { code, out, err } = kinfonds(['arrange', folder, '--settle']);
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain(words);
    expect(contentsOf(folder)).toEqual(before);
    expect(kinfonds(['check', folder]).out).toContain(words);
  });

  test('what the advice says about another thing with a title that is gone lets the numbers be settled', () => {
    const folder = settledAndChanged(FOUR.replace('3,Weir', ',Weir'), (text) =>
      text.replace(/^(3,Weir in ice.*),\r\n/m, '$1,removed\r\n'),
    );
    expect(kinfonds(['arrange', folder, '--settle']).out).toContain('1 of them new');
    expect(readRecords(join(folder, 'numbers.csv'))).toMatchObject([
      ...[{ number: '1' }, { number: '2' }],
      { number: '3', place: '/1/1/3', gone: 'removed' },
      ...[{ number: '4' }, { number: '5', title: 'Weir in ice', place: '/1/1/5' }],
    ]);
  });

  test('the numbers as they were are kept beside the new ones, and one title may change', () => {
    const folder = settledAndChanged(FOUR.replace('Weir in ice', 'Weir under ice'));
    const before = readFileSync(join(folder, 'numbers.csv'), 'utf8');
    expect(kinfonds(['arrange', folder, '--settle'])).toMatchObject({ code: 0, err: '' });
    expect(readFileSync(join(folder, 'numbers.csv'), 'utf8')).toBe(
      before.replace('Weir in ice', 'Weir under ice'),
    );
    expect(readFileSync(join(folder, 'numbers.before.csv'), 'utf8')).toBe(before);
  });

  test('--boxes shows the shelf, with pointers both ways', () => {
    const { out } = kinfonds([
      'arrange',
      catalogueWith(LIST.replaceAll(',map,', ',letter,').replace('1962', '1950')),
      '--boxes',
    ]);
    expect(out).toMatch(/^Box 1, half letter document box, \d+ % full: lay it flat/);
    expect(out).toContain('Belonging here but lying apart: RF/1/1/2 in box 2 (flat box, 30 × 40 in)');
    expect(out).toMatch(/apart {2}RF\/1\/1\/2 {2}Plan of the weir, 1950\. Apart from folder 1, in box 2/);
  });

  test.each([
    ['a negative size', LIST.replace('60 x 90', '60 x -90'), YAML, 'list.csv, row 3, column size'],
    [
      'a box that nobody knows',
      LIST,
      `${YAML}housing:\n  boxes: [leter document box]\n`,
      'Is “letter document box” meant?',
    ],
    [
      'no box in which a folder fits',
      LIST,
      `${YAML}housing:\n  own:\n    - name: Biscuit tin\n      inside: 10 x 8 x 5 cm\n`,
      'None of the boxes for papers is large enough for a folder',
    ],
    ['one number twice', 'number,title\n1,Bell\n1,Rope\n', YAML, 'in row 2 and again in row 3'],
  ])('%s is said, and nothing is changed', (_, list, yaml, words) => {
    const folder = catalogueWith(list, yaml);
    const before = contentsOf(folder);
    const { code, out, err } = kinfonds(['arrange', folder, '--settle']);
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain(words);
    expect(contentsOf(folder)).toEqual(before);
  });

  test.each([
    ['size', LIST.replace('60 x 90 cm', 'a good handful')],
    ['quantity', LIST.replace('size\n', 'size,quantity\n').replace('60 x 90 cm', ',a good handful')],
  ])('a %s that nobody can read is said by check, and settled as if nothing stood there', (column, list) => {
    const folder = catalogueWith(list);
    expect(kinfonds(['check', folder]).out).toContain(`should  list.csv, row 3, column ${column}`);
    const silent = catalogueWith(list.replace('a good handful', ''));
    for (const one of [folder, silent]) expect(kinfonds(['arrange', one, '--settle']).code).toBe(0);
    const numbersIn = (one: string) => readFileSync(join(one, 'numbers.csv'), 'utf8');
    expect(numbersIn(folder)).toBe(numbersIn(silent));
  });

  test('a numbers.csv edited so that it contradicts itself is refused', () => {
    const folder = catalogueWith(LIST);
    kinfonds(['arrange', folder, '--settle']);
    const numbers = join(folder, 'numbers.csv');
    writeFileSync(numbers, readFileSync(numbers, 'utf8').replace('RF/2/1/1,/2/1/1', 'RF/1/1/1,/1/1/1'));
    const before = contentsOf(folder);
    const { code, err } = kinfonds(['arrange', folder]);
    expect(code).toBe(1);
    expect(err).toContain('numbers.csv, row 3');
    expect(contentsOf(folder)).toEqual(before);
  });

  test('--move without --settle is wrong usage', () => {
    expect(kinfonds(['arrange', catalogueWith(LIST), '--move'])).toMatchObject({ code: 2, out: '' });
  });
});

describe('kinfonds supplies', () => {
  test('says what to get, as a table and as CSV', () => {
    const folder = catalogueWith(LIST);
    const { code, out } = kinfonds(['supplies', folder]);
    expect(code).toBe(0);
    expect(out).toMatch(/^ *1 {2}half letter document box {2,}311 × 260 × 64 {2,}12¼ × 10¼ × 2½/m);
    expect(out).toMatch(/^ *1 {2}letter folder /m);
    const file = join(folder, 'supplies.csv');
    expect(kinfonds(['supplies', folder, '--out', file]).out).toBe(`${file}\n`);
    expect(readRecords(file).map(({ number, what }) => [number, what])).toContainEqual([
      '1',
      'letter folder',
    ]);
    expect(JSON.parse(kinfonds(['supplies', folder, '--json']).out)[0]).toHaveProperty('inches');
  });
});
