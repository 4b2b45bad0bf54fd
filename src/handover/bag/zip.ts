import { randomBytes } from 'node:crypto';
import {
  closeSync,
  fsyncSync,
  lstatSync,
  openSync,
  readSync,
  realpathSync,
  renameSync,
  rmSync,
  writeSync,
} from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { crc32 } from 'node:zlib';
import { CatalogueError } from '../../catalogue/finding.ts';
import { flushFolder } from '../../catalogue/flush-folder.ts';
import { writeTrouble } from '../../catalogue/write-trouble.ts';
import { writeAll } from '../../catalogue/write-whole.ts';
import {
  CRC_AT,
  directoryEnd,
  directoryEntry,
  fileHeader,
  type ZipEntry,
} from '../../catalogue/zip-records.ts';
import { openFile, readThrough } from './hash-file.ts';
import { type BagFile, lookThrough } from './tree.ts';
import type { ByteStep } from './verify.ts';

const PIECE = 1 << 20;

/**
 * Puts a bag into one ZIP file, in a folder of the name of that file. The bytes of its files stand in it as they are:
 * pictures and recordings hardly shrink, what is stored so survives damage elsewhere in the file, and the same bag gives
 * the same bytes on any machine, which compressing would not. It is read back before it takes its place.
 * @throws CatalogueError where something stands at `file`, it cannot be written, or the bag changes meanwhile
 */
export async function zipBag(folder: string, file: string, options: { step?: ByteStep } = {}): Promise<void> {
  if (lstatSync(file, { throwIfNoEntry: false }) !== undefined) {
    const found = 'Something of this name is there already. A package is never written over another.';
    throw refusal('bag.target-there', file, found, 'Choose another name, or move what is there.');
  }
  const temporary = join(dirname(resolve(file)), `.kinfonds-${randomBytes(6).toString('hex')}.part`);
  try {
    const zip = openSync(temporary, 'wx+');
    try {
      const entries = writeZip(zip, filesOf(folder), basename(file).replace(/\.zip$/i, ''), options.step);
      fsyncSync(zip);
      readBack(zip, entries, file);
    } finally {
      closeSync(zip);
    }
    renameSync(temporary, file);
    await flushFolder(dirname(resolve(file)));
  } catch (error) {
    rmSync(temporary, { force: true });
    throw writeTrouble(file, error);
  }
}

function filesOf(folder: string): [string, BagFile][] {
  const { files, findings } = lookThrough(realpathSync(folder));
  if (findings.length > 0) throw new CatalogueError(findings);
  const named = [...files].map(([path, file]) => ({ bytes: Buffer.from(path), path, file }));
  named.sort((one, other) => Buffer.compare(one.bytes, other.bytes));
  return named.map(({ path, file }) => [path, file]);
}

function writeZip(
  zip: number,
  files: readonly [string, BagFile][],
  top: string,
  step?: ByteStep,
): ZipEntry[] {
  const total = files.reduce((sum, [, { size }]) => sum + size, 0);
  const buffer = Buffer.allocUnsafe(PIECE);
  const entries: ZipEntry[] = [];
  let [at, done] = [0, 0];
  for (const [path, { size, real }] of files) {
    const entry = { name: Buffer.from(`${top}/${path}`), size, crc32: 0, at };
    const header = fileHeader(entry);
    writeAll(zip, header);
    const source = openFile(real);
    try {
      const bytes = readThrough(source, buffer, (piece) => {
        entry.crc32 = crc32(piece, entry.crc32);
        writeAll(zip, piece);
        done += piece.length;
        step?.(done, total);
      });
      if (bytes !== size) {
        const found = 'The file was changed while it was being packed.';
        throw refusal(
          'bag.source-changed',
          real,
          found,
          'Close the program that works on it, and run again.',
        );
      }
    } finally {
      closeSync(source);
    }
    const sum = Buffer.alloc(4);
    sum.writeUInt32LE(entry.crc32);
    writeSync(zip, sum, 0, 4, at + CRC_AT);
    entries.push(entry);
    at += header.length + size;
  }
  let length = 0;
  for (const entry of entries) {
    const bytes = directoryEntry(entry);
    writeAll(zip, bytes);
    length += bytes.length;
  }
  writeAll(zip, directoryEnd(entries.length, at, length));
  return entries;
}

function readBack(zip: number, entries: readonly ZipEntry[], file: string): void {
  const buffer = Buffer.allocUnsafe(PIECE);
  for (const entry of entries) {
    let sum = 0;
    const start = entry.at + fileHeader(entry).length;
    for (let done = 0; done < entry.size; ) {
      const got = readSync(zip, buffer, 0, Math.min(PIECE, entry.size - done), start + done);
      if (got === 0) break;
      sum = crc32(buffer.subarray(0, got), sum);
      done += got;
    }
    if (sum === entry.crc32) continue;
    const found = 'What was written, read back, is not the same as what was packed.';
    const advice = 'The disk, its cable or the memory of the computer may be failing. Pack on another disk.';
    throw refusal('bag.copy-differs', file, found, advice);
  }
}

function refusal(rule: string, file: string, found: string, advice: string): CatalogueError {
  return new CatalogueError([{ rule, weight: 'must', place: { file }, found, advice }]);
}
