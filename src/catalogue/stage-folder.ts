import { randomBytes } from 'node:crypto';
import { closeSync, openSync } from 'node:fs';
import { mkdir, open, rename, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { writeTrouble } from './write-trouble.ts';
import { writeAll } from './write-whole.ts';

/** A folder that is filled beside its place and not yet put there. */
export interface StagedFolder {
  /** Writes a file into it. @returns where it lies until `commit` */
  write(name: string, content: Iterable<string>): string;
  /** Flushes its files to the disk and puts the folder in its place; whatever stood there goes as a whole. */
  commit(): Promise<void>;
  /** Takes it away; does nothing after `commit`. */
  discard(): Promise<void>;
}

/** So many files are flushed at a time: a disk takes many at once in little more time than one. */
const AT_ONCE = 16;

/**
 * More files than this are left to the system to flush: one by one, tens of thousands would take longer than making
 * them, and an export can be made again should the power fail within the next half minute.
 */
const FLUSHED_AT_MOST = 2000;

/**
 * Begins a folder that is to stand at `path` once it is complete. It may take tens of thousands of small files.
 * @throws CatalogueError in plain words where the disk is full or the place cannot be written to
 */
export async function stageFolder(path: string): Promise<StagedFolder> {
  const beside = () => join(dirname(path), `.kinfonds-${randomBytes(6).toString('hex')}.part`);
  const temporary = beside();
  const files: string[] = [];
  const discard = () => rm(temporary, { recursive: true, force: true });
  await mkdir(temporary).catch((error) => Promise.reject(writeTrouble(path, error)));
  return {
    write(name, content) {
      const file = join(temporary, name);
      try {
        writeNew(file, content);
      } catch (error) {
        throw writeTrouble(join(path, name), error);
      }
      files.push(file);
      return file;
    },
    async commit() {
      const before = beside();
      try {
        await flush(files);
        const replaced = await moved(path, before);
        try {
          await rename(temporary, path);
        } catch (error) {
          if (replaced) await rename(before, path);
          throw error;
        }
        await rm(before, { recursive: true, force: true });
      } catch (error) {
        await discard();
        throw writeTrouble(path, error);
      }
    },
    discard,
  };
}

/** In one thread: for small files, handing each write to another takes longer than the write. */
function writeNew(file: string, content: Iterable<string>): void {
  const handle = openSync(file, 'wx');
  try {
    for (const piece of content) writeAll(handle, Buffer.from(piece));
  } finally {
    closeSync(handle);
  }
}

async function flush(files: readonly string[]): Promise<void> {
  if (files.length > FLUSHED_AT_MOST) return;
  const left = files.values();
  const worker = async () => {
    for (const file of left) {
      const handle = await open(file, 'r+');
      await handle.sync().finally(() => handle.close());
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, worker));
}

/** Moves what stands at `from` out of the way. @returns whether anything did */
async function moved(from: string, to: string): Promise<boolean> {
  try {
    await rename(from, to);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return false;
    throw error;
  }
}
