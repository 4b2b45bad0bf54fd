import { execFileSync } from 'node:child_process';
import { chmod, mkdir, symlink } from 'node:fs/promises';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gatherCopies } from '../../src/copies/index.ts';
import { isWhole } from '../../src/copies/whole.ts';
import { times } from '../support/times.ts';
import {
  bytesOf,
  film,
  folderWith,
  jp2,
  latin,
  PDF,
  picture,
  rf64,
  tiffBigEndian,
  wav,
  zip,
} from './small-files.ts';

/** The trouble of one path of a folder. */
const troubleIn = async (folder: string, path: string) =>
  (await gatherCopies(folder, [path])).get(path)?.trouble;

describe('what is no file of the catalogue is never opened', () => {
  test('a folder, a pipe and a link in a circle', async () => {
    const folder = await folderWith({ 'copies/a.txt': 'a' });
    await symlink('round', join(folder, 'copies/round'));
    execFileSync('mkfifo', [join(folder, 'copies/pipe')]);
    for (const path of ['copies', '.']) expect(await troubleIn(folder, path)).toBe('not a file');
    // Opened in the usual way, a pipe would wait for ever.
    expect(await troubleIn(folder, 'copies/pipe')).toBe('not a file');
    expect(await troubleIn(folder, 'copies/round')).toBe('not a file');
  });

  test('a link or a path that leads out', async () => {
    const outside = await folderWith({ 'secret.txt': 'not for anybody' });
    const folder = await folderWith({ 'copies/a.txt': 'a' });
    await symlink(outside, join(folder, 'copies/elsewhere'));
    await symlink(join(outside, 'secret.txt'), join(folder, 'copies/link.txt'));
    for (const path of ['copies/elsewhere/secret.txt', 'copies/link.txt', 'copies/../..'])
      expect(await gatherCopies(folder, [path])).toEqual(
        new Map([[path, { path, bytes: 0, trouble: 'leads out' }]]),
      );
  });

  test('a link that stays within is followed, and one to nothing is missing', async () => {
    const folder = await folderWith({ 'copies/a.txt': 'a' });
    await symlink('a.txt', join(folder, 'copies/same.txt'));
    await symlink('nothing', join(folder, 'copies/dangling.txt'));
    expect(await troubleIn(folder, 'copies/same.txt')).toBeUndefined();
    expect(await troubleIn(folder, 'copies/dangling.txt')).toBe('missing');
  });

  test.each(['copies/none.txt', 'copies/a.txt/b', `copies/${'x'.repeat(300)}`, 'copies/a\0b'])(
    'no file can be %j',
    async (path) => {
      expect(await troubleIn(await folderWith({ 'copies/a.txt': 'a' }), path)).toBe('missing');
    },
  );

  test('an empty file, and one that may not be read', async () => {
    const folder = await folderWith({ 'a.jpg': '', 'b.jpg': 'b' });
    await chmod(join(folder, 'b.jpg'), 0);
    expect(await troubleIn(folder, 'a.jpg')).toBe('empty');
    // The superuser may read everything.
    if (process.getuid?.() !== 0) expect(await troubleIn(folder, 'b.jpg')).toBe('unreadable');
  });
});

const WHOLE: readonly [name: string, content: () => Buffer | Promise<Buffer>, from?: number][] = [
  ['a.jpg', () => picture('jpeg')],
  ['a.png', () => picture('png')],
  ['a.webp', () => picture('webp')],
  ['a.gif', () => picture('gif')],
  ['a.avif', () => picture('avif')],
  ['big-endian.tif', () => tiffBigEndian(20, 20)],
  ['a.tif', () => picture('tiff')],
  ['a.jp2', () => jp2(4, 4)],
  ['a.wav', () => wav(1000, 8000)],
  ['a.rf64', () => rf64(1000, 8000)],
  ['a.mp4', () => film('isom')],
  ['a.pdf', () => PDF],
  ['a.odt', () => zip('mimetype', 'application/vnd.oasis.opendocument.text')],
];

