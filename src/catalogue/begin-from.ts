import { readFile } from 'node:fs/promises';
import { basename, join, resolve } from 'node:path';
import { type Preview, previewList } from '../intake/preview.ts';
import { listsIn, makeCatalogue } from './begin.ts';
import type { Start } from './begin-template.ts';
import { CatalogueError, type Finding } from './finding.ts';
import { listSettings } from './list-settings.ts';
import { knownFrom } from './load.ts';
import { unreadable } from './load-findings.ts';
import { localDay } from './local-day.ts';
import { sayCommand, typed } from './say-command.ts';

/** Under which name a list of each form is kept. */
const NAMES: Readonly<Record<string, string>> = {
  csv: 'list.csv',
  txt: 'list.csv',
  tsv: 'list.tsv',
  xlsx: 'list.xlsx',
  ods: 'list.ods',
};

/**
 * Makes a catalogue folder around a list that somebody has kept already: a copy of it, byte for byte, under the name
 * that a list has, and a collection.yaml.
 * @returns the paths of the files made, how the list is understood, and what was found in it
 * @throws CatalogueError, with nothing changed, where the list cannot be read as a table at all, where the folder has a
 * list or a collection.yaml already, or where the files cannot be written
 */
export async function beginFrom(
  folder: string,
  source: string,
  start: Start = {},
): Promise<{ files: string[]; tables: Preview[]; findings: readonly Finding[] }> {
  const form = /\.([a-z]+)$/i.exec(source)?.[1]?.toLowerCase() ?? '';
  const name = NAMES[form];
  if (name === undefined) throw new CatalogueError([noForm(source)]);
  const bytes = await readFile(source).catch((error: unknown) => {
    throw new CatalogueError([unreadable(source, error)]);
  });
  const read = previewList(bytes, name, knownFrom(undefined, localDay()), listSettings.parse({}));
  if (read.tables.length === 0)
    throw new CatalogueError(read.findings.map((one) => ({ ...one, place: { ...one.place, file: source } })));
  const files = await makeCatalogue(folder, start, (there) => {
    const lists = listsIn(there);
    if (lists.some((list) => resolve(folder, list) === resolve(source)) && basename(source) === name)
      return [];
    if (lists.length > 0) throw new CatalogueError([listThere(folder, lists)]);
    return [[name, bytes]];
  });
  return { files, ...read };
}

function noForm(source: string): Finding {
  const found =
    'By its name this is no list: it ends neither with .csv, .tsv or .txt nor with .xlsx or .ods.';
  const advice = 'Open it in a spreadsheet program and save it as XLSX.';
  return { rule: 'begin.no-list', weight: 'must', place: { file: source }, found, advice };
}

function listThere(folder: string, lists: readonly string[]): Finding {
  return {
    rule: 'begin.list-there',
    weight: 'must',
    place: { file: folder },
    found: `The folder has a list already: ${lists.join(' and ')}.`,
    advice: `Take it out of the folder, or begin with it: ${sayCommand('begin', folder, '--from', typed(join(folder, lists[0] ?? '')))}`,
  };
}
