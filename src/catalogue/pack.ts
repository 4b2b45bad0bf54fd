import { crc32 } from 'node:zlib';
import { directoryEnd, directoryEntry, fileHeader, type ZipEntry } from './zip-records.ts';

/** Packs parts into one file (ZIP), in their order and as they are: they are small. */
export function pack(parts: readonly (readonly [name: string, content: string])[]): Uint8Array {
  const pieces: Buffer[] = [];
  const entries: ZipEntry[] = [];
  let at = 0;
  for (const [name, content] of parts) {
    const bytes = Buffer.from(content);
    const entry = { name: Buffer.from(name), size: bytes.length, crc32: crc32(bytes), at };
    const header = fileHeader(entry);
    entries.push(entry);
    pieces.push(header, bytes);
    at += header.length + bytes.length;
  }
  const directory = Buffer.concat(entries.map(directoryEntry));
  return Buffer.concat([...pieces, directory, directoryEnd(entries.length, at, directory.length)]);
}
