import { spawnSync } from 'node:child_process';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { identify } from '../../src/copies/identify.ts';
import { extensionOf, MEDIA_TYPES } from '../../src/copies/media-types.ts';
import {
  bmp,
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

const ODT = 'application/vnd.oasis.opendocument.text';
const DOCX = 'application/vnd.openxmlformats-officedocument.wordprocessingml.document';
const MAIL =
  'From: ada@example.org\r\nDate: Sat, 4 Jul 1998 10:00:00 +0000\r\nSubject: The ferry\r\n\r\nIt runs.\r\n';

/** Small files whose type is known by how they were made, and what the program "file" calls it where it agrees. */
const MADE: readonly [
  name: string,
  type: string,
  content: () => Buffer | Promise<Buffer>,
  file?: string | false,
][] = [
  ['a.jpg', 'image/jpeg', () => picture('jpeg')],
  ['a.png', 'image/png', () => picture('png')],
  ['a.tif', 'image/tiff', () => picture('tiff')],
  ['big-endian.tif', 'image/tiff', () => tiffBigEndian(4, 4)],
  ['big.tif', 'image/tiff', () => latin(`II+\0\x08\0\0\0\x10\0\0\0\0\0\0\0${'\0'.repeat(16)}`)],
  ['a.webp', 'image/webp', () => picture('webp')],
  ['a.gif', 'image/gif', () => picture('gif')],
  ['a.avif', 'image/avif', () => picture('avif')],
  ['a.bmp', 'image/bmp', () => bmp(4, 4), false],
  ['a.jp2', 'image/jp2', () => jp2(4, 4)],
  ['a.heic', 'image/heic', () => film('heic')],
  ['b.heic', 'image/heic', () => latin('\0\0\0\x18ftypmif1\0\0\0\0mif1heic'), false],
  ['b.avif', 'image/avif', () => latin('\0\0\0\x18ftypmif1\0\0\0\0mif1avif'), false],
  ['a.wav', 'audio/vnd.wave', () => wav(100, 8000), 'audio/x-wav'],
  ['a.rf64', 'audio/vnd.wave', () => rf64(100, 8000), false],
  ['a.mp4', 'video/mp4', () => film('isom')],
  ['a.mov', 'video/quicktime', () => film('qt  ')],
  ['a.m4a', 'audio/mp4', () => film('M4A '), 'audio/x-m4a'],
  [
    'id3.mp3',
    'audio/mpeg',
    () => latin(`ID3\x03\0\0\0\0\0\x0A${'\0'.repeat(10)}\xFF\xFB\x90\x64${'\0'.repeat(413)}`),
  ],
  [
    'bare.mp3',
    'audio/mpeg',
    () => latin(`\xFF\xFB\x90\x64${'\0'.repeat(413)}\xFF\xFB\x90\x64${'\0'.repeat(413)}`),
  ],
  ['a.flac', 'audio/flac', () => latin(`fLaC\0\0\0\x22${'\0'.repeat(34)}`), false],
  ['a.ogg', 'application/ogg', () => latin(`OggS\0\x02${'\0'.repeat(20)}\x01\x1E\x01vorbis`), false],
  ['a.avi', 'video/vnd.avi', () => latin('RIFF\x10\0\0\0AVI LIST\x04\0\0\0hdrl'), 'video/x-msvideo'],
  ['a.mkv', 'video/matroska', () => latin('\x1A\x45\xDF\xA3\x8B\x42\x82\x88matroska'), 'video/x-matroska'],
  ['a.webm', 'video/webm', () => latin('\x1A\x45\xDF\xA3\x87\x42\x82\x84webm')],
  ['a.pdf', 'application/pdf', () => PDF],
  ['a.rtf', 'application/rtf', () => latin('{\\rtf1\\ansi The ferry.}'), 'text/rtf'],
  ['a.odt', ODT, () => zip('mimetype', ODT)],
  ['a.docx', DOCX, () => zip('[Content_Types].xml', '<Types/>', ['_rels/.rels', 'word/document.xml'])],
  ['a.zip', 'application/zip', () => zip('ferry.txt', 'The ferry.')],
  ['a.doc', 'application/msword', () => latin(`\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1${'\0'.repeat(600)}`), false],
  ['a.eml', 'message/rfc822', () => latin(MAIL)],
  [
    'a.mbox',
    'application/mbox',
    () => latin(`From ada@example.org Sat Jul  4 10:00:00 1998\n${MAIL}`),
    false,
  ],
  ['a.html', 'text/html', () => latin('\n<!DOCTYPE html>\n<html><title>Ferry</title></html>\n')],
  [
    'a.svg',
    'image/svg+xml',
    () => latin('<?xml version="1.0"?>\n<svg xmlns="http://www.w3.org/2000/svg"/>\n'),
  ],
  ['a.txt', 'text/plain', () => Buffer.from('Kjære farmor. It is a very wide river.\n')],
  ['latin-1.txt', 'text/plain', () => latin('Kj\xE6re farmor. It is a very wide river.\n')],
  ['utf-16.txt', 'text/plain', () => Buffer.from('\uFEFFKjære farmor, it is wide.\n', 'utf16le')],
  ['a.csv', 'text/plain', () => latin('title,date\nFerry,1911\n'), false],
];

describe('a type is told by the content', () => {
  test.each(MADE)('%s is %s', async (name, type, content) => {
    expect(identify(await content(), name)).toBe(type);
  });

  test.each(MADE.filter(([, type]) => type !== 'application/msword'))(
    '%s is so without its name, too',
    async (_, type, content) => {
      expect(identify(await content(), 'x')).toBe(type);
    },
  );

  test('a beginning cut short is of no type, or a text', async () => {
    for (const [name, , content] of MADE) {
      const whole = await content();
      for (let length = 0; length < 16; length++)
        expect(() => identify(whole.subarray(0, length), name)).not.toThrow();
    }
    expect(identify(Buffer.alloc(0), 'a.jpg')).toBeUndefined();
    expect(identify(Buffer.alloc(4096), 'a.jpg')).toBeUndefined();
  });

  test.each([
    ['a raw photograph in TIFF', 'a.nef', latin('MM\0*\0\0\0\x08'), 'image/x-nikon-nef'],
    ['the same under another name', 'a.tif', latin('MM\0*\0\0\0\x08'), 'image/tiff'],
    [
      'a table of an old office program',
      'a.xls',
      latin('\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1'),
      'application/vnd.ms-excel',
    ],
    ['a web page saved as a picture', 'a.jpg', latin('<html><body>Not found</body></html>'), 'text/html'],
    ['a note on a car', 'a.bmp', latin('BMW, blue, 1961, sold for scrap'), 'text/plain'],
    ['UTF-16, which begins almost like sound', 'a.mp3', Buffer.from('\uFEFFferry', 'utf16le'), 'text/plain'],
  ])('%s', (_, name, content, type) => {
    expect(identify(content, name)).toBe(type);
  });
});

const hasFile = spawnSync('file', ['--version'], { stdio: 'ignore' }).error === undefined;
if (!hasFile)
  process.stderr.write('Left out: a second opinion on media types: the program file is missing.\n');

describe.skipIf(!hasFile && process.env.CI !== 'true')('the program "file" is of the same opinion', () => {
  // Its names differ for some types, and some of these files are too small for it; both are written beside them.
  test.each(MADE.filter(([, , , file]) => file !== false))('%s is %s', async (name, type, content, file) => {
    const folder = await folderWith();
    await writeFile(join(folder, name), await content());
    const { stdout } = spawnSync('file', ['--brief', '--mime-type', join(folder, name)], {
      encoding: 'utf8',
    });
    expect(stdout.trim()).toBe(file ?? type);
  });
});

describe('the table of media types', () => {
  test('each type has one row, a name, an ending and a source', () => {
    const types = MEDIA_TYPES.map(({ type }) => type);
    expect(new Set(types).size).toBe(types.length);
    for (const { type, name, extensions, source } of MEDIA_TYPES) {
      expect(type).toMatch(/^(?:image|audio|video|text|message|application)\/[a-z0-9.+-]+$/);
      expect([name, source, ...extensions].filter((text) => text.trim() === '')).toEqual([]);
      expect(extensions.length).toBeGreaterThan(0);
      expect(extensions.map((ending) => extensionOf(`a.${ending}`))).toEqual(extensions);
    }
  });

  test('what a type is inside of is a type', () => {
    const types = new Set(MEDIA_TYPES.map(({ type }) => type));
    expect(MEDIA_TYPES.filter(({ inside }) => inside !== undefined && !types.has(inside))).toEqual([]);
  });

  test.each([
    ['copies/a.JPG', 'jpg'],
    ['copies/a.tar.gz', 'gz'],
    ['copies/box 1.2/ferry', ''],
    ['copies/.hidden', ''],
    ['copies/Mr. Pell at the ferry', ''],
  ])('the ending of %s is "%s"', (path, ending) => {
    expect(extensionOf(path)).toBe(ending);
  });
});
