import type { Bytes } from './bytes.ts';

/** A named part of a file that is made of such: where its content begins, and how long it says it is, in bytes. */
interface Chunk {
  name: string;
  at: number;
  length: number;
}

/** Nobody makes more; a broken file may. */
const MOST_CHUNKS = 100_000;

/** The size that says "see elsewhere" or "not known when this was written": EBU Tech 3306, and common practice. */
const UNKNOWN = 0xffffffff;

/**
 * The chunks of a WAV file: RIFF, or RF64, where chunk `ds64` holds the true length of the data (EBU Tech 3306, 3).
 * Where the length of the data was never written, it reaches to the end of the file.
 */
export async function riffChunks(bytes: Bytes): Promise<Chunk[]> {
  const chunks: Chunk[] = [];
  let dataLength: number | undefined;
  for (let at = 12; at + 8 <= bytes.size && chunks.length < MOST_CHUNKS; ) {
    const head = await bytes.read(at, 8);
    const name = head.toString('latin1', 0, 4);
    let length = head.readUInt32LE(4);
    if (name === 'ds64' && length >= 16 && at + 24 <= bytes.size)
      dataLength = Number((await bytes.read(at + 16, 8)).readBigUInt64LE(0));
    if (length === UNKNOWN) length = dataLength ?? bytes.size - at - 8;
    chunks.push({ name, at: at + 8, length });
    // Each begins at an even place.
    at += 8 + length + (length % 2);
  }
  return chunks;
}

/** The outermost boxes of an ISO base media file: ISO/IEC 14496-12, 4.2. */
export async function boxes(bytes: Bytes): Promise<Chunk[]> {
  const found: Chunk[] = [];
  for (let at = 0; at + 8 <= bytes.size && found.length < MOST_CHUNKS; ) {
    const head = await bytes.read(at, 16);
    const name = head.toString('latin1', 4, 8);
    const written = head.readUInt32BE(0);
    // 1: the size follows in eight bytes; 0: to the end of the file.
    const isLong = written === 1 && head.length === 16;
    const size = isLong ? Number(head.readBigUInt64BE(8)) : written === 0 ? bytes.size - at : written;
    const start = isLong ? 16 : 8;
    // What is no box is something that a program has hung on behind the last.
    if (size < start || !/^[\x20-\x7E\xA9]{4}$/.test(name)) break;
    found.push({ name, at: at + start, length: size - start });
    at += size;
  }
  return found;
}
