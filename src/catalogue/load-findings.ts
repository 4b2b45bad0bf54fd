import type { Finding } from './finding.ts';
import { sayCommand } from './say-command.ts';
import { sayList } from './say-list.ts';
import { whyUnreadable } from './why-unreadable.ts';

/** The file that describes the collection as a whole. */
export const SETTINGS_FILE = 'collection.yaml';
/** The list of things. */
export const LIST_FILE = 'list.csv';

export function folderTrouble(code: string | undefined, folder: string): Finding {
  return {
    rule: 'catalogue.folder',
    weight: 'must',
    place: { file: folder },
    ...sayFolderTrouble(code, folder),
  };
}

function sayFolderTrouble(code: string | undefined, folder: string): Pick<Finding, 'found' | 'advice'> {
  switch (code) {
    case 'ENOENT': {
      const advice = `Check the path, or begin a new catalogue there with: ${sayCommand('begin', folder)}`;
      return { found: 'This folder is not there.', advice };
    }
    case 'ENOTDIR': {
      const advice = `Name the folder that holds ${SETTINGS_FILE} and ${LIST_FILE}.`;
      return { found: 'This is a file; a catalogue is a folder.', advice };
    }
    case 'EACCES':
    case 'EPERM':
      return {
        found: 'You are not permitted to look into this folder.',
        advice: 'Ask whoever looks after it.',
      };
    default:
      return { found: `This folder could not be read (${code ?? 'for an unknown reason'}).` };
  }
}

export function noSettings(folder: string): Finding {
  return {
    rule: 'catalogue.no-settings',
    weight: 'must',
    place: { file: folder },
    found: `There is no ${SETTINGS_FILE} here, so this is not a catalogue folder yet.`,
    advice: `Make one to fill in with: ${sayCommand('begin', folder)}`,
  };
}

export function noList(folder: string, names: readonly string[]): Finding {
  const nearly = names.find((name) => /^list\.(?:csv|txt|tsv|xlsx?|xlsm|ods)$/i.test(name));
  const found = `There is no ${LIST_FILE} and no list.xlsx${nearly === undefined ? '' : `, but there is ${nearly}`}.`;
  const advice =
    nearly === undefined
      ? 'Save the list of things there from a spreadsheet program, as list.xlsx or as list.csv (“CSV UTF-8”).'
      : /\.xls$/i.test(nearly)
        ? 'Open it in a spreadsheet program and save it as list.xlsx.'
        : `If that is the list, rename it to ${nearly.toLowerCase().replace(/\.txt$/, '.csv')}.`;
  return { rule: 'catalogue.no-list', weight: 'must', place: { file: folder }, found, advice };
}

/** A file that collection.yaml says is the list, and that cannot be it. */
export function noSuchList(file: string): Finding {
  const found = `The list is to be ${file}, as “file” under “list” says, and there is no such file here.`;
  const advice =
    'Mend the name, or leave that entry out: list.xlsx, list.ods, list.csv and list.tsv are found.';
  return { rule: 'catalogue.no-list', weight: 'must', place: { file: SETTINGS_FILE }, found, advice };
}

/** Several lists of which more than one holds things: to choose in silence would lose the others. */
export function severalLists(folder: string, files: readonly string[]): Finding {
  return {
    rule: 'catalogue.several-lists',
    weight: 'must',
    place: { file: folder },
    found: `There ${files.length === 2 ? 'are two lists' : `are ${files.length} lists`} here that hold things, ${sayList(files)}; only one can be the list.`,
    advice: `Say in collection.yaml which one is (list: {file: ${files[0]}}), or take the others out of the folder.`,
  };
}

export function unreadable(file: string, error: unknown): Finding {
  const isMissing = (error as NodeJS.ErrnoException).code === 'ENOENT';
  return {
    rule: 'catalogue.unreadable',
    weight: 'must',
    place: { file },
    found: whyUnreadable(error),
    ...(isMissing && { advice: 'Check the path.' }),
  };
}
