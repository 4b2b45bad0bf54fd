import { mkdir, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { CatalogueError } from './finding.ts';
import { writeTrouble } from './write-trouble.ts';

/**
 * Makes a folder, with the folders above it, if it is not there.
 * @returns the uppermost folder that was made, undefined where all were there
 * @throws CatalogueError in plain words where a file is in the way or the folder cannot be made
 */
export async function makeFolder(folder: string): Promise<string | undefined> {
  if (await isFolder(folder)) return undefined;
  // Step by step: Node's own recursive way never ends in places such as /proc, where nothing can be made.
  const above = dirname(folder);
  const first = above === folder ? undefined : await makeFolder(above);
  try {
    await mkdir(folder);
    return first ?? folder;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST' && (await isFolder(folder))) return first;
    throw writeTrouble(join(folder, 'the folder'), error);
  }
}

async function isFolder(path: string): Promise<boolean> {
  try {
    if ((await stat(path === '' ? '.' : path)).isDirectory()) return true;
  } catch {
    return false;
  }
  const found = 'A file stands where the folder is to be.';
  const advice = 'Choose another name for the folder, or move the file.';
  throw new CatalogueError([
    { rule: 'write.file-in-the-way', weight: 'must', place: { file: path }, found, advice },
  ]);
}
