import { readdir, readFile, stat } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { PRINTED_FILE, type Printed, readPrinted } from '../export/labels/printed.ts';
import { INFO_FILE, readInfo } from '../handover/bag/bag-info.ts';
import type { Catalogue } from './catalogue.ts';
import { CatalogueError } from './finding.ts';
import { SETTINGS_FILE, unreadable } from './load-findings.ts';
import { NUMBERS_FILE } from './numbers-file.ts';

/** The folder in a catalogue folder into which `export` writes where no other is named. */
const EXPORT_FOLDER = 'finding-aid';

/** A moment: for comparing, and the day it was here, as YYYY-MM-DD. */
interface Moment {
  /** In milliseconds. */
  at: number;
  day: string;
}

/** What earlier commands left in a catalogue folder, and beside it. */
export interface Traces {
  /** Labels printed before. */
  printed: Printed;
  /** The last export; undefined where there is none in the usual folder. */
  exported?: Moment & { folder: string };
  /** When what exports and packages are made from was last changed. */
  changed: Moment;
  /** Packages of this catalogue in folders beside it: the path from the catalogue folder, and the day of its making. */
  packages: readonly { path: string; day: string }[];
}

/**
 * Looks for what earlier commands left. Nothing is changed, and what cannot be looked at counts as not there.
 * @throws CatalogueError where the record of printed labels cannot be read
 */
export async function tracesOf({
  folder,
  listFile,
  settings,
}: Pick<Catalogue, 'folder' | 'listFile' | 'settings'>): Promise<Traces> {
  const exported = await newestOf(join(folder, EXPORT_FOLDER), await namesIn(join(folder, EXPORT_FOLDER)));
  const changed = await newestOf(folder, [SETTINGS_FILE, listFile, NUMBERS_FILE]);
  return {
    printed: await printedIn(folder),
    ...(exported !== undefined && { exported: { folder: EXPORT_FOLDER, ...exported } }),
    changed: changed ?? { at: 0, day: '' },
    packages: await packagesBeside(folder, settings),
  };
}

async function printedIn(folder: string): Promise<Printed> {
  try {
    return readPrinted(await readFile(join(folder, PRINTED_FILE)));
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return new Map();
    throw error instanceof CatalogueError ? error : new CatalogueError([unreadable(PRINTED_FILE, error)]);
  }
}

/** When the newest of these was written; undefined where none is there. */
async function newestOf(folder: string, names: readonly string[]): Promise<Moment | undefined> {
  let at: number | undefined;
  for (const name of names) {
    const found = await stat(join(folder, name)).catch(() => undefined);
    if (found !== undefined) at = Math.max(at ?? 0, found.mtimeMs);
  }
  return at === undefined ? undefined : { at, day: dayOf(new Date(at)) };
}

// As the clock on the wall has it, not that of Greenwich.
const dayOf = (moment: Date): string =>
  new Date(moment.getTime() - moment.getTimezoneOffset() * 60_000).toISOString().slice(0, 10);

const namesIn = (folder: string): Promise<string[]> => readdir(folder).catch(() => []);

/**
 * A package says in bag-info.txt whose it is: the prefix of the family (never that of the recipient) and the title.
 * Packages elsewhere, and those that are one ZIP file, are not found.
 */
async function packagesBeside(
  folder: string,
  { prefix, title }: Catalogue['settings'],
): Promise<Traces['packages']> {
  const shelf = dirname(resolve(folder));
  const found: { path: string; day: string }[] = [];
  for (const name of await namesIn(shelf)) {
    const info = await readFile(join(shelf, name, INFO_FILE), 'utf8').catch(() => undefined);
    if (info === undefined) continue;
    const fields = new Map(readInfo(info));
    const [day, description = ''] = [fields.get('Bagging-Date'), fields.get('External-Description')];
    const isOurs =
      fields.get('Internal-Sender-Identifier') === prefix && description.startsWith(plain(title));
    if (isOurs && day !== undefined && /^\d{4}-\d\d-\d\d$/.test(day)) found.push({ path: `../${name}`, day });
  }
  return found;
}

// As bag-info.txt has it.
const plain = (text: string) => text.replace(/\s+/g, ' ').trim();
