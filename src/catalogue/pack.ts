import { crc32, deflateRawSync } from 'node:zlib';

// PKWARE APPNOTE 6.3.10, 4.3: version 2.0, names in UTF-8 (bit 11), packed with deflate.
const VERSION = 20;
const UTF_8 = 0x0800;
const DEFLATED = 8;
// 1980-01-01, the first day that the format knows: the same content gives the same bytes.
const DAY = 0x0021;

/** Packs parts into one file (ZIP), in their order. */
export function pack(parts: readonly (readonly [name: string, content: string])[]): Uint8Array {
  const files: Buffer[] = [];
  const directory: Buffer[] = [];
  let at = 0;
  for (const [name, content] of parts) {
    const plain = Buffer.from(content);
    const packed = deflateRawSync(plain);
    const path = Buffer.from(name);
    const about = Buffer.alloc(26);
    about.writeUInt16LE(VERSION, 0);
    about.writeUInt16LE(UTF_8, 2);
    about.writeUInt16LE(DEFLATED, 4);
    about.writeUInt16LE(DAY, 8);
    about.writeUInt32LE(crc32(plain), 10);
    about.writeUInt32LE(packed.length, 14);
    about.writeUInt32LE(plain.length, 18);
    about.writeUInt16LE(path.length, 22);
    files.push(Buffer.from('PK\u0003\u0004', 'latin1'), about, path, packed);
    const where = Buffer.alloc(14);
    where.writeUInt32LE(at, 10);
    const made = Buffer.alloc(2);
    made.writeUInt16LE(VERSION, 0);
    directory.push(Buffer.from('PK\u0001\u0002', 'latin1'), made, about, where, path);
    at += 4 + about.length + path.length + packed.length;
  }
  const entries = Buffer.concat(directory);
  const end = Buffer.alloc(18);
  end.writeUInt16LE(parts.length, 4);
  end.writeUInt16LE(parts.length, 6);
  end.writeUInt32LE(entries.length, 8);
  end.writeUInt32LE(at, 12);
  return Buffer.concat([...files, entries, Buffer.from('PK\u0005\u0006', 'latin1'), end]);
}
