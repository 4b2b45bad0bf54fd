import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { isPath } from './facts.ts';

/** What systems put into folders by themselves (from memory); nobody has to list it. */
const OF_THE_SYSTEM = /^(?:thumbs\.db|ehthumbs\.db|desktop\.ini|icon\r|__macosx)$/i;

/**
 * The files that lie where digital copies do: below `copies/`, and below every other folder in which the list names one.
 * Hidden files are left out, and links to folders are not followed.
 * @param named paths of copies as the list names them
 * @returns paths below the catalogue folder, with forward slashes, in order
 */
export async function filesBelow(folder: string, named: readonly string[] = []): Promise<string[]> {
  const tops = new Set(['copies']);
  for (const path of named) {
    const slash = path.indexOf('/');
    if (slash > 0 && isPath(path)) tops.add(path.slice(0, slash));
  }
  const files = new Set<string>();
  for (const top of tops) {
    if (top !== '.' && top !== '..') await collect(folder, top, files);
  }
  return [...files].sort();
}

async function collect(folder: string, below: string, files: Set<string>): Promise<void> {
  const entries = await readdir(join(folder, below), { withFileTypes: true }).catch(() => []);
  for (const entry of entries) {
    if (entry.name.startsWith('.') || OF_THE_SYSTEM.test(entry.name)) continue;
    const path = `${below}/${entry.name}`;
    if (entry.isDirectory()) await collect(folder, path, files);
    else files.add(path);
  }
}
