const UTF_8_MARK = [0xef, 0xbb, 0xbf];
const UTF_16_LE_MARK = [0xff, 0xfe];
const UTF_16_BE_MARK = [0xfe, 0xff];

/**
 * Text as bytes in the encoding of others, with their byte order mark: the way back from `decodeText`, to the byte.
 * @param original bytes that `decodeText` accepts
 */
export function encodeLike(original: Uint8Array, text: string): Uint8Array {
  const begins = (mark: readonly number[]) => mark.every((byte, at) => original[at] === byte);
  if (begins(UTF_16_LE_MARK)) return Buffer.from(`\uFEFF${text}`, 'utf16le');
  if (begins(UTF_16_BE_MARK)) return Buffer.from(`\uFEFF${text}`, 'utf16le').swap16();
  return Buffer.from(begins(UTF_8_MARK) ? `\uFEFF${text}` : text);
}
