import { CatalogueError, type Finding } from '../../catalogue/finding.ts';
import { writeTrouble } from '../../catalogue/write-trouble.ts';

/** What each trouble with a file that is to be copied means for the person whose file it is. */
const TROUBLES: Readonly<Record<string, readonly [rule: string, found: string, advice: string]>> = {
  ENOENT: [
    'bag.source-missing',
    'The file is not there, or not there any more.',
    'Put it back, or take it out of the list, and run again.',
  ],
  changed: [
    'bag.source-changed',
    'The file was changed while it was being copied.',
    'Close the program that works on it, and run again.',
  ],
  'leads out': [
    'bag.source-leads-out',
    'This is a link to a file outside the catalogue folder. It was not followed.',
    'Put the file itself in the place of the link.',
  ],
  ENOTFILE: ['bag.source-not-a-file', 'This is no file.', 'Name the file that is meant.'],
  ELOOP: [
    'bag.source-not-a-file',
    'This is a link that leads round in a circle.',
    'Name the file that is meant.',
  ],
  EACCES: [
    'bag.source-unreadable',
    'You are not permitted to read this file.',
    'Ask whoever looks after it for permission to read.',
  ],
};
const SAME: Readonly<Record<string, string>> = { ENOTDIR: 'ENOENT', EPERM: 'EACCES' };

/** Trouble with a file that is to be copied, as a finding. */
export function sourceTrouble(from: string, code: string): Finding {
  const [rule, found, advice] = TROUBLES[SAME[code] ?? code] ?? [
    'bag.source-unreadable',
    `The file cannot be read (${code}).`,
    'The disk may be failing: make a copy of all that can still be read, then run again.',
  ];
  return { rule, weight: 'must', place: { file: from }, found, advice };
}

/** Trouble with a file that is being written, as an error that ends the work. */
export function targetTrouble(path: string, code: string): unknown {
  if (code !== 'differs')
    return writeTrouble(path, Object.assign(new Error(code), { code, syscall: 'write' }));
  const found = 'The copy, read back, is not the same as the original.';
  const advice = 'The disk, its cable or the memory of the computer may be failing. Pack on another disk.';
  return new CatalogueError([
    { rule: 'bag.copy-differs', weight: 'must', place: { file: path }, found, advice },
  ]);
}

/** Adds to what went wrong where that which was done so far waits for the next run. */
export function withWhatWaits(error: unknown, work: string): unknown {
  if (!(error instanceof CatalogueError)) return error;
  const waits = `What was copied so far waits in ${work}; the next run goes on from there.`;
  const [first, ...others] = error.findings;
  if (first === undefined) return error;
  const advice = first.advice === undefined ? waits : `${first.advice} ${waits}`;
  return new CatalogueError([{ ...first, advice }, ...others]);
}
