import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { readDate } from '../dates/index.ts';
import { sizeFindings } from '../housing/size-findings.ts';
import { stockFrom } from '../housing/stock.ts';
import { readSettings } from '../intake/collection-yaml.ts';
import { readNumbers } from '../intake/numbers.ts';
import type { Known } from '../intake/things.ts';
import type { Catalogue } from './catalogue.ts';
import { dateContextOf } from './date-context.ts';
import { findList } from './find-list.ts';
import { CatalogueError, type Finding } from './finding.ts';
import type { FindingAid } from './finding-aid.ts';
import { FINDING_AID_FILE, findingAidFromJson } from './finding-aid-file.ts';
import { finishSettling } from './finish-settling.ts';
import { inList } from './list-places.ts';
import { folderTrouble, noSettings, SETTINGS_FILE, unreadable } from './load-findings.ts';
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
  const numbers = await contentOf(NUMBERS_FILE);
  const base = baseFrom(await contentOf(FINDING_AID_FILE), findings);

  const { settings, findings: ofSettings } =
    yaml === undefined ? noneRead() : readSettings(yaml, SETTINGS_FILE);
  const { list, findings: ofList } = await findList(
    folder,
    names,
    knownFrom(settings, today),
    settings?.list,
  );
  const settled = numbers === undefined ? { rows: [], findings: [] } : readNumbers(numbers, NUMBERS_FILE);
  const ofStock =
    settings === undefined ? [] : stockFrom(settings.housing, settings.repository.country).findings;
  const things = list?.things ?? [];
  const ofSizes = list === undefined ? [] : inList(sizeFindings(things), { ...list, listFile: list.file });
  // Where there is no catalogue yet, a list is not missed; a finding aid that was taken in has nothing in its list.
  const unasked = [
    ...(yaml === undefined ? ['catalogue.no-list'] : []),
    ...(base === undefined ? [] : ['list.no-things']),
  ];
  const ofRows = ofList.filter(({ rule }) => !unasked.includes(rule));
  const all = [...findings, ...ofSettings, ...ofStock, ...ofRows, ...ofSizes, ...settled.findings];
  const musts = all.filter(({ weight }) => weight === 'must');
  if (settings === undefined || list === undefined || musts.length > 0) {
    throw new CatalogueError([...musts, ...all.filter(({ weight }) => weight !== 'must')]);
  }
  const { bytes, file: listFile, sheets } = list;
  const read = { settings, things, list: bytes, listFile, sheets, settled: settled.rows };
  return { folder, ...read, ...(base !== undefined && { base }), findings: all };
}

/** What the settings say that helps to read the list. */
export function knownFrom(settings: Settings | undefined, today: string): Known {
  // No thing is from tomorrow, whether there are settings yet or not.
  if (settings === undefined) return { dates: { today } };
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

/** The finding aid that the folder began with, if it was taken in; what is wrong with it is noted. */
function baseFrom(bytes: Uint8Array | undefined, findings: Finding[]): FindingAid | undefined {
  if (bytes === undefined) return undefined;
  try {
    return findingAidFromJson(new TextDecoder().decode(bytes));
  } catch (error) {
    if (!(error instanceof CatalogueError)) throw error;
    findings.push(...error.findings);
    return undefined;
  }
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
