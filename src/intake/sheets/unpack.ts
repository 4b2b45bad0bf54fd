import { crc32, inflateRawSync } from 'node:zlib';
import { MOST, refuse, refuseSize } from './refuse.ts';

/** A packed file (ZIP) from which parts are unpacked one by one, when they are asked for. */
export interface Packed {
  names: ReadonlySet<string>;
  /** The bytes of a part, undefined where there is none of that name. */
  part(name: string): Uint8Array | undefined;
}

// PKWARE APPNOTE 6.3.10: signatures and positions of 4.3.7 (before a part), 4.3.12 (directory) and 4.3.16 (its end).
const LOCAL = { signature: 0x04034b50, length: 30 };
const ENTRY = { signature: 0x02014b50, length: 46 };
const END = { signature: 0x06054b50, length: 22 };
const LONGEST_COMMENT = 0xffff;
const MOST_PARTS = 10_000;
const STORED = 0;
const DEFLATED = 8;

interface Entry {
  method: number;
  encrypted: boolean;
  packed: number;
  unpacked: number;
  crc: number;
  at: number;
}

/**
 * Reads the directory of a packed file. Its sizes are only claims: what a part unpacks to is cut off at what the
 * directory claims for it, and the claims of the parts that are read may not add up to more than `MOST.bytes`. The
 * inflating is Node's own (zlib), with an end set to its output, so nothing can unpack beyond that.
 * @throws CatalogueError where the file is not whole, is locked, or holds more than is read
 */
export function unpack(bytes: Uint8Array, file: string): Packed {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const entries = directory(view, bytes, file);
  let read = 0;
  const part = (name: string): Uint8Array | undefined => {
    const entry = entries.get(name);
    if (entry === undefined) return undefined;
    if (entry.encrypted) return refuse('workbook.locked', file, 'The workbook is locked with a password.');
    read += entry.unpacked;
    if (read > MOST.bytes) return refuseSize(file, `unpacks to over ${MOST.bytes / 1e6} megabytes`);
    return contentOf(view, bytes, entry, file, name);
  };
  return { names: new Set(entries.keys()), part };
}

function notWhole(file: string, what = 'its end is missing'): never {
  return refuse('workbook.broken', file, `The file is not whole (${what}).`);
}

function directory(view: DataView, bytes: Uint8Array, file: string): Map<string, Entry> {
  let end = bytes.length - END.length;
  const first = Math.max(0, end - LONGEST_COMMENT);
  while (end >= first && view.getUint32(end, true) !== END.signature) end--;
  if (end < first) return notWhole(file);
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  // All ones stand for a number that is kept elsewhere because it is too large (4.4.1.4).
  if (count === 0xffff || at === 0xffffffff || count > MOST_PARTS)
    return refuseSize(
      file,
      `holds ${count === 0xffff ? 'over 65,000' : count} parts or lies beyond 4 gigabytes`,
    );
  const entries = new Map<string, Entry>();
  for (let index = 0; index < count; index++) {
    if (at + ENTRY.length > bytes.length || view.getUint32(at, true) !== ENTRY.signature)
      return notWhole(file, 'its directory breaks off');
    const nameLength = view.getUint16(at + 28, true);
    const name = new TextDecoder().decode(bytes.subarray(at + ENTRY.length, at + ENTRY.length + nameLength));
    if (!entries.has(name))
      entries.set(name, {
        encrypted: (view.getUint16(at + 8, true) & 1) === 1,
        method: view.getUint16(at + 10, true),
        packed: view.getUint32(at + 20, true),
        unpacked: view.getUint32(at + 24, true),
        crc: view.getUint32(at + 16, true),
        at: view.getUint32(at + 42, true),
      });
    at += ENTRY.length + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return entries;
}

function contentOf(view: DataView, bytes: Uint8Array, entry: Entry, file: string, name: string): Uint8Array {
  const { at, packed, unpacked, crc, method } = entry;
  if (at + LOCAL.length > bytes.length || view.getUint32(at, true) !== LOCAL.signature)
    return notWhole(file, `its part ${name} is not where it should be`);
  const start = at + LOCAL.length + view.getUint16(at + 26, true) + view.getUint16(at + 28, true);
  const content = bytes.subarray(start, start + packed);
  if (content.length !== packed) return notWhole(file, `its part ${name} breaks off`);
  if (method === STORED)
    return crc32(content) === crc ? content : notWhole(file, `its part ${name} is damaged`);
  if (method !== DEFLATED)
    return refuse(
      'workbook.broken',
      file,
      `Its part ${name} is packed in a way that is not known (${method}).`,
    );
  const damaged = () => notWhole(file, `its part ${name} is damaged`);
  try {
    const whole = inflateRawSync(content, { maxOutputLength: Math.max(1, unpacked) });
    return whole.length === unpacked && crc32(whole) === crc ? whole : damaged();
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ERR_BUFFER_TOO_LARGE')
      return refuse('workbook.broken', file, `Its part ${name} unpacks to more than the file says of it.`);
    return damaged();
  }
}
