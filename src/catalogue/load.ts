import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { readDate } from '../dates/index.ts';
import { sizeFindings } from '../housing/piece.ts';
import { stockFrom } from '../housing/stock.ts';
import { readSettings } from '../intake/collection-yaml.ts';
import { readList } from '../intake/list.ts';
import { readNumbers } from '../intake/numbers.ts';
import type { Known } from '../intake/things.ts';
import type { Catalogue } from './catalogue.ts';
import { dateContextOf } from './date-context.ts';
import { CatalogueError, type Finding } from './finding.ts';
import { finishSettling } from './finish-settling.ts';
import { folderTrouble, LIST_FILE, noList, noSettings, SETTINGS_FILE, unreadable } from './load-findings.ts';
import { localDay } from './local-day.ts';
import { NUMBERS_FILE } from './numbers-file.ts';
import type { Settings } from './settings.ts';
import { JOURNAL_FILE } from './settling-journal.ts';

/**
 * Loads a catalogue folder; a settling of numbers that was stopped midway is brought to its end first.
 * @param today YYYY-MM-DD; a thing dated later is a finding
 * @throws CatalogueError with every problem of collection.yaml, of the list and of the settled numbers together, where
 * one of them stops the work
 */
export async function loadCatalogue(folder: string, today = localDay()): Promise<Catalogue> {
  const findings: Finding[] = [];
  if ((await namesIn(folder)).includes(JOURNAL_FILE)) findings.push(...(await finishSettling(folder)));
  const names = await namesIn(folder);
  const contentOf = async (name: string, missing?: () => Finding): Promise<Uint8Array | undefined> => {
    if (!names.includes(name)) {
      if (missing !== undefined) findings.push(missing());
    } else {
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
  const numbers = await contentOf(NUMBERS_FILE);

  const { settings, findings: ofSettings } =
    yaml === undefined ? noneRead() : readSettings(yaml, SETTINGS_FILE);
  const list =
    csv === undefined ? { things: [], findings: [] } : readList(csv, LIST_FILE, known(settings, today));
  const settled = numbers === undefined ? { rows: [], findings: [] } : readNumbers(numbers, NUMBERS_FILE);
  const ofStock =
    settings === undefined ? [] : stockFrom(settings.housing, settings.repository.country).findings;
  const ofSizes = sizeFindings(list.things);
  const all = [...findings, ...ofSettings, ...ofStock, ...list.findings, ...ofSizes, ...settled.findings];
  const musts = all.filter(({ weight }) => weight === 'must');
  if (settings === undefined || csv === undefined || musts.length > 0) {
    throw new CatalogueError([...musts, ...all.filter(({ weight }) => weight !== 'must')]);
  }
  return { folder, settings, things: list.things, list: csv, settled: settled.rows, findings: all };
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
