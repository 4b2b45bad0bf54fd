import type { Finding } from '../../catalogue/finding.ts';
import { ALGORITHMS, calledAlgorithm } from './algorithms.ts';
import type { Manifest } from './manifest.ts';
import { foundInOtherForm, otherForms, sameElsewhere } from './other-form.ts';
import { isOld } from './paths.ts';
import type { BagTags } from './read-bag.ts';
import { isOfTheSystem } from './same-name.ts';
import type { BagFile, Tree } from './tree.ts';

/** A checksum that a file should have. */
export interface Wanted {
  algorithm: string;
  sum: string;
}

/** A file that is to be held against its checksums. */
export interface ToCheck {
  /** As the manifests list it. */
  path: string;
  file: BagFile;
  wanted: Wanted[];
  /** The name under which it was found, where that is another than the one listed. */
  foundAs?: string;
}

/** What is listed held against what lies there. */
export interface Match {
  toCheck: ToCheck[];
  missing: string[];
  extra: string[];
  /** How many files are listed and missing that the system had made by itself. */
  excused: number;
  findings: Finding[];
}

const COMPLETE = 'RFC 8493, 3';

/** Holds the manifests of a bag against the files in it. */
export function matchFiles(tree: Tree, { version, manifests, fetch }: BagTags): Match {
  const match: Match = { toCheck: [], missing: [], extra: [], excused: 0, findings: [] };
  const otherForm = otherForms(tree);
  const used = new Map<string, string>();
  const sums = wantedSums(manifests);
  for (const [path, { written, wanted }] of sums) {
    const foundAs = tree.files.has(path) ? path : otherForm(path, written);
    const file = tree.files.get(foundAs ?? '');
    if (foundAs === undefined || file === undefined) {
      missing(match, path, fetch.get(path));
      continue;
    }
    if (foundAs !== path) {
      const already = sums.has(foundAs) ? foundAs : used.get(foundAs);
      match.findings.push(foundInOtherForm(path, foundAs, already));
    }
    used.set(foundAs, path);
    match.toCheck.push({ path, file, wanted, ...(foundAs !== path && { foundAs }) });
    if (isOfTheSystem(path)) match.findings.push(ofTheSystem(path, MADE_BY_SYSTEM));
  }
  const payload = manifests.filter(({ ofTags }) => !ofTags);
  for (const path of fetch.keys()) match.findings.push(...notListed(path, payload));
  unlistedFiles(match, tree, used, payload, version);
  match.findings.push(...sameElsewhere(tree), ...unwatched(tree, used));
  return match;
}

function wantedSums(manifests: readonly Manifest[]): Map<string, { written: string; wanted: Wanted[] }> {
  const sums = new Map<string, { written: string; wanted: Wanted[] }>();
  for (const { algorithm, listed } of manifests) {
    const isKnown = ALGORITHMS.some(({ name }) => name === algorithm);
    for (const { path, sum, written } of listed.values()) {
      const one = sums.get(path) ?? { written, wanted: [] };
      if (isKnown) one.wanted.push({ algorithm, sum });
      sums.set(path, one);
    }
  }
  return sums;
}

const MADE_BY_SYSTEM =
  'The system makes files of this name by itself, and may change or delete them by itself; it holds nothing of the papers.';
const SYSTEM_MISSING =
  'It is listed and not there, and strict checkers refuse the bag for that. It is a file that the system had made by itself; it held nothing of the papers.';

function ofTheSystem(file: string, found: string): Finding {
  return { rule: 'bag.system-file', weight: 'should', place: { file }, found, source: 'common practice' };
}

function missing(match: Match, file: string, address: string | undefined): void {
  if (isOfTheSystem(file)) {
    match.excused += 1;
    match.findings.push(ofTheSystem(file, SYSTEM_MISSING));
    return;
  }
  match.missing.push(file);
  const [rule, found, advice] =
    address === undefined
      ? ['bag.missing', 'The file is missing.', 'Look for it in the other copies of this bag.']
      : [
          'bag.to-fetch',
          `The file is not here; fetch.txt says that it is at ${address}`,
          'Fetch it only if you trust that address, then check again.',
        ];
  match.findings.push({ rule, weight: 'must', place: { file }, found, advice, source: COMPLETE });
}

/** Version 1.0 wants every payload file in every payload manifest; before, one was enough. */
function unlistedFiles(
  match: Match,
  tree: Tree,
  used: ReadonlyMap<string, string>,
  payload: readonly Manifest[],
  version: string,
): void {
  for (const path of tree.files.keys()) {
    if (!path.startsWith('data/')) continue;
    const listedAs = used.get(path);
    if (listedAs === undefined) {
      match.extra.push(path);
      match.findings.push(extra(path));
    } else if (!isOld(version)) match.findings.push(...notListed(listedAs, payload));
  }
}

function extra(file: string): Finding {
  const [found, advice] = isOfTheSystem(file)
    ? [
        'The file was not in the bag when it was made; the system makes such by itself.',
        'Delete it, and check again.',
      ]
    : [
        'The file was not in the bag when it was made.',
        'Note it, and find out who put it there; it can be moved out once a sound copy exists.',
      ];
  return { rule: 'bag.extra', weight: 'must', place: { file }, found, advice, source: COMPLETE };
}

function* notListed(path: string, payload: readonly Manifest[]): Generator<Finding> {
  for (const { file, algorithm, listed } of payload) {
    if (listed.has(path)) continue;
    const found = `${file} does not list it, so that its ${calledAlgorithm(algorithm)} is not known.`;
    yield { rule: 'bag.not-listed', weight: 'must', place: { file: path }, found, source: COMPLETE };
  }
}

/** RFC 8493, 2.2.1: tag files may go without checksums, but then nobody can say whether they are as they were. */
function* unwatched(tree: Tree, used: ReadonlyMap<string, string>): Generator<Finding> {
  const files = [...tree.files.keys()].filter(
    (path) => !path.startsWith('data/') && !used.has(path) && !/^tagmanifest-/i.test(path),
  );
  if (files.length === 0) return;
  const names = `${files.slice(0, 5).join(', ')}${files.length > 5 ? ', …' : ''}`;
  const found = `No checksum is kept of ${names}: whether that changed cannot be told.`;
  yield { rule: 'bag.unwatched', weight: 'consider', place: {}, found, source: 'RFC 8493, 2.2.1' };
}
