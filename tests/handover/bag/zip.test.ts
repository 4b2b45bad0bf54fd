import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test, vi } from 'vitest';
import { directoryEnd, directoryEntry, fileHeader } from '../../../src/catalogue/zip-records.ts';
import { writeBag, zipBag } from '../../../src/handover/bag/index.ts';
import { contentsOf, freshFolder } from '../../support/kinfonds.ts';
import { judgeByRfc } from './rfc-validator.ts';

/** A bag with a few files, in a folder of its own. */
async function someBag(): Promise<{ folder: string; bag: string }> {
  const folder = freshFolder();
  const bag = join(folder, 'bag');
  const entries = [
    { path: 'Núñez 🍎.txt', content: 'ferryman' },
    { path: 'empty', content: '' },
    { path: 'a/long.txt', content: 'apple '.repeat(500_000) },
  ];
  await writeBag(bag, entries, [['Bagging-Date', '2026-05-14']]);
  return { folder, bag };
}

const inPython = (script: string, ...args: string[]) =>
  spawnSync('python3', ['-c', script, ...args], { encoding: 'utf8' });
const hasPython = inPython('0').status === 0;
if (!hasPython && process.env.CI === 'true')
  throw new Error('In CI every outside check must run, but python3 is missing.');
if (!hasPython)
  process.stderr.write('Left out: ZIP files held against another reader: python3 is missing.\n');

describe('a bag in one ZIP file', () => {
  test.skipIf(!hasPython)(
    'is unpacked by another program into the same bag, in a folder of its own',
    async () => {
      const { folder, bag } = await someBag();
      const file = join(folder, 'quill papers.zip');
      await zipBag(bag, file);
      const out = join(folder, 'out');
      const unpack =
        'import sys, zipfile; z = zipfile.ZipFile(sys.argv[1]); assert z.testzip() is None; z.extractall(sys.argv[2])';
      expect(inPython(unpack, file, out)).toMatchObject({ status: 0, stderr: '' });
      expect(readdirSync(out)).toEqual(['quill papers']);
      expect(contentsOf(join(out, 'quill papers'))).toEqual(contentsOf(bag));
      expect(judgeByRfc(join(out, 'quill papers'))).toEqual([]);
    },
  );

  test('is the same bytes on another day and in another time zone, and leaves nothing beside it', async () => {
    const { folder, bag } = await someBag();
    const [one, two] = [join(folder, '1', '..', 'one.zip'), join(folder, 'one.ZIP')];
    await zipBag(bag, one);
    vi.stubEnv('TZ', 'Pacific/Kiritimati');
    await zipBag(bag, two).finally(() => vi.unstubAllEnvs());
    expect(readFileSync(two).equals(readFileSync(one))).toBe(true);
    expect(readdirSync(folder).sort()).toEqual(['bag', 'one.ZIP', 'one.zip']);
  });

  test('is never written over another file', async () => {
    const { folder, bag } = await someBag();
    writeFileSync(join(folder, 'bag.zip'), 'old');
    await expect(zipBag(bag, join(folder, 'bag.zip'))).rejects.toThrow('never written over');
    expect(readFileSync(join(folder, 'bag.zip'), 'utf8')).toBe('old');
  });

  test('a bag that changes meanwhile is refused', async () => {
    const { folder, bag } = await someBag();
    let grown = false;
    const step = () => {
      if (!grown) writeFileSync(join(bag, 'data/a/long.txt'), 'changed');
      grown = true;
    };
    await expect(zipBag(bag, join(folder, 'bag.zip'), { step })).rejects.toThrow('was changed while');
    expect(readdirSync(folder)).toEqual(['bag']);
  });
});

// APPNOTE.TXT 6.3: 4.3.7 and 4.5.3. Five gigabytes are 0x1_2A05_F200.
describe('what is too large for the old fields', () => {
  const large = { name: Buffer.from('x'), size: 5_000_000_000, crc32: 0, at: 6_000_000_000 };

  test('stands in the ZIP64 field', () => {
    const header = fileHeader(large);
    expect(header.readUInt32LE(18)).toBe(0xffffffff);
    expect(header.readUInt16LE(28)).toBe(20);
    expect(header.subarray(31).toString('hex')).toBe(`01001000${'00f2052a01000000'.repeat(2)}`);
    const entry = directoryEntry(large);
    expect(entry.readUInt32LE(42)).toBe(0xffffffff);
    expect(entry.subarray(47).toString('hex')).toBe(
      `01001800${'00f2052a01000000'.repeat(2)}00bca06501000000`,
    );
  });

  test.skipIf(!hasPython)('and another program finds its way by it', async () => {
    const file = join(freshFolder(), 'many.zip');
    // More files than 65,535, all empty; and the end of the directory with its own ZIP64 form.
    const headers: Buffer[] = [];
    const entries: Buffer[] = [];
    let at = 0;
    for (let number = 0; number < 70_000; number++) {
      const one = { name: Buffer.from(`${number}`), size: 0, crc32: 0, at };
      const header = fileHeader(one);
      headers.push(header);
      entries.push(directoryEntry(one));
      at += header.length;
    }
    const directory = Buffer.concat(entries);
    writeFileSync(file, Buffer.concat([...headers, directory, directoryEnd(70_000, at, directory.length)]));
    const read = 'import sys, zipfile; n = zipfile.ZipFile(sys.argv[1]).namelist(); print(len(n), n[-1])';
    expect(inPython(read, file).stdout).toBe('70000 69999\n');
  });
});
