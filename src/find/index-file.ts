import { closeSync, constants, fstatSync, lstatSync, openSync, readSync } from 'node:fs';
import { basename, join } from 'node:path';
import { checked, IndexBroken, type Source, withCheck } from './bytes.ts';
import type { Stamps } from './stamps.ts';

/** Stands beside the catalogue and may be deleted at any time. */
const INDEX_FILE = '.kinfonds-find';
/** To be raised whenever an index made before could not be read, or would be read as something else. */
const FORMAT = 3;
const MAGIC = Buffer.from('kinfonds find\n');

/** From what an index was made. */
interface Origin {
  format: number;
  /** Of the program. */
  version: string;
  /** YYYY-MM-DD: a date may be read otherwise tomorrow, for none lies in the future. */
  today: string;
  /** As this machine writes numbers. */
  littleEndian: boolean;
  /** The file that is the list. */
  list: string;
  stamps: Stamps;
  /** In milliseconds since 1970. */
  stampedAt: number;
  digest: string;
}

/** Whether an index is one that this program would make today, whatever the list holds. */
export const isOurs = (origin: Origin, version: string, today: string): boolean =>
  origin.format === FORMAT &&
  origin.version === version &&
  origin.today === today &&
  origin.littleEndian === littleEndian &&
  // Where the index was made by somebody else, nothing outside the folder is to be touched.
  basename(origin.list) === origin.list;

const littleEndian = new Uint8Array(new Uint16Array([1]).buffer)[0] === 1;

/** An index on the disk. */
export interface IndexFile {
  origin: Origin;
  /** Of the index itself, behind what says from what it was made. */
  source: Source;
  close(): void;
}

/** Where an index comes from, save what this program and machine add. */
type OwnOrigin = Omit<Origin, 'format' | 'littleEndian'>;

/** The file's first bytes: what it is, and from what it was made. */
function headOf(origin: OwnOrigin): Buffer {
  const text = withCheck(Buffer.from(JSON.stringify({ format: FORMAT, littleEndian, ...origin })));
  const length = Buffer.alloc(4);
  length.writeUInt32LE(text.length);
  return Buffer.concat([MAGIC, length, text]);
}

/** Opens the index of a catalogue folder; undefined where there is none that can be read. */
export function openIndexFile(folder: string): IndexFile | undefined {
  let file: number;
  try {
    // Neither a link, which may lead anywhere, nor a pipe, which would never answer.
    file = openSync(
      join(folder, INDEX_FILE),
      constants.O_RDONLY | (constants.O_NOFOLLOW ?? 0) | (constants.O_NONBLOCK ?? 0),
    );
  } catch {
    return undefined;
  }
  try {
    const stat = fstatSync(file);
    if (!stat.isFile()) throw new IndexBroken();
    const whole = sourceFrom(file, 0, stat.size);
    const start = MAGIC.length + 4;
    const first = whole.read(0, start);
    if (!first.subarray(0, MAGIC.length).equals(MAGIC)) throw new IndexBroken();
    const length = first.readUInt32LE(MAGIC.length);
    const origin = JSON.parse(checked(whole.read(start, length)).toString()) as Origin;
    return {
      origin,
      source: sourceFrom(file, start + length, stat.size - start - length),
      close: () => closeSync(file),
    };
  } catch {
    closeSync(file);
    return undefined;
  }
}

function sourceFrom(file: number, start: number, size: number): Source {
  return {
    size,
    read(at, length) {
      if (!(at >= 0 && length >= 0 && at + length <= size)) throw new IndexBroken();
      const bytes = Buffer.allocUnsafe(length);
      for (let done = 0; done < length; ) {
        const read = readSync(file, bytes, done, length - done, start + at + done);
        if (read === 0) throw new IndexBroken();
        done += read;
      }
      return bytes;
    },
  };
}

/**
 * Writes an index beside a catalogue, with the permissions of what it was made from. Where that is not possible nothing
 * is said: it only makes the next answer come sooner.
 */
export async function writeIndexFile(folder: string, origin: OwnOrigin, index: Uint8Array): Promise<void> {
  const path = join(folder, INDEX_FILE);
  try {
    const there = lstatSync(path, { throwIfNoEntry: false });
    if (there !== undefined && !there.isFile()) return;
    const { stat } = await import('node:fs/promises');
    const { permissionsBeside } = await import('../catalogue/permissions-beside.ts');
    const { stage } = await import('../catalogue/write-whole.ts');
    // Whoever may not read the list may not read it here.
    const { mode } = await stat(join(folder, origin.list));
    const staged = await stage(path, [headOf(origin), index], {
      mode: mode & (await permissionsBeside(folder)),
    });
    await staged.commit();
  } catch {}
}
