import { extname } from 'node:path';
import { nameKey } from './same-name.ts';

/**
 * In bytes of UTF-8. Disks allow 255, encrypted folders 143, and Windows 260 characters for a whole path (from memory);
 * this leaves room for the folders above and for a number at the end.
 */
const LONGEST = 120;
const LONGEST_EXTENSION = 16;

/** Microsoft, Naming Files, Paths, and Namespaces (from memory): devices, whatever the extension. */
const DEVICE = /^(?:con|prn|aux|nul|conin\$|conout\$|(?:com|lpt)[0-9¹²³])$/i;

/** What Windows refuses in names; the per cent sign, which BagIt encodes and some checkers then do not find. */
const FORBIDDEN = /[<>:"/\\|?*%]+/g;

/** C0 and C1 controls, line and paragraph separators, controls of direction (UAX 9), byte order mark, and no character at all. */
const UNSEEN = /[\p{Cc}\u2028\u2029\u200E\u200F\u202A-\u202E\u2066-\u2069\uFEFF\p{Cs}\p{Cn}]+/gu;

const letters = new Intl.Segmenter('en', { granularity: 'grapheme' });

/**
 * A name for a file that is as close to its own as can be and survives on any system. It never names a folder, and is
 * another, even on systems that fold case or accents, than every name given before in that folder.
 * @param taken keys of the names given in that folder; that of the new one is added
 */
export function safeName(name: string, taken: Set<string>): string {
  const plain = name
    .normalize('NFC')
    .replace(UNSEEN, ' ')
    .replace(FORBIDDEN, '-')
    .replace(/\s+/g, ' ')
    // Windows drops dots and blanks at the end; a dot before hides a file, a tilde or hyphen means something to programs.
    .replace(/^[ .~-]+|[ .]+$/g, '');
  const extension = extensionOf(plain);
  const stem = plain.slice(0, plain.length - extension.length).replace(/[ .]+$/, '');
  const whole = stem === '' ? 'unnamed' : DEVICE.test(stem.replace(/[ .].*$/, '')) ? `_${stem}` : stem;
  for (let copy = 1; ; copy++) {
    const number = copy === 1 ? '' : `-${copy}`;
    const room = LONGEST - Buffer.byteLength(extension) - number.length;
    const safe = `${cut(whole, room)}${number}${extension}`;
    const key = nameKey(safe);
    if (taken.has(key)) continue;
    taken.add(key);
    return safe;
  }
}

/** What stands behind the last dot, if that looks like the extension of a file. */
function extensionOf(name: string): string {
  const extension = extname(`x${name}`);
  const isOne = /^\.[\p{L}\p{N}_-]+$/u.test(extension) && Buffer.byteLength(extension) <= LONGEST_EXTENSION;
  return isOne ? extension : '';
}

/** As many whole letters as fit into so many bytes; a letter may be made of several characters. */
function cut(text: string, bytes: number): string {
  if (Buffer.byteLength(text) <= bytes) return text;
  let kept = '';
  for (const { segment } of letters.segment(text)) {
    if (Buffer.byteLength(kept) + Buffer.byteLength(segment) > bytes) break;
    kept += segment;
  }
  // A single letter may carry any number of accents.
  return kept.replace(/[ .]+$/, '') || 'unnamed';
}
