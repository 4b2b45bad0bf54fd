import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { readSettings } from '../intake/collection-yaml.ts';
import { type Preview, previewList } from '../intake/preview.ts';
import { findList } from './find-list.ts';
import { CatalogueError, type Finding } from './finding.ts';
import { listSettings } from './list-settings.ts';
import { knownFrom } from './load.ts';
import { folderTrouble, SETTINGS_FILE, unreadable } from './load-findings.ts';
import { localDay } from './local-day.ts';

/**
 * How the list of a folder is understood, also where it is not yet a catalogue, or where something in it must be put
 * right first.
 * @throws CatalogueError where the folder or its list cannot be read at all
 */
export async function previewCatalogue(
  folder: string,
): Promise<{ tables: readonly Preview[]; findings: readonly Finding[] }> {
  const names = await readdir(folder).catch(({ code }: NodeJS.ErrnoException) => {
    throw new CatalogueError([folderTrouble(code, folder)]);
  });
  const yaml = names.includes(SETTINGS_FILE) ? await readFile(join(folder, SETTINGS_FILE)) : undefined;
  const { settings } = yaml === undefined ? {} : readSettings(yaml, SETTINGS_FILE);
  const known = knownFrom(settings, localDay());
  const { list, findings } = await findList(folder, names, known, settings?.list);
  if (list === undefined) throw new CatalogueError(findings);
  const read = previewList(list.bytes, list.file, known, settings?.list ?? listSettings.parse({}));
  if (read.tables.length === 0) throw new CatalogueError(read.findings);
  return read;
}

/**
 * How a list that is not yet in a catalogue folder is understood.
 * @throws CatalogueError where it cannot be read at all
 */
export async function previewFile(
  file: string,
): Promise<{ tables: readonly Preview[]; findings: readonly Finding[] }> {
  const bytes = await readFile(file).catch((error: unknown) => {
    throw new CatalogueError([unreadable(file, error)]);
  });
  const read = previewList(bytes, file, knownFrom(undefined, localDay()), listSettings.parse({}));
  if (read.tables.length === 0) throw new CatalogueError(read.findings);
  return read;
}
