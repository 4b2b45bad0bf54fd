import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import sharp, { type Exif } from 'sharp';
import { onTestFinished } from 'vitest';
import type { Bytes } from '../../src/copies/bytes.ts';

/** A folder with some files in it, that is gone when the test has ended. */
export async function folderWith(files: Record<string, string | Uint8Array> = {}): Promise<string> {
  const folder = await newFolder(files);
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  return folder;
}

/** A folder with some files in it, for the caller to take away. */
export async function newFolder(files: Record<string, string | Uint8Array>): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'copies-'));
  for (const [path, content] of Object.entries(files)) {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeFile(join(folder, path), content);
  }
  return folder;
}

/** Bytes written as Latin-1. */
export const latin = (text: string): Buffer => Buffer.from(text, 'latin1');

/** Something to read a piece at a time. */
export const bytesOf = (content: Buffer): Bytes => ({
  size: content.length,
  read: async (at, length) => content.subarray(at, at + length),
});

type Picture = 'jpeg' | 'png' | 'tiff' | 'webp' | 'gif' | 'avif';

/** A picture of no subject, in which no two neighbouring pixels are quite alike, so that it does not shrink to nothing. */
export function picture(
  format: Picture,
  { width = 120, height = 80, exif }: { width?: number; height?: number; exif?: Exif } = {},
): Promise<Buffer> {
  const pixels = Buffer.alloc(width * height * 3).map((_, at) => (at * at) % 251);
  const made = sharp(pixels, { raw: { width, height, channels: 3 } });
  return (exif === undefined ? made : made.withExif(exif))[format]().toBuffer();
}

/** The place of a landing on an invented river, as a telephone notes it. */
export const GPS: Exif = {
  IFD3: {
    GPSLatitudeRef: 'N',
    GPSLatitude: '51/1 30/1 3230/100',
    GPSLongitudeRef: 'W',
    GPSLongitude: '0/1 7/1 1/1',
  },
};

const u16 = (n: number) => Buffer.from([n & 255, n >> 8]);
const u32 = (n: number) => {
  const four = Buffer.alloc(4);
  four.writeUInt32LE(n);
  return four;
};
const b32 = (n: number) => u32(n).reverse();

/** A WAV file of 8-bit silence, so that a byte is a sample; RFC 2361 for the layout of the format chunk. */
export function wav(samples: number, rate: number, { before = latin(''), size = samples } = {}): Buffer {
  const format = Buffer.concat([
    latin('fmt '),
    u32(16),
    u16(1),
    u16(1),
    u32(rate),
    u32(rate),
    u16(1),
    u16(8),
  ]);
  const data = Buffer.concat([latin('data'), u32(size), Buffer.alloc(samples, 128)]);
  const body = Buffer.concat([latin('WAVE'), before, format, data]);
  return Buffer.concat([latin('RIFF'), u32(body.length), body]);
}

/** The same with the lengths in 64 bits, as EBU Tech 3306 has it. */
export function rf64(samples: number, rate: number): Buffer {
  const u64 = (n: number) => Buffer.concat([u32(n), u32(0)]);
  const ds64 = Buffer.concat([latin('ds64'), u32(28), u64(0), u64(samples), u64(samples), u32(0)]);
  const small = wav(samples, rate, { before: ds64, size: 0xffffffff });
  return Buffer.concat([latin('RF64'), u32(0xffffffff), small.subarray(8)]);
}

/** A box of ISO/IEC 14496-12. */
export const box = (name: string, ...content: Buffer[]): Buffer => {
  const inside = Buffer.concat(content);
  return Buffer.concat([b32(8 + inside.length), latin(name), inside]);
};

/** A film that holds nothing but the boxes that it must have. */
export const film = (brand: string, moov: Buffer = Buffer.alloc(16)): Buffer =>
  Buffer.concat([
    box('ftyp', latin(brand), b32(0), latin('isom')),
    box('mdat', Buffer.alloc(64)),
    box('moov', moov),
  ]);

/** The header of a JPEG 2000 file (ISO/IEC 15444-1, annex I), without any picture. */
export const jp2 = (width: number, height: number): Buffer =>
  Buffer.concat([
    box('jP  ', latin('\r\n\x87\n')),
    box('ftyp', latin('jp2 '), b32(0), latin('jp2 ')),
    box('jp2h', box('ihdr', b32(height), b32(width), Buffer.alloc(6))),
    box('jp2c', Buffer.alloc(32)),
  ]);

/** The headers of a BMP file; `height` may be negative. */
export const bmp = (width: number, height: number): Buffer => {
  const info = Buffer.alloc(40);
  info.writeUInt32LE(40);
  info.writeInt32LE(width, 4);
  info.writeInt32LE(height, 8);
  return Buffer.concat([latin('BM'), u32(54), u32(0), u32(54), info]);
};

/** A zip archive with one entry, stored as it is, and an end without a directory: enough to be known by. */
export const zip = (name: string, content: string, more: string[] = []): Buffer => {
  const entry = (called: string, held: string) =>
    Buffer.concat([
      ...[latin('PK\x03\x04'), u16(20), u16(0), u16(0), u32(0), u32(0), u32(held.length), u32(held.length)],
      ...[u16(called.length), u16(0), latin(called), latin(held)],
    ]);
  const end = Buffer.concat([latin('PK\x05\x06'), Buffer.alloc(18)]);
  return Buffer.concat([entry(name, content), ...more.map((each) => entry(each, '')), end]);
};

/** A big-endian TIFF file of one grey strip, whose directory stands before its pixels (TIFF 6.0, section 2). */
export function tiffBigEndian(width: number, height: number): Buffer {
  const [SHORT, LONG] = [3, 4];
  const rows: [tag: number, type: number, value: number][] = [
    ...([
      [256, SHORT, width],
      [257, SHORT, height],
      [258, SHORT, 8],
      [259, SHORT, 1],
    ] as [number, number, number][]),
    ...([
      [262, SHORT, 1],
      [273, LONG, 200],
      [278, SHORT, height],
      [279, LONG, width * height],
    ] as [number, number, number][]),
  ];
  const file = Buffer.alloc(200 + width * height);
  file.write('MM\0*', 0, 'latin1');
  file.writeUInt32BE(8, 4);
  file.writeUInt16BE(rows.length, 8);
  rows.forEach(([tag, type, value], at) => {
    const entry = 10 + 12 * at;
    file.writeUInt16BE(tag, entry);
    file.writeUInt16BE(type, entry + 2);
    file.writeUInt32BE(1, entry + 4);
    if (type === SHORT) file.writeUInt16BE(value, entry + 8);
    else file.writeUInt32BE(value, entry + 8);
  });
  return file;
}

/** A PDF document in the least that its readers ask for, without any page. */
export const PDF = latin(
  '%PDF-1.4\n1 0 obj\n<< /Type /Catalog >>\nendobj\ntrailer\n<< /Root 1 0 R >>\nstartxref\n0\n%%EOF\n',
);
