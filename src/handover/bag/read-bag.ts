import { readFileSync } from 'node:fs';
import type { Finding } from '../../catalogue/finding.ts';
import { ALGORITHMS, manifestNamed } from './algorithms.ts';
import { INFO_FILE, readInfo } from './bag-info.ts';
import { DECLARATION_FILE, type Declaration, readDeclaration } from './declaration.ts';
import { FETCH_FILE, readFetchList } from './fetch-list.ts';
import { type Manifest, readManifest } from './manifest.ts';
import { isOld } from './paths.ts';
import { decodeTagFile } from './tag-text.ts';
import { codeOf, type Tree } from './tree.ts';

/** What the tag files of a bag say. */
export interface BagTags {
  /** The version that `bagit.txt` declares, and the one by which the bag was read. */
  declared?: string;
  version: string;
  manifests: Manifest[];
  /** Addresses of payload files that may be missing. */
  fetch: Map<string, string>;
  info: [string, string][];
  findings: Finding[];
}

/** In bytes. A manifest of a million files takes a quarter of it; the text of more would not fit into one string. */
const MOST = 500_000_000;

/** Reads the tag files of a bag whose tree is known. RFC 8493, 2. */
export function readTags(tree: Tree): BagTags {
  const findings: Finding[] = [];
  const { declared, version, encoding } = declaration(tree, findings);
  const texts = textReader(tree, encoding, findings);
  const manifests: Manifest[] = [];
  for (const file of [...tree.files.keys()].filter((path) => !path.includes('/')).sort()) {
    const named = manifestNamed(file);
    const text = named === undefined ? undefined : texts(file);
    if (named === undefined || text === undefined) continue;
    manifests.push(readManifest({ file, ...named }, text, version, findings));
    if (ALGORITHMS.some(({ name }) => name === named.algorithm)) continue;
    const found = `The checksums in it are of an algorithm that is not known here (${named.algorithm}), so they were not checked.`;
    findings.push({ rule: 'bag.algorithm', weight: 'should', place: { file }, found });
  }
  findings.push(...needed(tree, manifests), ...tagManifests(manifests, version));
  return {
    ...(declared !== undefined && { declared }),
    version,
    manifests,
    fetch: readFetchList(texts(FETCH_FILE) ?? '', version, findings),
    info: readInfo(texts(INFO_FILE) ?? ''),
    findings,
  };
}

function declaration(tree: Tree, findings: Finding[]): Omit<Declaration, 'findings'> {
  const bytes = bytesOf(tree, DECLARATION_FILE, findings);
  const found = 'There is no such file, so this folder does not say that it is a bag.';
  if (!tree.files.has(DECLARATION_FILE)) {
    const place = { file: DECLARATION_FILE };
    findings.push({ rule: 'bag.declaration', weight: 'must', place, found, source: 'RFC 8493, 2.1.1' });
  }
  if (bytes === undefined) return { version: '1.0', encoding: 'UTF-8' };
  const { findings: own, ...rest } = readDeclaration(bytes);
  findings.push(...own);
  return rest;
}

function bytesOf(tree: Tree, file: string, findings: Finding[]): Uint8Array | undefined {
  const there = tree.files.get(file);
  if (there === undefined) return undefined;
  const say = (found: string) =>
    void findings.push({ rule: 'bag.unreadable', weight: 'must', place: { file }, found });
  if (there.size > MOST) {
    say(`The file holds ${there.size} bytes; at most ${MOST} can be read.`);
    return undefined;
  }
  try {
    return readFileSync(there.real);
  } catch (error) {
    say(`The file cannot be read (${codeOf(error)}).`);
    return undefined;
  }
}

/** Reads tag files as text; undefined where one is not there or cannot be read. */
function textReader(tree: Tree, encoding: string, findings: Finding[]): (file: string) => string | undefined {
  const say = (file: string, found: string) =>
    void findings.push({ rule: 'bag.encoding', weight: 'must', place: { file }, found });
  return (file) => {
    const bytes = bytesOf(tree, file, findings);
    if (bytes === undefined) return undefined;
    try {
      const text = decodeTagFile(bytes, encoding);
      if (text === undefined)
        say(file, `The encoding ${encoding} that ${DECLARATION_FILE} declares is not known.`);
      return text;
    } catch {
      say(file, `The file is not encoded in ${encoding}, which ${DECLARATION_FILE} declares.`);
      return undefined;
    }
  };
}

/** RFC 8493, 2.1: a payload folder and at least one payload manifest. */
function* needed(tree: Tree, manifests: readonly Manifest[]): Generator<Finding> {
  const payload = manifests.filter(({ ofTags }) => !ofTags);
  if (payload.length === 0) {
    const found = 'There is no list of the payload with checksums, such as manifest-sha512.txt.';
    yield { rule: 'bag.no-manifest', weight: 'must', place: {}, found, source: 'RFC 8493, 2.1.3' };
  } else if (payload.every(({ algorithm }) => !ALGORITHMS.some(({ name }) => name === algorithm))) {
    const found =
      'No checksum of the payload is of an algorithm that is known here, so nothing could be checked.';
    yield { rule: 'bag.algorithm', weight: 'must', place: {}, found };
  } else if (payload.every(({ algorithm }) => /^(?:md5|sha1)$/.test(algorithm))) {
    const found =
      'The checksums show what has gone wrong by accident, but not what somebody changed with skill.';
    const advice = 'A bag that is made anew should have SHA-512.';
    yield { rule: 'bag.weak', weight: 'consider', place: {}, found, advice, source: 'RFC 8493, 2.4' };
  }
  const isEmpty = payload.every(({ listed }) => listed.size === 0);
  if (isEmpty || [...tree.files.keys()].some((path) => path.startsWith('data/'))) return;
  const found = 'There is no payload: the folder data/ is missing or empty.';
  yield {
    rule: 'bag.no-payload',
    weight: 'must',
    place: { file: 'data/' },
    found,
    source: 'RFC 8493, 2.1.2',
  };
}

/** RFC 8493, 2.2.1: each tag manifest lists every payload manifest, and no tag manifest. */
function* tagManifests(manifests: readonly Manifest[], version: string): Generator<Finding> {
  const weight = isOld(version) ? 'should' : 'must';
  const [rule, source] = ['bag.tag-manifest', 'RFC 8493, 2.2.1'];
  for (const { file, ofTags, listed } of manifests) {
    for (const other of ofTags ? manifests : []) {
      if (other.ofTags === listed.has(other.file)) {
        const found = other.ofTags
          ? `It lists ${other.file}, which it must not.`
          : `It does not list ${other.file}.`;
        yield { rule, weight, place: { file }, found, source };
      }
    }
  }
}
