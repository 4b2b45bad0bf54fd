import type { Encoding } from '../catalogue/list-settings.ts';
import { decodeAs } from './encodings.ts';

const UTF_8_MARK = [0xef, 0xbb, 0xbf];
const UTF_16_LE_MARK = [0xff, 0xfe];
const UTF_16_BE_MARK = [0xfe, 0xff];

/**
 * Text as bytes in the encoding of others, with their byte order mark if they have one: the way back from `decodeText`
 * and `decodeList`, to the byte.
 * @param original bytes that were decoded
 * @returns undefined where the text has a character that the encoding lacks
 */
export function encodeLike(original: Uint8Array, text: string, encoding: Encoding): Uint8Array | undefined {
  const begins = (mark: readonly number[]) => mark.every((byte, at) => original[at] === byte);
  switch (encoding) {
    case 'utf-8':
      return Buffer.from(begins(UTF_8_MARK) ? `\uFEFF${text}` : text);
    case 'utf-16le':
      return Buffer.from(begins(UTF_16_LE_MARK) ? `\uFEFF${text}` : text, 'utf16le');
    case 'utf-16be':
      return Buffer.from(begins(UTF_16_BE_MARK) ? `\uFEFF${text}` : text, 'utf16le').swap16();
    default:
      return oneByteEach(text, encoding);
  }
}

function oneByteEach(text: string, encoding: Encoding): Uint8Array | undefined {
  const all =
    decodeAs(
      Uint8Array.from({ length: 256 }, (_, byte) => byte),
      encoding,
    ) ?? '';
  const byteOf = new Map([...all].map((sign, byte) => [sign.charCodeAt(0), byte]));
  const bytes = new Uint8Array(text.length);
  for (let at = 0; at < text.length; at++) {
    const byte = byteOf.get(text.charCodeAt(at));
    if (byte === undefined) return undefined;
    bytes[at] = byte;
  }
  return bytes;
}
