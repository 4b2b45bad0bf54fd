import { readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { flushFolder } from '../../catalogue/flush-folder.ts';

/**
 * Takes out of a bag in the making whatever does not belong into it, such as a file that an interrupted run had copied
 * and that is to be held back by now, and flushes its folders to the disk.
 * @param files paths of all that belongs into it
 * @throws Error where one of them is not there
 */
export async function sweep(bag: string, files: ReadonlySet<string>): Promise<void> {
  const folders = new Set(['', 'data']);
  for (const path of files) {
    for (let at = path.indexOf('/'); at > 0; at = path.indexOf('/', at + 1)) folders.add(path.slice(0, at));
  }
  let found = 0;
  for (const folder of folders) {
    for (const entry of readdirSync(join(bag, folder), { withFileTypes: true })) {
      const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
      const belongs = entry.isDirectory() ? folders.has(path) : entry.isFile() && files.has(path);
      if (!belongs) rmSync(join(bag, path), { recursive: true, force: true });
      else if (entry.isFile()) found += 1;
    }
  }
  if (found !== files.size)
    throw new Error(`${files.size - found} files that were written are not there any more.`);
  // The deepest first, so that none is lost with the folder above it.
  for (const folder of [...folders].reverse()) await flushFolder(join(bag, folder));
}
