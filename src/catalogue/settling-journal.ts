import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import { CatalogueError } from './finding.ts';
import { LIST_FILE, unreadable } from './load-findings.ts';
import { NUMBERS_FILE } from './numbers-file.ts';

/** Stands in a catalogue folder while settled numbers are put there, and says how to come to the end of it. */
export const JOURNAL_FILE = '.kinfonds-settling.json';

/** A file written beside its place, as `stage` names it. */
export const STAGED_NAME = /^\.kinfonds-[0-9a-f]{12}\.part$/;

const sha256 = z.string().regex(/^[0-9a-f]{64}$/);

// No path comes from this file: a catalogue may come from a stranger, and nothing outside it is to be touched.
const journal = z.strictObject({
  format: z.literal('kinfonds settling'),
  version: z.literal(1),
  /** In the order in which they are put in their places. */
  files: z.array(
    z.strictObject({
      name: z.enum([LIST_FILE, NUMBERS_FILE]),
      /** Where the new content lies, beside the file. */
      staged: z.string().regex(STAGED_NAME),
      /** SHA-256 of the content that is replaced; null where there was no file. */
      was: sha256.nullable(),
      becomes: sha256,
    }),
  ),
});

export type Journal = z.infer<typeof journal>;

export const digestOf = (content: string | Uint8Array): string =>
  createHash('sha256').update(content).digest('hex');

/** The journal of a folder; undefined where nothing is unfinished. @throws CatalogueError where it cannot be read */
export async function readJournal(folder: string): Promise<Journal | undefined> {
  let text: string;
  try {
    text = await readFile(join(folder, JOURNAL_FILE), 'utf8');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
    throw new CatalogueError([unreadable(JOURNAL_FILE, error)]);
  }
  const read = journal.safeParse(parsed(text));
  if (read.success) return read.data;
  const found =
    'This file says how to finish the settling of numbers that was stopped, and cannot be understood.';
  const advice = `If ${LIST_FILE} and ${NUMBERS_FILE} are as you want them, delete it (its name begins with a dot, so it may be hidden).`;
  throw new CatalogueError([
    { rule: 'settle.journal', weight: 'must', place: { file: JOURNAL_FILE }, found, advice },
  ]);
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
