import { realpathSync, statSync } from 'node:fs';
import { CatalogueError, type Finding, WEIGHTS } from '../../catalogue/finding.ts';
import { ALGORITHMS, calledAlgorithm } from './algorithms.ts';
import { INFO_FILE, readOxum } from './bag-info.ts';
import { checkSums } from './check-sums.ts';
import { type Match, matchFiles } from './match.ts';
import { notABag } from './no-bag.ts';
import { type BagTags, readTags } from './read-bag.ts';
import { lookThrough, type Tree } from './tree.ts';

/** What came of verifying a bag. Paths are below the bag, with forward slashes. */
export interface BagVerdict {
  /** As `bagit.txt` says; left out where it does not. */
  version?: string;
  /** Those by which the payload was checked, for people: SHA-512. */
  algorithms: string[];
  /** Files of the payload that are there, and their bytes. */
  files: number;
  bytes: number;
  /** RFC 8493, 3: all is there that is listed, all is listed that is there, and all tag files are as they should be. */
  complete: boolean;
  /** RFC 8493, 3: complete, and every checksum is right. Whatever was let pass nevertheless is among the findings. */
  valid: boolean;
  changed: string[];
  missing: string[];
  extra: string[];
  /** `must` makes the bag invalid; `should` and `consider` do not, and strict checkers may refuse what `should` says. */
  findings: Finding[];
}

/** Told how many of all bytes have been read. */
export type ByteStep = (done: number, total: number) => void;

/**
 * Verifies any bag of RFC 8493 (1.0) and of the drafts before it (0.97): whether it is complete, and every byte of it is
 * as it was. Nothing outside its folder is opened, and nothing in it changed.
 * @throws CatalogueError where there is no such folder, or it is not meant to be a bag
 */
export async function verifyBag(folder: string, options: { step?: ByteStep } = {}): Promise<BagVerdict> {
  const root = rootOf(folder);
  const tree = lookThrough(root);
  const tags = readTags(tree);
  const stranger = notABag(folder, tree, tags);
  if (stranger !== undefined) throw new CatalogueError([stranger]);
  const match = matchFiles(tree, tags);
  const { changed, missing, findings } = await checkSums(match.toCheck, options.step ?? (() => {}));
  const payload = payloadOf(tree);
  const gone = [...match.missing, ...missing];
  const isAsListed = changed.length + gone.length + match.extra.length === 0;
  const all = [
    ...tree.findings,
    ...tags.findings,
    ...match.findings,
    ...findings,
    ...(isAsListed ? oxum(tags, payload, match) : []),
  ];
  all.sort((one, other) => WEIGHTS.indexOf(one.weight) - WEIGHTS.indexOf(other.weight));
  const wrong = all.filter(({ weight }) => weight === 'must');
  return {
    ...(tags.declared !== undefined && { version: tags.declared }),
    algorithms: algorithmsOf(tags),
    ...payload,
    complete: wrong.every(({ rule }) => rule === 'bag.changed'),
    valid: wrong.length === 0,
    changed,
    missing: gone,
    extra: match.extra,
    findings: all,
  };
}

function rootOf(folder: string): string {
  const refuse = (rule: string, found: string, advice: string) =>
    new CatalogueError([{ rule, weight: 'must', place: { file: folder }, found, advice }]);
  let root: string;
  try {
    root = realpathSync(folder);
    if (statSync(root).isDirectory()) return root;
  } catch {
    throw refuse('bag.no-folder', 'There is no such folder.', 'Give the folder in which bagit.txt lies.');
  }
  if (/\.(?:zip|tar|t?gz|tgz|7z)$/i.test(folder)) {
    const advice = 'Unpack it into a folder of its own, and verify that.';
    throw refuse('bag.packed', 'This is a packed file; what can be verified is a folder.', advice);
  }
  throw refuse('bag.no-folder', 'This is a file and no folder.', 'Give the folder in which bagit.txt lies.');
}

function payloadOf(tree: Tree): { files: number; bytes: number } {
  let [files, bytes] = [0, 0];
  for (const [path, { size }] of tree.files) {
    if (path.startsWith('data/')) [files, bytes] = [files + 1, bytes + size];
  }
  return { files, bytes };
}

function algorithmsOf({ manifests }: BagTags): string[] {
  const names = manifests.filter(({ ofTags }) => !ofTags).map(({ algorithm }) => algorithm);
  return ALGORITHMS.filter(({ name }) => names.includes(name)).map(({ name }) => calledAlgorithm(name));
}

/** RFC 8493, 2.2.2. Asked only where all else is right: else it says no more than that. */
function* oxum(
  { info }: BagTags,
  payload: { files: number; bytes: number },
  match: Match,
): Generator<Finding> {
  const place = { file: INFO_FILE };
  const source = 'RFC 8493, 2.2.2';
  for (const [label, value] of info) {
    if (label.toLowerCase() !== 'payload-oxum' || match.excused > 0) continue;
    const said = readOxum(value);
    if (said === undefined) {
      const found = `Payload-Oxum is no number of bytes, a dot, and a number of files: ${value}`;
      yield { rule: 'bag.oxum', weight: 'should', place, found, source };
    } else if (said.bytes !== payload.bytes || said.files !== payload.files) {
      const found = `By Payload-Oxum there are ${said.files} files of ${said.bytes} bytes; there are ${payload.files} of ${payload.bytes}.`;
      yield { rule: 'bag.oxum', weight: 'must', place, found, source };
    }
  }
}
