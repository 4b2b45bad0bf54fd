import type { Content } from '../../catalogue/write-whole.ts';

/** In UTF-16 units: as much text as is gathered before it is encoded. */
const BATCH = 1 << 16;

/** A content as bytes, each piece first given to `see`. */
export function* seenBytes(content: Content, see: (piece: Uint8Array) => void): Generator<Uint8Array> {
  for (const bytes of pieces(content)) {
    see(bytes);
    yield bytes;
  }
}

function* pieces(content: Content): Generator<Uint8Array> {
  let text = '';
  for (const piece of typeof content === 'string' || content instanceof Uint8Array ? [content] : content) {
    if (typeof piece === 'string') {
      text += piece;
      if (text.length < BATCH) continue;
      // The two halves of a character beyond U+FFFF are encoded together.
      const end = /[\uD800-\uDBFF]$/.test(text) ? text.length - 1 : text.length;
      yield Buffer.from(text.slice(0, end));
      text = text.slice(end);
    } else {
      if (text !== '') yield Buffer.from(text);
      text = '';
      yield piece;
    }
  }
  if (text !== '') yield Buffer.from(text);
}
