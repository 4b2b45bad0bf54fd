import { cpSync } from 'node:fs';
import { join } from 'node:path';

/** Copies the example to where nothing is yet, without what the program has kept for itself where it was tried out. */
export function copyExample(to: string): void {
  const filter = (path: string) => !/[/\\]\.kinfonds-[^/\\]*$/.test(path);
  cpSync(join('examples', 'quill-ferry'), to, { recursive: true, filter });
}
