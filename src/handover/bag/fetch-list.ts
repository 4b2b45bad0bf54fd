import type { Finding } from '../../catalogue/finding.ts';
import { decodePath, leadsOut, plainPath } from './paths.ts';
import { linesOf } from './tag-text.ts';

export const FETCH_FILE = 'fetch.txt';

const LINE = /^(\S+)[ \t]+(\d+|-)[ \t]+(.+)$/;

/**
 * The payload files that `fetch.txt` says can be got from elsewhere, with their addresses. Nothing is ever fetched.
 * RFC 8493, 2.2.3.
 */
export function readFetchList(text: string, version: string, findings: Finding[]): Map<string, string> {
  const addresses = new Map<string, string>();
  for (const { line, text: said } of linesOf(text)) {
    const place = { file: FETCH_FILE, line };
    const say = (rule: string, found: string) =>
      findings.push({ rule, weight: 'must', place, found, source: 'RFC 8493, 2.2.3' });
    const [, address, , written = ''] = LINE.exec(said) ?? [];
    if (address === undefined) {
      say('bag.line', 'The line is no address, followed by a length or a hyphen and the path of a file.');
      continue;
    }
    const path = decodePath(written, version);
    const out = leadsOut(path);
    if (out !== undefined) {
      say('bag.path-out', `The path ${path} ${out}, and would lead out of the bag. Do not fetch it.`);
    } else if (!plainPath(path).startsWith('data/')) {
      say('bag.path-out', `The path ${path} does not lie in data/, where all of the payload is.`);
    } else addresses.set(plainPath(path), address);
  }
  return addresses;
}
