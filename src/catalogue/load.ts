import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { readDate } from '../dates/index.ts';
import { readSettings } from '../intake/collection-yaml.ts';
import { readList } from '../intake/list.ts';
import type { Known } from '../intake/things.ts';
import type { Catalogue } from './catalogue.ts';
import { dateContextOf } from './date-context.ts';
import { CatalogueError, type Finding } from './finding.ts';
import { folderTrouble, LIST_FILE, noList, noSettings, SETTINGS_FILE, unreadable } from './load-findings.ts';
import { localDay } from './local-day.ts';
import type { Settings } from './settings.ts';

/**
 * Loads a catalogue folder.
 * @param today YYYY-MM-DD; a thing dated later is a finding
 * @throws CatalogueError with every problem of collection.yaml and of the list together, where one of them stops the work
 */
export async function loadCatalogue(folder: string, today = localDay()): Promise<Catalogue> {
  const names = await namesIn(folder);
  const findings: Finding[] = [];
  const contentOf = async (name: string, missing: () => Finding): Promise<Uint8Array | undefined> => {
    if (!names.includes(name)) findings.push(missing());
    else {
      try {
        return await readFile(join(folder, name));
      } catch (error) {
        findings.push(unreadable(name, error));
      }
    }
    return undefined;
  };
  const yaml = await contentOf(SETTINGS_FILE, () => noSettings(folder));
  const csv = await contentOf(LIST_FILE, () => noList(folder, names));

  const { settings, findings: ofSettings } =
    yaml === undefined ? noneRead() : readSettings(yaml, SETTINGS_FILE);
  const list =
    csv === undefined ? { things: [], findings: [] } : readList(csv, LIST_FILE, known(settings, today));
  const all = [...findings, ...ofSettings, ...list.findings];
  const musts = all.filter(({ weight }) => weight === 'must');
  if (settings === undefined || musts.length > 0) {
    throw new CatalogueError([...musts, ...all.filter(({ weight }) => weight !== 'must')]);
  }
  return { folder, settings, things: list.things, findings: all };
}

/** What the settings say that helps to read the list. */
function known(settings: Settings | undefined, today: string): Known {
  if (settings === undefined) return {};
  const { people } = settings;
  const context = dateContextOf(settings);
  const born = (written: string | undefined) => {
    const reading = written === undefined ? undefined : readDate(written, context);
    return reading?.kind === 'date' ? { born: reading.edtf } : {};
  };
  return {
    names: people.flatMap(({ name, also }) => [name, ...also]),
    dates: {
      ...context,
      today,
      people: people.map(({ name, also, born: written }) => ({ name, also, ...born(written) })),
    },
  };
}

function noneRead(): ReturnType<typeof readSettings> {
  return { findings: [] };
}

async function namesIn(folder: string): Promise<string[]> {
  try {
    return await readdir(folder);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    throw new CatalogueError([folderTrouble(code, folder)]);
  }
}
