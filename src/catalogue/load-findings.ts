import type { Finding } from './finding.ts';

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
      const advice = `Check the path, or begin a new catalogue there with: kinfonds begin ${folder}`;
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
    advice: `Write one to fill in with: kinfonds begin ${folder}`,
  };
}

export function noList(folder: string, names: readonly string[]): Finding {
  const workbook = names.find((name) => /^list\.(xlsx?|ods)$/i.test(name));
  const nearly = names.find((name) => name.toLowerCase() === LIST_FILE || /^list\.(txt|tsv)$/i.test(name));
  const place = { file: folder };
  if (workbook !== undefined) {
    const found = `There is no ${LIST_FILE}; ${workbook} is there, but workbooks cannot be read yet.`;
    const advice = `Open ${workbook} in a spreadsheet program and save it as “CSV UTF-8” under the name ${LIST_FILE}.`;
    return { rule: 'catalogue.no-list', weight: 'must', place, found, advice };
  }
  const found = `There is no ${LIST_FILE}${nearly === undefined ? '' : `, but there is ${nearly}`}.`;
  const advice =
    nearly === undefined
      ? 'Save the list of things there from a spreadsheet program, as “CSV UTF-8”.'
      : `If that is the list, rename it to ${LIST_FILE}.`;
  return { rule: 'catalogue.no-list', weight: 'must', place, found, advice };
}

export function unreadable(file: string, error: unknown): Finding {
  const { code } = error as NodeJS.ErrnoException;
  const found =
    code === 'EACCES' || code === 'EPERM'
      ? 'You are not permitted to read this file.'
      : code === 'EISDIR'
        ? 'This is a folder, and a file of this name is needed.'
        : `The file could not be read (${code ?? String(error)}).`;
  return { rule: 'catalogue.unreadable', weight: 'must', place: { file }, found };
}
