import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import { stageBeside } from '../catalogue/permissions-beside.ts';
import { type CopyFacts, copyFacts } from './facts.ts';

/** Beside the catalogue, hidden; it may be deleted at any time, and is made again. */
const CACHE_FILE = '.kinfonds-copies.json';

/** To be raised whenever the same file would give other facts than before. */
const VERSION = 1;

/** What a file looked like when its facts were read; it is read again as soon as any of it differs. */
export interface Look {
  size: string;
  /** When the content, and when anything of the file was last changed, in nanoseconds. */
  mtime: string;
  ctime: string;
}

const looked = z.strictObject({ size: z.string(), mtime: z.string(), ctime: z.string(), facts: copyFacts });
const cacheFile = z.object({ version: z.literal(VERSION), copies: z.array(looked) });

/** The facts read before, by the path of the copy. */
export type Cache = Map<string, Look & { facts: CopyFacts }>;

/** What was kept of the last time; empty where there is nothing, or nothing that can be trusted. */
export async function readCache(folder: string): Promise<Cache> {
  try {
    const read = cacheFile.safeParse(JSON.parse(await readFile(join(folder, CACHE_FILE), 'utf8')));
    return new Map(read.data?.copies.map((copy) => [copy.facts.path, copy]));
  } catch {
    return new Map();
  }
}

/**
 * Keeps the facts for the next time, if the folder can be written to; without them all is read again. It is no more
 * open than the list, for names of files tell what there is.
 */
export async function writeCache(folder: string, cache: Cache): Promise<void> {
  const copies = [...cache.values()].map((copy) => JSON.stringify(copy)).join(',\n');
  try {
    const staged = await stageBeside(
      join(folder, CACHE_FILE),
      `{"version":${VERSION},"copies":[\n${copies}\n]}\n`,
    );
    await staged.commit();
  } catch {}
}
