import { type Bytes, holds } from './bytes.ts';
import { boxes, riffChunks } from './chunks.ts';
import { mediaTypeOf } from './media-types.ts';
import { isWholeTiff } from './tiff.ts';

type Check = (bytes: Bytes) => Promise<boolean>;

/** How the end of a file of each type is known. What is not here cannot be told without reading all of it. */
const CHECKS: Readonly<Record<string, Check>> = {
  'image/jpeg': isWholeJpeg,
  // W3C, Portable Network Graphics, 11.2.5: the chunk IEND is empty, so its check sum is always the same.
  'image/png': (bytes) => holds(bytes, 'IEND\xAE\x42\x60\x82', 8),
  'image/tiff': isWholeTiff,
  'image/x-canon-cr2': isWholeTiff,
  'image/webp': isWholeRiff,
  'video/vnd.avi': isWholeRiff,
  'audio/vnd.wave': isWholeWav,
  'image/avif': areWholeBoxes,
  'image/heic': areWholeBoxes,
  'image/jp2': areWholeBoxes,
  'image/x-canon-cr3': areWholeBoxes,
  'audio/mp4': isWholeFilm,
  'video/mp4': isWholeFilm,
  'video/3gpp': isWholeFilm,
  'video/quicktime': isWholeFilm,
  // ISO 32000-1, 7.5.5; that it may stand anywhere in the last 1024 bytes is what readers allow (from memory).
  'application/pdf': (bytes) => holds(bytes, '%%EOF', Math.max(0, bytes.size - 1024)),
  'application/zip': isWholeZip,
};

const ZIPPED = /opendocument|openxmlformats|epub\+zip/;

/** Whether a file has its end. True as well where that cannot be told. */
export async function isWhole(bytes: Bytes, type: string): Promise<boolean> {
  const wrapper = ZIPPED.test(type) ? 'application/zip' : mediaTypeOf(type)?.inside;
  const check = CHECKS[type] ?? CHECKS[wrapper ?? ''];
  return check === undefined || (await check(bytes));
}

/**
 * ITU-T T.81, B.1 and B.2: segments with their lengths up to the scan (SOS), then the scan, in which every FF is followed
 * by 00 or a restart marker, up to the marker EOI. The picture for the index has an EOI of its own, within a segment.
 */
async function isWholeJpeg(bytes: Bytes): Promise<boolean> {
  let at = 2;
  for (let segments = 0; segments < 10_000; segments++) {
    const head = await bytes.read(at, 4);
    if (head.length < 4 || head[0] !== 0xff) return false;
    const marker = head[1];
    if (marker === 0xff) at += 1;
    else if (marker === 0xda) return holds(bytes, '\xFF\xD9', at + 2 + head.readUInt16BE(2));
    else at += 2 + Math.max(2, head.readUInt16BE(2));
  }
  return false;
}

/** ISO/IEC 21320-1: the end of the central directory has 22 bytes, and behind it a comment of at most 65,535. */
async function isWholeZip(bytes: Bytes): Promise<boolean> {
  const end = await bytes.read(Math.max(0, bytes.size - 65_557), 65_557);
  const at = end.lastIndexOf('PK\x05\x06');
  return at >= 0 && at + 22 <= end.length && at + 22 + end.readUInt16LE(at + 20) <= end.length;
}

/** The size in the header counts from behind itself. None, or the highest, was never filled in: nothing can be told. */
async function isWholeRiff(bytes: Bytes): Promise<boolean> {
  const head = await bytes.read(0, 8);
  if (head.length < 8) return false;
  const size = head.readUInt32LE(4);
  return size === 0 || size === 0xffffffff || size + 8 <= bytes.size;
}

/** Only the data counts: behind it, programs hang on what they like. */
async function isWholeWav(bytes: Bytes): Promise<boolean> {
  const data = (await riffChunks(bytes)).find(({ name }) => name === 'data');
  return (await isWholeRiff(bytes)) && data !== undefined && data.at + data.length <= bytes.size;
}

async function areWholeBoxes(bytes: Bytes): Promise<boolean> {
  const last = (await boxes(bytes)).at(-1);
  return last !== undefined && last.at + last.length <= bytes.size;
}

/** A film without its table of contents (`moov`) cannot be played: the recording was cut off. */
async function isWholeFilm(bytes: Bytes): Promise<boolean> {
  return (await areWholeBoxes(bytes)) && (await boxes(bytes)).some(({ name }) => name === 'moov');
}
