import type { Finding } from '../../catalogue/finding.ts';
import { ALGORITHMS } from './algorithms.ts';
import { decodePath, isOld, leadsOut, plainPath } from './paths.ts';
import { linesOf } from './tag-text.ts';

/** A file as a manifest lists it. */
interface Listed {
  line: number;
  /** In lower case. */
  sum: string;
  /** Path below the bag as it is meant, and as it stands in the manifest. */
  path: string;
  written: string;
}

/** A payload manifest or a tag manifest, read. */
export interface Manifest {
  file: string;
  algorithm: string;
  ofTags: boolean;
  listed: Map<string, Listed>;
}

const LINE = /^([0-9a-f]+)[ \t]+(.+)$/i;

/** Reads a manifest; what is wrong with its lines goes to `findings`. RFC 8493, 2.1.3 and 2.2.1. */
export function readManifest(
  { file, algorithm, ofTags }: Omit<Manifest, 'listed'>,
  text: string,
  version: string,
  findings: Finding[],
): Manifest {
  const listed = new Map<string, Listed>();
  const digits = ALGORITHMS.find(({ name }) => name === algorithm)?.digits;
  const source = ofTags ? 'RFC 8493, 2.2.1' : 'RFC 8493, 2.1.3';
  const say = (rule: string, weight: Finding['weight'], line: number, found: string) =>
    findings.push({ rule, weight, place: { file, line }, found, source });
  let marked: number | undefined;
  let dotted: number | undefined;
  for (const { line, text: said } of linesOf(text)) {
    const [, sum, rest = ''] = LINE.exec(said) ?? [];
    if (sum === undefined || (digits !== undefined && sum.length !== digits)) {
      const length = digits === undefined ? '' : ` of ${digits} figures`;
      say('bag.line', 'must', line, `The line is no checksum${length}, followed by the path of a file.`);
      continue;
    }
    // The mark for "read as binary" that the programs of the md5sum family write.
    const isMarked = rest.startsWith('*') && rest.length > 1;
    if (isMarked) marked ??= line;
    const written = isMarked ? rest.slice(1) : rest;
    const decoded = decodePath(written, version);
    const path = leadsOut(decoded) === undefined ? plainPath(decoded) : decoded;
    if (path !== decoded) dotted ??= line;
    const outside = whyOutside(path, ofTags);
    if (outside !== undefined) {
      say('bag.path-out', 'must', line, `The path ${path} ${outside}. It was not followed.`);
      continue;
    }
    const before = listed.get(path);
    if (before === undefined) listed.set(path, { line, sum: sum.toLowerCase(), path, written });
    else if (before.sum !== sum.toLowerCase()) {
      const found = `${path} is listed twice with different checksums; line ${before.line} has the other.`;
      say('bag.listed-twice', 'must', line, found);
    } else {
      const weight = isOld(version) ? 'should' : 'must';
      say('bag.listed-twice', weight, line, `${path} is listed twice; line ${before.line} has it too.`);
    }
  }
  if (marked !== undefined)
    say('bag.marked', 'should', marked, 'Paths have an asterisk before them, which is no part of the name.');
  if (dotted !== undefined)
    say(
      'bag.dotted',
      'should',
      dotted,
      'Paths are written with ./ or doubled slashes; strict checkers refuse that.',
    );
  return { file, algorithm, ofTags, listed };
}

function whyOutside(path: string, ofTags: boolean): string | undefined {
  const out = leadsOut(path);
  if (out !== undefined) return `${out}, and would lead out of the bag`;
  const isPayload = path.startsWith('data/');
  if (ofTags) return isPayload ? 'lies in data/, which a tag manifest does not list' : undefined;
  return isPayload ? undefined : 'does not lie in data/, where all of the payload is';
}
