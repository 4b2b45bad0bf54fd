import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  appendFileSync,
  mkdirSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { CatalogueError } from '../../../src/catalogue/finding.ts';
import { verifyBag } from '../../../src/handover/bag/index.ts';
import { contentsOf, freshFolder } from '../../support/kinfonds.ts';
import { bagOf } from './hand-made-bag.ts';
import { judgeByRfc } from './rfc-validator.ts';

const PAPERS = { 'letter.txt': 'Bea to Tom on the thaw', 'ferry/bell.txt': 'cast in 1891' };

/** The rules that speak, with the weight and the file of each; the validator written from the RFC has to agree. */
async function said(bag: string, strictly?: boolean): Promise<string[]> {
  const before = contentsOf(bag);
  const { findings, valid } = await verifyBag(bag);
  expect(judgeByRfc(bag).length === 0).toBe(strictly ?? valid);
  expect(contentsOf(bag)).toEqual(before);
  expect(valid).toBe(findings.every(({ weight }) => weight !== 'must'));
  return findings.map(({ weight, rule, place }) => `${weight} ${rule} ${place.file ?? ''}`.trim());
}

describe('a bag that is as it was', () => {
  test.each([['1.0'], ['0.97'], ['0.96']])('of version %s', async (version) => {
    const bag = bagOf(PAPERS, { version, algorithms: ['sha512', 'sha256', 'md5'] });
    expect(await said(bag)).toEqual([]);
    const { findings: _, ...verdict } = await verifyBag(bag);
    // 22 and 12 letters.
    expect(verdict).toEqual({
      version,
      algorithms: ['SHA-512', 'SHA-256', 'MD5'],
      files: 2,
      bytes: 34,
      complete: true,
      valid: true,
      changed: [],
      missing: [],
      extra: [],
    });
  });

  test('tells how far it is, up to all of its bytes, tag files included', async () => {
    const steps: [number, number][] = [];
    const bag = bagOf(PAPERS, { algorithms: ['sha256'] });
    await verifyBag(bag, { step: (done, total) => void steps.push([done, total]) });
    const size = (file: string) => readFileSync(join(bag, file)).length;
    const all = 34 + size('bagit.txt') + size('manifest-sha256.txt');
    expect(steps.at(-1)).toEqual([all, all]);
    expect(steps.map(([done]) => done)).toEqual(steps.map(([done]) => done).sort((a, b) => a - b));
  });

  // RFC 8493, 2.3: a line ends with LF, CR, or both; 2.1.3: one or more blanks or tabs, figures of either case.
  test.each([
    ['CRLF', (line: string) => `${line}\r`],
    ['tabs', (line: string) => line.replace('  ', '\t \t')],
    ['capital figures', (line: string) => line.replace(/^\w+/, (sum) => sum.toUpperCase())],
    ['blank lines', (line: string) => `\n${line}\n`],
  ])('with %s in its manifests', async (_, change) => {
    expect(await said(bagOf(PAPERS, { lines: (lines) => lines.map(change) }))).toEqual([]);
  });

  // RFC 8493, 2.1.3.
  test('with line ends and per cent signs in names', async () => {
    const payload = { 'a\nb\rc': 'x', '100%25.txt': 'y', '%0A': 'z' };
    const encoded = (lines: string[]) =>
      lines.map((line) => line.replace(/%/g, '%25').replace(/\n/g, '%0A').replace(/\r/g, '%0d'));
    expect(await said(bagOf(payload, { lines: encoded }))).toEqual([]);
    // Before 1.0 the per cent sign stood for itself, and only line ends were encoded.
    const old = (lines: string[]) => lines.map((line) => line.replace(/\n/g, '%0A').replace(/\r/g, '%0d'));
    expect(await said(bagOf({ 'a\nb\rc': 'x', '100%25.txt': 'y' }, { version: '0.97', lines: old }))).toEqual(
      [],
    );
  });

  test('with a bag-info.txt of repeated, folded and unusual fields', async () => {
    const info =
      'Contact-Name: Ada\nContact-Name: Nils\nExternal-Description: The ferry\n  and the orchard\nPayload-Oxum: 34.2\n';
    expect(await said(bagOf(PAPERS, { tags: { 'bag-info.txt': info } }))).toEqual([]);
  });

  test('whose fetch.txt has been fetched', async () => {
    const tags = {
      'fetch.txt': 'https://example.org/1 - data/letter.txt\nhttps://example.org/2 12 data/ferry/bell.txt\n',
    };
    expect(await said(bagOf(PAPERS, { tags }))).toEqual([]);
  });
});

