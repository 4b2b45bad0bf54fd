import type { Finding } from '../../catalogue/finding.ts';
import { isOld } from './paths.ts';
import { linesOf } from './tag-text.ts';

/** What `bagit.txt` declares, and by what the rest is read: version 1.0 in UTF-8 where it does not say. */
export interface Declaration {
  declared?: string;
  version: string;
  encoding: string;
  findings: Finding[];
}

export const DECLARATION_FILE = 'bagit.txt';

/** The bytes of `bagit.txt` in our own bags: RFC 8493, 2.1.1. */
export const OUR_DECLARATION = 'BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n';

/** RFC 8493 and the drafts before it in which the declaration was the same (from memory). */
const VERSIONS = ['0.93', '0.94', '0.95', '0.96', '0.97', '1.0'];
const SOURCE = 'RFC 8493, 2.1.1';

/** Reads `bagit.txt`: two lines in UTF-8, without a byte order mark. */
export function readDeclaration(bytes: Uint8Array): Declaration {
  const findings: Finding[] = [];
  const wrong = (found: string, line?: number, weight: Finding['weight'] = 'must') => {
    const place = { file: DECLARATION_FILE, ...(line !== undefined && { line }) };
    findings.push({ rule: 'bag.declaration', weight, place, found, source: SOURCE });
  };
  const text = Buffer.from(bytes).toString('utf8');
  if (text.startsWith('\uFEFF')) wrong('The file begins with a byte order mark, which it must not.', 1);
  const [first, second, third] = [...linesOf(text.replace(/^\uFEFF/, ''))];
  const version = field(first?.text, 'BagIt-Version');
  const encoding = field(second?.text, 'Tag-File-Character-Encoding');
  if (version === undefined || !/^\d+\.\d+$/.test(version)) {
    wrong('The first line does not say which version of BagIt this is, such as "BagIt-Version: 1.0".', 1);
  } else if (!VERSIONS.includes(version)) {
    wrong(`The bag is of version ${version}; what can be checked is ${VERSIONS.join(', ')}.`, 1);
  }
  if (encoding === undefined) {
    wrong(
      'The second line does not say how the tag files are encoded: "Tag-File-Character-Encoding: UTF-8".',
      2,
    );
  }
  const known = version !== undefined && VERSIONS.includes(version) ? version : '1.0';
  if (third !== undefined)
    wrong('There are more than two lines.', third.line, isOld(known) ? 'should' : 'must');
  return {
    ...(version !== undefined && { declared: version }),
    version: known,
    encoding: encoding ?? 'UTF-8',
    findings,
  };
}

/** The drafts let blanks stand around the colon; harmless, and so let pass in 1.0 as well. */
function field(line: string | undefined, label: string): string | undefined {
  const value = line?.startsWith(label)
    ? /^[ \t]*:[ \t]*(.*?)[ \t]*$/.exec(line.slice(label.length))?.[1]
    : '';
  return value === '' ? undefined : value;
}
