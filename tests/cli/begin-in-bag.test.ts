import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { contentsOf, freshFolder, kinfonds } from '../support/kinfonds.ts';

/** A bag, as far as it is looked at: RFC 8493, 2.1.1. */
function bag(): string {
  const folder = freshFolder();
  writeFileSync(join(folder, 'bagit.txt'), 'BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n');
  mkdirSync(join(folder, 'data'));
  writeFileSync(join(folder, 'data', 'list.csv'), 'title\nFerry bell\n');
  return folder;
}

// RFC 8493, 3: a bag that holds a file which no manifest names is not valid.
describe('a package is no place for a catalogue', () => {
  test.each([
    ['the package itself', ['.']],
    ['its data', ['data']],
    ['a folder that is not there yet', ['data/new']],
    ['a list', ['.', '--from', 'data/list.csv']],
  ])('%s', (_, args) => {
    const cwd = bag();
    const before = contentsOf(cwd);
    const { code, out, err } = kinfonds(['begin', ...args], { cwd });
    expect([code, out]).toEqual([1, '']);
    expect(err).toMatch(/bagit\.txt.*would make it invalid/);
    expect(err).toMatch(/kinfonds take-in \S*data\/finding-aid\/ead3\.xml --into NEW-FOLDER/);
    expect(contentsOf(cwd)).toEqual(before);
  });

  test('and a machine is told so', () => {
    const { code, out } = kinfonds(['begin', '.', '--json'], { cwd: bag() });
    expect([code, JSON.parse(out).problems.map(({ rule }: { rule: string }) => rule)]).toEqual([
      1,
      ['begin.bag'],
    ]);
  });

  test('beside it there is one', () => {
    const cwd = freshFolder();
    mkdirSync(join(cwd, 'package'));
    writeFileSync(join(cwd, 'package', 'bagit.txt'), '');
    expect(kinfonds(['begin', 'rook', '--title', 'Rook papers'], { cwd }).code).toBe(0);
  });

  test('and how its list is understood may be looked at', () => {
    const cwd = bag();
    expect(kinfonds(['begin', 'data', '--preview'], { cwd }).code).toBe(0);
  });
});
