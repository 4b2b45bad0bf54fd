import { lstatSync, realpathSync, statfsSync, statSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { CatalogueError, type Finding } from '../../catalogue/finding.ts';
import { OUR_ALGORITHMS } from './algorithms.ts';
import { isSameLook, lookOf, READ_BACK } from './copy-file.ts';
import { sourceTrouble, targetTrouble } from './copy-trouble.ts';
import type { Task } from './task.ts';
import { carryOutAll } from './threads.ts';
import { type Kept, makeRoom, type WorkFolder } from './work-folder.ts';

/** A file that is to be copied to `path` in the bag. */
export interface ToCopy {
  path: string;
  from: string;
}

/** A file of the payload as it lies in the bag. `size` is in bytes, the checksums are in the order of `OUR_ALGORITHMS`. */
export interface Packed {
  size: number;
  sums: readonly string[];
}

/** Twice as many as there are cores: half of them wait for the disk while the others reckon. */
const THREADS = 2 * Math.min(8, availableParallelism());

/**
 * Copies files into a bag in the making. What an interrupted run had copied is kept, where the original has not been
 * touched since and the copy has still the checksum it had.
 * @param within folder in which the originals must lie once all links are followed
 * @param step told how many bytes were read and written, and how many there will have been in the end
 * @throws CatalogueError with every file that could not be read; at once, where one could not be written
 */
export async function copyAll(
  files: readonly ToCopy[],
  work: WorkFolder,
  within: string | undefined,
  step: (done: number, total: number) => void,
): Promise<Map<string, Packed>> {
  const packed = new Map<string, Packed>();
  const troubles: Finding[] = [];
  const root = within === undefined ? undefined : realpathSync(within);
  const whole = looksOf(files, troubles);
  // Every byte is read once from the original and once from the copy, those of a copy that is kept once.
  let total = 2 * whole.reduce((sum, { size }) => sum + size, 0);
  let done = 0;
  const tell = (bytes: number) => {
    done = Math.min(total, done + bytes);
    step(done, total);
  };
  const again = await stillThere(whole, work, tell);
  total -= [...again.values()].reduce((sum, { size }) => sum + size, 0);
  for (const [path, one] of again) packed.set(path, one);
  const left = whole.filter(({ path }) => !again.has(path));
  if (troubles.length > 0) throw new CatalogueError(troubles);
  enoughRoom(left, work);

  const paths = new Map<Task, ToCopy>();
  for (const { path, from, size } of left) {
    const to = makeRoom(work.bag, path.split('/'));
    paths.set({ do: 'copy', file: from, to, size, ...(root !== undefined && { root }) }, { path, from });
  }
  await carryOutAll([...paths.keys()], {
    threads: THREADS,
    step: tell,
    done(task, outcome) {
      const one = paths.get(task);
      if (one === undefined) return;
      if (!('sums' in outcome)) {
        if (outcome.side === 'to') throw targetTrouble(one.path, outcome.code);
        troubles.push(sourceTrouble(one.from, outcome.code));
      } else if (outcome.look !== undefined) {
        work.note({ ...one, sums: outcome.sums, look: outcome.look });
        packed.set(one.path, { size: Number(outcome.look.size), sums: outcome.sums });
      }
    },
  });
  if (troubles.length > 0) throw new CatalogueError(troubles);
  return packed;
}

interface Looked extends ToCopy {
  size: number;
  look: Kept['look'];
}

function looksOf(files: readonly ToCopy[], troubles: Finding[]): Looked[] {
  return files.flatMap(({ path, from }) => {
    try {
      const there = statSync(from, { bigint: true });
      return [{ path, from, size: Number(there.size), look: lookOf(there) }];
    } catch (error) {
      troubles.push(sourceTrouble(from, (error as NodeJS.ErrnoException).code ?? ''));
      return [];
    }
  });
}

/** Which copies of an interrupted run are as they should be. */
async function stillThere(
  files: readonly Looked[],
  { bag, before }: WorkFolder,
  step: (bytes: number) => void,
): Promise<Map<string, Packed>> {
  const tasks = new Map<Task, Kept>();
  for (const { path, from, size, look } of files) {
    const kept = before.get(path);
    if (kept === undefined || kept.from !== from || !isSameLook(kept.look, look)) continue;
    const file = join(bag, path);
    const there = lstatSync(file, { throwIfNoEntry: false });
    if (there?.isFile() && there.size === size)
      tasks.set({ do: 'hash', file, size, algorithms: [READ_BACK] }, kept);
  }
  const still = new Map<string, Packed>();
  await carryOutAll([...tasks.keys()], {
    threads: THREADS,
    step,
    done(task, outcome) {
      const kept = tasks.get(task);
      if (kept === undefined || !('sums' in outcome)) return;
      if (outcome.sums[0] === kept.sums[OUR_ALGORITHMS.indexOf(READ_BACK)])
        still.set(kept.path, { size: task.size, sums: kept.sums });
    },
  });
  return still;
}

/** Says at the start, and not after an hour, that a disk is too small. */
function enoughRoom(files: readonly Looked[], { path }: WorkFolder): void {
  const needed = files.reduce((sum, { size }) => sum + size, 0);
  const { bavail, bsize } = statfsSync(path);
  const free = bavail * bsize;
  if (needed <= free) return;
  const mega = (bytes: number) => `${Math.ceil(bytes / 1e6).toLocaleString('en')} MB`;
  const found = `The copies need ${mega(needed)}, and ${mega(free)} are free on the disk.`;
  const advice = 'Make room, or pack on another disk.';
  throw new CatalogueError([
    { rule: 'write.disk-full', weight: 'must', place: { file: path }, found, advice },
  ]);
}
