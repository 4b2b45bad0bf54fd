import { readdir, rmdir } from 'node:fs/promises';
import { join } from 'node:path';
import { type Start, settingsTemplate } from './begin-template.ts';
import { beginWorkbook } from './begin-workbook.ts';
import { CatalogueError, type Finding } from './finding.ts';
import { LIST_FILE, SETTINGS_FILE } from './load-findings.ts';
import { makeFolder } from './make-folder.ts';
import { sayCommand } from './say-command.ts';
import { sayIssues } from './say-issue.ts';
import { settings } from './settings.ts';
import { COLUMNS } from './thing.ts';
import { writeTrouble } from './write-trouble.ts';
import { writeWhole } from './write-whole.ts';

// With a byte order mark, by which spreadsheet programs know that letters beyond English are in UTF-8.
const EMPTY_LIST = `\uFEFF${COLUMNS.join(',')}\r\n`;
const SMALL_WORDS = new Set([
  'a',
  'an',
  'and',
  'at',
  'by',
  'for',
  'from',
  'in',
  'of',
  'on',
  'the',
  'to',
  'with',
]);

/** A form in which a new list can be written. */
type ListForm = 'csv' | 'xlsx';

/** A file of a new catalogue folder. */
type NewFile = readonly [name: string, content: string | Uint8Array];

/**
 * Makes a catalogue folder with a collection.yaml that explains itself and a list to fill in, in each form that is asked
 * for. A list that is there already is left as it is.
 * @returns the paths of the files made
 * @throws CatalogueError, with nothing changed, where there is a collection.yaml already, where an option cannot be
 * used, or where the files cannot be written
 */
export async function beginCatalogue(
  folder: string,
  start: Start = {},
  forms: readonly ListForm[] = ['csv'],
): Promise<string[]> {
  const lists = forms.map(
    (form): NewFile => (form === 'csv' ? [LIST_FILE, EMPTY_LIST] : ['list.xlsx', beginWorkbook()]),
  );
  return makeCatalogue(folder, start, (there) => (listsIn(there).length > 0 ? [] : lists));
}

/** The names of files in a folder that are a list, or may be meant as one. */
export const listsIn = (names: readonly string[]): string[] =>
  names.filter((name) => /^list\.(csv|tsv|txt|xlsx?|ods)$/i.test(name));

/**
 * Makes a catalogue folder with a collection.yaml and the lists that `listsFor` gives for what is there already.
 * @returns the paths of the files made, collection.yaml first
 * @throws CatalogueError as `beginCatalogue` does, and what `listsFor` throws
 */
export async function makeCatalogue(
  folder: string,
  start: Start,
  listsFor: (there: readonly string[]) => readonly NewFile[] | Promise<readonly NewFile[]>,
): Promise<string[]> {
  const prefix = start.prefix ?? (start.title === undefined ? undefined : initials(start.title));
  const filled: Start = { ...start, ...(prefix === undefined ? {} : { prefix }) };
  const troubles = optionTroubles(filled);
  if (troubles.length > 0) throw new CatalogueError(troubles);

  const made = await makeFolder(folder);
  try {
    const there = await readdir(folder);
    if (there.includes(SETTINGS_FILE)) throw new CatalogueError([already(folder, there)]);
    const lists = await listsFor(there);
    // The lists first: without a collection.yaml the folder is no catalogue yet, and this can be run again.
    for (const [name, content] of [...lists, [SETTINGS_FILE, settingsTemplate(filled)] as const])
      await writeWhole(join(folder, name), content);
    return [SETTINGS_FILE, ...lists.map(([name]) => name)].map((name) => join(folder, name));
  } catch (error) {
    if (made !== undefined) await rmdir(made).catch(() => {});
    throw writeTrouble(join(folder, SETTINGS_FILE), error);
  }
}

/** The first letters of the words of a title, small words left out, four at most: QFP for Quill family papers. */
export function initials(title: string): string | undefined {
  const words = title.match(/[\p{L}\p{N}]+/gu)?.filter((word) => !SMALL_WORDS.has(word.toLowerCase())) ?? [];
  const letters = words.map((word) => [...word][0]?.toUpperCase() ?? '');
  return letters.length === 0 ? undefined : letters.slice(0, 4).join('');
}

function optionTroubles({ title, prefix, repository }: Start): Finding[] {
  const fields = settings.pick({ title: true, prefix: true, repository: true }).partial();
  const given = {
    ...(title === undefined ? {} : { title }),
    ...(prefix === undefined ? {} : { prefix }),
    ...(repository === undefined ? {} : { repository: { name: repository } }),
  };
  const parsed = fields.safeParse(given);
  if (parsed.success) return [];
  return sayIssues(parsed.error.issues, fields, given).map(
    ({ path: _, ...issue }): Finding => ({ rule: 'begin.option', weight: 'must', place: {}, ...issue }),
  );
}

function already(folder: string, there: readonly string[]): Finding {
  const names = [SETTINGS_FILE, LIST_FILE].filter((name) => there.includes(name)).join(' and ');
  return {
    rule: 'begin.already',
    weight: 'must',
    place: { file: folder },
    found: `There is a catalogue here already: it has ${names}.`,
    advice: `Begin the new one in another folder, or go on with this one: ${sayCommand('arrange', folder)}`,
  };
}
