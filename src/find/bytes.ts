import { crc32 } from 'node:zlib';

/** What an index is read from: a file, or bytes in memory. */
export interface Source {
  /** In bytes. */
  size: number;
  /** @throws IndexBroken where fewer bytes are there */
  read(at: number, length: number): Buffer;
}

/** Thrown where an index is cut off, changed or none at all; it is then made anew. */
export class IndexBroken extends Error {}

/** An index in memory. */
export function sourceOf(bytes: Uint8Array): Source {
  const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length);
  return {
    size: buffer.length,
    read(at, length) {
      if (!(at >= 0 && length >= 0 && at + length <= buffer.length)) throw new IndexBroken();
      return buffer.subarray(at, at + length);
    },
  };
}

/** In bytes: a checksum (CRC-32, little-endian) stands behind each piece that is read by itself. */
export const CHECK = 4;

/** Bytes that are written one after another. */
export interface ByteWriter {
  bytes: Buffer;
  length: number;
}

export const byteWriter = (): ByteWriter => ({ bytes: Buffer.allocUnsafe(1 << 16), length: 0 });

/** What was written. */
export const written = ({ bytes, length }: ByteWriter): Buffer => bytes.subarray(0, length);

/** A whole number from 0 on, seven bits a byte, the lowest first; all but the last byte have the eighth bit set. */
export function writeNumber(to: ByteWriter, value: number): void {
  makeRoom(to, 8);
  let rest = value;
  for (; rest > 0x7f; rest = Math.floor(rest / 128)) to.bytes[to.length++] = (rest % 128) | 0x80;
  to.bytes[to.length++] = rest;
}

/** A text as UTF-8. */
export function writeText(to: ByteWriter, text: string): void {
  makeRoom(to, 3 * text.length);
  to.length += to.bytes.write(text, to.length);
}

/** The checksum of all that was written since. */
export function writeCheck(to: ByteWriter, since: number): void {
  makeRoom(to, CHECK);
  to.length = to.bytes.writeUInt32LE(crc32(to.bytes.subarray(since, to.length)), to.length);
}

function makeRoom(to: ByteWriter, more: number): void {
  if (to.length + more <= to.bytes.length) return;
  const larger = Buffer.allocUnsafe(Math.max(2 * to.bytes.length, to.length + more));
  to.bytes.copy(larger, 0, 0, to.length);
  to.bytes = larger;
}

/** A piece with its checksum behind it. */
export function withCheck(bytes: Uint8Array): Buffer {
  const checked = Buffer.alloc(bytes.length + CHECK);
  checked.set(bytes);
  checked.writeUInt32LE(crc32(bytes), bytes.length);
  return checked;
}

/** The piece without its checksum. @throws IndexBroken where they do not agree */
export function checked(bytes: Buffer): Buffer {
  if (bytes.length < CHECK) throw new IndexBroken();
  const piece = bytes.subarray(0, -CHECK);
  if (crc32(piece) !== bytes.readUInt32LE(piece.length)) throw new IndexBroken();
  return piece;
}

/** A place in some bytes, from which numbers are read one after another. */
export interface ByteReader {
  bytes: Uint8Array;
  at: number;
}

/** The next number that `writeNumber` wrote. @throws IndexBroken behind the end */
export function readNumber(from: ByteReader): number {
  const { bytes } = from;
  let byte = bytes[from.at++] ?? 0x100;
  if (byte < 0x80) return byte;
  let value = byte & 0x7f;
  for (let unit = 128; byte >= 0x80; unit *= 128) {
    byte = bytes[from.at++] ?? 0x100;
    if (byte > 0xff || unit > Number.MAX_SAFE_INTEGER) throw new IndexBroken();
    value += (byte & 0x7f) * unit;
  }
  return value;
}
