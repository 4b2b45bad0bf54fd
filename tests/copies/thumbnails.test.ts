import { readFile, symlink } from 'node:fs/promises';
import { join } from 'node:path';
import { crc32, deflateSync } from 'node:zlib';
import fc from 'fast-check';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { type Thumbnail, thumbnailsOf } from '../../src/copies/thumbnails.ts';
import { drawThumbnail, readThumbnail } from '../../src/copies/thumbnails-draw.ts';
import { film, folderWith, GPS, latin, PDF, picture } from './small-files.ts';

type Rgb = readonly [number, number, number];

const plain = ([r, g, b]: Rgb, width = 300, height = 200) =>
  sharp({ create: { width, height, channels: 3, background: { r, g, b } } });

/** The thumbnails of some files, and what is wrong. */
const ofFiles = async (files: Record<string, string | Uint8Array>) =>
  thumbnailsOf(await folderWith(files), Object.keys(files));

async function thumbnailOf(content: Uint8Array, name = 'copies/a'): Promise<Thumbnail> {
  const { thumbnails, troubles } = await ofFiles({ [name]: content });
  expect(troubles).toEqual([]);
  const found = thumbnails.get(name);
  if (found === undefined) throw new Error('There is no thumbnail.');
  return found;
}

const jpegOf = ({ source }: Thumbnail): Buffer => {
  expect(source).toMatch(/^data:image\/jpeg;base64,[A-Za-z0-9+/]+=*$/);
  return Buffer.from(source.slice(source.indexOf(',') + 1), 'base64');
};

/** The colour of a thumbnail at a place that is told in parts of its width and height. */
async function colourAt(thumbnail: Thumbnail, across = 0.5, down = 0.5): Promise<Rgb> {
  const { data, info } = await sharp(jpegOf(thumbnail)).raw().toBuffer({ resolveWithObject: true });
  const pixel = Math.floor(down * info.height) * info.width + Math.floor(across * info.width);
  const [r = -1, g = -1, b = -1] = data.subarray(pixel * info.channels);
  return [r, g, b];
}

function expectNear(found: Rgb, wanted: Rgb, within: number) {
  const furthest = Math.max(...found.map((value, at) => Math.abs(value - (wanted[at] ?? -1))));
  expect(furthest, `${found} instead of ${wanted}`).toBeLessThanOrEqual(within);
}

const ORANGE: Rgb = [200, 100, 50];

describe('a thumbnail is drawn', () => {
  // 300 by 200 with the long side at 240.
  test.each(['jpeg', 'png', 'tiff', 'webp', 'gif', 'avif'] as const)('from %s', async (format) => {
    const thumbnail = await thumbnailOf(await plain(ORANGE).toFormat(format).toBuffer());
    expect([thumbnail.width, thumbnail.height]).toEqual([240, 160]);
    expect(await sharp(jpegOf(thumbnail)).metadata()).toMatchObject({ width: 240, height: 160 });
    expectNear(await colourAt(thumbnail), ORANGE, 6);
  });

  test.each([
    [40, 30, 40, 30],
    [200, 300, 160, 240],
    [5000, 2, 240, 1],
    [1, 1, 1, 1],
  ])('%i by %i as %i by %i: never larger than the copy', async (width, height, ...size) => {
    const thumbnail = await thumbnailOf(await plain(ORANGE, width, height).png().toBuffer());
    expect([thumbnail.width, thumbnail.height]).toEqual(size);
  });

  test.each(['a[1].jpg', 'a[page=1]', 'Grüße 2.jpg', 'line\nbreak.jpg'])(
    'under the name %j',
    async (name) => {
      await thumbnailOf(await picture('jpeg'), name);
    },
  );

  test('as a baseline JPEG', async () => {
    const content = await plain(ORANGE).jpeg({ progressive: true }).toBuffer();
    expect((await sharp(content).metadata()).isProgressive).toBe(true);
    expect((await sharp(jpegOf(await thumbnailOf(content))).metadata()).isProgressive).toBe(false);
  });

  test('with the same bytes for the same content, wherever it lies', async () => {
    const content = await picture('jpeg', { width: 900, height: 700 });
    expect(await thumbnailOf(content, 'b.jpg')).toEqual(await thumbnailOf(content, 'copies/a.jpg'));
  });

  test('of few kilobytes, and hardly to be told from the copy at that size', async () => {
    const folder = 'examples/quill-ferry';
    const names = 'account-book-1919 ferry-at-landing-1911 hester-quill-portrait-1887 orchard-old-rows-1927';
    for (const name of names.split(' ')) {
      const path = join(folder, 'copies', `${name}.jpg`);
      const jpeg = (await drawThumbnail(await readFile(path))) ?? latin('');
      expect(jpeg.length).toBeLessThan(8000);
      const thumbnail = await sharp(jpeg).raw().toBuffer();
      const wanted = await sharp(path).resize(240, 240, { fit: 'inside' }).raw().toBuffer();
      const squares = wanted.reduce((sum, value, at) => sum + (value - (thumbnail[at] ?? 0)) ** 2, 0);
      // From 30 dB on a JPEG is commonly called good (from memory).
      expect(10 * Math.log10(255 ** 2 / (squares / wanted.length))).toBeGreaterThan(30);
    }
  });
});

