import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { CatalogueError } from '../../src/catalogue/finding.ts';
import { type Content, stage, writeWhole } from '../../src/catalogue/write-whole.ts';
import { built, run, runAsAnyone } from './own-program.ts';

const root = mkdtempSync(join(tmpdir(), 'kinfonds-write-'));
const folder = join(root, 'folder');
const file = join(folder, 'list.csv');
const OLD = 'title\nas it was\n';

beforeEach(() => {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder);
  writeFileSync(file, OLD);
});
afterAll(() => rmSync(root, { recursive: true, force: true }));

/** The message with which the work ends; fails where it does not end, or changes anything in the folder. */
async function refusal(work: () => Promise<unknown>): Promise<string> {
  const error: unknown = await work().then(
    () => undefined,
    (thrown: unknown) => thrown,
  );
  expect(readdirSync(folder)).toEqual(['list.csv']);
  expect(readFileSync(file, 'utf8')).toBe(OLD);
  if (!(error instanceof CatalogueError)) throw new Error(`no clear word, but ${error}`);
  return error.message;
}

describe('writing a file whole', () => {
  it.each<[string, Content, string]>([
    ['a text', 'é🍎\n', 'é🍎\n'],
    ['bytes', Buffer.from('é'), 'é'],
    ['nothing', '', ''],
    ['a stream', ['a', Buffer.from('é'), 'b', ''], 'aéb'],
    ['no pieces', [], ''],
    ['an emoji parted over two pieces', ['x\uD83C', '\uDF4Ey'], 'x🍎y'],
  ])('%s', async (_, content, expected) => {
    await writeWhole(file, content);
    expect(readFileSync(file, 'utf8')).toBe(expected);
    expect(readdirSync(folder)).toEqual(['list.csv']);
  });

  it('gives the bytes of the joined text, however it is cut', async () => {
    const long = fc.string({ unit: fc.constantFrom('a', 'é', '🍎', 'b'.repeat(70_000)), maxLength: 12 });
    await fc.assert(
      fc.asyncProperty(fc.array(long, { maxLength: 5 }), fc.nat(), async (pieces, cut) => {
        const text = pieces.join('');
        const at = text.length === 0 ? 0 : cut % text.length;
        await writeWhole(file, [text.slice(0, at), text.slice(at)]);
        expect(readFileSync(file, 'utf8') === text).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  it('keeps the permissions of the old file, and a link to it', async () => {
    chmodSync(file, 0o640);
    symlinkSync('list.csv', join(folder, 'link.csv'));
    await writeWhole(join(folder, 'link.csv'), 'new');
    expect(readFileSync(file, 'utf8')).toBe('new');
    expect(statSync(file).mode & 0o777).toBe(0o640);
    expect(readdirSync(folder).sort()).toEqual(['link.csv', 'list.csv']);
  });

  it('gives a file the permissions that are asked for, at every moment while it is written', async () => {
    const fresh = join(folder, 'private.csv');
    const seen: number[] = [];
    function* pieces() {
      const part = readdirSync(folder).find((name) => name.endsWith('.part')) ?? '';
      seen.push(statSync(join(folder, part)).mode & 0o777);
      yield 'title\n';
    }
    chmodSync(file, 0o644);
    for (const [path, permissions] of [
      [fresh, { mode: 0o600 }],
      [fresh, { most: 0o600 }],
      [file, { most: 0o600 }],
      [join(folder, 'new.csv'), { most: 0o600 }],
    ] as const) {
      const staged = await stage(path, pieces(), permissions);
      await staged.commit();
      expect([path, statSync(path).mode & 0o777]).toEqual([path, 0o600]);
    }
    expect(seen).toEqual([0o600, 0o600, 0o600, 0o600]);
  });

  it('takes pieces only as fast as it writes them', async () => {
    const waiting: number[] = [];
    function* pieces() {
      for (let piece = 0; piece < 1100; piece++) {
        const part = readdirSync(folder).find((name) => name.endsWith('.part')) ?? '';
        waiting.push(piece * 100_000 - statSync(join(folder, part)).size);
        yield `${piece}`.padEnd(100_000, 'x');
      }
    }
    await writeWhole(join(folder, 'large'), pieces());
    expect(statSync(join(folder, 'large')).size).toBe(110_000_000);
    expect(Math.max(...waiting)).toBeLessThan(1_000_000);
  });
});

describe('several files at once', () => {
  it('are beside their places until they are put there', async () => {
    const one = await stage(file, 'new');
    const two = await stage(join(folder, 'b'), 'two');
    expect(readFileSync(file, 'utf8')).toBe(OLD);
    expect(readFileSync(one.temporary, 'utf8')).toBe('new');
    await one.commit();
    await two.discard();
    await one.discard();
    expect(readFileSync(file, 'utf8')).toBe('new');
    expect(readdirSync(folder)).toEqual(['list.csv']);
  });
});

describe('what cannot be written leaves everything as it was', () => {
  it('a stream that breaks off: its own error comes through', async () => {
    function* broken() {
      yield 'x'.repeat(600_000);
      throw new TypeError('the pen broke');
    }
    await expect(writeWhole(file, broken())).rejects.toThrow(new TypeError('the pen broke'));
    expect(readFileSync(file, 'utf8')).toBe(OLD);
    expect(readdirSync(folder)).toEqual(['list.csv']);
  });

  it('a folder that is not there', async () => {
    const message = await refusal(() => writeWhole(join(folder, 'none', 'list.csv'), 'x'));
    expect(message).toContain(join(folder, 'none'));
    expect(message).toContain('is not there');
  });

  it('a file in place of the folder', async () => {
    expect(await refusal(() => writeWhole(join(file, 'list.csv'), 'x'))).toContain(file);
  });

  it('a folder in place of the file', async () => {
    expect(await refusal(() => writeWhole(folder, 'x'))).toContain('A folder has this name');
  });

  it('a name that is too long', async () => {
    expect(await refusal(() => writeWhole(join(folder, 'n'.repeat(300)), 'x'))).toContain('longer than');
  });
});

describe('in a program of its own', () => {
  const write = (target: string, bytes: number) =>
    `const { writeWhole } = await import(${built('catalogue/write-whole.js')});
     await writeWhole(${JSON.stringify(target)}, 'x'.repeat(${bytes}));`;

  it('a file that may not grow so large', async () => {
    // POSIX.1-2017, ulimit -f: in units of 512 bytes; bash counts 1024. Either way far below a million.
    const message = run(write(file, 1_000_000), 'ulimit -f 100; exec');
    expect(message).toMatch(/^CatalogueError: .*list\.csv: The file would grow larger/);
    expect(readFileSync(file, 'utf8')).toBe(OLD);
    expect(readdirSync(folder)).toEqual(['list.csv']);
    expect(run(write(file, 10_000), 'ulimit -f 100; exec')).toBe('');
    expect(readFileSync(file, 'utf8')).toHaveLength(10_000);
  });

  const small = join(root, 'small-disk');
  mkdirSync(small);
  const mounted = spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=256k', 'tmpfs', small]).status === 0;
  afterAll(() => void (mounted && spawnSync('umount', [small])));
  if (!mounted)
    process.stderr.write(
      'Left out: a full disk, since only the system administrator may make a small one.\n',
    );

  it.skipIf(!mounted)('a disk that is full', async () => {
    const target = join(small, 'list.csv');
    writeFileSync(target, OLD);
    expect(run(write(target, 1_000_000))).toMatch(/^CatalogueError: .*list\.csv: The disk is full/);
    expect(readFileSync(target, 'utf8')).toBe(OLD);
    expect(readdirSync(small)).toEqual(['list.csv']);
  });

  it('a folder or a file that one may not write to', async () => {
    chmodSync(folder, 0o555);
    expect(runAsAnyone(write(file, 10))).toMatch(/^CatalogueError: .*You are not permitted/);
    chmodSync(folder, 0o777);
    chmodSync(file, 0o444);
    expect(runAsAnyone(write(file, 10))).toMatch(/^CatalogueError: .*You are not permitted/);
    expect(readFileSync(file, 'utf8')).toBe(OLD);
    expect(readdirSync(folder)).toEqual(['list.csv']);
  });
});
