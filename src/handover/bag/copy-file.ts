import {
  type BigIntStats,
  closeSync,
  fdatasyncSync,
  fstatSync,
  futimesSync,
  openSync,
  realpathSync,
  rmSync,
} from 'node:fs';
import { isAbsolute, relative, sep } from 'node:path';
import { writeAll } from '../../catalogue/write-whole.ts';
import { OUR_ALGORITHMS } from './algorithms.ts';
import { hashes, hashFile, openFile, readThrough } from './hash-file.ts';

/** What a file looked like when it was read; where any of it differs, its content may too. */
export interface Look {
  size: string;
  /** When the content, and when anything of the file was last changed, in nanoseconds. */
  mtime: string;
  ctime: string;
}

/** A file copied, with its checksums in the order of `OUR_ALGORITHMS`. */
export interface Copied {
  sums: string[];
  look: Look;
}

/** Which of the two files made the trouble. */
export class CopyError extends Error {
  readonly side: 'from' | 'to';
  readonly code: string;

  constructor(side: 'from' | 'to', code: string) {
    super(code);
    this.side = side;
    this.code = code;
  }
}

/** The one with which a copy is read back: where the processor has it built in, it is three times as fast as SHA-512. */
export const READ_BACK = 'sha256';

/**
 * Copies a file, reckoning its checksums from the bytes as they are read; flushes the copy to the disk, reads it back
 * and compares. The reading back may be served by the memory of the system: no program can make a disk read again.
 * @param root folder in which the file must lie once all links are followed
 * @throws CopyError; the copy is then gone
 */
export function copyFile(
  from: string,
  to: string,
  root: string | undefined,
  buffer: Uint8Array,
  step: (bytes: number) => void,
): Copied {
  try {
    const source = on('from', () => openWithin(from, root));
    try {
      return copyOpened(source, to, buffer, step);
    } finally {
      closeSync(source);
    }
  } catch (error) {
    rmSync(to, { force: true });
    throw error;
  }
}

function openWithin(from: string, root: string | undefined): number {
  const real = realpathSync(from);
  if (root !== undefined) {
    const way = relative(root, real);
    if (way === '..' || way.startsWith(`..${sep}`) || isAbsolute(way))
      throw new CopyError('from', 'leads out');
  }
  return openFile(real);
}

function copyOpened(source: number, to: string, buffer: Uint8Array, step: (bytes: number) => void): Copied {
  const before = on('from', () => lookOf(fstatSync(source, { bigint: true })));
  const target = on('to', () => openSync(to, 'wx'));
  const sums = hashes(OUR_ALGORITHMS);
  try {
    const bytes = on('from', () =>
      readThrough(source, buffer, (piece) => {
        sums.update(piece);
        on('to', () => writeAll(target, piece));
        step(piece.length);
      }),
    );
    const after = on('from', () => fstatSync(source, { bigint: true }));
    const same = isSameLook(before, lookOf(after)) && `${bytes}` === before.size;
    if (!same || after.nlink === 0n) throw new CopyError('from', 'changed');
    on('to', () => {
      // When a file was last changed says something about its making; a copy keeps that day.
      futimesSync(target, Number(after.atimeMs) / 1000, Number(after.mtimeMs) / 1000);
      fdatasyncSync(target);
    });
  } finally {
    closeSync(target);
  }
  const digests = sums.digests();
  const [again] = on('to', () => hashFile(to, [READ_BACK], buffer, step));
  if (again !== digests[OUR_ALGORITHMS.indexOf(READ_BACK)]) throw new CopyError('to', 'differs');
  return { sums: digests, look: before };
}

/** Runs a step, and says of an error of the system on whose side it happened. */
function on<Value>(side: 'from' | 'to', work: () => Value): Value {
  try {
    return work();
  } catch (error) {
    if (error instanceof CopyError) throw error;
    throw new CopyError(side, (error as NodeJS.ErrnoException).code ?? String(error));
  }
}

/** What a file looks like, from what the system tells of it. */
export function lookOf({ size, mtimeNs, ctimeNs }: BigIntStats): Look {
  return { size: `${size}`, mtime: `${mtimeNs}`, ctime: `${ctimeNs}` };
}

/** Whether a file has not been touched between two looks. */
export function isSameLook(one: Look, other: Look): boolean {
  return one.size === other.size && one.mtime === other.mtime && one.ctime === other.ctime;
}
