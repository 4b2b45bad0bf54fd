/** A file in a ZIP file. Sizes and places are in bytes. */
export interface ZipEntry {
  /** In UTF-8. */
  name: Buffer;
  size: number;
  crc32: number;
  /** Where its header begins. */
  at: number;
}

/** Where the CRC-32 stands in the header of a file. */
export const CRC_AT = 14;

// APPNOTE.TXT 6.3, ZIP File Format Specification: the values below are of its sections 4.3 to 4.5.
const FULL_16 = 0xffff;
const FULL_32 = 0xffffffff;
const VERSION = { plain: 10, zip64: 45 };
const UNIX = 3 << 8;
const UTF8_NAMES = 1 << 11;
/** The first of January 1980, the earliest there is: the same files give the same bytes on any day, in any time zone. */
const DAY = 0x0021;
const PLAIN_FILE = 0o100644;

/** 4.3.7, the header before the bytes of a file, which follow as they are. */
export function fileHeader({ name, size, crc32 }: ZipEntry): Buffer {
  const extra = size >= FULL_32 ? zip64Extra([size, size]) : Buffer.alloc(0);
  const header = Buffer.alloc(30);
  header.writeUInt32LE(0x04034b50, 0);
  writeCommon(header, 4, { name, size, crc32, extra });
  return Buffer.concat([header, name, extra]);
}

/** 4.3.12, what stands about a file in the directory at the end. */
export function directoryEntry({ name, size, crc32, at }: ZipEntry): Buffer {
  const large = [...(size >= FULL_32 ? [size, size] : []), ...(at >= FULL_32 ? [at] : [])];
  const extra = large.length > 0 ? zip64Extra(large) : Buffer.alloc(0);
  const entry = Buffer.alloc(46);
  entry.writeUInt32LE(0x02014b50, 0);
  entry.writeUInt16LE(UNIX | VERSION.zip64, 4);
  writeCommon(entry, 6, { name, size, crc32, extra });
  entry.writeUInt32LE(PLAIN_FILE * 0x10000, 38);
  entry.writeUInt32LE(Math.min(at, FULL_32), 42);
  return Buffer.concat([entry, name, extra]);
}

function writeCommon(
  into: Buffer,
  at: number,
  { name, size, crc32, extra }: Omit<ZipEntry, 'at'> & { extra: Buffer },
): void {
  into.writeUInt16LE(extra.length > 0 ? VERSION.zip64 : VERSION.plain, at);
  into.writeUInt16LE(UTF8_NAMES, at + 2);
  into.writeUInt16LE(DAY, at + 8);
  into.writeUInt32LE(crc32, at + 10);
  into.writeUInt32LE(Math.min(size, FULL_32), at + 14);
  into.writeUInt32LE(Math.min(size, FULL_32), at + 18);
  into.writeUInt16LE(name.length, at + 22);
  into.writeUInt16LE(extra.length, at + 24);
}

/** 4.5.3, the numbers that do not fit into their fields. */
function zip64Extra(numbers: readonly number[]): Buffer {
  const extra = Buffer.alloc(4 + 8 * numbers.length);
  extra.writeUInt16LE(1, 0);
  extra.writeUInt16LE(8 * numbers.length, 2);
  numbers.forEach((number, place) => {
    extra.writeBigUInt64LE(BigInt(number), 4 + 8 * place);
  });
  return extra;
}

/** 4.3.14 to 4.3.16, the end of the directory. */
export function directoryEnd(files: number, at: number, length: number): Buffer {
  const end = Buffer.alloc(22);
  end.writeUInt32LE(0x06054b50, 0);
  end.writeUInt16LE(Math.min(files, FULL_16), 8);
  end.writeUInt16LE(Math.min(files, FULL_16), 10);
  end.writeUInt32LE(Math.min(length, FULL_32), 12);
  end.writeUInt32LE(Math.min(at, FULL_32), 16);
  if (files < FULL_16 && at < FULL_32 && length < FULL_32) return end;
  const large = Buffer.alloc(56);
  large.writeUInt32LE(0x06064b50, 0);
  large.writeBigUInt64LE(44n, 4);
  large.writeUInt16LE(UNIX | VERSION.zip64, 12);
  large.writeUInt16LE(VERSION.zip64, 14);
  large.writeBigUInt64LE(BigInt(files), 24);
  large.writeBigUInt64LE(BigInt(files), 32);
  large.writeBigUInt64LE(BigInt(length), 40);
  large.writeBigUInt64LE(BigInt(at), 48);
  const where = Buffer.alloc(20);
  where.writeUInt32LE(0x07064b50, 0);
  where.writeBigUInt64LE(BigInt(at + length), 8);
  where.writeUInt32LE(1, 16);
  return Buffer.concat([large, where, end]);
}
