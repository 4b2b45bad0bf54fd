import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { folderOf } from '../handover/on-disk.ts';
import { contentsOf, freshFolder, kinfonds } from '../support/kinfonds.ts';
import { longTest } from '../support/times.ts';

const LETTER = { title: 'Bea to Tom on the thaw', date: '14 May 1962', kind: 'letter' };
const RING = { title: 'Ring of Grandmother Quill', stays: 'yes', 'family note': 'Tom is to have it' };
const out = (folder: string) => join(dirname(folder), 'package');

describe('kinfonds hand-over', () => {
  test('makes a package that verifies, and tells the family what is not in it', () => {
    const folder = folderOf([LETTER, RING]);
    const before = contentsOf(folder);
    const run = kinfonds(['hand-over', folder, '--out', out(folder)]);
    expect(run.code).toBe(0);
    expect(run.out).toContain(`${out(folder)}: 1 row of the list, 0 digital copies`);
    expect(run.err).toContain('row 3: Ring of Grandmother Quill (the list says that it stays)');
    expect(run.err).toContain('The numbers are not settled');
    expect(run.err).not.toContain('Tom is to have it');
    expect(contentsOf(folder)).toEqual(before);
    expect(kinfonds(['verify', out(folder), '--deep']).code).toBe(0);
  });

  test('says last what is private and not held back, and makes the package all the same', () => {
    const privates = [
      { title: 'Adoption papers', date: '1975', kind: 'document' },
      { title: 'Will of Ada Quill', date: '1999', kind: 'will' },
      { title: 'School report', date: '1980', kind: 'school report', access: 'closed', until: '2080' },
      ...[1, 2, 3, 4, 5].map((term) => ({
        title: `School report, term ${term}`,
        date: '1980',
        kind: 'school report',
      })),
    ];
    const folder = folderOf([LETTER, ...privates, { ...RING, title: 'School report of Rook' }]);
    const run = kinfonds(['hand-over', folder, '--out', out(folder), '--without-restricted']);
    expect(run.code).toBe(0);
    const [last] = run.err.trimEnd().split('\n').slice(-1);
    expect(last).toBe(
      '7 things in it are private, as far as words tell, and are not held back: “Adoption papers” (row 3), “Will of Ada Quill” (row 4), ' +
        '“School report, term 1” (row 6), “School report, term 2” (row 7), “School report, term 3” (row 8) and 2 more. ' +
        `See what is said of them with kinfonds check ${folder}, and decide before you give the package away.`,
    );
    expect(existsSync(out(folder))).toBe(true);

    // What collection.yaml answers is decided, and where nothing is private nothing is said.
    const answers = ['adoption', 'legal', 'school'].map((matter) => ({
      rule: `private.${matter}`,
      because: 'Everybody has agreed.',
    }));
    const answered = folderOf([LETTER, ...privates], { check: { answers } });
    for (const quiet of [answered, folderOf([LETTER])])
      expect(kinfonds(['hand-over', quiet, '--out', out(quiet)]).err).not.toContain('not held back');
    const machines = folderOf([LETTER, ...privates.slice(0, 1)]);
    const alone = kinfonds(['hand-over', machines, '--out', `${out(machines)}-1`]).err;
    expect(alone).toContain(
      'One thing in it is private, as far as words tell, and is not held back: “Adoption papers” (row 3). See what is said of it',
    );
    const { out: printed } = kinfonds(['hand-over', machines, '--out', out(machines), '--json']);
    expect(JSON.parse(printed).notHeldBack).toEqual([{ row: 3, title: 'Adoption papers' }]);
  });

  test('the common tool agrees with its checksums', () => {
    const folder = folderOf(
      [{ ...LETTER, copy: 'copies/a.txt' }],
      {},
      { 'copies/a.txt': 'The ice went out' },
    );
    expect(kinfonds(['hand-over', folder, '--out', out(folder)]).code).toBe(0);
    for (const name of ['sha512', 'sha256']) {
      const { status, error } = spawnSync(
        `${name}sum`,
        ['-c', '--strict', '--quiet', `manifest-${name}.txt`],
        { cwd: out(folder) },
      );
      if (error !== undefined) process.stderr.write(`Left out: ${name}sum is not on this machine.\n`);
      else expect(status).toBe(0);
      if (process.env.CI === 'true') expect(error).toBeUndefined();
    }
  });

  test('stops at what must be mended, and goes on for a reason', () => {
    const folder = folderOf([LETTER], { rights: undefined });
    const stopped = kinfonds(['hand-over', folder, '--out', out(folder)]);
    expect([stopped.code, stopped.out]).toEqual([1, '']);
    expect(stopped.err).toContain('no package was made');
    expect(stopped.err).toContain('--despite "reason"');
    expect(existsSync(out(folder))).toBe(false);
    const made = kinfonds([
      'hand-over',
      folder,
      '--out',
      out(folder),
      '--despite',
      'The archive asked for it now.',
    ]);
    expect(made.code).toBe(0);
    expect(readFileSync(join(out(folder), 'data/despite.txt'), 'utf8')).toContain(
      'The archive asked for it now.',
    );
  });

  test('--zip, --without-restricted, --json', () => {
    const folder = folderOf([LETTER, { title: 'Bank book', access: 'private' }]);
    const args = ['hand-over', folder, '--out', out(folder), '--zip', '--without-restricted', '--json'];
    const { code, out: printed } = kinfonds(args);
    expect(code).toBe(0);
    expect(JSON.parse(printed)).toMatchObject({
      written: { path: `${out(folder)}.zip`, things: 1, copies: 0 },
      stays: [{ row: 3, title: 'Bank book', why: 'restricted' }],
      findings: [{ rule: 'hand-over.unsettled' }],
    });
    expect(existsSync(`${out(folder)}.zip`)).toBe(true);
    expect(existsSync(out(folder))).toBe(false);
  });

  test('wrong usage ends with 2; what cannot be used, with 1', () => {
    const folder = folderOf([LETTER], { handOver: { keep: ['Rings'] } });
    expect(kinfonds(['hand-over', folder]).code).toBe(2);
    expect(kinfonds(['hand-over', folder, '--out', out(folder), '--despite', ' ']).code).toBe(2);
    const { code, err } = kinfonds(['hand-over', folder, '--out', out(folder)]);
    expect(code).toBe(1);
    expect(err).toContain('keep names “Rings”');
  });

  longTest('a finding aid that was taken in is handed over, without what stays of it', () => {
    const exported = freshFolder();
    kinfonds(['export', 'examples/quill-ferry', '--to', 'ead3', '--out', exported]);
    const folder = join(freshFolder(), 'taken');
    expect(kinfonds(['take-in', join(exported, 'ead3.xml'), '--into', folder]).code).toBe(0);
    const settings = readFileSync(join(folder, 'collection.yaml'), 'utf8');
    writeFileSync(join(folder, 'collection.yaml'), `${settings}\nhandOver:\n  keep: [QF/2]\n`);
    const args = ['hand-over', folder, '--out', out(folder), '--despite', 'The names are known to all.'];
    const run = kinfonds(args);
    expect(run.code).toBe(0);
    expect(run.out).toMatch(
      /package: \d+ units of the finding aid, 0 rows of the list, 0 digital copies, in/,
    );
    expect(run.err).toContain(
      'One unit of the finding aid stays, with all in it, with the family:\n  QF/2 Correspondence (kept by handOver in collection.yaml)\n',
    );
    const verified = kinfonds(['verify', out(folder), '--deep']);
    expect([verified.code, verified.err]).toMatchObject([0, expect.anything()]);
    const json = readFileSync(join(out(folder), 'data/finding-aid/finding-aid.json'), 'utf8');
    expect(json).not.toContain('"QF/2/');
    expect(json).toContain('"QF/3/');
    const said = JSON.parse(
      kinfonds([...args.map((one) => (one === out(folder) ? `${one}-2` : one)), '--json']).out,
    );
    expect(said.unitsStay).toMatchObject([{ referenceCode: 'QF/2', title: 'Correspondence', why: 'named' }]);
    expect(said.written.units).toBeGreaterThan(10);
  });
});
