import { batches, type Content } from '../../catalogue/write-whole.ts';

/** A content as bytes, each piece first given to `see`. */
export function* seenBytes(content: Content, see: (piece: Uint8Array) => void): Generator<Uint8Array> {
  for (const bytes of batches(content)) {
    see(bytes);
    yield bytes;
  }
}
