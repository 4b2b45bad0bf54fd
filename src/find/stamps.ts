import { statSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';

/** The files an index is made from. Their names stand here again, so that nothing is loaded for them. */
const SOURCES = [
  ...['collection.yaml', 'numbers.csv', 'list.csv', 'list.tsv', 'list.xlsx', 'list.ods'],
  // Of a finding aid that was taken in.
  'finding-aid.json',
];

/** The list may have another name, which collection.yaml says. */
export const isUsualSource = (name: string): boolean => SOURCES.includes(name);

const sourcesWith = (list: string | undefined): string[] =>
  list === undefined || isUsualSource(list) ? SOURCES : [...SOURCES, list];

/** What tells a file from an edited one without reading it. Numbers as text, for they are too large for JSON. */
interface Stamp {
  size: string;
  modified: string;
  /** When the system last changed anything of it: unlike the time of the last change, nobody can set it back. */
  changed: string;
  inode: string;
}

/** For each source, its stamp; null where there is no such file. */
export type Stamps = (Stamp | null)[];

/**
 * In milliseconds: how long the time of a change may stay the same while a file is changed again. Two seconds on some
 * memory sticks (FAT; from memory), and a little for the clock.
 */
const TICK = 2500;

/**
 * @param list the name of the list, where that is known
 * @throws what the system says where a file may not be looked at
 */
export function stampsOf(folder: string, list?: string): Stamps {
  return sourcesWith(list).map((name) => {
    const found = statSync(join(folder, name), { bigint: true, throwIfNoEntry: false });
    if (found === undefined) return null;
    const { size, mtimeNs, ctimeNs, ino } = found;
    return { size: `${size}`, modified: `${mtimeNs}`, changed: `${ctimeNs}`, inode: `${ino}` };
  });
}

export const sameStamps = (one: Stamps, other: Stamps): boolean =>
  JSON.stringify(one) === JSON.stringify(other);

/**
 * Whether stamps that were taken at a time can be relied on: a file changed just before may have been changed again
 * without its stamp telling so.
 * @param takenAt milliseconds since 1970
 */
export function areSettled(stamps: Stamps, takenAt: number): boolean {
  return stamps.every(
    (stamp) => stamp === null || Number(BigInt(stamp.changed) / 1_000_000n) + TICK < takenAt,
  );
}

/** The content of the sources as one short text. @throws what the system says where a file may not be read */
export async function digestOf(folder: string, list?: string): Promise<string> {
  const { createHash } = await import('node:crypto');
  const hash = createHash('sha256');
  for (const name of sourcesWith(list)) {
    const bytes = await readFile(join(folder, name)).catch((error: NodeJS.ErrnoException) => {
      if (error.code === 'ENOENT') return undefined;
      throw error;
    });
    hash.update(bytes === undefined ? `${name} none;` : `${name} ${bytes.length};`);
    if (bytes !== undefined) hash.update(bytes);
  }
  return hash.digest('hex');
}
