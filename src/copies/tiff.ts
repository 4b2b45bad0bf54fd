import type { Bytes } from './bytes.ts';

/** A broken file may point in a circle, or say that it has a million pictures. */
const MOST_DIRECTORIES = 10_000;
const MOST_STRIPS = 1 << 20;

// TIFF 6.0, section 2: the types that offsets and counts may have, and their sizes in bytes; LONG8 is of BigTIFF.
const SIZES = new Map([
  [3, 2],
  [4, 4],
  [16, 8],
]);
// TIFF 6.0, section 8 and section 15: StripOffsets and StripByteCounts; TileOffsets and TileByteCounts.
const PARTS = [
  [273, 279],
  [324, 325],
] as const;

/** How numbers are laid out in this file. */
interface Layout {
  number(bytes: Buffer, at: number, size: number): number;
  big: boolean;
}

/** Whether all parts of all pictures of a TIFF file lie within it: TIFF 6.0, section 2; BigTIFF from memory. */
export async function isWholeTiff(bytes: Bytes): Promise<boolean> {
  const head = await bytes.read(0, 16);
  const little = head.toString('latin1', 0, 2) === 'II';
  const number = (buffer: Buffer, at: number, size: number) => {
    if (at + size > buffer.length) return Number.NaN;
    if (size === 8) return Number(little ? buffer.readBigUInt64LE(at) : buffer.readBigUInt64BE(at));
    return little ? buffer.readUIntLE(at, size) : buffer.readUIntBE(at, size);
  };
  const layout: Layout = { number, big: number(head, 2, 2) === 43 };
  let at = layout.big ? number(head, 8, 8) : number(head, 4, 4);
  const seen = new Set<number>();
  while (at !== 0 && !seen.has(at) && seen.size < MOST_DIRECTORIES) {
    seen.add(at);
    const next = await directory(bytes, at, layout);
    if (next === undefined) return false;
    at = next;
  }
  return seen.size > 0;
}

/** Where the next directory stands (0 after the last), or undefined where this one or its picture is not all there. */
async function directory(bytes: Bytes, at: number, layout: Layout): Promise<number | undefined> {
  const { big, number } = layout;
  const [countSize, entrySize, offsetSize] = big ? [8, 20, 8] : [2, 12, 4];
  if (!(at + countSize <= bytes.size)) return undefined;
  const count = number(await bytes.read(at, countSize), 0, countSize);
  const length = count * entrySize;
  if (!(at + countSize + length + offsetSize <= bytes.size) || count > 65_535) return undefined;
  const table = await bytes.read(at + countSize, length + offsetSize);

  const values = async (tag: number): Promise<number[] | undefined> => {
    for (let entry = 0; entry < length; entry += entrySize) {
      if (number(table, entry, 2) !== tag) continue;
      const size = SIZES.get(number(table, entry + 2, 2));
      const many = number(table, entry + 4, offsetSize);
      if (size === undefined || many > MOST_STRIPS) return [];
      const inline = entry + 4 + offsetSize;
      if (many * size <= offsetSize)
        return Array.from({ length: many }, (_, i) => number(table, inline + i * size, size));
      const there = number(table, inline, offsetSize);
      if (!(there + many * size <= bytes.size)) return undefined;
      const list = await bytes.read(there, many * size);
      return Array.from({ length: many }, (_, i) => number(list, i * size, size));
    }
    return [];
  };

  for (const [offsets, counts] of PARTS) {
    const [from, lengths] = [await values(offsets), await values(counts)];
    if (from === undefined || lengths === undefined) return undefined;
    if (from.some((start, part) => !(start + (lengths[part] ?? 0) <= bytes.size))) return undefined;
  }
  return number(table, length, offsetSize);
}
