import { readOds } from './ods.ts';
import { refuse } from './refuse.ts';
import type { Sheet } from './sheet.ts';
import { unpack } from './unpack.ts';
import { readXlsx } from './xlsx.ts';

const PACKED = [0x50, 0x4b, 0x03, 0x04];
// [MS-CFB] 2.2: the old kind of workbook, and the box in which a new one is locked with a password.
const COMPOUND = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];
const LOCKED = Buffer.from('EncryptedPackage', 'utf16le');

/**
 * Reads the sheets of a workbook in XLSX or ODS, whichever it is by its content. Nothing in it is carried out, and
 * nothing is fetched.
 * @throws CatalogueError where it is neither, is not whole, is locked, or holds more than any list needs
 */
export function readWorkbook(bytes: Uint8Array, file: string): Sheet[] {
  const begins = (magic: readonly number[]) => magic.every((byte, at) => bytes[at] === byte);
  if (begins(COMPOUND)) {
    const locked = Buffer.from(bytes).includes(LOCKED);
    const found = locked
      ? 'The workbook is locked with a password.'
      : 'This is an old workbook (XLS) or another office document.';
    return refuse(locked ? 'workbook.locked' : 'workbook.old', file, found);
  }
  if (!begins(PACKED)) return notPacked(bytes, file);
  const packed = unpack(bytes, file);
  return packed.names.has('content.xml') ? readOds(packed, file) : readXlsx(packed, file);
}

function notPacked(bytes: Uint8Array, file: string): never {
  if (bytes.length === 0) return refuse('list.empty', file, 'The file is empty.');
  const isText = bytes.subarray(0, 4096).every((byte) => byte >= 0x20 || (byte >= 0x09 && byte <= 0x0d));
  const advice = 'If it is a list in comma-separated values, give it the name list.csv.';
  return isText
    ? refuse('workbook.text', file, 'The file has the name of a workbook, but it is a text.', advice)
    : refuse(
        'workbook.unknown',
        file,
        'The file is no workbook in XLSX or ODS, or its beginning is missing.',
      );
}
