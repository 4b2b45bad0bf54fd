import { createHash } from 'node:crypto';
import {
  closeSync,
  lstatSync,
  mkdirSync,
  openSync,
  readFileSync,
  rmSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { z } from 'zod';
import { CatalogueError } from '../../catalogue/finding.ts';
import { writeTrouble } from '../../catalogue/write-trouble.ts';
import type { Copied } from './copy-file.ts';
import { DECLARATION_FILE } from './declaration.ts';

/** A file that was copied and flushed to the disk, as the journal keeps it. */
const kept = z.object({
  path: z.string(),
  from: z.string(),
  sums: z.array(z.string()),
  look: z.object({ size: z.string(), mtime: z.string(), ctime: z.string() }),
});
export type Kept = z.infer<typeof kept>;

/** A folder beside the target in which a bag is made; a run that was interrupted leaves it to the next. */
export interface WorkFolder {
  path: string;
  /** The bag in the making. It has no `bagit.txt` until all else is there. */
  bag: string;
  /** What an interrupted run had copied, by path in the bag. */
  before: Map<string, Kept>;
  note(file: Pick<Kept, 'path' | 'from'> & Copied): void;
  /** Lets go of it, so that the next run may go on; takes it away where there is nothing to go on from. */
  release(): { isKept: boolean };
  /** Takes it away. */
  remove(): void;
}

/**
 * Makes the work folder of a bag, or takes over that of an interrupted run.
 * @throws CatalogueError where another run is at work on it, or it cannot be made
 */
export function openWorkFolder(target: string): WorkFolder {
  const whole = resolve(target);
  // The same for the same target, and short: the name of the target may leave no room for more letters.
  const mark = createHash('sha256').update(basename(whole)).digest('hex').slice(0, 12);
  const path = join(dirname(whole), `.kinfonds-bag-${mark}.part`);
  const bag = join(path, 'bag');
  const journal = join(path, 'journal');
  try {
    mkdirSync(path, { recursive: true });
    const lock = claim(path, target);
    mkdirSync(join(bag, 'data'), { recursive: true });
    // From now on until all is there, this is no bag.
    rmSync(join(bag, DECLARATION_FILE), { force: true });
    const before = readJournal(journal);
    const file = openSync(journal, 'a');
    // The last line may have been broken off.
    writeSync(file, '\n');
    let isWorthKeeping = before.size > 0;
    const remove = () => rmSync(path, { recursive: true, force: true });
    return {
      path,
      bag,
      before,
      note(one) {
        isWorthKeeping = true;
        writeSync(file, `${JSON.stringify(one)}\n`);
      },
      release() {
        closeSync(file);
        if (isWorthKeeping) rmSync(lock, { force: true });
        else remove();
        return { isKept: isWorthKeeping };
      },
      remove,
    };
  } catch (error) {
    throw writeTrouble(target, error);
  }
}

function readJournal(file: string): Map<string, Kept> {
  const before = new Map<string, Kept>();
  let text = '';
  try {
    text = readFileSync(file, 'utf8');
  } catch {}
  for (const line of text.split('\n')) {
    try {
      const read = kept.parse(JSON.parse(line));
      before.set(read.path, read);
    } catch {}
  }
  return before;
}

function claim(folder: string, target: string): string {
  const lock = join(folder, 'running');
  for (;;) {
    try {
      writeFileSync(lock, `${process.pid}`, { flag: 'wx' });
      return lock;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
    }
    if (isAlive(Number(readFileSync(lock, 'utf8')))) {
      const found = 'Another run is packing this bag at the moment.';
      const advice = `Wait for it to end. If there is none, delete the file ${lock} and run again.`;
      throw new CatalogueError([
        { rule: 'bag.running', weight: 'must', place: { file: target }, found, advice },
      ]);
    }
    rmSync(lock, { force: true });
  }
}

function isAlive(process_: number): boolean {
  if (process_ === process.pid || !Number.isInteger(process_) || process_ <= 0) return false;
  try {
    return process.kill(process_, 0);
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

/**
 * Makes room for a file of a bag in the making: its folder, and nothing in its place. An interrupted run may have left
 * a file where a folder is to be, or a folder in the place of the file.
 * @param parts path of the file below `root`
 */
export function makeRoom(root: string, parts: readonly string[]): string {
  let path = root;
  for (const part of parts.slice(0, -1)) {
    path = join(path, part);
    const there = lstatSync(path, { throwIfNoEntry: false });
    if (there?.isDirectory()) continue;
    if (there !== undefined) rmSync(path);
    mkdirSync(path);
  }
  const file = join(path, parts.at(-1) ?? '');
  // Looked for first: what cannot be a name is said by that in words, by Node 24 in taking it away it is not.
  if (lstatSync(file, { throwIfNoEntry: false }) !== undefined) rmSync(file, { recursive: true });
  return file;
}