describe('colours', () => {
  const grey = (depth: 'uchar' | 'ushort', channels: 1 | 3, value: number) =>
    sharp(
      depth === 'uchar'
        ? new Uint8Array(9600 * channels).fill(value)
        : new Uint16Array(9600 * channels).fill(value),
      { raw: { width: 120, height: 80, channels } },
    );
  const clear = (alpha: number) =>
    sharp({ create: { width: 90, height: 90, channels: 4, background: { r: 0, g: 0, b: 0, alpha } } });
  const GREY: Rgb = [128, 128, 128];
  const WHITE: Rgb = [255, 255, 255];

  test.each<[string, () => Promise<Buffer>, Rgb, number]>([
    ['grey', () => grey('uchar', 1, 128).toColourspace('b-w').jpeg().toBuffer(), GREY, 3],
    // Half of 65,535 is half of 255.
    ['16 bits of grey', () => grey('ushort', 1, 32_768).toColourspace('grey16').png().toBuffer(), GREY, 3],
    [
      '16 bits of colour',
      () => grey('ushort', 3, 32_768).toColourspace('rgb16').tiff({ compression: 'lzw' }).toBuffer(),
      GREY,
      3,
    ],
    [
      'black and white by fax',
      () =>
        grey('uchar', 1, 255).toColourspace('b-w').tiff({ bitdepth: 1, compression: 'ccittfax4' }).toBuffer(),
      WHITE,
      1,
    ],
    ['a palette', () => plain(ORANGE).png({ palette: true }).toBuffer(), ORANGE, 6],
    ['CIELAB', () => plain(ORANGE).toColourspace('lab').tiff().toBuffer(), ORANGE, 6],
    // Ink cannot print every colour, so that it comes back only nearly the same.
    ['ink (CMYK) in JPEG', () => plain(ORANGE).toColourspace('cmyk').jpeg().toBuffer(), ORANGE, 32],
    ['ink (CMYK) in TIFF', () => plain(ORANGE).toColourspace('cmyk').tiff().toBuffer(), ORANGE, 32],
    ['no ink', () => plain(WHITE).toColourspace('cmyk').jpeg().toBuffer(), WHITE, 3],
    ['nothing, on white', () => clear(0).png().toBuffer(), WHITE, 1],
    ['half of black, on white', () => clear(0.5).webp({ lossless: true }).toBuffer(), GREY, 3],
  ])('%s', async (_, make, wanted, within) => {
    expectNear(await colourAt(await thumbnailOf(await make())), wanted, within);
  });

  test('of a wider space are brought into that of the web', async () => {
    const content = await plain(ORANGE).withIccProfile('p3').png().toBuffer();
    const [r = 0, g = 0, b = 0] = await sharp(content).keepIccProfile().raw().toBuffer();
    // What is stored is another triple, which would be shown as a duller colour.
    expect(Math.max(Math.abs(r - 200), Math.abs(g - 100), Math.abs(b - 50))).toBeGreaterThan(8);
    expectNear(await colourAt(await thumbnailOf(content)), ORANGE, 5);
  });
});

/** Exif 2.32, 4.6.4, tag Orientation: on which side the stored first row, and first column, is to be seen. */
const SIDES = [
  ['top', 'left'],
  ['top', 'right'],
  ['bottom', 'right'],
  ['bottom', 'left'],
  ['left', 'top'],
  ['right', 'top'],
  ['right', 'bottom'],
  ['left', 'bottom'],
] as const;