describe('what has happened to a bag', () => {
  test('a file is changed, by one bit', async () => {
    const bag = bagOf(PAPERS);
    const bytes = readFileSync(join(bag, 'data/letter.txt'));
    bytes[3] = (bytes[3] ?? 0) ^ 1;
    writeFileSync(join(bag, 'data/letter.txt'), bytes);
    expect(await said(bag)).toEqual(['must bag.changed data/letter.txt']);
    expect(await verifyBag(bag)).toMatchObject({
      complete: true,
      valid: false,
      changed: ['data/letter.txt'],
    });
  });

  test('a file is gone, another is new, a third has a new name', async () => {
    const bag = bagOf({ ...PAPERS, 'toll.txt': 'two pence' });
    rmSync(join(bag, 'data/letter.txt'));
    writeFileSync(join(bag, 'data/ferry/new.txt'), '');
    renameSync(join(bag, 'data/toll.txt'), join(bag, 'data/fare.txt'));
    expect((await said(bag)).sort()).toEqual([
      'must bag.extra data/fare.txt',
      'must bag.extra data/ferry/new.txt',
      'must bag.missing data/letter.txt',
      'must bag.missing data/toll.txt',
    ]);
    const { complete, missing, extra } = await verifyBag(bag);
    expect({ complete, missing: missing.sort(), extra: extra.sort() }).toEqual({
      complete: false,
      missing: ['data/letter.txt', 'data/toll.txt'],
      extra: ['data/fare.txt', 'data/ferry/new.txt'],
    });
  });

  test('a list is changed, and not the file', async () => {
    const bag = bagOf(PAPERS, { algorithms: ['sha512', 'sha256'] });
    const manifest = join(bag, 'manifest-sha256.txt');
    writeFileSync(
      manifest,
      readFileSync(manifest, 'utf8').replace(/^./, (figure) => (figure === '0' ? '1' : '0')),
    );
    const { findings } = await verifyBag(bag);
    const about = Object.fromEntries(findings.map(({ place, found }) => [place.file, found]));
    expect(about['data/letter.txt']).toContain('it is a manifest that was changed, and not the file');
    expect(about['manifest-sha256.txt']).toContain('not as it was');
    expect(await said(bag)).toHaveLength(2);
  });

  test('the system has left a file of its own', async () => {
    const bag = bagOf(PAPERS);
    writeFileSync(join(bag, 'data/.DS_Store'), 'x');
    const { findings, valid } = await verifyBag(bag);
    expect(valid).toBe(false);
    expect(findings.map(({ rule, advice }) => [rule, advice])).toEqual([
      ['bag.extra', 'Delete it, and check again.'],
    ]);
  });

  test('files have still to be fetched', async () => {
    const tags = { 'fetch.txt': 'https://example.org/1 - data/letter.txt\n' };
    const bag = bagOf(PAPERS, { tags });
    rmSync(join(bag, 'data/letter.txt'));
    expect(await said(bag)).toEqual(['must bag.to-fetch data/letter.txt']);
  });

  test('accents are written in the other way, as some systems do when they copy', async () => {
    const [composed, apart] = ['Núñez.txt'.normalize('NFC'), 'Núñez.txt'.normalize('NFD')];
    const bag = bagOf({ [composed]: 'ferryman' });
    renameSync(join(bag, 'data', composed), join(bag, 'data', apart));
    expect(await said(bag, false)).toEqual([`should bag.other-form data/${composed}`]);
    writeFileSync(join(bag, 'data', apart), 'changed');
    expect(await said(bag)).toContain(`must bag.missing data/${composed}`);
  });

  test('two names that differ in case only have become one file', async () => {
    const bag = bagOf({ 'Bell.txt': 'of the ferry', 'bell.txt': 'of the school' });
    expect(await said(bag)).toEqual([expect.stringContaining('consider bag.same-elsewhere data/')]);
    rmSync(join(bag, 'data/Bell.txt'));
    expect(await said(bag)).toContain('must bag.missing data/Bell.txt');
  });
});

