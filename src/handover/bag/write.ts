import { createHash } from 'node:crypto';
import { lstatSync, renameSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { CatalogueError, type Finding } from '../../catalogue/finding.ts';
import { flushFolder } from '../../catalogue/flush-folder.ts';
import { writeTrouble } from '../../catalogue/write-trouble.ts';
import { type Content, writeWhole } from '../../catalogue/write-whole.ts';
import { OUR_ALGORITHMS } from './algorithms.ts';
import { INFO_FILE, writeInfo } from './bag-info.ts';
import { seenBytes } from './content.ts';
import { copyAll, type Packed, type ToCopy } from './copy-all.ts';
import { withWhatWaits } from './copy-trouble.ts';
import { DECLARATION_FILE, OUR_DECLARATION } from './declaration.ts';
import { type BagEntry, pathJudge } from './entries.ts';
import { encodePath } from './paths.ts';
import { sweep } from './sweep.ts';
import type { ByteStep } from './verify.ts';
import { makeRoom, openWorkFolder, type WorkFolder } from './work-folder.ts';

/** What was packed: files of the payload, and their bytes. */
export interface WrittenBag {
  files: number;
  bytes: number;
}

export interface WriteBagOptions {
  /** Told of bytes read and written; while the copies are made, not for what is written before and after. */
  step?: ByteStep;
  /** Folder in which every file to be copied must lie once all links are followed; else it is not copied. */
  within?: string;
}

/**
 * Packs a bag by RFC 8493, 1.0, with SHA-512 and SHA-256. It is made in a work folder beside its place and moved there
 * when all of it is written, flushed to the disk, read back and compared; until then nothing stands at `target`. An
 * interrupted run leaves the work folder, and the next run with the same target goes on from there.
 * @param info labels and values of `bag-info.txt` in their order; `Payload-Oxum` is added
 * @throws CatalogueError where something stands at `target`, a file cannot be read or is changed meanwhile, the disk is
 * full, or a path is not fit for a bag; what an entry's content throws comes through
 */
export async function writeBag(
  target: string,
  entries: AsyncIterable<BagEntry> | Iterable<BagEntry>,
  info: readonly (readonly [string, string])[],
  options: WriteBagOptions = {},
): Promise<WrittenBag> {
  refuseWhatStandsThere(target);
  const work = openWorkFolder(target);
  try {
    const payload = await writePayload(entries, work, options);
    const sums = await writeTagFiles(work.bag, payload, info);
    await sweep(work.bag, new Set(sums));
    refuseWhatStandsThere(target);
    renameSync(work.bag, target);
    await flushFolder(dirname(resolve(target)));
    work.release();
    work.remove();
    return { files: payload.size, bytes: sizeOf(payload) };
  } catch (error) {
    const { isKept } = work.release();
    const trouble = writeTrouble(target, error);
    throw isKept ? withWhatWaits(trouble, work.path) : trouble;
  }
}

function refuseWhatStandsThere(target: string): void {
  if (lstatSync(target, { throwIfNoEntry: false }) === undefined) return;
  const found = 'Something of this name is there already. A package is never written over another.';
  const advice = 'Choose another name, or move what is there.';
  throw new CatalogueError([
    { rule: 'bag.target-there', weight: 'must', place: { file: target }, found, advice },
  ]);
}

async function writePayload(
  entries: AsyncIterable<BagEntry> | Iterable<BagEntry>,
  work: WorkFolder,
  { step = () => {}, within }: WriteBagOptions,
): Promise<Map<string, Packed>> {
  const judge = pathJudge();
  const faults: Finding[] = [];
  const toCopy: ToCopy[] = [];
  const payload = new Map<string, Packed>();
  for await (const entry of entries) {
    const fault = judge(entry.path);
    const path = `data/${entry.path}`;
    if (fault !== undefined) faults.push(fault);
    else if ('from' in entry) toCopy.push({ path, from: entry.from });
    else if (faults.length === 0) payload.set(path, await writeFile(work.bag, path, entry.content));
  }
  if (faults.length > 0) throw new CatalogueError(faults);
  for (const [path, one] of await copyAll(toCopy, work, within, step)) payload.set(path, one);
  return payload;
}

async function writeFile(bag: string, path: string, content: Content): Promise<Packed> {
  const hashes = OUR_ALGORITHMS.map((algorithm) => createHash(algorithm));
  let size = 0;
  const seen = seenBytes(content, (piece) => {
    size += piece.length;
    for (const hash of hashes) hash.update(piece);
  });
  await writeWhole(makeRoom(bag, path.split('/')), seen);
  return { size, sums: hashes.map((hash) => hash.digest('hex')) };
}

/** Writes the manifests, `bag-info.txt` and, last of all, `bagit.txt`. @returns the path of every file in the bag */
async function writeTagFiles(
  bag: string,
  payload: ReadonlyMap<string, Packed>,
  info: readonly (readonly [string, string])[],
): Promise<string[]> {
  const oxum: [string, string] = ['Payload-Oxum', `${sizeOf(payload)}.${payload.size}`];
  const own = info.filter(([label]) => label.toLowerCase() !== 'payload-oxum');
  const contents: [string, Content][] = [
    ...OUR_ALGORITHMS.map((name): [string, Content] => [`manifest-${name}.txt`, manifest(payload, name)]),
    [INFO_FILE, writeInfo([...own, oxum])],
  ];
  const tags = new Map<string, Packed>();
  for (const [file, content] of contents) tags.set(file, await writeFile(bag, file, content));
  const declaration = Buffer.from(OUR_DECLARATION);
  const sums = OUR_ALGORITHMS.map((name) => createHash(name).update(declaration).digest('hex'));
  tags.set(DECLARATION_FILE, { size: declaration.length, sums });
  const tagManifests = OUR_ALGORITHMS.map(
    (name) => [`tagmanifest-${name}.txt`, manifest(tags, name)] as const,
  );
  for (const [file, content] of tagManifests) await writeFile(bag, file, content);
  await writeFile(bag, DECLARATION_FILE, declaration);
  return [...payload.keys(), ...tags.keys(), ...tagManifests.map(([file]) => file)];
}

/** The lines of a manifest, in the order of the bytes of the paths. */
function* manifest(
  files: ReadonlyMap<string, Packed>,
  algorithm: (typeof OUR_ALGORITHMS)[number],
): Generator<string> {
  const at = OUR_ALGORITHMS.indexOf(algorithm);
  const lines = [...files].map(([path, { sums }]) => ({
    path: Buffer.from(encodePath(path)),
    sum: sums[at],
  }));
  lines.sort((one, other) => Buffer.compare(one.path, other.path));
  for (const { path, sum } of lines) yield `${sum}  ${path}\n`;
}

function sizeOf(files: ReadonlyMap<string, Packed>): number {
  let bytes = 0;
  for (const { size } of files.values()) bytes += size;
  return bytes;
}
