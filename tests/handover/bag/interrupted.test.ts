import { spawn, spawnSync } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import {
  appendFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  unlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { afterAll, beforeEach, describe, expect, test } from 'vitest';
import { CatalogueError } from '../../../src/catalogue/finding.ts';
import { writeBag } from '../../../src/handover/bag/index.ts';
import { built, run } from '../../catalogue/own-program.ts';
import { contentsOf, freshFolder } from '../../support/kinfonds.ts';
import { longSuite } from '../../support/times.ts';
import { judgeByRfc } from './rfc-validator.ts';

const MEGABYTE = 1_000_000;

let folder: string;
let bag: string;
beforeEach(() => {
  folder = freshFolder();
  bag = join(folder, 'bag');
});

/** Files of so many bytes each, to be copied. */
function originals(sizes: readonly number[]): { path: string; from: string }[] {
  const copies = join(folder, 'copies');
  mkdirSync(copies, { recursive: true });
  return sizes.map((size, number) => {
    const from = join(copies, `scan-${number}.tif`);
    writeFileSync(from, randomBytes(size));
    return { path: `copies/scan-${number}.tif`, from };
  });
}

/** The folder in which a bag is in the making. */
const workFolders = (beside = folder) => readdirSync(beside).filter((name) => name.startsWith('.kinfonds-'));

/** The message with which the work ends; nothing stands at the target then. */
async function refusal(work: Promise<unknown>): Promise<string> {
  const error: unknown = await work.then(
    () => undefined,
    (thrown: unknown) => thrown,
  );
  if (!(error instanceof CatalogueError)) throw new Error(`no clear word, but ${error}`);
  expect(existsSync(bag)).toBe(false);
  return error.message;
}

/** A run that makes copies of small files, and breaks off after the last of them. */
async function interrupted(entries: readonly { path: string; from: string }[]): Promise<void> {
  const last = join(folder, 'last.txt');
  writeFileSync(last, 'x');
  let steps = 0;
  const step = () => {
    // One piece of each is written, and one read back.
    if (++steps === 2 * entries.length + 1) appendFileSync(last, 'y');
  };
  await refusal(writeBag(bag, [...entries, { path: 'last.txt', from: last }], [], { step }));
  expect(workFolders()).toHaveLength(1);
}

/** Nothing but a whole bag, the originals as they were, and no work folder. */
async function expectWhole(entries: readonly { path: string; from: string }[]): Promise<void> {
  expect(judgeByRfc(bag)).toEqual([]);
  expect(workFolders()).toEqual([]);
  for (const { path, from } of entries)
    expect(readFileSync(join(bag, 'data', path)).equals(readFileSync(from))).toBe(true);
}

describe('an original that does not keep still', () => {
  test.each<[string, (file: string) => void]>([
    ['grows', (file) => appendFileSync(file, 'x')],
    ['is written over with as many bytes', (file) => writeFileSync(file, Buffer.alloc(MEGABYTE))],
    ['is taken away', (file) => unlinkSync(file)],
    ['is cut short', (file) => writeFileSync(file, 'x')],
  ])('it %s while it is read; the next run goes on', async (_, change) => {
    const entries = originals([MEGABYTE, MEGABYTE, MEGABYTE]);
    const [, moving] = entries;
    let steps = 0;
    // Pieces of 131,072 bytes: eight to write and eight to read back of each, so that the 20th is within the second.
    const step = () => {
      if (++steps === 20) change(moving?.from ?? '');
    };
    const message = await refusal(writeBag(bag, entries, [], { step }));
    expect(message).toContain(moving?.from);
    expect(message).toContain('was changed while it was being copied');
    expect(message).toContain('the next run goes on from there');
    writeFileSync(moving?.from ?? '', 'now it keeps still');
    // Those that are kept are read once, the other twice.
    const totals: number[] = [];
    await writeBag(bag, entries, [], { step: (_done, all) => void totals.push(all) });
    expect(totals.at(-1)).toBe(2 * MEGABYTE + 2 * 18);
    await expectWhole(entries);
  });
});

describe('going on after an interruption', () => {
  test('a copy that was damaged meanwhile is made again', async () => {
    const entries = originals([1000, 1000]);
    await interrupted(entries);
    const [work = ''] = workFolders();
    writeFileSync(join(folder, work, 'bag/data/copies/scan-0.tif'), Buffer.alloc(1000));
    await writeBag(bag, entries, []);
    await expectWhole(entries);
  });

  test('an original that was changed meanwhile is copied again', async () => {
    const entries = originals([1000, 1000]);
    await interrupted(entries);
    writeFileSync(entries[1]?.from ?? '', randomBytes(1000));
    await writeBag(bag, entries, []);
    await expectWhole(entries);
  });

  test('what is held back by now is nowhere in the bag, and a file may stand where a folder was', async () => {
    const [kept, secret] = originals([1000, 1000]);
    const secrets = ['copies/secret/1.tif', 'held/back', 'x/y'].map((path) => ({
      path,
      from: secret?.from ?? '',
    }));
    const first = [...(kept === undefined ? [] : [kept]), ...secrets];
    await interrupted(first);
    await writeBag(bag, [...(kept === undefined ? [] : [kept]), { path: 'x', content: 'a file' }], []);
    expect(Object.keys(contentsOf(join(bag, 'data'))).sort()).toEqual(['copies/scan-0.tif', 'x']);
    expect(readdirSync(join(bag, 'data'))).not.toContain('held');
    expect(JSON.stringify(contentsOf(bag))).not.toContain('secret');
    await expectWhole([]);
  });

  test('two runs at once: the second is told to wait; a run that has died is no hindrance', async () => {
    const entries = originals([1000]);
    await interrupted(entries);
    const [work = ''] = workFolders();
    const other = spawn(process.execPath, ['-e', 'setTimeout(() => {}, 60000)']);
    writeFileSync(join(folder, work, 'running'), `${other.pid}`);
    expect(await refusal(writeBag(bag, entries, []))).toContain('Another run is packing this bag');
    const ended = new Promise((resolve) => other.on('exit', resolve));
    other.kill('SIGKILL');
    await ended;
    await writeBag(bag, entries, []);
    await expectWhole(entries);
  });
});

test('a copy that is not what was written is found when it is read back', async () => {
  const entries = originals([MEGABYTE]);
  let steps = 0;
  const step = () => {
    // The ninth piece is the first that is read back; another byte by then, as if the disk had lost it.
    if (++steps !== 9) return;
    const [work = ''] = workFolders();
    const copy = join(folder, work, 'bag/data/copies/scan-0.tif');
    const bytes = readFileSync(copy);
    bytes[900_000] = (bytes[900_000] ?? 0) ^ 1;
    writeFileSync(copy, bytes);
  };
  expect(await refusal(writeBag(bag, entries, [], { step }))).toContain(
    'The copy, read back, is not the same',
  );
  await writeBag(bag, entries, []);
  await expectWhole(entries);
});

/** How often the work is killed. */
const KILLS = 100;

longSuite('killed', () => {
  const packing = (entries: unknown, step = '') =>
    `const { writeBag } = await import(${built('handover/bag/index.js')});
     let steps = 0;
     await writeBag(${JSON.stringify(bag)}, ${JSON.stringify(entries)}, [], { step: () => { steps += 1; ${step} } });`;
  const start = (script: string) =>
    spawn(process.execPath, ['--input-type=module', '-e', script], { stdio: 'inherit' });
  const ended = (child: ReturnType<typeof start>) => new Promise((resolve) => child.on('exit', resolve));

  test(`at ${KILLS} random moments, in several threads: never a false bag, and going on ends in a whole one`, async () => {
    const entries = originals([...Array(7).fill(8 * MEGABYTE), 20 * MEGABYTE, ...Array(40).fill(100)]);
    const before = contentsOf(join(folder, 'copies'));
    const whole = performance.now();
    await ended(start(packing(entries)));
    const length = performance.now() - whole;
    await expectWhole(entries);
    rmSync(bag, { recursive: true });

    let [killed, finished] = [0, 0];
    while (killed < KILLS && finished < 2 * KILLS) {
      const child = start(packing(entries));
      const end = ended(child);
      await Promise.race([setTimeout(Math.random() * length), end]);
      child.kill('SIGKILL');
      await end;
      if (child.signalCode !== 'SIGKILL') finished += 1;
      else killed += 1;
      if (!existsSync(bag)) {
        expect(workFolders().length).toBeLessThanOrEqual(1);
        continue;
      }
      // It may have been killed after the last step: whatever stands at the target is whole.
      expect(judgeByRfc(bag)).toEqual([]);
      rmSync(bag, { recursive: true });
    }
    expect(killed).toBe(KILLS);
    await ended(start(packing(entries)));
    await expectWhole(entries);
    expect(contentsOf(join(folder, 'copies'))).toEqual(before);
  }, 300_000);

  test('at each piece that is read or written', async () => {
    const entries = originals([300_000, 1000, 1000]);
    // 300,000 bytes are three pieces; five to write and five to read back.
    for (let piece = 1; piece <= 10; piece++) {
      const child = start(packing(entries, `if (steps === ${piece}) process.kill(process.pid, 'SIGKILL');`));
      await ended(child);
      expect(child.signalCode).toBe('SIGKILL');
      expect(existsSync(bag)).toBe(false);
      for (const work of workFolders()) rmSync(join(folder, work), { recursive: true });
    }
    await ended(start(packing(entries)));
    await expectWhole(entries);
  });

  test('while the last of it is written: until it is moved, no folder is called as the bag', async () => {
    const entries = originals([1000]);
    const content = `(function* () { yield 'x'; process.kill(process.pid, 'SIGKILL'); })()`;
    const script = packing(entries).replace(
      JSON.stringify(entries),
      `[...${JSON.stringify(entries)}, { path: 'z', content: ${content} }]`,
    );
    const child = start(script);
    await ended(child);
    expect(child.signalCode).toBe('SIGKILL');
    expect(existsSync(bag)).toBe(false);
    await writeBag(bag, [...entries, { path: 'z', content: 'x' }], []);
    await expectWhole(entries);
  });
});

describe('a full disk', () => {
  test('a file that may not grow so large', async () => {
    const entries = originals([MEGABYTE]);
    // POSIX.1-2017, ulimit -f: in units of 512 bytes; bash counts 1024. Either way far below a million.
    const script = `const { writeBag } = await import(${built('handover/bag/index.js')});
      await writeBag(${JSON.stringify(bag)}, ${JSON.stringify(entries)}, []);`;
    expect(run(script, 'ulimit -f 100; exec')).toMatch(
      /^CatalogueError: .*scan-0\.tif: The file would grow larger/,
    );
    expect(existsSync(bag)).toBe(false);
    expect(run(script)).toBe('');
    await expectWhole(entries);
  });

  const disk = join(tmpdir(), `kinfonds-small-disk-${process.pid}`);
  mkdirSync(disk, { recursive: true });
  const mounted = spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=4m', 'tmpfs', disk]).status === 0;
  afterAll(() => {
    if (mounted) spawnSync('umount', [disk]);
    rmSync(disk, { recursive: true, force: true });
  });
  if (!mounted)
    process.stderr.write(
      'Left out: a full disk, since only the system administrator may make a small one.\n',
    );

  test.skipIf(!mounted)('that is full from the start is said before anything is copied', async () => {
    bag = join(disk, 'bag');
    const entries = originals([5 * MEGABYTE]);
    let steps = 0;
    const message = await refusal(writeBag(bag, entries, [], { step: () => void steps++ }));
    expect(message).toMatch(/The copies need 5 MB, and \d MB are free/);
    expect(steps).toBe(0);
    expect(readdirSync(disk)).toEqual([]);
  });

  test.skipIf(!mounted)('that fills up meanwhile; with room made, the next run goes on', async () => {
    bag = join(disk, 'bag');
    const entries = originals([MEGABYTE, MEGABYTE]);
    const ballast = join(disk, 'ballast');
    let steps = 0;
    const fill = () => {
      if (++steps !== 20) return;
      writeFileSync(ballast, '');
      try {
        for (;;) appendFileSync(ballast, Buffer.alloc(4096));
      } catch {}
    };
    const message = await refusal(writeBag(bag, entries, [], { step: fill }));
    expect(message).toContain('The disk is full');
    expect(message).toContain('the next run goes on from there');
    expect(workFolders(disk)).toHaveLength(1);
    rmSync(ballast);
    const totals: number[] = [];
    await writeBag(bag, entries, [], { step: (_done, all) => void totals.push(all) });
    expect(totals.at(-1)).toBe(3 * MEGABYTE);
    expect(workFolders(disk)).toEqual([]);
    expect(readdirSync(disk)).toEqual([basename(bag)]);
    await expectWhole(entries);
  });
});

test('many files and large ones are verified in several threads, with the same verdict', async () => {
  const entries = originals([30 * MEGABYTE, ...Array(20).fill(2 * MEGABYTE)]);
  const script = `const { writeBag, verifyBag } = await import(${built('handover/bag/index.js')});
    const { appendFileSync } = await import('node:fs');
    const bag = ${JSON.stringify(bag)};
    await writeBag(bag, ${JSON.stringify(entries)}, []);
    const first = await verifyBag(bag);
    appendFileSync(bag + '/data/copies/scan-0.tif', 'x');
    appendFileSync(bag + '/data/copies/scan-7.tif', 'x');
    const second = await verifyBag(bag);
    console.log(JSON.stringify([first.valid, first.files, second.valid, second.changed.sort()]));`;
  expect(JSON.parse(run(script))).toEqual([
    true,
    21,
    false,
    ['data/copies/scan-0.tif', 'data/copies/scan-7.tif'],
  ]);
});
