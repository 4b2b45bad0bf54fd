import { isUtf8 } from 'node:buffer';
import type { Encoding } from '../catalogue/list-settings.ts';

/**
 * The signs of Windows-1252 from byte 80 to 9F (WHATWG Encoding Standard, index windows-1252). The decoders of some
 * releases of Node take that encoding for ISO-8859-1, which has control characters there.
 */
const WINDOWS_1252 =
  '\u20AC\u0081\u201A\u0192\u201E\u2026\u2020\u2021\u02C6\u2030\u0160\u2039\u0152\u008D\u017D\u008F' +
  '\u0090\u2018\u2019\u201C\u201D\u2022\u2013\u2014\u02DC\u2122\u0161\u203A\u0153\u009D\u017E\u0178';

/** How to name them to a person. */
export const NAMES: Readonly<Record<Encoding, string>> = {
  'utf-8': 'UTF-8',
  'utf-16le': 'UTF-16',
  'utf-16be': 'UTF-16',
  'windows-1252': 'Windows-1252',
  'mac-roman': 'Mac Roman',
};

/** Bytes as text; undefined where they cannot be in that encoding. A byte order mark is taken away. */
export function decodeAs(bytes: Uint8Array, encoding: Encoding): string | undefined {
  if (encoding === 'windows-1252') {
    const latin = Buffer.from(bytes).toString('latin1');
    return latin.replace(/[\u0080-\u009F]/g, (sign) => WINDOWS_1252.charAt(sign.charCodeAt(0) - 0x80));
  }
  try {
    const label = encoding === 'mac-roman' ? 'macintosh' : encoding;
    return new TextDecoder(label, { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

// In bytes: as much as is looked at.
const SAMPLE = 1 << 16;

/**
 * The encoding of a text that is neither marked nor in UTF-8: UTF-16 by its zeros (every second byte of Latin letters),
 * else Windows-1252 or Mac Roman, whichever makes letters in words, and marks around them, of the bytes above 127.
 * Undefined where the bytes do not tell: where some of them make sense in UTF-8, or where neither encoding makes any,
 * or both make the same sense of another text.
 */
export function recogniseEncoding(bytes: Uint8Array): Encoding | undefined {
  const utf16 = byZeros(bytes.subarray(0, SAMPLE));
  if (utf16 !== undefined) return decodeAs(bytes, utf16) === undefined ? undefined : utf16;
  if (bytes.includes(0) || hasUtf8(bytes)) return undefined;
  const inWindows = decodeAs(bytes, 'windows-1252') ?? '';
  const inMac = decodeAs(bytes, 'mac-roman') ?? '';
  const [windows, mac] = [likeWords(inWindows), likeWords(inMac)];
  if (Math.max(windows, mac) <= 0) return undefined;
  // The sign of the pound is the same byte in both.
  if (inWindows === inMac) return 'windows-1252';
  if (windows === mac) return undefined;
  return windows > mac ? 'windows-1252' : 'mac-roman';
}

function byZeros(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | undefined {
  if (bytes.length < 8 || bytes.length % 2 === 1) return undefined;
  const zeros = [0, 0];
  for (let at = 0; at < bytes.length; at++) if (bytes[at] === 0) zeros[at % 2] = (zeros[at % 2] ?? 0) + 1;
  const [even = 0, odd = 0] = zeros;
  const half = bytes.length / 2;
  if (odd > half * 0.6 && even < half * 0.01) return 'utf-16le';
  return even > half * 0.6 && odd < half * 0.01 ? 'utf-16be' : undefined;
}

/** Whether somewhere in the bytes stands a character of UTF-8 of two bytes or more: no other text has them by chance. */
function hasUtf8(bytes: Uint8Array): boolean {
  for (let at = 0; at < bytes.length - 1; at++) {
    const byte = bytes[at] ?? 0;
    if (byte < 0xc2) continue;
    const length = byte >= 0xf0 ? 4 : byte >= 0xe0 ? 3 : 2;
    if (isUtf8(bytes.subarray(at, at + length)) && at + length <= bytes.length) return true;
  }
  return false;
}

// What people write (P): letters of the languages of Western Europe inside words; marks around them.
const LETTER = /[àáâãäåæçèéêëìíîïñòóôõöøùúûüýÿœßÀÁÂÃÄÅÆÇÈÉÊËÌÍÎÏÑÒÓÔÕÖØÙÚÛÜŒ]/;
const MARK = /[‘’“”„‚–—…«»€£§°•º½¼¾²³×÷©®™¿¡´]/;

/** An apostrophe as English has it, and quotation marks that open before a word or close behind one. */
function isWellPlaced(text: string, at: number): boolean {
  const sign = text.charAt(at);
  const [before, after] = [text.slice(Math.max(0, at - 1), at), text.slice(at + 1, at + 4)];
  if (sign === '’' && /\p{L}/u.test(before) && /^(?:[stdm]|ll|re|ve)(?!\p{L})/iu.test(after)) return true;
  if (/[‘“]/.test(sign)) return !/[\p{L}\p{N}]/u.test(before) && /^\p{L}/u.test(after);
  return /[’”]/.test(sign) && /[\p{L}\p{N}.,!?]/u.test(before) && !/^[\p{L}\p{N}]/u.test(after);
}

/** How much the characters above 127 look like what stands in texts: letters beside letters, marks elsewhere. */
function likeWords(text: string): number {
  let score = 0;
  for (let at = 0; at < text.length; at++) {
    if (text.charCodeAt(at) < 128) continue;
    const sign = text.charAt(at);
    const before = /\p{L}/u.test(text.charAt(at - 1));
    const after = /\p{L}/u.test(text.charAt(at + 1));
    if (LETTER.test(sign)) {
      // A capital amid small letters is no word.
      const oddCapital = before && sign !== sign.toLowerCase() && /\p{Ll}/u.test(text.charAt(at - 1));
      // Nor is a small letter before a capital: “Skip is no ìSkip.
      const beforeCapital = sign !== sign.toUpperCase() && /\p{Lu}/u.test(text.charAt(at + 1));
      score += oddCapital || beforeCapital ? -2 : before || after ? 2 : 0;
    } else if (isWellPlaced(text, at)) score += 3;
    else if (MARK.test(sign)) score += before && after && !/[’–]/.test(sign) ? -1 : 1;
    else if (/\s/.test(sign)) score += 0;
    else score -= 2;
  }
  return score;
}
