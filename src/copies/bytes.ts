/** A file, or anything else that can be read a piece at a time. */
export interface Bytes {
  /** In bytes. */
  size: number;
  /** The bytes from `at` on; fewer than `length` where the file ends before. */
  read(at: number, length: number): Promise<Buffer>;
}

/** In bytes. */
const PIECE = 1 << 20;

/** Whether some bytes (as Latin-1) stand at or after `from`. What mostly stands at the end is looked for there first. */
export async function holds(bytes: Bytes, mark: string, from: number): Promise<boolean> {
  const wanted = Buffer.from(mark, 'latin1');
  const end = await bytes.read(Math.max(from, bytes.size - 4096), 4096);
  if (end.includes(wanted)) return true;
  for (let at = from; at < bytes.size; at += PIECE) {
    // Each piece reaches into the next, so that what lies across is found.
    if ((await bytes.read(at, PIECE + wanted.length - 1)).includes(wanted)) return true;
  }
  return false;
}
