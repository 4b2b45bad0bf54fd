import { appendFileSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { writeBag } from '../../src/handover/bag/index.ts';
import { bagOf } from '../handover/bag/hand-made-bag.ts';
import { contentsOf, freshFolder, kinfonds } from '../support/kinfonds.ts';

const PAPERS = { 'letter.txt': 'Bea to Tom on the thaw', 'ferry/bell.txt': 'cast in 1891' };

describe('kinfonds verify', () => {
  test('a bag that is as it was', () => {
    const bag = bagOf(PAPERS);
    const before = contentsOf(bag);
    expect(kinfonds(['verify', bag])).toEqual({
      code: 0,
      err: '',
      out: `${bag}: every byte is as it was (BagIt 1.0, 2 files of 34 bytes, by SHA-512).\n`,
    });
    expect(contentsOf(bag)).toEqual(before);
  });

  test('one file changed, one missing, one extra: which, and what to do', () => {
    const bag = bagOf({ ...PAPERS, 'toll.txt': 'two pence' });
    appendFileSync(join(bag, 'data/letter.txt'), ' in May');
    rmSync(join(bag, 'data/ferry/bell.txt'));
    writeFileSync(join(bag, 'data/new.txt'), '');
    const { code, err, out } = kinfonds(['verify', bag]);
    expect([code, err]).toEqual([1, '']);
    expect(out).toContain(
      'must  data/letter.txt: The file is not as it was: its SHA-512 checksum is not what the manifest says.',
    );
    expect(out).toContain('must  data/ferry/bell.txt: The file is missing.');
    expect(out).toContain('must  data/new.txt: The file was not in the bag when it was made.');
    // Nothing in the bag is to be changed before a sound copy exists, and that goes for what is extra too.
    expect(out).toContain('it can be moved out once a sound copy exists');
    expect(out.indexOf('can be moved out')).toBeLessThan(out.indexOf('1. Change nothing in this copy'));
    expect(out).toContain(
      `${bag}: not valid: 1 changed, 1 missing, 1 extra (BagIt 1.0, 3 files of 38 bytes, by SHA-512).`,
    );
    for (const words of [
      'do not write it over any other',
      'Verify the other copies',
      'the archive that received',
    ])
      expect(out).toContain(words);
  });

  test('what only strict checkers refuse is said, and is no failure', () => {
    const lines = (all: string[], manifest: string) =>
      manifest === 'tag' ? all : all.map((line) => line.replace('  data/', '  ./data/'));
    const { code, out } = kinfonds(['verify', bagOf(PAPERS, { lines })]);
    expect(code).toBe(0);
    expect(out).toMatch(
      /^should {2}manifest-sha512\.txt, line 1: .*\n.*: every byte is as it was .* Stricter checkers may/s,
    );
  });

  test('for machines', () => {
    const bag = bagOf(PAPERS);
    appendFileSync(join(bag, 'data/letter.txt'), 'x');
    const { code, out } = kinfonds(['verify', bag, '--json']);
    expect(code).toBe(1);
    expect(JSON.parse(out)).toMatchObject({
      folder: bag,
      version: '1.0',
      complete: true,
      valid: false,
      changed: ['data/letter.txt'],
      missing: [],
      extra: [],
      findings: [{ rule: 'bag.changed', weight: 'must', place: { file: 'data/letter.txt' } }],
    });
  });

  test('what is no bag, and wrong usage', () => {
    const folder = freshFolder();
    const { code, err, out } = kinfonds(['verify', folder]);
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain('This folder is no bag');
    writeFileSync(join(folder, 'bag.zip'), '');
    expect(kinfonds(['verify', join(folder, 'bag.zip')]).err).toContain('Unpack it');
    expect(kinfonds(['verify']).code).toBe(2);
    expect(kinfonds(['verify', folder, '--shallow']).code).toBe(2);
  });
});

describe('kinfonds verify --deep', () => {
  test('holds the finding aids inside against their schemas, and leaves other XML alone', async () => {
    const folder = freshFolder();
    const out = join(folder, 'out');
    expect(kinfonds(['export', 'examples/quill-ferry', '--to', 'ead3,ead2002', '--out', out]).code).toBe(0);
    const [ead3, ead2002] = ['ead3.xml', 'ead2002.xml'].map((name) => readFileSync(join(out, name), 'utf8'));
    const entries = [
      { path: 'finding-aid/ead3.xml', content: ead3 ?? '' },
      { path: 'finding-aid/ead2002.xml', content: ead2002 ?? '' },
      { path: 'copies/picture.svg.xml', content: '<svg xmlns="http://www.w3.org/2000/svg"/>' },
    ];
    await writeBag(join(folder, 'good'), entries, []);
    const good = kinfonds(['verify', join(folder, 'good'), '--deep']);
    expect(good.code).toBe(0);
    expect(good.out).toContain('every byte is as it was');
    expect(good.out).toMatch(
      /Finding aids and records in XML: 2 valid, 0 not valid, by the (?:published schema|kinfonds profile)/,
    );

    const broken = (ead3 ?? '')
      .replace('<archdesc', '<archdescription')
      .replace('</archdesc>', '</archdescription>');
    const cut = (ead2002 ?? '').slice(0, 500);
    const others = [
      { path: 'ead3.xml', content: broken },
      { path: 'ead2002.xml', content: cut },
    ];
    await writeBag(join(folder, 'broken'), others, []);
    expect(kinfonds(['verify', join(folder, 'broken')]).code).toBe(0);
    const deep = kinfonds(['verify', join(folder, 'broken'), '--deep']);
    expect(deep.code).toBe(1);
    expect(deep.out).toContain('every byte is as it was');
    expect(deep.out).toContain('data/ead3.xml: not valid EAD3');
    expect(deep.out).toContain('data/ead2002.xml: not valid');
    expect(deep.out).toContain('Finding aids and records in XML: 0 valid, 2 not valid');
    const machine = JSON.parse(kinfonds(['verify', join(folder, 'broken'), '--deep', '--json']).out);
    expect(machine).toMatchObject({ valid: true, inside: [{ valid: false }, { valid: false }] });
  });
});
