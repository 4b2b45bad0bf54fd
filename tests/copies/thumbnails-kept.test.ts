import { createHash } from 'node:crypto';
import { rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { chmod, mkdir, readdir, readFile, rm, stat, symlink, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import fc from 'fast-check';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { thumbnailsOf } from '../../src/copies/thumbnails.ts';
import { drawThumbnail, readThumbnail } from '../../src/copies/thumbnails-draw.ts';
import { built, runAsAnyone } from '../catalogue/own-program.ts';
import { folderWith, latin, picture } from './small-files.ts';

const FOLDER = '.kinfonds-thumbnails';

const nameFor = (content: Buffer) => `${createHash('sha256').update(content).digest('hex')}-1.jpg`;
const keptIn = async (folder: string) => (await readdir(join(folder, FOLDER))).sort();

/** Two pictures that differ, as they lie in a list. */
async function twoPictures() {
  const [river, orchard] = [await picture('png'), await picture('png', { width: 90, height: 90 })];
  const folder = await folderWith({ 'copies/river.png': river, 'copies/orchard.png': orchard });
  return { folder, river, orchard, paths: ['copies/river.png', 'copies/orchard.png'] };
}

const sourceOf = async (folder: string, path: string) =>
  (await thumbnailsOf(folder, [path])).thumbnails.get(path)?.source;

/** A thumbnail of something else, so that what is kept can be told from what is drawn. */
const another = async () =>
  (await drawThumbnail(await picture('jpeg', { width: 50, height: 20 }))) ?? latin('');

/** A picture in red that takes as many bytes as any other such. */
const unpacked = (r: number) =>
  sharp({ create: { width: 9, height: 9, channels: 3, background: { r, g: 0, b: 0 } } })
    .tiff({ compression: 'none' })
    .toBuffer();

describe('thumbnails are kept', () => {
  test('each under the check sum of what it was drawn of', async () => {
    const { folder, river, orchard, paths } = await twoPictures();
    const { thumbnails } = await thumbnailsOf(folder, paths);
    expect(await keptIn(folder)).toEqual([nameFor(river), nameFor(orchard)].sort());
    const kept = await readFile(join(folder, FOLDER, nameFor(river)));
    expect(thumbnails.get('copies/river.png')?.source).toBe(
      `data:image/jpeg;base64,${kept.toString('base64')}`,
    );
  });

  test('where nobody can look who may not read the list', async () => {
    for (const [list, folderMode] of [
      [0o600, 0o700],
      [0o640, 0o750],
    ] as const) {
      const { folder, paths } = await twoPictures();
      await writeFile(join(folder, 'list.csv'), 'title\n');
      await chmod(join(folder, 'list.csv'), list);
      await thumbnailsOf(folder, paths);
      expect((await stat(join(folder, FOLDER))).mode & 0o777).toBe(folderMode);
    }
  });

  test('and not drawn again', async () => {
    const { folder, river, paths } = await twoPictures();
    const first = await thumbnailsOf(folder, paths);
    expect(await thumbnailsOf(folder, paths)).toEqual(first);
    const mark = await another();
    await writeFile(join(folder, FOLDER, nameFor(river)), mark);
    const again = await thumbnailsOf(folder, paths);
    expect(again.thumbnails.get('copies/river.png')).toEqual(readThumbnail(mark));
    expect(again.thumbnails.get('copies/orchard.png')).toEqual(first.thumbnails.get('copies/orchard.png'));
  });

  test('a copy that was changed has a new one, even with its size and time as before', async () => {
    const { folder, paths } = await twoPictures();
    const [path = ''] = paths;
    const [one, other] = [await unpacked(10), await unpacked(250)];
    expect(one.length).toBe(other.length);
    await writeFile(join(folder, path), one);
    const { atime, mtime } = await stat(join(folder, path));
    const before = await sourceOf(folder, path);
    await writeFile(join(folder, path), other);
    await utimes(join(folder, path), atime, mtime);
    const after = await sourceOf(folder, path);
    expect(after).toBeDefined();
    expect(after).not.toBe(before);
    expect(await keptIn(folder)).toEqual([nameFor(other)]);
  });

  test('a copy that was renamed keeps its own', async () => {
    const { folder, river } = await twoPictures();
    await sourceOf(folder, 'copies/river.png');
    const mark = await another();
    await writeFile(join(folder, FOLDER, nameFor(river)), mark);
    await writeFile(join(folder, 'copies/ferry.png'), river);
    expect(await sourceOf(folder, 'copies/ferry.png')).toBe(readThumbnail(mark)?.source);
  });
});

describe('what is needed no longer goes', () => {
  test('but nothing that is no thumbnail, and the folder once it is empty', async () => {
    const { folder, river, paths } = await twoPictures();
    await thumbnailsOf(folder, paths);
    const older = `${'0'.repeat(64)}-0.jpg`;
    await writeFile(join(folder, FOLDER, older), 'drawn in an older way');
    await writeFile(join(folder, FOLDER, 'notes.txt'), 'of the owner');
    await thumbnailsOf(folder, ['copies/river.png']);
    expect(await keptIn(folder)).toEqual([nameFor(river), 'notes.txt'].sort());
    await rm(join(folder, FOLDER, 'notes.txt'));
    await thumbnailsOf(folder, []);
    expect(await readdir(folder)).not.toContain(FOLDER);
  });
});

describe('what is kept is not trusted', () => {
  const broken: [string, (good: Buffer) => Buffer | Promise<Buffer>][] = [
    ['empty', () => latin('')],
    ['cut', (good) => good.subarray(0, good.length - 10)],
    ['another format', () => picture('png')],
    [
      'far too large',
      (good) => Buffer.concat([good.subarray(0, -2), Buffer.alloc(1 << 18), latin('\xFF\xD9')]),
    ],
    [
      'too many pixels',
      () =>
        sharp(Buffer.alloc(300 * 300), { raw: { width: 300, height: 300, channels: 1 } })
          .jpeg()
          .toBuffer(),
    ],
    // A comment, ITU-T T.81, B.2.4.5.
    [
      'with a comment',
      (good) => Buffer.concat([good.subarray(0, 2), latin('\xFF\xFE\0\x05Ada'), good.subarray(2)]),
    ],
    [
      'with Exif',
      (good) =>
        sharp(good)
          .withExif({ IFD0: { Artist: 'Ada' } })
          .jpeg()
          .toBuffer(),
    ],
    ['progressive', (good) => sharp(good).jpeg({ progressive: true }).toBuffer()],
  ];
  test.each(broken)('%s: it is drawn again and put right', async (_, spoil) => {
    const { folder, river } = await twoPictures();
    const first = await sourceOf(folder, 'copies/river.png');
    const file = join(folder, FOLDER, nameFor(river));
    const good = await readFile(file);
    await writeFile(file, await spoil(good));
    expect(await sourceOf(folder, 'copies/river.png')).toBe(first);
    expect(await readFile(file)).toEqual(good);
  });

  test('a link in its place: what it leads to is neither shown nor written to', async () => {
    const { folder, river } = await twoPictures();
    const first = await sourceOf(folder, 'copies/river.png');
    const mark = await another();
    const outside = join(await folderWith({ 'a.jpg': mark }), 'a.jpg');
    const file = join(folder, FOLDER, nameFor(river));
    await rm(file);
    await symlink(outside, file);
    expect(await sourceOf(folder, 'copies/river.png')).toBe(first);
    expect(await readFile(outside)).toEqual(mark);
  });

  test('property: bytes of any kind are a thumbnail or none', async () => {
    const good = await another();
    expect(readThumbnail(good)).toMatchObject({ width: 50, height: 20 });
    const bytes = fc.uint8Array({ maxLength: 60 });
    fc.assert(
      fc.property(fc.nat({ max: good.length }), bytes, bytes, (at, within, behind) => {
        const spoiled = Buffer.concat([good.subarray(0, at), within, good.subarray(at), behind]);
        for (const content of [Buffer.from(within), spoiled]) {
          const { width = 1, height = 1 } = readThumbnail(content) ?? {};
          for (const side of [width, height]) expect(side > 0 && side <= 240).toBe(true);
        }
      }),
    );
  });
});

describe('they are there where none can be kept', () => {
  test('something else stands in the place of the folder', async () => {
    const { folder } = await twoPictures();
    await writeFile(join(folder, FOLDER), 'of the owner');
    expect(await sourceOf(folder, 'copies/river.png')).toBeDefined();
    expect(await readFile(join(folder, FOLDER), 'utf8')).toBe('of the owner');
  });

  test('a link stands there: nothing is written or swept where it leads', async () => {
    const { folder } = await twoPictures();
    const name = `${'0'.repeat(64)}-1.jpg`;
    const outside = await folderWith({ [name]: 'of somebody' });
    await symlink(outside, join(folder, FOLDER));
    expect(await sourceOf(folder, 'copies/river.png')).toBeDefined();
    expect(await readdir(outside)).toEqual([name]);
  });

  test('a folder stands in the place of a file', async () => {
    const { folder, river } = await twoPictures();
    await mkdir(join(folder, FOLDER, nameFor(river), 'x'), { recursive: true });
    expect(await sourceOf(folder, 'copies/river.png')).toBeDefined();
    expect(await sourceOf(folder, 'copies/orchard.png')).toBeDefined();
  });

  test('the catalogue may only be read', async () => {
    const { folder, paths } = await twoPictures();
    await chmod(folder, 0o555);
    const files = await readdir(folder);
    const printed = runAsAnyone(`const { thumbnailsOf } = await import(${built('copies/thumbnails.js')});
      const { thumbnails, troubles } = await thumbnailsOf(${JSON.stringify(folder)}, ${JSON.stringify(paths)});
      console.log(JSON.stringify([[...thumbnails.keys()], troubles]));`);
    await chmod(folder, 0o755);
    expect(printed).toBe(`${JSON.stringify([paths, []])}\n`);
    expect(await readdir(folder)).toEqual(files);
  });
});

describe('a copy that is exchanged in the very moment between', () => {
  test.each(['another content', 'a link that leads out', 'nothing'])('for %s, is not drawn', async (what) => {
    // Of the same size, so that only the check sum can tell.
    const [before, exchanged] = [await unpacked(10), await unpacked(250)];
    const folder = await folderWith({ 'river.tif': before });
    const file = join(folder, 'river.tif');
    const outside = join(await folderWith({ 'a.tif': exchanged }), 'a.tif');
    let isFirst = true;
    const step = () => {
      if (!isFirst) return;
      isFirst = false;
      rmSync(file);
      if (what === 'another content') writeFileSync(file, exchanged);
      else if (what !== 'nothing') symlinkSync(outside, file);
    };
    const { thumbnails, troubles } = await thumbnailsOf(folder, ['river.tif'], { step });
    expect(thumbnails.size).toBe(0);
    expect(troubles).toEqual([{ path: 'river.tif', trouble: 'not drawn' }]);
    expect(await readdir(folder)).not.toContain(FOLDER);
  });
});

test('two that run at the same time do not harm each other', async () => {
  const { folder, paths } = await twoPictures();
  const [one, other] = await Promise.all([thumbnailsOf(folder, paths), thumbnailsOf(folder, paths)]);
  expect(one.thumbnails.size).toBe(2);
  expect(other).toEqual(one);
  expect(await thumbnailsOf(folder, paths)).toEqual(one);
});
