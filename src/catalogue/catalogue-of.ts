import { readdir, rm, rmdir } from 'node:fs/promises';
import { join } from 'node:path';
import { beginCatalogue } from './begin.ts';
import { CatalogueError } from './finding.ts';
import type { FindingAid } from './finding-aid.ts';
import { FINDING_AID_FILE, findingAidToJson } from './finding-aid-file.ts';
import { SETTINGS_FILE } from './load-findings.ts';
import { makeFolder } from './make-folder.ts';
import { settings } from './settings.ts';
import { writeTrouble } from './write-trouble.ts';
import { writeWhole } from './write-whole.ts';

/**
 * Makes a catalogue folder of a finding aid that was taken in: finding-aid.json with all of it, collection.yaml with
 * what a list needs to go on from there, and a list.csv of headings for new things.
 * @returns the paths of the files made
 * @throws CatalogueError, with nothing changed, where the folder holds a catalogue already or cannot be written to
 */
export async function catalogueOf(aid: FindingAid, folder: string): Promise<string[]> {
  const made = await makeFolder(folder);
  const path = join(folder, FINDING_AID_FILE);
  let written = false;
  try {
    const there = await readdir(folder);
    const catalogue = [FINDING_AID_FILE, SETTINGS_FILE].filter((name) => there.includes(name));
    if (catalogue.length > 0) throw new CatalogueError([already(folder, catalogue)]);
    await writeWhole(path, findingAidToJson(aid));
    written = true;
    const files = await beginCatalogue(folder, startOf(aid));
    return [path, ...files];
  } catch (error) {
    if (written) await rm(path, { force: true });
    if (made !== undefined) await rmdir(made).catch(() => {});
    throw writeTrouble(path, error);
  }
}

function startOf({ collection, control }: FindingAid) {
  const keeper = collection.repository ?? control.maintenanceAgency;
  return { title: collection.title, prefix: prefixOf(collection.referenceCode), repository: keeper.name };
}

/** The reference code of the whole as the beginning of those of new things; NEW where it cannot be one. */
function prefixOf(code: string | undefined): string {
  const usable = code?.replace(/[^\p{L}\p{N} ._-]+/gu, '-').replace(/^[ ._-]+|[ ._-]+$/gu, '');
  return usable !== undefined && settings.shape.prefix.safeParse(usable).success ? usable : 'NEW';
}

const already = (folder: string, names: readonly string[]) => ({
  rule: 'take-in.already',
  weight: 'must' as const,
  place: { file: folder },
  found: `There is a catalogue here already: it has ${names.join(' and ')}.`,
  advice: 'Take the finding aid into another folder.',
});
