import { createHash } from 'node:crypto';
import { chmod, mkdir, readdir, readFile, rm, stat, symlink, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { filesBelow, gatherCopies } from '../../src/copies/index.ts';
import {
  bmp,
  film,
  folderWith,
  GPS,
  jp2,
  latin,
  newFolder,
  picture,
  rf64,
  tiffBigEndian,
  wav,
} from './small-files.ts';

const CACHE = '.kinfonds-copies.json';

/** The facts of one file of a content. */
async function factsOf(name: string, content: string | Uint8Array) {
  const folder = await folderWith({ [name]: content });
  return (await gatherCopies(folder, [name])).get(name);
}

describe('the facts of a copy', () => {
  test('path, bytes, check sum, type and pixels', async () => {
    const content = await picture('jpeg', { width: 120, height: 80 });
    expect(await factsOf('copies/ferry.jpg', content)).toEqual({
      path: 'copies/ferry.jpg',
      bytes: content.length,
      sha256: createHash('sha256').update(content).digest('hex'),
      mediaType: 'image/jpeg',
      width: 120,
      height: 80,
    });
  });

  test('the check sum of "abc" is that of FIPS 180-4, example B.1 (from memory)', async () => {
    expect(await factsOf('a.txt', 'abc')).toMatchObject({
      sha256: 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad',
    });
  });

  test('a file of several pieces has the check sum of the whole', async () => {
    const content = Buffer.alloc(3 * (1 << 20) + 17, 'Quill’s Landing');
    const sha256 = createHash('sha256').update(content).digest('hex');
    expect(await factsOf('a.txt', content)).toMatchObject({ bytes: content.length, sha256 });
  });

  test.each(['png', 'tiff', 'webp', 'gif', 'avif'] as const)('pixels of %s', async (format) => {
    const content = await picture(format, { width: 121, height: 83 });
    expect(await factsOf(`a.${format}`, content)).toMatchObject({ width: 121, height: 83 });
  });

  test.each([
    ['a.bmp', bmp(640, -480)],
    ['a.jp2', jp2(640, 480)],
    ['a.tif', tiffBigEndian(640, 480)],
  ])('pixels of %s', async (name, content) => {
    const facts = await factsOf(name, content);
    expect(facts).toMatchObject({ width: 640, height: 480 });
    expect(facts?.trouble).toBeUndefined();
  });

  test('pictures in a TIFF file are its pages', async () => {
    expect(await factsOf('a.tif', tiffBigEndian(4, 4))).toMatchObject({ pages: 1 });
  });

  test.each([
    ['2011:07:04 12:00:00', '2011-07-04'],
    ['2011:07:   :  :  ', '2011-07'],
    ['2012:02:29 00:00:00', '2012-02-29'],
    ['2011:02:29 00:00:00', undefined],
    ['0000:00:00 00:00:00', undefined],
    ['2011:13:01 00:00:00', undefined],
  ])('DateTimeOriginal %s is the day %s (Exif 2.32, 4.6.5)', async (written, day) => {
    const exif = { IFD2: { DateTimeOriginal: written } };
    for (const format of ['jpeg', 'png', 'webp', 'avif'] as const)
      expect((await factsOf('a', await picture(format, { exif })))?.madeAt).toBe(day);
  });

  test('that a picture tells its place is noted, and the place is not', async () => {
    for (const format of ['jpeg', 'png', 'webp', 'avif'] as const) {
      const facts = await factsOf('a', await picture(format, { exif: GPS }));
      expect(facts?.hasLocation).toBe(true);
      expect(JSON.stringify({ ...facts, sha256: '' })).not.toMatch(/51|30|32\.3/);
    }
  });

  test('fractions without a denominator are what a camera writes that found no place', async () => {
    const exif = { IFD3: { GPSLatitude: '0/0 0/0 0/0', GPSVersionID: '2 3 0 0' } };
    expect((await factsOf('a.jpg', await picture('jpeg', { exif })))?.hasLocation).toBeUndefined();
  });

  test('a place in XMP counts as well, and in a film', async () => {
    const xmp =
      '<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:Description exif:GPSLatitude="51,30.5N"/></x:xmpmeta>';
    const jpeg = await picture('jpeg');
    const segment = latin(`http://ns.adobe.com/xap/1.0/\0${xmp}`);
    const length = Buffer.from([(segment.length + 2) >> 8, (segment.length + 2) & 255]);
    const withXmp = Buffer.concat([
      jpeg.subarray(0, 2),
      latin('\xFF\xE1'),
      length,
      segment,
      jpeg.subarray(2),
    ]);
    expect(await factsOf('a.jpg', withXmp)).toMatchObject({ hasLocation: true, width: 120 });
    expect(await factsOf('a.mp4', film('isom', latin('\0\0\0\x10\xA9xyz+51.5-0')))).toMatchObject({
      hasLocation: true,
    });
    expect((await factsOf('a.mp4', film('isom')))?.hasLocation).toBeUndefined();
  });

  test.each<[string, Buffer, number | undefined]>([
    ['eight thousand samples of a byte, at eight thousand a second', wav(8000, 8000), 1],
    ['half of them', wav(4000, 8000), 0.5],
    ['a chunk of an odd length before', wav(8000, 8000, { before: latin('note\x03\0\0\0Ada\0') }), 1],
    ['RF64, whose length stands elsewhere (EBU Tech 3306)', rf64(12_000, 8000), 1.5],
    ['a length that was never filled in', wav(16_000, 8000, { size: 0xffffffff }), 2],
    ['no rate at all', wav(100, 0), undefined],
  ])('a recording of %s lasts that long', async (_, content, seconds) => {
    const facts = await factsOf('a.wav', content);
    expect(facts?.seconds).toBe(seconds);
    expect(facts?.trouble).toBeUndefined();
  });

  test('how a picture is turned is told, and its pixels are as they are stored', async () => {
    const kept = await sharp(await picture('jpeg'))
      .withMetadata({ orientation: 6 })
      .jpeg()
      .toBuffer();
    expect(await factsOf('a.jpg', kept)).toMatchObject({ orientation: 6, width: 120, height: 80 });
  });

  test('resolution is told where the file tells one', async () => {
    const scan = await sharp(await picture('jpeg'))
      .withMetadata({ density: 300 })
      .jpeg()
      .toBuffer();
    expect((await factsOf('a.jpg', scan))?.dpi).toBe(300);
    expect((await factsOf('a.jpg', await picture('jpeg')))?.dpi).toBeUndefined();
  });

  test('a name that ends with a bracket is no option', async () => {
    expect(await factsOf('copies/ferry [page=2]', await picture('png'))).toMatchObject({ width: 120 });
  });

  test('without a check sum, the rest is there', async () => {
    const folder = await folderWith({ 'a.jpg': await picture('jpeg') });
    const facts = (await gatherCopies(folder, ['a.jpg'], { hash: false })).get('a.jpg');
    expect(facts).toMatchObject({ width: 120 });
    expect(facts).not.toHaveProperty('sha256');
  });

  test('each is asked for once, in the order of the list, and addresses are left out', async () => {
    const folder = await folderWith({ 'b.txt': 'b', 'a.txt': 'a' });
    const steps: string[] = [];
    const named = ['b.txt', 'https://example.org/c.jpg', 'a.txt', 'b.txt'];
    const facts = await gatherCopies(folder, named, { step: (path) => steps.push(path) });
    expect([...facts.keys()]).toEqual(['b.txt', 'a.txt']);
    expect(steps.sort()).toEqual(['a.txt', 'b.txt']);
  });
});

describe('facts are kept for the next time', () => {
  // A file is settled when the slowest clock of a disk has gone on: two seconds, waited once for all.
  const folders: string[] = [];
  beforeAll(async () => {
    for (let count = 0; count < 6; count++) folders.push(await newFolder({ 'a.txt': 'abc', 'b.txt': 'two' }));
    await setTimeout(2100);
  });
  afterAll(() => Promise.all(folders.map((folder) => rm(folder, { recursive: true, force: true }))));
  const settled = () => folders.pop() ?? '';

  test('what was not touched is not read again; what was, is', async () => {
    const folder = settled();
    const first = await gatherCopies(folder, ['a.txt', 'b.txt']);
    // What the file says is believed: a wrong type in it comes back, and so shows that nothing was read.
    const kept = await readFile(join(folder, CACHE), 'utf8');
    await writeFile(join(folder, CACHE), kept.replaceAll('text/plain', 'text/kept'));
    const { mtime } = await stat(join(folder, 'b.txt'));
    await writeFile(join(folder, 'b.txt'), 'TWO');
    // The same size and the same time of change as before: only the system's own note of the change differs.
    await utimes(join(folder, 'b.txt'), mtime, mtime);
    const second = await gatherCopies(folder, ['a.txt', 'b.txt']);
    expect(second.get('a.txt')).toEqual({ ...first.get('a.txt'), mediaType: 'text/kept' });
    expect(second.get('b.txt')?.sha256).toBe(createHash('sha256').update('TWO').digest('hex'));
    expect(second.get('b.txt')?.mediaType).toBe('text/plain');
  });

  test('a file just written is not believed to stay so', async () => {
    const folder = await folderWith({ 'a.txt': 'one' });
    await gatherCopies(folder, ['a.txt']);
    expect(await readdir(folder)).toEqual(['a.txt']);
  });

  test('what was gathered without a check sum is gathered again with one', async () => {
    const folder = settled();
    await gatherCopies(folder, ['a.txt'], { hash: false });
    expect(await readdir(folder)).toContain(CACHE);
    expect((await gatherCopies(folder, ['a.txt'])).get('a.txt')?.sha256).toMatch(/^ba7816bf/);
  });

  test('a file that is gone is missing, and forgotten', async () => {
    const folder = settled();
    await gatherCopies(folder, ['a.txt', 'b.txt']);
    await rm(join(folder, 'a.txt'));
    expect((await gatherCopies(folder, ['a.txt'])).get('a.txt')).toMatchObject({ trouble: 'missing' });
    const kept = await readFile(join(folder, CACHE), 'utf8');
    expect(kept).not.toContain('a.txt');
    expect(kept).toContain('b.txt');
  });

  test.each([
    '',
    '{',
    '[]',
    '{"version":0,"copies":[]}',
    '{"version":1,"copies":[{"facts":{}}]}',
    '{"__proto__":1}',
  ])('a cache that says %s is passed over', async (content) => {
    const folder = await folderWith({ 'a.txt': 'abc', [CACHE]: content });
    expect((await gatherCopies(folder, ['a.txt'])).get('a.txt')?.sha256).toMatch(/^ba7816bf/);
  });

  test('no more open than the list', async () => {
    const folder = settled();
    await writeFile(join(folder, 'list.csv'), 'title\n');
    await chmod(join(folder, 'list.csv'), 0o600);
    await gatherCopies(folder, ['a.txt']);
    expect((await stat(join(folder, CACHE))).mode & 0o777).toBe(0o600);
  });

  test('what is gone is forgotten, and what nobody asked for this time is not', async () => {
    const folder = settled();
    await gatherCopies(folder, ['a.txt']);
    await gatherCopies(folder, ['b.txt']);
    expect(await readFile(join(folder, CACHE), 'utf8')).toMatch(/a\.txt[\s\S]*b\.txt/);
    await rm(join(folder, 'a.txt'));
    await writeFile(join(folder, 'c.txt'), 'c');
    await utimes(join(folder, 'b.txt'), 1, 1);
    await gatherCopies(folder, ['b.txt', 'c.txt']);
    expect(await readFile(join(folder, CACHE), 'utf8')).not.toContain('a.txt');
  });

  test('where nothing can be written, nothing is, and all is read', async () => {
    const folder = settled();
    // A folder in its place cannot be replaced by anybody, whoever runs this test.
    await mkdir(join(folder, CACHE, 'x'), { recursive: true });
    expect((await gatherCopies(folder, ['a.txt'])).get('a.txt')?.sha256).toMatch(/^ba7816bf/);
    expect((await readdir(folder)).sort()).toEqual([CACHE, 'a.txt', 'b.txt']);
    await chmod(folder, 0o555);
    expect((await gatherCopies(folder, ['a.txt'])).get('a.txt')?.sha256).toMatch(/^ba7816bf/);
    await chmod(folder, 0o755);
  });
});

describe('the files that lie among the copies', () => {
  test('all below copies/, and below every folder that the list names one in', async () => {
    const folder = await folderWith({
      'list.csv': 'title\n',
      'copies/b.jpg': 'b',
      'copies/box 1/a.jpg': 'a',
      'copies/.hidden': 'h',
      'copies/Thumbs.db': 't',
      'scans/c.jpg': 'c',
      'private/d.jpg': 'd',
    });
    await symlink('..', join(folder, 'copies/round'));
    expect(await filesBelow(folder)).toEqual(['copies/b.jpg', 'copies/box 1/a.jpg', 'copies/round']);
    expect(await filesBelow(folder, ['scans/x.jpg', 'https://example.org/private/x', 'ferry.jpg'])).toEqual([
      'copies/b.jpg',
      'copies/box 1/a.jpg',
      'copies/round',
      'scans/c.jpg',
    ]);
  });

  test('none where there is no such folder', async () => {
    expect(await filesBelow(await folderWith())).toEqual([]);
  });
});
