import { constants } from 'node:fs';
import { lstat, open, realpath, stat } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { join, relative, sep } from 'node:path';
import { type Cache, type Look, readCache, writeCache } from './cache.ts';
import { type CopyFacts, isPath } from './facts.ts';
import { readFacts } from './read.ts';

/** Whether to reckon the SHA-256 of each copy (yes if not told otherwise), and whom to tell of each that is done. */
export interface GatherOptions {
  hash?: boolean;
  /** Reads every file anew, and neither trusts nor writes what is kept of earlier times. */
  afresh?: boolean;
  step?: (path: string) => void;
}

/**
 * A file changed so shortly before it is read may be changed again within the same tick of its disk's clock; its facts
 * are not kept. FAT, the slowest clock in use, ticks every two seconds (from memory). In nanoseconds.
 */
const TICK = 2_000_000_000n;

/** So many files are read at a time; more would only wait for the disk. */
const AT_A_TIME = Math.min(8, Math.max(2, availableParallelism()));

/**
 * The technical facts of digital copies, by their paths; addresses on the web are left out. Nothing outside the
 * catalogue folder is ever opened. What was read before and has not been touched since is not read again, unless the
 * file of the cache cannot be written: then everything is read each time.
 * @param named paths below the catalogue folder, as the list names them
 */
export async function gatherCopies(
  folder: string,
  named: readonly string[],
  { hash = true, afresh = false, step }: GatherOptions = {},
): Promise<Map<string, CopyFacts>> {
  const paths = [...new Set(named)].filter(isPath);
  const [root, before] = await Promise.all([
    realpath(folder),
    afresh ? new Map<string, never>() : readCache(folder),
  ]);
  const after: Cache = new Map(before);
  // In the order of the list, not in that in which reading them ends.
  const facts = new Map(paths.map((path): [string, CopyFacts] => [path, { path, bytes: 0 }]));
  const queue = paths.values();
  const worker = async () => {
    for (const path of queue) {
      const { look, facts: found } = await lookAt(root, path, before.get(path), hash);
      facts.set(path, found);
      if (look === undefined) after.delete(path);
      else if (before.get(path)?.facts !== found) after.set(path, { ...look, facts: found });
      step?.(path);
    }
  };
  await Promise.all(Array.from({ length: AT_A_TIME }, worker));
  const isNew = after.size !== before.size || paths.some((path) => after.get(path) !== before.get(path));
  if (isNew && !afresh) {
    await forgetGone(root, after, facts);
    await writeCache(folder, after);
  }
  return facts;
}

/** Takes out what is kept of files that are not there any more; of those that were just looked at that is known. */
async function forgetGone(root: string, kept: Cache, looked: ReadonlyMap<string, CopyFacts>): Promise<void> {
  const others = [...kept.keys()].filter((path) => !looked.has(path));
  const isThere = await Promise.all(
    others.map((path) =>
      lstat(join(root, path)).then(
        () => true,
        (error: NodeJS.ErrnoException) => troubleOf(error.code) !== 'missing',
      ),
    ),
  );
  for (const [at, path] of others.entries()) if (isThere[at] === false) kept.delete(path);
}

interface Looked {
  facts: CopyFacts;
  /** Left out where the facts must not be kept. */
  look?: Look;
}

async function lookAt(
  root: string,
  path: string,
  kept: (Look & { facts: CopyFacts }) | undefined,
  hash: boolean,
): Promise<Looked> {
  const without = (trouble: NonNullable<CopyFacts['trouble']>): Looked => ({
    facts: { path, bytes: 0, trouble },
  });
  try {
    const real = await realpath(join(root, path));
    if (isOutside(root, real)) return without('leads out');
    const there = await stat(real, { bigint: true });
    // Opening a pipe would wait for somebody to write into it.
    if (!there.isFile()) return without('not a file');
    const look: Look = { size: `${there.size}`, mtime: `${there.mtimeNs}`, ctime: `${there.ctimeNs}` };
    if (
      kept !== undefined &&
      isSame(kept, look) &&
      (!hash || kept.facts.sha256 !== undefined || there.size === 0n)
    )
      return { facts: kept.facts, look };
    return await read(real, path, look, hash);
  } catch (error) {
    return without(troubleOf((error as NodeJS.ErrnoException).code));
  }
}

async function read(real: string, path: string, look: Look, hash: boolean): Promise<Looked> {
  // Without O_NOFOLLOW, somebody might put a link in the place of the file in this very moment.
  const { O_RDONLY, O_NOFOLLOW = 0, O_NONBLOCK = 0 } = constants;
  const began = BigInt(Date.now()) * 1_000_000n;
  const file = await open(real, O_RDONLY | O_NOFOLLOW | O_NONBLOCK);
  try {
    const facts = await readFacts(file, real, path, Number(look.size), hash);
    const { size, mtimeNs, ctimeNs } = await file.stat({ bigint: true });
    const isUntouched = isSame(look, { size: `${size}`, mtime: `${mtimeNs}`, ctime: `${ctimeNs}` });
    const isSettled = mtimeNs + TICK < began && ctimeNs + TICK < began;
    return isUntouched && isSettled ? { facts, look } : { facts };
  } finally {
    await file.close();
  }
}

const isSame = (one: Look, other: Look) =>
  one.size === other.size && one.mtime === other.mtime && one.ctime === other.ctime;

function isOutside(root: string, real: string): boolean {
  const way = relative(root, real);
  return way === '..' || way.startsWith(`..${sep}`) || way === real;
}

function troubleOf(code: string | undefined): NonNullable<CopyFacts['trouble']> {
  if (code === 'ENOENT' || code === 'ENOTDIR' || code === 'ENAMETOOLONG') return 'missing';
  // A link to itself; and no system can have a file whose name holds a NUL.
  if (code === 'ELOOP') return 'not a file';
  return code === 'ERR_INVALID_ARG_VALUE' ? 'missing' : 'unreadable';
}
