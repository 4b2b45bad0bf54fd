import { createHash, type Hash } from 'node:crypto';
import { closeSync, constants, fstatSync, openSync, readSync } from 'node:fs';

/** In bytes; as much as stays in the processor's own memory while several algorithms go over it. */
export const PIECE = 1 << 17;

const { O_RDONLY, O_NOFOLLOW = 0, O_NONBLOCK = 0 } = constants;

/** Opens a file for reading. A link is not followed, and a pipe not waited for, should one stand there by now. */
export function openFile(path: string): number {
  const file = openSync(path, O_RDONLY | O_NOFOLLOW | O_NONBLOCK);
  if (fstatSync(file).isFile()) return file;
  closeSync(file);
  throw Object.assign(new Error(`${path} is no file`), { code: 'ENOTFILE' });
}

/**
 * Reads a file to its end through a buffer, giving each piece to `take`; the piece is overwritten by the next.
 * @returns how many bytes there were
 */
export function readThrough(file: number, buffer: Uint8Array, take: (piece: Uint8Array) => void): number {
  let bytes = 0;
  for (;;) {
    const got = readSync(file, buffer, 0, buffer.length, null);
    if (got === 0) return bytes;
    bytes += got;
    take(got === buffer.length ? buffer : buffer.subarray(0, got));
  }
}

/** Several checksums that are reckoned over the same bytes. */
export function hashes(algorithms: readonly string[]): {
  update(piece: Uint8Array): void;
  digests(): string[];
} {
  const all: Hash[] = algorithms.map((algorithm) => createHash(algorithm));
  return {
    update(piece) {
      for (const hash of all) hash.update(piece);
    },
    digests: () => all.map((hash) => hash.digest('hex')),
  };
}

/**
 * The checksums of a file, in hexadecimal, in the order of the algorithms.
 * @param step told of the bytes that were read
 * @throws the error of the system where it cannot be read
 */
export function hashFile(
  path: string,
  algorithms: readonly string[],
  buffer: Uint8Array,
  step: (bytes: number) => void,
): string[] {
  const file = openFile(path);
  try {
    const sums = hashes(algorithms);
    readThrough(file, buffer, (piece) => {
      sums.update(piece);
      step(piece.length);
    });
    return sums.digests();
  } finally {
    closeSync(file);
  }
}
