import {
  chmodSync,
  copyFileSync,
  cpSync,
  existsSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { contentsOf, freshFolder, kinfonds } from '../support/kinfonds.ts';
import { longTest } from '../support/times.ts';

/** A catalogue folder with a list of letters, a year each, and so a folder each. */
function catalogue(years: readonly number[], country = 'NO'): string {
  const folder = freshFolder();
  const yaml = `title: Quill family papers\nprefix: QF\nrepository:\n  name: Quill family\n  country: ${country}\n`;
  writeFileSync(join(folder, 'collection.yaml'), yaml);
  writeFileSync(join(folder, 'list.csv'), listOf(years));
  return folder;
}

const listOf = (years: readonly number[]) =>
  `title,date,kind\n${years.map((year) => `Letter from Ada,${year},letter\n`).join('')}`;

describe('kinfonds labels', () => {
  test('packages of what fits into no box are counted beside the boxes, as everywhere', () => {
    const folder = catalogue([1911]);
    writeFileSync(
      join(folder, 'list.csv'),
      'title,date,kind,size\nLetter from Ada,1911,letter,\nMap of the river,1898,map,120 x 90 cm\n',
    );
    const { out } = kinfonds(['labels', folder, '--out', join(folder, 'labels.pdf')]);
    expect(out).toContain('labels for 1 folder, 1 box and 1 package, on 1 sheet.');
    expect(kinfonds(['arrange', folder]).out).toContain('; 1 folder, 1 package, 1 half A4 document box)');
    expect(kinfonds(['arrange', folder, '--settle']).out).toContain(
      'Settled: 2 things in 1 folder, 1 box and 1 package.',
    );
  });

  test.each(['labels', 'hand-over', 'take-in'])(
    '%s without what it needs is told with an example',
    (name) => {
      const { code, out, err } = kinfonds([name, 'quill-papers']);
      expect([code, out]).toEqual([2, '']);
      expect(err).toMatch(
        new RegExp(`^error: required option '--.* not specified\\nExample: kinfonds ${name} .*\\n$`),
      );
      expect(kinfonds([name, '--help']).out).toContain(err.split('\n')[1]);
    },
  );

  test('says how many labels there are, on which sheets, and how to print them', () => {
    const folder = catalogue([1911, 1912, 1913]);
    const file = join(folder, 'labels.pdf');
    const { code, out, err } = kinfonds(['labels', folder, '--out', file]);
    expect(code).toBe(0);
    expect(out).toMatch(/labels\.pdf: labels for 3 folders.*, on 1 sheet\./);
    expect(out).toContain('A4, 3 across and 7 down, each label 63.5 mm wide and 38.1 mm high');
    expect(out).toContain('100 %');
    expect(err).toContain(`kinfonds arrange ${folder} --settle`);
    expect(readFileSync(file, 'latin1')).toMatch(/^%PDF-/);
    writeFileSync(join(folder, 'list.csv'), listOf([1911]));
    expect(kinfonds(['labels', catalogue([1911], 'US'), '--out', file]).out).toContain(
      'US Letter, 3 across and 10',
    );
  });

  test('keeps what was printed from whoever may not read the list', () => {
    const folder = catalogue([1911]);
    const printed = join(folder, 'labels-printed.csv');
    const run = () => kinfonds(['labels', folder, '--out', join(folder, 'labels.pdf')]);
    run();
    expect(statSync(printed).mode & 0o044).toBe(0o044);
    chmodSync(join(folder, 'list.csv'), 0o600);
    run();
    expect(statSync(printed).mode & 0o777).toBe(0o600);
  });

  test('only the new ones since last time', () => {
    const folder = catalogue([1911, 1912]);
    const file = join(folder, 'labels.pdf');
    const run = (...more: string[]) =>
      kinfonds(['labels', folder, '--out', file, '--only', 'folders', ...more]);
    expect(run('--new').out).toContain('2 new, 0 changed since they were printed, 0 as printed before.');
    rmSync(file);
    expect(run('--new').out).toContain('Nothing to print; no file was written.');
    expect(existsSync(file)).toBe(false);
    writeFileSync(
      join(folder, 'list.csv'),
      listOf([1911, 1912, 1913]).replace('Letter from Ada,1912', 'To Ada,1913'),
    );
    // Folder 2 holds two letters of another year now: other words on its label.
    const { out } = run('--new');
    expect(out).toContain('0 new, 1 changed since they were printed, 1 as printed before.');
    expect(out).toContain('labels for 1 folder, on 1 sheet.');
    expect(run().out).toContain('labels for 2 folders');
  });

  test('begins on a half-used sheet, and says where to begin the next time', () => {
    const folder = catalogue([1911, 1912]);
    const args = ['labels', folder, '--out', join(folder, 'l.pdf'), '--sheet', 'A4 3x8', '--only', 'folders'];
    expect(kinfonds([...args, '--start', '23']).out).not.toContain('--start');
    expect(kinfonds([...args, '--start', '20']).out).toContain('--start 22');
    const { code, err } = kinfonds([...args, '--start', '25']);
    expect([code, err]).toEqual([2, 'error: --start 25 is too high: a sheet has 24 labels\n']);
  });

  test('a test page needs no catalogue where the sheet is named', () => {
    const folder = freshFolder();
    const file = join(folder, 'test.pdf');
    const { code, out } = kinfonds(['labels', folder, '--calibrate', '--sheet', 'A4 3x8', '--out', file]);
    expect([code, existsSync(file)]).toEqual([0, true]);
    expect(out).toContain('test page');
  });

  test.each([
    [['--sheet', 'page A4, label 250x37'], /does not fit on a page of 210 × 297 mm/],
    [['--sheet', 'page A4, label -70x37'], /no room for words/],
    [['--start', '0'], /from 1 on/],
    [['--shift', '20x0'], /two numbers in mm/],
    [['--only', 'drawers'], /folders, boxes/],
    [['--font', 'not-there.ttf'], /no such file/],
  ])('wrong usage: %j', (args, message) => {
    const folder = catalogue([1911]);
    const before = contentsOf(folder);
    const { code, out, err } = kinfonds(['labels', folder, '--out', join(folder, 'labels.pdf'), ...args]);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(message);
    expect(contentsOf(folder)).toEqual(before);
  });

  test('the list cannot be written over by a slip', () => {
    const folder = catalogue([1911]);
    const { code, err } = kinfonds(['labels', folder, '--out', join(folder, 'list.csv')]);
    expect(code).toBe(2);
    expect(err).toContain('.pdf');
  });

  test('bad input changes nothing', () => {
    const folder = catalogue([1911]);
    const font = join(folder, 'font.ttf');
    writeFileSync(font, 'no font');
    writeFileSync(join(folder, 'labels-printed.csv'), 'number,title\n1,Bell\n');
    const before = contentsOf(folder);
    const run = (...more: string[]) =>
      kinfonds(['labels', folder, '--out', join(folder, 'labels.pdf'), ...more]);
    expect(run('--new')).toMatchObject({ code: 1, out: '' });
    expect(run('--new').err).toContain('labels-printed.csv');
    expect(contentsOf(folder)).toEqual(before);
    rmSync(join(folder, 'labels-printed.csv'));
    expect(run('--font', font).err).toContain('This is no font');
    expect(existsSync(join(folder, 'labels.pdf'))).toBe(false);
    expect(kinfonds(['labels', folder, '--out', join(folder, 'nowhere', 'labels.pdf')]).err).toContain(
      'nowhere',
    );
    expect(existsSync(join(folder, 'labels-printed.csv'))).toBe(false);
  });

  test('letters without a font end with 1 and say what to do', () => {
    const folder = catalogue([1911]);
    writeFileSync(join(folder, 'list.csv'), 'title,kind,series\nBell,letter,x\n');
    writeFileSync(
      join(folder, 'collection.yaml'),
      readFileSync(join(folder, 'collection.yaml'), 'utf8').replace('Quill family papers', '渡し船'),
    );
    const { code, err } = kinfonds(['labels', folder, '--out', join(folder, 'labels.pdf')]);
    expect(code).toBe(1);
    expect(err).toContain('渡');
    expect(err).toContain('--font FILE');
  });

  longTest('the example in English and as JSON, the same bytes twice', () => {
    const folder = join(freshFolder(), 'quill');
    cpSync('examples/quill-ferry', folder, { recursive: true });
    const file = join(folder, 'labels.pdf');
    const result = JSON.parse(kinfonds(['labels', folder, '--out', file, '--json']).out);
    expect(result).toMatchObject({
      file,
      sheet: { name: 'letter 3x10' },
      before: 0,
      changed: 0,
      findings: [],
    });
    expect(result.labels).toHaveLength(result.fresh);
    const copy = join(folder, 'copy.pdf');
    copyFileSync(file, copy);
    kinfonds(['labels', folder, '--out', file]);
    expect(readFileSync(file).equals(readFileSync(copy))).toBe(true);
  });
});
