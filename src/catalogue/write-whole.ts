import { randomBytes } from 'node:crypto';
import { writeSync } from 'node:fs';
import { access, constants, open, realpath, rename, rm, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { flushFolder } from './flush-folder.ts';
import { writeTrouble } from './write-trouble.ts';

/** What a file is to hold: one text, one block of bytes, or a stream of either. */
export type Content = string | Uint8Array | Iterable<string | Uint8Array>;

/** A file written beside its place and not yet put there. */
export interface Staged {
  /** Where it lies until then: in the same folder, whole and flushed to the disk. */
  temporary: string;
  /** Puts it in its place in one step; whatever was there is replaced. */
  commit(): Promise<void>;
  /** Takes it away; does nothing after `commit`. */
  discard(): Promise<void>;
}

/** Who may do what with a file, as bits of a mode. Left out, a file keeps what it has, and a new one is as the system has it. */
export interface Permissions {
  /** Just these. */
  mode?: number;
  /** No more than these. */
  most?: number;
}

// In UTF-16 units: as much text as is gathered before it is encoded and written. Larger gains no speed.
const BATCH = 1 << 16;

/** In bytes. */
const FLUSH_EVERY = 1 << 25;

/**
 * Writes a file whole or not at all: to a temporary file in the same folder, flushed to the disk, then renamed.
 * @throws CatalogueError in plain words where the disk is full, the folder missing or not to be written to; what
 * `content` itself throws comes through. Either way no temporary file remains and the old file is as it was.
 */
export async function writeWhole(path: string, content: Content): Promise<void> {
  const staged = await stage(path, content);
  await staged.commit();
}

/**
 * Writes a file beside its place, so that several can be written and checked before any of them is put there. At no
 * moment may anybody read it who may not in the end.
 * @throws as `writeWhole` does
 */
export async function stage(
  path: string,
  content: Content,
  { mode: given, most = 0o777 }: Permissions = {},
): Promise<Staged> {
  try {
    const { target, mode } = await place(path);
    // A short name of its own: the name of the file itself may leave no room for more letters.
    const temporary = join(dirname(target), `.kinfonds-${randomBytes(6).toString('hex')}.part`);
    await writeNew(temporary, content, given ?? mode, most);
    return staged(path, target, temporary);
  } catch (error) {
    throw writeTrouble(path, error);
  }
}

function staged(path: string, target: string, temporary: string): Staged {
  const discard = () => rm(temporary, { force: true });
  return {
    temporary,
    discard,
    async commit() {
      try {
        await rename(temporary, target);
        await flushFolder(dirname(target));
      } catch (error) {
        await discard();
        throw writeTrouble(path, error);
      }
    },
  };
}

/** The file itself where `path` is a link to it, and the permissions to keep. */
async function place(path: string): Promise<{ target: string; mode?: number }> {
  try {
    const target = await realpath(path);
    const there = await stat(target);
    if (there.isDirectory()) throw Object.assign(new Error(), { code: 'EISDIR', syscall: 'open' });
    // Renaming would replace even a file that its owner has protected from writing.
    await access(target, constants.W_OK);
    return { target, mode: there.mode & 0o777 };
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
    return { target: path };
  }
}

async function writeNew(
  path: string,
  content: Content,
  mode: number | undefined,
  most: number,
): Promise<void> {
  const handle = await open(path, 'wx', mode === undefined ? 0o666 & most : 0o600);
  try {
    try {
      if (mode !== undefined) await handle.chmod(mode & most);
      let flushing = Promise.resolve();
      let unflushed = 0;
      try {
        for (const bytes of batches(content)) {
          writeAll(handle.fd, bytes);
          unflushed += bytes.length;
          if (unflushed < FLUSH_EVERY) continue;
          // A large file is flushed as it grows, beside all else, so that not all of it is left for the end.
          await flushing;
          flushing = handle.datasync();
          unflushed = 0;
        }
      } finally {
        await flushing;
      }
      await handle.sync();
    } finally {
      await handle.close();
    }
  } catch (error) {
    await rm(path, { force: true });
    throw error;
  }
}

/**
 * A disk that fills up takes a part of the bytes first, and refuses only at the next call. The system only takes note
 * of them here, which is done sooner than handing them to another thread.
 */
export function writeAll(file: number, bytes: Uint8Array): void {
  for (let done = 0; done < bytes.length; ) done += writeSync(file, bytes, done);
}

/**
 * Small pieces are gathered before they are encoded and written. What is given holds until the next is asked for: the
 * same memory is used again.
 */
export function* batches(content: Content): Generator<Uint8Array> {
  if (content instanceof Uint8Array) return yield content;
  let memory = Buffer.alloc(0);
  const encoded = (text: string): Uint8Array => {
    // A UTF-16 unit takes three bytes at most: RFC 3629, 3.
    if (memory.length < text.length * 3) memory = Buffer.allocUnsafe(text.length * 3 + BATCH);
    return memory.subarray(0, memory.write(text));
  };
  let pieces: string[] = [];
  let length = 0;
  for (const piece of typeof content === 'string' ? [content] : content) {
    if (typeof piece === 'string') {
      pieces.push(piece);
      length += piece.length;
      if (length < BATCH) continue;
      const text = pieces.join('');
      const end = wholeCharacters(text);
      yield encoded(text.slice(0, end));
      pieces = end === text.length ? [] : [text.slice(end)];
      length = 0;
    } else {
      yield encoded(pieces.join(''));
      yield piece;
      pieces = [];
      length = 0;
    }
  }
  yield encoded(pieces.join(''));
}

/** How much of a text ends with a whole character: an emoji takes two UTF-16 units, which must be encoded together. */
function wholeCharacters(text: string): number {
  const last = text.charCodeAt(text.length - 1);
  return last >= 0xd800 && last <= 0xdbff ? text.length - 1 : text.length;
}
