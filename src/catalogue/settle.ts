import { readdir, readFile, rm, stat } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { CatalogueError, type Finding } from './finding.ts';
import { finishSettling } from './finish-settling.ts';
import { LIST_FILE, unreadable } from './load-findings.ts';
import { NUMBERS_FILE } from './numbers-file.ts';
import { digestOf, JOURNAL_FILE, type Journal, readJournal, STAGED_NAME } from './settling-journal.ts';
import { type Staged, stage, writeWhole } from './write-whole.ts';

/** What settling writes into a catalogue folder. */
interface SettledFiles {
  /** The new content of numbers.csv. */
  numbers: string;
  /** The new content of list.csv, where things in it were given numbers. */
  list?: Uint8Array;
  /** The content of the list from which all this was worked out. */
  expected: Uint8Array;
  /** The name of its file, which is list.csv where it is written to. */
  listFile?: string;
}

/**
 * Writes the settled numbers, and the list with its numbers, both or neither: whenever the program is stopped, the
 * folder loads either as it was or as it is to be. Both are written beside their places first; the point of no return
 * is the moment at which the journal gets its name; from then on `finishSettling` brings it to its end, here or when
 * the folder is next loaded. What they held before is kept beside them where it changes, as
 * `list.before-numbers.csv` and `numbers.before.csv`, or under a further number.
 * @returns the name of the file in which the list is kept as it was, where it was written to
 * @throws CatalogueError where the list is not as expected any more, or the folder cannot be written to; then
 * everything is as it was
 */
export async function writeSettled(folder: string, files: SettledFiles): Promise<string | undefined> {
  if ((await readJournal(folder)) !== undefined) throw new CatalogueError([atTheSameTime()]);
  const { listFile = LIST_FILE } = files;
  const old = await contentOf(folder, listFile);
  if (old === undefined || !sameBytes(old, files.expected)) throw new CatalogueError([listChanged(listFile)]);
  await sweep(folder);
  const kept = await commit(folder, files, old);
  const given = await finishSettling(folder);
  if (given.length > 0) throw new CatalogueError(given.map((finding) => ({ ...finding, weight: 'must' })));
  return kept;
}

/** Up to the point of no return; what fails before it is taken away again. */
async function commit(
  folder: string,
  { numbers, list, listFile = LIST_FILE }: SettledFiles,
  old: Uint8Array,
): Promise<string | undefined> {
  // What is private in the list is so in what is made from it.
  const mode = await modeOf(folder, listFile);
  const before = await contentOf(folder, NUMBERS_FILE);
  const staged: Staged[] = [];
  const entries: Journal['files'] = [];
  const put = async (
    name: Journal['files'][number]['name'],
    content: string | Uint8Array,
    was?: Uint8Array,
  ) => {
    const one = await stage(join(folder, name), content, was === undefined ? { mode } : {});
    staged.push(one);
    const temporary = basename(one.temporary);
    entries.push({
      name,
      staged: temporary,
      was: was === undefined ? null : digestOf(was),
      becomes: digestOf(content),
    });
  };
  const made: string[] = [];
  const keepAs = async (file: string, name: string, content: Uint8Array) => {
    const kept = await keep(folder, file, name, content);
    if (kept.isNew) made.push(kept.path);
    return basename(kept.path);
  };
  try {
    if (list !== undefined) await put(LIST_FILE, list, old);
    await put(NUMBERS_FILE, numbers, before);
    const kept = list === undefined ? undefined : await keepAs(LIST_FILE, 'list.before-numbers', old);
    if (before !== undefined && digestOf(before) !== digestOf(numbers)) {
      await keepAs(NUMBERS_FILE, 'numbers.before', before);
    }
    const journal: Journal = { format: 'kinfonds settling', version: 1, files: entries };
    await writeWhole(join(folder, JOURNAL_FILE), `${JSON.stringify(journal, undefined, 2)}\n`);
    return kept;
  } catch (error) {
    for (const one of staged) await one.discard();
    for (const path of made) await rm(path, { force: true });
    throw error;
  }
}

/**
 * Keeps a file as it was, under a name that nothing else has; what was kept before is never written over.
 * @returns where it is kept, and whether it was not kept there already
 */
async function keep(
  folder: string,
  file: string,
  name: string,
  old: Uint8Array,
): Promise<{ path: string; isNew: boolean }> {
  const mode = await modeOf(folder, file);
  for (let count = 1; ; count++) {
    const path = join(folder, `${name}${count === 1 ? '' : `-${count}`}.csv`);
    const there = await readFile(path).catch(({ code }: NodeJS.ErrnoException) => code);
    if (there === 'ENOENT') {
      const staged = await stage(path, old, { mode });
      await staged.commit();
      return { path, isNew: true };
    }
    if (there instanceof Uint8Array && sameBytes(there, old)) return { path, isNew: false };
  }
}

const modeOf = async (folder: string, file: string) => (await stat(join(folder, file))).mode & 0o777;

/** Takes away what a program that was stopped has left beside its place. No journal stands, so nothing needs it. */
async function sweep(folder: string): Promise<void> {
  for (const entry of await readdir(folder, { withFileTypes: true })) {
    if (entry.isFile() && STAGED_NAME.test(entry.name)) await rm(join(folder, entry.name), { force: true });
  }
}

async function contentOf(folder: string, name: string): Promise<Uint8Array | undefined> {
  try {
    return await readFile(join(folder, name));
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
    throw new CatalogueError([unreadable(name, error)]);
  }
}

const sameBytes = (one: Uint8Array, other: Uint8Array) => Buffer.compare(one, other) === 0;

function listChanged(file: string): Finding {
  const found = 'The list has been changed since it was read, so no number was settled.';
  const advice = 'Save it and close it in other programs, then settle again.';
  return { rule: 'settle.list-changed', weight: 'must', place: { file }, found, advice };
}

function atTheSameTime(): Finding {
  const found = 'Numbers are being settled in this folder by another command, or one was stopped just now.';
  const advice = 'Wait until it has ended, then settle again.';
  return { rule: 'settle.at-the-same-time', weight: 'must', place: { file: JOURNAL_FILE }, found, advice };
}
