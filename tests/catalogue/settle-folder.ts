import { spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { numbersToCsv } from '../../src/catalogue/numbers-file.ts';
import type { Settled } from '../../src/catalogue/settled.ts';
import { JOURNAL_FILE } from '../../src/catalogue/settling-journal.ts';
import { built } from './own-program.ts';

export const YAML = 'title: Quill family papers\nprefix: QF\nrepository:\n  name: The Ferry House\n';
export const OLD_LIST = 'number,title\n1,Ferry licence\n,Letter from Ada\n';
export const NEW_LIST = 'number,title\n1,Ferry licence\n2,Letter from Ada\n';
export const KEPT = 'list.before-numbers.csv';
export const KEPT_NUMBERS = 'numbers.before.csv';

const settled = (number: string, title: string): Settled => ({
  number,
  title,
  place: [1, 1, Number(number)],
  groups: ['Papers'],
  folder: 1,
  box: '1',
});
export const OLD_NUMBERS = [settled('1', 'Ferry licence')];
export const NEW_NUMBERS = [...OLD_NUMBERS, settled('2', 'Letter from Ada')];

const root = mkdtempSync(join(tmpdir(), 'kinfonds-settle-'));
let count = 0;
// Several files of tests may have folders here.
process.once('exit', () => rmSync(root, { recursive: true, force: true }));

/** A catalogue folder before settling; with or without numbers that were settled earlier. */
export function oldFolder(earlier: boolean): string {
  const folder = join(root, String(++count));
  mkdirSync(folder);
  writeFileSync(join(folder, 'collection.yaml'), YAML);
  writeFileSync(join(folder, 'list.csv'), OLD_LIST);
  if (earlier) writeFileSync(join(folder, 'numbers.csv'), numbersToCsv(OLD_NUMBERS));
  return folder;
}

/** The same files in a folder of their own. */
export function copyOf(folder: string): string {
  const copy = join(root, String(++count));
  cpSync(folder, copy, { recursive: true });
  return copy;
}

/** What a user sees of a folder: the list to the byte, the numbers of its things, and the settled ones. */
export async function seen(folder: string) {
  const { list, things, settled } = await loadCatalogue(folder);
  return { list: Buffer.from(list).toString(), numbers: things.map(({ number }) => number), settled };
}

export const asItWas = (earlier: boolean) => ({
  list: OLD_LIST,
  numbers: ['1', undefined],
  settled: earlier ? OLD_NUMBERS : [],
});
export const asItIsToBe = { list: NEW_LIST, numbers: ['1', '2'], settled: NEW_NUMBERS };

export const textOf = (folder: string, name: string) => readFileSync(join(folder, name), 'utf8');
export const namesIn = (folder: string) => readdirSync(folder).sort();
export const leftovers = (folder: string) => namesIn(folder).filter((name) => name.endsWith('.part'));

/** JavaScript that settles a folder. */
export const settling = (folder: string) => `
  const { writeSettled } = await import(${built('catalogue/settle.js')});
  await writeSettled(${JSON.stringify(folder)}, {
    numbers: ${JSON.stringify(numbersToCsv(NEW_NUMBERS))},
    list: Buffer.from(${JSON.stringify(NEW_LIST)}),
    expected: Buffer.from(${JSON.stringify(OLD_LIST)}),
  });`;

/** JavaScript that brings a settling to its end. */
export const finishing = (folder: string) => `
  const { finishSettling } = await import(${built('catalogue/finish-settling.js')});
  await finishSettling(${JSON.stringify(folder)});`;

/**
 * Before each call with which a program changes something on the disk, and in the middle of each write, it counts; at
 * the given count the system kills it, as `kill -9` does. Between two changes the disk is the same at any moment.
 */
const DIES = `
  import fs from 'node:fs';
  import disk from 'node:fs/promises';
  import { syncBuiltinESMExports } from 'node:module';
  let left = Number(process.argv[1]);
  const step = () => { if (left-- === 0) process.kill(process.pid, 'SIGKILL'); };
  const watch = (of, name, changes = () => true) => {
    const real = of[name];
    of[name] = function (...given) { if (changes(...given)) step(); return real.apply(this, given); };
  };
  for (const name of ['chmod', 'rename', 'rm']) watch(disk, name);
  const handle = await disk.open(process.execPath);
  watch(Object.getPrototypeOf(handle), 'chmod');
  await handle.close();
  watch(disk, 'open', (path, flags) => flags !== 'r');
  const write = fs.writeSync;
  fs.writeSync = (file, bytes, from) => {
    step();
    return write(file, bytes, from, from === 0 ? Math.ceil(bytes.length / 2) : bytes.length - from);
  };
  syncBuiltinESMExports();
`;

/** Runs JavaScript that dies at a step. @returns whether it came to its end before that */
export function runUntil(step: number, script: string): boolean {
  const { signal, status, stderr } = spawnSync(
    process.execPath,
    ['--input-type=module', '-e', `${DIES}\n${script}`, String(step)],
    { encoding: 'utf8' },
  );
  if (signal === 'SIGKILL') return false;
  if (status === 0) return true;
  throw new Error(stderr);
}

const stops = new Map<boolean, string[]>();

/** A folder for each step at which settling can be stopped, in order; the last is where it came to its end. */
export function everyStop(earlier: boolean): readonly string[] {
  const known = stops.get(earlier);
  if (known !== undefined) return known;
  const folders: string[] = [];
  for (let step = 0, ended = false; !ended; step++) {
    const folder = oldFolder(earlier);
    ended = runUntil(step, settling(folder));
    folders.push(folder);
  }
  stops.set(earlier, folders);
  return folders;
}

/** A folder in which settling was stopped at the first step after which it looks so. */
export function stoppedWhere(looksSo: (folder: string) => boolean): string {
  const folder = everyStop(true).find(looksSo);
  if (folder === undefined) throw new Error('It looks so at no step.');
  return copyOf(folder);
}

export const afterNoReturn = (folder: string) =>
  existsSync(join(folder, JOURNAL_FILE)) && textOf(folder, 'list.csv') === OLD_LIST;
export const betweenTheTwo = (folder: string) =>
  existsSync(join(folder, JOURNAL_FILE)) && textOf(folder, 'list.csv') === NEW_LIST;