describe('what a bag must not be', () => {
  test('Payload-Oxum of something else', async () => {
    expect(await said(bagOf(PAPERS, { tags: { 'bag-info.txt': 'Payload-Oxum: 35.2\n' } }))).toEqual([
      'must bag.oxum bag-info.txt',
    ]);
  });

  // RFC 8493, 3, "every payload file is listed in every payload manifest"; in 0.97, in at least one.
  test('files that one of two manifests does not list', async () => {
    const lines = (all: string[], manifest: string) => (manifest === 'manifest-md5.txt' ? all.slice(1) : all);
    const algorithms = ['sha512', 'md5'];
    expect(await said(bagOf(PAPERS, { algorithms, lines }))).toEqual(['must bag.not-listed data/letter.txt']);
    expect(await said(bagOf(PAPERS, { algorithms, lines, version: '0.97' }))).toEqual([]);
  });

  test.each([
    ['1.0', 'must'],
    ['0.97', 'should'],
  ])('a file listed twice in version %s', async (version, weight) => {
    const lines = (all: string[], manifest: string) =>
      manifest === 'tag' ? all : [...all, ...all.slice(0, 1)];
    expect(await said(bagOf(PAPERS, { version, lines }))).toEqual([
      `${weight} bag.listed-twice manifest-sha512.txt`,
    ]);
  });

  test.each([
    ['../letter.txt'],
    ['data/../../letter.txt'],
    ['data/ferry/../../../letter.txt'],
    ['/etc/hostname'],
    ['~/letter.txt'],
    ['C:\\letter.txt'],
    ['\\\\server\\letter.txt'],
    ['data\\..\\..\\letter.txt'],
    ['letter.txt'],
  ])('a manifest that names %s', async (path) => {
    const lines = (all: string[], manifest: string) =>
      manifest === 'tag' ? all : [...all, `${createHash('sha512').update('x').digest('hex')}  ${path}`];
    const bag = bagOf(PAPERS, { lines });
    writeFileSync(join(bag, '..', 'letter.txt'), 'x');
    expect(await said(bag)).toEqual(['must bag.path-out manifest-sha512.txt']);
  });

  test.each([['../x'], ['/x'], ['~x'], ['C:x'], ['\\\\server\\x'], ['%TEMP%\\x'], ['data/letter.txt']])(
    'a tag manifest that names %s',
    async (path) => {
      const bag = bagOf(PAPERS);
      appendFileSync(join(bag, 'tagmanifest-sha512.txt'), `${'0'.repeat(128)}  ${path}\n`);
      const { findings, missing } = await verifyBag(bag);
      expect(findings.map(({ rule }) => rule)).toEqual(['bag.path-out']);
      expect(missing).toEqual([]);
    },
  );

  test('a line that is none, and a checksum of the wrong length', async () => {
    const lines = (all: string[], manifest: string) =>
      manifest === 'tag' ? all : [...all, 'nothing', 'abc  data/x'];
    expect(await said(bagOf(PAPERS, { lines }))).toEqual(Array(2).fill('must bag.line manifest-sha512.txt'));
  });

  test('an encoding that is not known, or not the one declared', async () => {
    const unknown = await verifyBag(bagOf(PAPERS, { encoding: 'Quill-8' }));
    expect(unknown.findings.map(({ rule }) => rule)).toContain('bag.encoding');
    expect(unknown.valid).toBe(false);
    const bag = bagOf(PAPERS);
    appendFileSync(join(bag, 'manifest-sha512.txt'), Buffer.from([0xff, 0xfe, 0xfd]));
    expect((await verifyBag(bag)).findings.map(({ rule }) => rule)).toContain('bag.encoding');
  });

  test('checksums of no known algorithm: what cannot be checked is not valid', async () => {
    const bag = bagOf(PAPERS);
    for (const kind of ['', 'tag']) {
      renameSync(join(bag, `${kind}manifest-sha512.txt`), join(bag, `${kind}manifest-quill9.txt`));
    }
    expect(await verifyBag(bag)).toMatchObject({ valid: false, algorithms: [] });
  });
});

