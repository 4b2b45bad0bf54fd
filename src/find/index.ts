import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { Catalogue } from '../catalogue/catalogue.ts';
import { type Answer, answer } from './answer.ts';
import { sourceOf } from './bytes.ts';
import { type IndexFile, isOurs, openIndexFile, writeIndexFile } from './index-file.ts';
import { openIndex } from './open-index.ts';
import type { Question } from './question.ts';
import { areSettled, digestOf, isUsualSource, type Stamps, sameStamps, stampsOf } from './stamps.ts';

export type { Answer, Hit } from './answer.ts';
export type { Proposal } from './proposals.ts';
export { type Filters, type Question, questionOf } from './question.ts';
export type { Reason } from './reasons.ts';
export { sayWhereabouts } from './whereabouts.ts';

/** What an answer depends on beside the catalogue. */
interface Circumstances {
  /** Of the program. */
  version: string;
  /** YYYY-MM-DD */
  today: string;
  /** How many things to tell of. */
  most: number;
  /** Called before each of the steps of making an index, of which there are `STEPS`. */
  step?: (name: string) => void;
}

/** The steps of making an index. */
export const STEPS = 3;

/**
 * Answers a question about a catalogue folder. An index kept beside the catalogue makes the answer come at once; it is
 * made anew whenever the catalogue, the program or the day is another than when it was made, or it is damaged.
 * @throws CatalogueError where the catalogue cannot be read
 */
export async function find(folder: string, question: Question, here: Circumstances): Promise<Answer> {
  const file = openIndexFile(folder);
  if (file !== undefined) {
    try {
      const found = await answerFrom(file, folder, question, here);
      if (found !== undefined) return found;
    } catch {
      // Damaged: what it says is not to be relied on, and a fresh one is soon made.
    } finally {
      file.close();
    }
  }
  const bytes = await makeAnew(folder, here);
  return answer(openIndex(sourceOf(bytes)), question, here.most);
}

/** The answer of an index on the disk; undefined where the catalogue is not what it was made from. */
async function answerFrom(
  { origin, source }: IndexFile,
  folder: string,
  question: Question,
  { version, today, most }: Circumstances,
): Promise<Answer | undefined> {
  if (!isOurs(origin, version, today) || isBeingSettled(folder)) return undefined;
  const { list } = origin;
  const stamps = stampsOf(folder, list);
  if (sameStamps(stamps, origin.stamps) && areSettled(stamps, origin.stampedAt))
    return await answer(openIndex(source), question, most);
  if (!sameSizes(stamps, origin.stamps)) return undefined;
  const fresh = await digested(folder, list);
  if (fresh?.digest !== origin.digest) return undefined;
  const found = await answer(openIndex(source), question, most);
  // So that the next answer need not compare what the files hold.
  if (areSettled(fresh.stamps, fresh.stampedAt))
    await writeIndexFile(folder, { version, today, list, ...fresh }, source.read(0, source.size));
  return found;
}

/** A settling of numbers that was stopped midway is finished by whoever loads the catalogue. */
const isBeingSettled = (folder: string): boolean => existsSync(join(folder, '.kinfonds-settling.json'));

const sameSizes = (one: Stamps, other: Stamps): boolean =>
  one.every((stamp, at) => stamp?.size === other[at]?.size);

/** What the files hold, with stamps that belong to it; undefined where they change meanwhile. */
async function digested(folder: string, list: string | undefined) {
  const stampedAt = Date.now();
  const stamps = stampsOf(folder, list);
  const digest = await digestOf(folder, list);
  return sameStamps(stamps, stampsOf(folder, list)) ? { stamps, stampedAt, digest } : undefined;
}

async function makeAnew(
  folder: string,
  { version, today, step = () => {} }: Circumstances,
): Promise<Uint8Array> {
  step('reading the list');
  const { catalogue, digest } = await load(folder, today);
  step('arranging');
  const { arrange } = await import('../arrange/index.ts');
  const aid = arrange(catalogue, today);
  step('making the index');
  const { findablesOf } = await import('./findables.ts');
  const { makeIndex } = await import('./make-index.ts');
  const index = makeIndex(findablesOf(aid, catalogue.base));
  const list = catalogue.listFile;
  // Somebody may save the list while it is read; then there is nothing to keep.
  const after = await digested(folder, list).catch(() => undefined);
  if (after !== undefined && after.digest === digest)
    await writeIndexFile(folder, { version, today, list, ...after }, index);
  return index;
}

/** The catalogue, and what its files held before it was read; undefined where that cannot be said. */
async function load(
  folder: string,
  today: string,
  list?: string,
): Promise<{ catalogue: Catalogue; digest?: string }> {
  const { loadCatalogue } = await import('../catalogue/load.ts');
  const before = await digested(folder, list).catch(() => undefined);
  const catalogue = await loadCatalogue(folder, today);
  const { listFile } = catalogue;
  // Only now it is known that the list has a name of its own.
  if (!isUsualSource(listFile) && listFile !== list) return load(folder, today, listFile);
  return { catalogue, ...(before !== undefined && { digest: before.digest }) };
}
