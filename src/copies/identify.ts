import type { Mark, MediaType } from './media-type.ts';
import { extensionOf, MEDIA_TYPES, typesNamed } from './media-types.ts';
import { textType } from './text-types.ts';

/** As much of a file as is needed to tell its type, in bytes. */
export const HEAD = 4096;

/**
 * The media type of a file by its content; the ending of its name only tells apart what is wrapped alike.
 * @param head its first `HEAD` bytes, or all of a shorter one
 * @returns a `type` of the table, or undefined where the content is of none of them
 */
export function identify(head: Buffer, path: string): string | undefined {
  const found = byBrand(head) ?? MEDIA_TYPES.find((row) => beginsSo(row, head))?.type;
  const type = found ?? mpegAudio(head) ?? textType(head);
  if (type === undefined) return undefined;
  return typesNamed(extensionOf(path)).find(({ inside }) => inside === type)?.type ?? type;
}

const stands = (head: Buffer, [at, bytes]: Mark) => head.toString('latin1', at, at + bytes.length) === bytes;

function beginsSo({ begins = [], holds = [] }: MediaType, head: Buffer): boolean {
  return (
    begins.some((marks) => marks.every((mark) => stands(head, mark))) &&
    holds.every((letters) => head.includes(letters))
  );
}

// What these say, that a file follows the rules for pictures, is true of several types.
const UNTELLING = new Set(['mif1', 'msf1']);

/** ISO/IEC 14496-12, 4.3: the size of the box, `ftyp`, the major brand, a version, then the compatible brands. */
function byBrand(head: Buffer): string | undefined {
  if (!stands(head, [4, 'ftyp'])) return undefined;
  const box = head.toString('latin1', 8, Math.min(head.readUInt32BE(0), head.length));
  const brands = (box.match(/.{4}/gs) ?? []).filter((_, at) => at !== 1);
  const telling = brands.filter((brand) => !UNTELLING.has(brand));
  for (const brand of [...telling, ...brands]) {
    const row = MEDIA_TYPES.find((type) => type.brands?.includes(brand));
    if (row !== undefined) return row.type;
  }
  return undefined;
}

/** ISO/IEC 11172-3, 2.4.1.3: eleven bits set, then a version, a layer, a bit rate and a sampling rate that exist. */
function mpegAudio(head: Buffer): string | undefined {
  if (head.length < 4 || head[0] !== 0xff) return undefined;
  const [second = 0, third = 0] = [head[1], head[2]];
  const layer = (second >> 1) & 3;
  const exists =
    (second & 0xe0) === 0xe0 &&
    ((second >> 3) & 3) !== 1 &&
    // Layers III and II. The mark of UTF-16 would be layer I, which nobody kept music in.
    (layer === 1 || layer === 2) &&
    third >> 4 !== 15 &&
    third >> 4 !== 0 &&
    ((third >> 2) & 3) !== 3;
  return exists ? 'audio/mpeg' : undefined;
}