describe('a file that breaks off is damaged', () => {
  test.each(WHOLE)('%s, whole and cut', async (name, content) => {
    const whole = await content();
    // Without its last tenth.
    const cut = whole.subarray(0, Math.floor(whole.length * 0.9));
    const folder = await folderWith({ [name]: whole, [`cut-${name}`]: cut });
    expect(await troubleIn(folder, name)).toBeUndefined();
    expect(await troubleIn(folder, `cut-${name}`)).toBe('damaged');
  });

  test('the end of a picture for the index is not the end of the picture', async () => {
    const [whole, small] = [await picture('jpeg', { width: 400, height: 300 }), await picture('jpeg')];
    const length = Buffer.from([(small.length + 8) >> 8, (small.length + 8) & 255]);
    const segment = Buffer.concat([latin('\xFF\xE1'), length, latin('Thumb\0'), small]);
    const both = Buffer.concat([whole.subarray(0, 2), segment, whole.subarray(2)]);
    const folder = await folderWith({ 'a.jpg': both, 'cut.jpg': both.subarray(0, both.length - 500) });
    expect(await troubleIn(folder, 'a.jpg')).toBeUndefined();
    expect(await troubleIn(folder, 'cut.jpg')).toBe('damaged');
  });

  test('what hangs behind the end does no harm', async () => {
    const behind = Buffer.alloc(100_000, 'a film of a few seconds');
    const folder = await folderWith({
      'a.jpg': Buffer.concat([await picture('jpeg'), behind]),
      'a.png': Buffer.concat([await picture('png'), behind]),
      'a.wav': Buffer.concat([wav(1000, 8000), behind]),
    });
    for (const name of ['a.jpg', 'a.png', 'a.wav']) expect(await troubleIn(folder, name)).toBeUndefined();
  });

  test('the rest of a file filled with zeros, as a failed copy leaves it', async () => {
    const whole = await picture('jpeg', { width: 400, height: 300 });
    const zeroed = Buffer.from(whole);
    zeroed.fill(0, whole.length / 2);
    expect(await troubleIn(await folderWith({ 'a.jpg': zeroed }), 'a.jpg')).toBe('damaged');
  });

  test('a film whose recording was cut off has no table of contents', async () => {
    const whole = film('isom');
    const cut = whole.subarray(0, whole.indexOf('moov') - 4);
    expect(await troubleIn(await folderWith({ 'a.mp4': cut }), 'a.mp4')).toBe('damaged');
  });
});

describe('whatever the bytes are, facts come of them', () => {
  test('sizes beyond all measure are read, and nothing is unpacked', async () => {
    const png = Buffer.from(await picture('png'));
    png.writeUInt32BE(0x7fff_ffff, 16);
    png.writeUInt32BE(0x7fff_ffff, 20);
    const folder = await folderWith({ 'a.png': png, 'a.jp2': jp2(0xffff_ffff, 0xffff_ffff) });
    const facts = await gatherCopies(folder, ['a.png', 'a.jp2']);
    // The check sum of the header of the PNG is wrong now, and so is its size.
    expect(facts.get('a.png')?.trouble).toBe('damaged');
    expect(facts.get('a.jp2')?.width).toBe(0xffff_ffff);
  });

  test('a TIFF directory that points to itself has an end', async () => {
    const tiff = tiffBigEndian(4, 4);
    // Behind the eight entries stands where the next directory is.
    tiff.writeUInt32BE(8, 10 + 8 * 12);
    await expect(isWhole(bytesOf(tiff), 'image/tiff')).resolves.toBe(true);
  });

  test('any bytes changed, anywhere: no throw, and the file counts as read', async () => {
    const made = await Promise.all(
      WHOLE.map(async ([name, content]) => ({ name, content: await content() })),
    );
    const change = fc.record({
      at: fc.nat(400),
      bytes: fc.uint8Array({ minLength: 1, maxLength: 12 }),
      keep: fc.double({ min: 0.05, max: 1, noNaN: true }),
    });
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(...made),
        fc.array(change, { maxLength: 3 }),
        async (file, changes) => {
          let content = Buffer.from(file.content);
          for (const { at, bytes, keep } of changes) {
            content.set(bytes.subarray(0, Math.max(0, content.length - at)), Math.min(at, content.length));
            content = content.subarray(0, Math.max(1, Math.floor(content.length * keep)));
          }
          const folder = await folderWith({ [file.name]: content });
          const facts = (await gatherCopies(folder, [file.name])).get(file.name);
          expect(facts?.bytes).toBe(content.length);
          expect([undefined, 'damaged']).toContain(facts?.trouble);
          if (changes.length === 0) expect(facts?.trouble).toBeUndefined();
        },
      ),
      { numRuns: 300 },
    );
  });

  test('ten thousand small files, in seconds', async () => {
    const folder = await folderWith();
    await mkdir(join(folder, 'copies'));
    const { writeFileSync } = await import('node:fs');
    const content = await picture('jpeg');
    const many = times(10_000);
    const names = Array.from({ length: many }, (_, at) => `copies/${at}.jpg`);
    for (const name of names) writeFileSync(join(folder, name), content);
    const began = performance.now();
    const facts = await gatherCopies(folder, names);
    expect(performance.now() - began).toBeLessThan(40_000);
    expect([...facts.values()].filter(({ width }) => width === 120)).toHaveLength(many);
  });
});
