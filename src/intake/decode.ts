import { isUtf8 } from 'node:buffer';
import type { Finding } from '../catalogue/finding.ts';

/** Beginnings by which other kinds of file give themselves away (registered with PRONOM and IANA). */
const MAGIC: readonly { bytes: readonly number[]; what: string }[] = [
  { bytes: [0x50, 0x4b, 0x03, 0x04], what: 'a spreadsheet workbook (XLSX or ODS) or another packed file' },
  { bytes: [0xd0, 0xcf, 0x11, 0xe0], what: 'an old workbook (XLS) or another office document' },
  { bytes: [0x25, 0x50, 0x44, 0x46], what: 'a PDF document' },
  { bytes: [0x89, 0x50, 0x4e, 0x47], what: 'a picture (PNG)' },
  { bytes: [0xff, 0xd8, 0xff], what: 'a picture (JPEG)' },
  { bytes: [0x1f, 0x8b], what: 'a packed file (GZIP)' },
];

// A text may hold a stray control character, which is then found with its row and column; a binary file is full of them.
const BINARY_SHARE = 0.01;
// In bytes: as much of the file as is looked at for them.
const SAMPLE = 1 << 16;

/** What came of reading bytes as text: the text, or why it is none. */
type Decoded = { text: string } | { trouble: Finding };

/**
 * Bytes as text: UTF-8 with or without a byte order mark, or UTF-16 with one.
 * @param file the name for messages
 * @param advice how its owner gets a file in UTF-8, as a sentence
 */
export function decodeText(bytes: Uint8Array, file: string, advice: string): Decoded {
  const trouble = (rule: string, found: string, line?: number): Decoded => ({
    trouble: { rule, weight: 'must', place: line === undefined ? { file } : { file, line }, found, advice },
  });
  const magic = MAGIC.find((kind) => kind.bytes.every((byte, at) => bytes[at] === byte));
  if (magic !== undefined) return trouble('file.binary', `This is ${magic.what}, not a text file.`);

  const utf16 = utf16Order(bytes);
  if (utf16 !== undefined) {
    try {
      return { text: new TextDecoder(utf16, { fatal: true }).decode(bytes) };
    } catch {
      return trouble('file.encoding', 'The file begins as text in UTF-16 does, but is not whole.');
    }
  }
  if (mostlyBinary(bytes.subarray(0, SAMPLE))) {
    return trouble('file.binary', 'This is not a text file, or it is one in another encoding than UTF-8.');
  }
  if (!isUtf8(bytes)) {
    const { line, found } = firstBadByte(bytes);
    return trouble('file.encoding', found, line);
  }
  return { text: new TextDecoder().decode(bytes) };
}

/** Which of the two orders of bytes a text in UTF-16 has, by its mark; undefined without one. */
export function utf16Order(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  return bytes[0] === 0xfe && bytes[1] === 0xff ? 'utf-16be' : undefined;
}

function mostlyBinary(bytes: Uint8Array): boolean {
  const controls = bytes.reduce(
    (count, byte) => (byte < 0x09 || (byte > 0x0d && byte < 0x20) ? count + 1 : count),
    0,
  );
  return controls > bytes.length * BINARY_SHARE && controls > 2;
}

/** The first line that is not UTF-8, and how many others there are. No character of UTF-8 spans a line break. */
function firstBadByte(bytes: Uint8Array): { line: number; found: string } {
  let first = '';
  let line = 0;
  let bad = 0;
  for (let start = 0, number = 1; start < bytes.length; number++) {
    const next = bytes.indexOf(0x0a, start);
    const end = next < 0 ? bytes.length : next;
    const here = bytes.subarray(start, end);
    if (!isUtf8(here)) {
      if (bad++ === 0) {
        line = number;
        first = sayBadByte(here);
      }
    }
    start = end + 1;
  }
  const others = bad > 1 ? ` ${bad} lines of the file are not in UTF-8; this is the first.` : '';
  return { line, found: first + others };
}

function sayBadByte(bytes: Uint8Array): string {
  let good = 0;
  let end = bytes.length;
  // The longest part from the start that is UTF-8, save at most three bytes of a character that is cut off.
  while (good < end) {
    const middle = Math.ceil((good + end) / 2);
    if (isUtf8(whole(bytes.subarray(0, middle)))) good = middle;
    else end = middle - 1;
  }
  const complete = whole(bytes.subarray(0, good));
  const before = new TextDecoder().decode(complete);
  const byte = (bytes[complete.length] ?? 0).toString(16).toUpperCase().padStart(2, '0');
  const after = before === '' ? 'at the start of the line' : `after “${before.slice(-30)}”`;
  return `The text is not in UTF-8: the byte ${byte} ${after} is no character.`;
}

/** The bytes without a character that their end cuts off. */
function whole(bytes: Uint8Array): Uint8Array {
  for (let back = 1; back <= 3 && back <= bytes.length; back++) {
    const byte = bytes[bytes.length - back] ?? 0;
    if (byte >= 0xc0) {
      const length = byte >= 0xf0 ? 4 : byte >= 0xe0 ? 3 : 2;
      return length > back ? bytes.subarray(0, bytes.length - back) : bytes;
    }
    if (byte < 0x80) break;
  }
  return bytes;
}