describe('what lies in a bag and is no file', () => {
  test('links: one that leads out is not followed, one to nowhere, one inside', async () => {
    const outside = join(freshFolder(), 'secret.txt');
    writeFileSync(outside, 'cast in 1891');
    const bag = bagOf({ ...PAPERS, 'third.txt': 'x' });
    const replace = (path: string, to: string) => {
      rmSync(join(bag, path));
      symlinkSync(to, join(bag, path));
    };
    replace('data/ferry/bell.txt', outside);
    replace('data/letter.txt', 'nowhere.txt');
    writeFileSync(join(bag, 'kept.txt'), 'x');
    replace('data/third.txt', '../kept.txt');
    const { findings, valid } = await verifyBag(bag);
    expect(valid).toBe(false);
    expect(findings.map(({ weight, rule, place }) => `${weight} ${rule} ${place.file}`).sort()).toEqual([
      'consider bag.unwatched undefined',
      'must bag.link data/ferry/bell.txt',
      'must bag.link data/letter.txt',
      'must bag.missing data/ferry/bell.txt',
      'must bag.missing data/letter.txt',
      'should bag.link-inside data/third.txt',
    ]);
  });

  test('a payload folder that is a link', async () => {
    const bag = bagOf(PAPERS);
    renameSync(join(bag, 'data'), join(bag, '..', 'moved'));
    symlinkSync(join('..', 'moved'), join(bag, 'data'));
    const { findings, valid } = await verifyBag(bag);
    expect(valid).toBe(false);
    expect(findings.map(({ rule }) => rule)).toContain('bag.link');
  });

  test.skipIf(process.platform === 'win32')('a pipe, which would be waited for without end', async () => {
    const bag = bagOf(PAPERS);
    rmSync(join(bag, 'data/letter.txt'));
    expect(spawnSync('mkfifo', [join(bag, 'data/letter.txt'), join(bag, 'bag-info.txt')]).status).toBe(0);
    const { findings, valid } = await verifyBag(bag);
    expect(valid).toBe(false);
    expect(findings.filter(({ rule }) => rule === 'bag.not-a-file')).toHaveLength(2);
  });
});

describe('what is no bag', () => {
  const refusal = (folder: string) =>
    verifyBag(folder).then(
      () => 'nothing thrown',
      (error) => (error instanceof CatalogueError ? error.message : `thrown: ${error}`),
    );

  test('nothing, a file, a packed file, a folder, and a folder around a bag', async () => {
    const folder = freshFolder();
    expect(await refusal(join(folder, 'none'))).toContain('There is no such folder.');
    writeFileSync(join(folder, 'list.csv'), '');
    expect(await refusal(join(folder, 'list.csv'))).toContain('This is a file and no folder.');
    writeFileSync(join(folder, 'bag.zip'), '');
    expect(await refusal(join(folder, 'bag.zip'))).toContain('Unpack it');
    mkdirSync(join(folder, 'data'));
    expect(await refusal(folder)).toContain('This folder is no bag');
    const bag = bagOf(PAPERS);
    expect(await refusal(join(bag, '..'))).toContain(`A bag lies in it: ${bag}`);
  });
});