describe('a thumbnail stands upright', () => {
  const stored = async (orientation: number, format: 'jpeg' | 'png' | 'tiff' | 'webp') => {
    const [red, blue] = [await plain([200, 0, 0], 60, 40).png().toBuffer(), plain([0, 0, 200], 120, 80)];
    const made = blue.composite([{ input: red, left: 0, top: 0 }]);
    return made.withMetadata({ orientation }).toFormat(format).toBuffer();
  };

  test.each([
    ...SIDES.map((_, at) => [at + 1, 'jpeg'] as const),
    [6, 'png'] as const,
    [8, 'tiff'] as const,
    [6, 'webp'] as const,
  ])('orientation %i of %s', async (orientation, format) => {
    const content = await stored(orientation, format);
    expect((await sharp(content).metadata()).orientation).toBe(orientation);
    const thumbnail = await thumbnailOf(content);
    const sides: readonly string[] = SIDES[orientation - 1] ?? [];
    expect([thumbnail.width, thumbnail.height]).toEqual(orientation < 5 ? [120, 80] : [80, 120]);
    // The red quarter lies where the first row and the first column meet.
    for (const across of ['left', 'right'])
      for (const down of ['top', 'bottom']) {
        const colour = await colourAt(thumbnail, across === 'left' ? 0.2 : 0.8, down === 'top' ? 0.2 : 0.8);
        const isRed = sides.includes(across) && sides.includes(down);
        expectNear(colour, isRed ? [200, 0, 0] : [0, 0, 200], 12);
      }
  });
});

describe('nothing but the picture is handed on', () => {
  const XMP =
    '<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description rdf:about="" exif:GPSLatitude="51,30.5N" xmlns:exif="http://ns.adobe.com/exif/1.0/"/></rdf:RDF></x:xmpmeta>';

  test.each(['jpeg', 'png', 'tiff', 'webp'] as const)('of %s', async (format) => {
    const content = await plain(ORANGE)
      .withExif({ ...GPS, IFD0: { Artist: 'Ada Quill' } })
      .withXmp(XMP)
      .withIccProfile('p3')
      .toFormat(format)
      .toBuffer();
    const before = await sharp(content).metadata();
    // TIFF has its Exif among its own tags.
    const blocks = format === 'tiff' ? [] : [before.exif];
    for (const block of [...blocks, before.xmp, before.icc]) expect(block?.length).toBeGreaterThan(100);
    const jpeg = jpegOf(await thumbnailOf(content));
    const { exif, xmp, icc, iptc, tifftagPhotoshop, comments, orientation } = await sharp(jpeg).metadata();
    for (const block of [exif, xmp, icc, iptc, tifftagPhotoshop, comments, orientation])
      expect(block).toBeUndefined();
    // ITU-T T.81, table B.1: application segments and comments, wherever they stand before the scan.
    const head = jpeg.subarray(0, jpeg.indexOf(Buffer.from([0xff, 0xda]))).toString('latin1');
    expect(head).not.toMatch(/\xFF[\xE0-\xEF\xFE]/);
  });
});

describe('of several pictures the first', () => {
  const animated = (format: 'gif' | 'webp' | 'tiff') => async () => {
    const frames = await Promise.all(
      [ORANGE, [0, 0, 255] as const].map((rgb) => plain(rgb).png().toBuffer()),
    );
    return sharp(frames, { join: { animated: true } })
      .toFormat(format)
      .toBuffer();
  };
  test.each(['gif', 'webp', 'tiff'] as const)('%s', async (format) => {
    const content = await animated(format)();
    expect((await sharp(content).metadata()).pages).toBe(2);
    const thumbnail = await thumbnailOf(content);
    expect([thumbnail.width, thumbnail.height]).toEqual([240, 160]);
    expectNear(await colourAt(thumbnail), ORANGE, 6);
  });
});

const b32 = (n: number) => {
  const four = Buffer.alloc(4);
  four.writeUInt32BE(n);
  return four;
};

/** A PNG file that says it has so many pixels, with the chunks as W3C, Portable Network Graphics, 5.3 has them. */
function png(width: number, height: number, data: Buffer): Buffer {
  const chunk = (name: string, content: Buffer) => {
    const named = Buffer.concat([latin(name), content]);
    return Buffer.concat([b32(content.length), named, b32(crc32(named))]);
  };
  const header = Buffer.concat([b32(width), b32(height), Buffer.from([8, 0, 0, 0, 0])]);
  return Buffer.concat([
    latin('\x89PNG\r\n\x1A\n'),
    ...[chunk('IHDR', header), chunk('IDAT', data), chunk('IEND', latin(''))],
  ]);
}

