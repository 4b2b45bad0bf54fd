import { dirname } from 'node:path';
import { CatalogueError } from './finding.ts';

const FULL = 'The disk is full, or the space you may use on it is used up, so the file could not be written.';
const FORBIDDEN = 'You are not permitted to write this file in this folder.';
const UNCHANGED = 'Everything is as it was before.';

interface Trouble {
  rule: string;
  found: string;
  advice: string;
}

/** What each error of the system means for the person who wants the file. */
function troubleOf(code: string, folder: string): Trouble | undefined {
  switch (code) {
    case 'ENOSPC':
    case 'EDQUOT':
      return { rule: 'write.disk-full', found: FULL, advice: `Make room and try again. ${UNCHANGED}` };
    case 'EFBIG':
      return {
        rule: 'write.too-large',
        found: 'The file would grow larger than this disk or your account allows.',
        advice: `Choose a folder on another disk and try again. ${UNCHANGED}`,
      };
    case 'EACCES':
    case 'EPERM':
      return {
        rule: 'write.not-permitted',
        found: FORBIDDEN,
        // On Windows a file that another program holds open answers so too.
        advice:
          'Close it if another program has it open; else choose another folder, or ask whoever looks after this one.',
      };
    case 'EBUSY':
    case 'ETXTBSY':
      return {
        rule: 'write.in-use',
        found: 'Another program has the file open, so it could not be replaced.',
        advice: `Close it there and try again. ${UNCHANGED}`,
      };
    case 'EROFS':
      return {
        rule: 'write.read-only',
        found: 'The disk can be read but not written to.',
        advice: 'Choose a folder on another disk.',
      };
    case 'ENOENT':
    case 'ENOTDIR':
      return {
        rule: 'write.no-folder',
        found: `The folder ${folder} is not there, so the file could not be written.`,
        advice: 'Make the folder first, or correct the path.',
      };
    case 'EISDIR':
      return {
        rule: 'write.is-folder',
        found: 'A folder has this name, so no file can be written under it.',
        advice: 'Choose another name, or move the folder.',
      };
    case 'ENAMETOOLONG':
      return {
        rule: 'write.name-too-long',
        found: 'The name of the file is longer than this disk allows.',
        advice: 'Choose a shorter name.',
      };
    default:
      return undefined;
  }
}

/**
 * An error of the system met while writing `path`, as a sentence for the person who asked for the file.
 * Any other error comes back as it is.
 */
export function writeTrouble(path: string, error: unknown): unknown {
  if (!(error instanceof Error) || error instanceof CatalogueError) return error;
  const { code, syscall } = error as NodeJS.ErrnoException;
  if (code === undefined || syscall === undefined) return error;
  const trouble = troubleOf(code, dirname(path)) ?? {
    rule: 'write.failed',
    found: `The file could not be written (${code}).`,
    advice: UNCHANGED,
  };
  return new CatalogueError([{ ...trouble, weight: 'must', place: { file: path } }]);
}
