import { createHash } from 'node:crypto';
import type { FileHandle } from 'node:fs/promises';
import type { Bytes } from './bytes.ts';
import type { CopyFacts } from './facts.ts';
import { HEAD, identify } from './identify.ts';
import { pictureFacts } from './picture.ts';
import { filmHasLocation, secondsOfWav } from './recordings.ts';
import { isWhole } from './whole.ts';

/**
 * The facts of an open file.
 * @param real where it lies on the disk
 * @param path how the list names it
 * @throws the system's own error where the disk does not let it be read
 */
export async function readFacts(
  file: FileHandle,
  real: string,
  path: string,
  size: number,
  hash: boolean,
): Promise<CopyFacts> {
  if (size === 0) return { path, bytes: 0, trouble: 'empty' };
  const bytes = await bytesOf(file, size);
  const sha256 = hash ? { sha256: await sha256Of(bytes) } : {};
  const mediaType = identify(await bytes.read(0, HEAD), path);
  if (mediaType === undefined) return { path, bytes: size, ...sha256 };
  return {
    ...{ path, bytes: size, ...sha256, mediaType },
    ...(mediaType.startsWith('image/') && (await pictureFacts(real, bytes, mediaType))),
    ...(mediaType === 'audio/vnd.wave' && (await wavFacts(bytes))),
    ...(FILMS.has(mediaType) && (await filmHasLocation(bytes)) && { hasLocation: true }),
    ...(!(await isWhole(bytes, mediaType)) && { trouble: 'damaged' as const }),
  };
}

const FILMS = new Set(['video/mp4', 'video/quicktime', 'video/3gpp', 'audio/mp4']);

async function wavFacts(bytes: Bytes): Promise<Pick<CopyFacts, 'seconds'>> {
  const seconds = await secondsOfWav(bytes);
  return seconds === undefined ? {} : { seconds };
}

/** In bytes. What is asked of a file is mostly in its beginning, which is therefore read once and kept. */
const BEGINNING = 1 << 18;

async function bytesOf(file: FileHandle, size: number): Promise<Bytes> {
  const fromDisk = async (at: number, length: number) => {
    const buffer = Buffer.allocUnsafe(Math.max(0, Math.min(length, size - at)));
    let done = 0;
    while (done < buffer.length) {
      const { bytesRead } = await file.read(buffer, done, buffer.length - done, at + done);
      if (bytesRead === 0) break;
      done += bytesRead;
    }
    return buffer.subarray(0, done);
  };
  const beginning = await fromDisk(0, BEGINNING);
  return {
    size,
    read: async (at, length) => {
      const end = Math.min(at + length, size);
      return end <= beginning.length ? beginning.subarray(at, Math.max(at, end)) : fromDisk(at, length);
    },
  };
}

/** In bytes. Smaller pieces take more turns between reading and reckoning, larger ones more memory. */
const PIECE = 1 << 20;

/** While one piece is reckoned, the next is read. */
async function sha256Of(bytes: Bytes): Promise<string> {
  const hash = createHash('sha256');
  let next = bytes.read(0, PIECE);
  for (let at = 0; at < bytes.size; ) {
    const piece = await next;
    if (piece.length === 0) break;
    at += piece.length;
    if (at < bytes.size) next = bytes.read(at, PIECE);
    hash.update(piece);
  }
  return hash.digest('hex');
}