describe('there is no thumbnail, and no error', () => {
  const SMALL = deflateSync(Buffer.alloc(11 * 10));

  test('of more pixels than are safe', async () => {
    expect((await ofFiles({ 'a.png': png(10, 10, SMALL) })).troubles).toEqual([]);
    expect((await ofFiles({ 'a.png': png(20_000, 20_000, SMALL) })).troubles).toEqual([
      { path: 'a.png', trouble: 'too large' },
    ]);
  });

  test('of what is damaged', async () => {
    const jpeg = await picture('jpeg');
    const { thumbnails, troubles } = await ofFiles({
      'cut.jpg': jpeg.subarray(0, jpeg.length / 2),
      'whole.jpg': jpeg,
      'empty.jpg': '',
      'broken within.png': png(10, 10, Buffer.from('not packed at all')),
    });
    expect([...thumbnails.keys()]).toEqual(['whole.jpg']);
    expect(troubles).toEqual([
      { path: 'cut.jpg', trouble: 'damaged' },
      { path: 'empty.jpg', trouble: 'empty' },
      { path: 'broken within.png', trouble: 'not drawn' },
    ]);
  });

  test('of what is no picture, is one of a kind that is not drawn, or lies on the web', async () => {
    const files = {
      'a.pdf': PDF,
      'a.txt': 'Dear Ada',
      'a.svg': '<svg xmlns="http://www.w3.org/2000/svg"><image href="a.txt"/></svg>',
      'cut.mp4': film('isom').subarray(0, 60),
    };
    const folder = await folderWith(files);
    const paths = [...Object.keys(files), 'https://example.org/a.jpg'];
    const { thumbnails, troubles } = await thumbnailsOf(folder, paths);
    expect([...thumbnails.keys()]).toEqual([]);
    expect(troubles).toEqual([]);
  });

  test('of what is not there, and of what lies outside the folder', async () => {
    const outside = await folderWith({ 'a.jpg': await picture('jpeg') });
    const folder = await folderWith({ 'copies/b.txt': 'b' });
    await symlink(outside, join(folder, 'copies/out'));
    const { thumbnails, troubles } = await thumbnailsOf(folder, ['copies/out/a.jpg', 'copies/none.jpg']);
    expect(thumbnails.size).toBe(0);
    expect(troubles).toEqual([
      { path: 'copies/out/a.jpg', trouble: 'leads out' },
      { path: 'copies/none.jpg', trouble: 'missing' },
    ]);
  });

  test('property: whatever has become of the bytes', async () => {
    const wholes = await Promise.all(
      (['jpeg', 'png', 'tiff', 'webp', 'gif'] as const).map((f) => picture(f)),
    );
    const edits = fc.array(fc.tuple(fc.nat(), fc.nat({ max: 255 })), { minLength: 1, maxLength: 20 });
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...wholes), edits, async (whole, bytes) => {
        const content = Buffer.from(whole);
        for (const [at, byte] of bytes) content[at % content.length] = byte;
        const jpeg = await drawThumbnail(content);
        // A damaged picture may still be drawn; what comes of it is a thumbnail like any other.
        if (jpeg !== undefined) expect(readThumbnail(jpeg)).toBeDefined();
      }),
      { numRuns: 150 },
    );
  });
});

test('they come in the order of the list, and a step is told twice for each', async () => {
  const content = await picture('jpeg');
  const files = { 'c.jpg': await picture('png'), 'a.jpg': content, 'x.pdf': PDF, 'b.jpg': content };
  const steps: string[] = [];
  const paths = [...Object.keys(files), 'c.jpg'];
  const { thumbnails } = await thumbnailsOf(await folderWith(files), paths, {
    step: (path) => steps.push(path),
  });
  expect([...thumbnails.keys()]).toEqual(['c.jpg', 'a.jpg', 'b.jpg']);
  expect(thumbnails.get('b.jpg')).toEqual(thumbnails.get('a.jpg'));
  expect(steps.sort()).toEqual(['a.jpg', 'a.jpg', 'b.jpg', 'b.jpg', 'c.jpg', 'c.jpg', 'x.pdf', 'x.pdf']);
});
