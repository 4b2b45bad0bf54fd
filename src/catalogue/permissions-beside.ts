import { readdir, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { type Content, type Staged, stage } from './write-whole.ts';

/**
 * What tells of the things: the settings, a finding aid that was taken in, and every table that may be the list (which
 * of them it is, the settings may say). The names stand here again, so that nothing is loaded for them.
 */
const TELLING = /^(?:collection\.yaml|finding-aid\.json|[^.].*\.(?:csv|tsv|xlsx|ods))$/i;

/**
 * What everybody may do with the files of a catalogue that tell of its things. What the program keeps beside them tells
 * of the same things, and is to be no more open than the most private one.
 * @returns bits of a mode, 0o666 at most; all of them where nothing can be looked at
 */
export async function permissionsBeside(folder: string): Promise<number> {
  const names = await readdir(folder).catch(() => []);
  const modes = await Promise.all(
    names
      .filter((name) => TELLING.test(name))
      .map((name) =>
        stat(join(folder, name)).then(
          ({ mode }) => mode,
          () => 0o666,
        ),
      ),
  );
  return modes.reduce((all, mode) => all & mode, 0o666);
}

/**
 * Writes a file of the program's own beside a catalogue, as `stage` does, and no more open than what it tells of.
 * @throws as `stage` does
 */
export async function stageBeside(path: string, content: Content): Promise<Staged> {
  return stage(path, content, { most: await permissionsBeside(dirname(path)) });
}
