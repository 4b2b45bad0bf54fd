import { readFileSync, rmSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { CatalogueError } from '../catalogue/finding.ts';
import { type ByteStep, writeBag, zipBag } from './bag/index.ts';
import type { PackageFile } from './package-files.ts';

interface ToPack {
  files: readonly PackageFile[];
  copies: readonly { path: string; from: string; sha256: string }[];
  info: readonly (readonly [string, string])[];
  /** The catalogue folder, in which all copies must lie. */
  folder: string;
  zip: boolean;
  step?: ByteStep;
}

/**
 * Packs a bag, as a folder or as one ZIP file, and holds the checksums of the copies against those in the technical
 * facts: a copy that was changed in between would be told wrongly.
 * @throws CatalogueError as `writeBag` and `zipBag` do, and where a copy was changed
 */
export async function pack(
  target: string,
  { files, copies, info, folder, zip, step }: ToPack,
): Promise<{ path: string; files: number; bytes: number }> {
  const path = placeOf(target, zip);
  // The bag of a ZIP file is made beside it under a name that is no name for a bag, and taken away again.
  const bag = zip ? join(dirname(resolve(path)), `.kinfonds-${basename(path)}`) : path;
  if (zip) rmSync(bag, { recursive: true, force: true });
  const entries = [...files, ...copies].map((entry) =>
    'from' in entry ? { path: entry.path, from: entry.from } : { path: entry.path, content: entry.content },
  );
  const options = { within: folder, ...(step !== undefined && { step }) };
  const written = await writeBag(bag, entries, info, options);
  try {
    const sums = new Set(readFileSync(join(bag, 'manifest-sha256.txt'), 'utf8').split('\n'));
    const changed = copies.filter(({ path: file, sha256 }) => !sums.has(`${sha256}  data/${file}`));
    if (changed.length > 0) throw new CatalogueError(changed.map(({ from }) => changedMeanwhile(from)));
    if (zip) await zipBag(bag, path, options);
  } catch (error) {
    rmSync(bag, { recursive: true, force: true });
    throw error;
  }
  if (zip) rmSync(bag, { recursive: true, force: true });
  return { path, ...written };
}

/** Where a package will stand: a ZIP file always has its ending. */
export const placeOf = (target: string, zip: boolean): string =>
  zip && !/\.zip$/i.test(target) ? `${target}.zip` : target;

const changedMeanwhile = (file: string) => ({
  rule: 'bag.source-changed',
  weight: 'must' as const,
  place: { file },
  found: 'The file was changed while the package was being made.',
  advice: 'Close the program that works on it, and run again.',
});
