import { constants } from 'node:fs';
import { chmod, lstat, mkdir, open, readdir, rm, rmdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { permissionsBeside } from '../catalogue/permissions-beside.ts';
import { readThumbnail, type Thumbnail } from './thumbnails-draw.ts';

/** Beside the catalogue, hidden; it may be deleted at any time, and is made again. */
const KEPT_FOLDER = '.kinfonds-thumbnails';

/** To be raised whenever the same content would be drawn in another way than before. */
const VERSION = 1;

/** In bytes. None of ours comes near it. */
const MOST_BYTES = 1 << 17;

/** Thumbnails drawn before, each under the SHA-256 of the copy's content, so that none can be out of date. */
export interface Kept {
  /** Undefined where none is kept, or where it is none that we could have made. */
  read(sha256: string): Promise<Thumbnail | undefined>;
  /** Keeps one for the next time, if the folder can be written to. */
  keep(sha256: string, jpeg: Buffer): Promise<void>;
  /** Takes away all but these. Nothing but thumbnails is touched. */
  sweep(needed: ReadonlySet<string>): Promise<void>;
}

const nameOf = (sha256: string) => `${sha256}-${VERSION}.jpg`;
const NAME = /^[0-9a-f]{64}-\d+\.jpg$/;

/** The thumbnails kept beside a catalogue; none, and none are kept, where something else stands in their place. */
export async function keptThumbnails(catalogue: string): Promise<Kept> {
  const folder = join(catalogue, KEPT_FOLDER);
  // A link might lead anywhere; what it leads to is not ours to fill and to sweep.
  const isOurs = await lstat(folder).then(
    (there) => there.isDirectory(),
    () => true,
  );
  if (!isOurs) return { read: async () => undefined, keep: async () => {}, sweep: async () => {} };
  let isWritable = true;
  let made: Promise<void> | undefined;
  return {
    async read(sha256) {
      const content = await contentOf(join(folder, nameOf(sha256))).catch(() => undefined);
      return content && readThumbnail(content);
    },
    async keep(sha256, jpeg) {
      if (!isWritable) return;
      const path = join(folder, nameOf(sha256));
      try {
        made ??= makeFolder(folder, catalogue);
        await made;
        // What stands there is broken, or a link; `wx` writes through neither.
        await rm(path, { force: true });
        await writeFile(path, jpeg, { flag: 'wx' });
      } catch {
        isWritable = false;
      }
    },
    async sweep(needed) {
      const wanted = new Set([...needed].map(nameOf));
      const names = await readdir(folder).catch(() => []);
      for (const name of names)
        if (NAME.test(name) && !wanted.has(name)) await rm(join(folder, name)).catch(() => {});
      // Goes only if nothing is left in it.
      if (wanted.size === 0) await rmdir(folder).catch(() => {});
    },
  };
}

/** The folder of the thumbnails, no more open than the list: what hangs in it shows what is in that. */
async function makeFolder(folder: string, catalogue: string): Promise<void> {
  const allowed = await permissionsBeside(catalogue);
  await mkdir(folder, { recursive: true });
  const { mode } = await lstat(folder);
  // Who may read the list may look into the folder as well; its owner may always.
  const open = 0o700 | ((allowed & 0o044) >> 2) | (allowed & 0o066);
  if ((mode & ~open & 0o777) !== 0) await chmod(folder, mode & open);
}

/** A plain file's content; undefined for anything else, and where it is far too large. */
async function contentOf(path: string): Promise<Buffer | undefined> {
  const { O_RDONLY, O_NOFOLLOW = 0, O_NONBLOCK = 0 } = constants;
  const file = await open(path, O_RDONLY | O_NOFOLLOW | O_NONBLOCK);
  try {
    const there = await file.stat();
    return there.isFile() && there.size <= MOST_BYTES ? await file.readFile() : undefined;
  } finally {
    await file.close();
  }
}
