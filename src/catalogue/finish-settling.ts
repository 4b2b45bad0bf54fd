import { readFile, realpath, rename, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { CatalogueError, type Finding } from './finding.ts';
import { flushFolder } from './flush-folder.ts';
import { sayCommand } from './say-command.ts';
import { digestOf, JOURNAL_FILE, type Journal, readJournal } from './settling-journal.ts';

type Entry = Journal['files'][number];

/**
 * Brings a settling of numbers to its end that was stopped after its point of no return; does nothing where there is
 * none. To be called before a catalogue is read. The list goes into its place before the numbers do, so that stopping
 * there leaves a list with numbers that nothing says to be settled, and never the other way round.
 *
 * What somebody has changed since is kept, and the settling given up: it can be done again, a change by hand cannot.
 * @returns what was given up, and why
 * @throws CatalogueError where the journal cannot be read, or the folder not written to: then nothing is read either,
 * since it would be half of the one and half of the other
 */
export async function finishSettling(folder: string): Promise<Finding[]> {
  const journal = await readJournal(folder);
  if (journal === undefined) return [];
  try {
    const trouble = await putInPlaces(folder, journal.files);
    await rm(join(folder, JOURNAL_FILE), { force: true });
    await flushFolder(folder);
    return trouble === undefined ? [] : [trouble];
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    // Another program has been here at the same time.
    if (code === 'ENOENT') return finishSettling(folder);
    throw new CatalogueError([cannotFinish(folder, code)]);
  }
}

/** @returns why the rest was given up, if it was */
async function putInPlaces(folder: string, files: readonly Entry[]): Promise<Finding | undefined> {
  let trouble: Finding | undefined;
  for (const { name, staged, was, becomes } of files) {
    const target = await realpath(join(folder, name)).catch(() => join(folder, name));
    const beside = join(dirname(target), staged);
    const now = await digestAt(target);
    const isWhole = (await digestAt(beside)) === becomes;
    if (trouble === undefined) {
      if (!isWhole && now === was && was !== becomes) trouble = isLost(folder, name);
      if (isWhole && now !== null && now !== was && now !== becomes) trouble = wasChanged(folder, name);
    }
    // Where the new content is no more beside its place, it has been put there, whatever was changed afterwards.
    if (trouble !== undefined) await rm(beside, { force: true });
    else if (isWhole) {
      await rename(beside, target);
      await flushFolder(dirname(target));
    }
  }
  return trouble;
}

async function digestAt(path: string): Promise<string | null> {
  try {
    return digestOf(await readFile(path));
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null;
    throw error;
  }
}

const GIVEN_UP = 'The settling of numbers was stopped before its end,';
const again = (folder: string) =>
  `Settle the numbers again with: ${sayCommand('arrange', folder, '--settle')}`;

function wasChanged(folder: string, file: string): Finding {
  const found = `${GIVEN_UP} and this file has been changed since. It was kept as it is, and the settling given up.`;
  return { rule: 'settle.given-up', weight: 'should', place: { file }, found, advice: again(folder) };
}

function isLost(folder: string, file: string): Finding {
  const found = `${GIVEN_UP} and what was to be written into this file is not there any more. The settling was given up.`;
  return { rule: 'settle.given-up', weight: 'should', place: { file }, found, advice: again(folder) };
}

function cannotFinish(folder: string, code: string | undefined): Finding {
  const forbidden = code === 'EACCES' || code === 'EPERM' || code === 'EROFS';
  const why = forbidden
    ? 'this folder cannot be written to'
    : `the rest failed (${code ?? 'for an unknown reason'})`;
  const found = `${GIVEN_UP} and ${why}, so it cannot be finished.`;
  const advice = 'Nothing is lost. Make the folder and its files writable, then use any command on it again.';
  return { rule: 'settle.unfinished', weight: 'must', place: { file: folder }, found, advice };
}
