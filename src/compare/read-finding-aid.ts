import { CatalogueError, type Finding } from '../catalogue/finding.ts';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import { findingAidFromJson } from '../catalogue/finding-aid-file.ts';
import { decodeText } from '../intake/decode.ts';
import type { EadVersion } from '../intake/ead/found.ts';

/** A finding aid as it was read, and the version of EAD that it was read from, if it was. */
export interface ReadFindingAid {
  aid: FindingAid;
  version?: EadVersion;
}

/** A format in which a finding aid can be read to be compared. */
interface Reader {
  /** With which a file in it begins, after a byte order mark and blanks. */
  begins: RegExp;
  read: (bytes: Uint8Array, file: string) => ReadFindingAid | Promise<ReadFindingAid>;
}

/** The first that fits is used. A further format is one more row. */
const READERS: readonly Reader[] = [
  { begins: /^</, read: fromEad },
  { begins: /^[{[]/, read: fromJson },
];

/**
 * In place of the date of events of which a file in EAD tells none: not the day of reading, by which the same file
 * would be another on another day.
 */
export const NO_DAY = '0001-01-01';

const ACCEPTED =
  'Name a catalogue folder, a finding aid in EAD3 or EAD 2002, or the finding-aid.json that an export wrote.';

/**
 * Reads a finding aid, in whichever format it is.
 * @param file the name for messages
 * @throws CatalogueError where it is none, with everything that is wrong with it
 */
export async function readFindingAid(bytes: Uint8Array, file: string): Promise<ReadFindingAid> {
  const beginning = beginningOf(bytes);
  const reader = READERS.find(({ begins }) => begins.test(beginning));
  return reader === undefined ? refuse(bytes, file) : reader.read(bytes, file);
}

/** As far as it takes to know the format; in UTF-16 every second byte is nought. */
const beginningOf = (bytes: Uint8Array): string =>
  Buffer.from(bytes.subarray(0, 4096))
    .toString('latin1')
    .replace(/^(?:\xEF\xBB\xBF|\xFF\xFE|\xFE\xFF)/, '')
    .replaceAll('\0', '')
    .trimStart();

/** A file in XML says itself in which encoding it is. */
async function fromEad(bytes: Uint8Array, file: string): Promise<ReadFindingAid> {
  const { takeIn } = await import('../export/ead/take-in.ts');
  try {
    const { aid, report } = await takeIn(bytes, file, NO_DAY);
    return { aid, version: report.version };
  } catch (error) {
    if (!(error instanceof CatalogueError)) throw error;
    throw new CatalogueError(error.findings.map(toCompare));
  }
}

/** What hinders taking in hinders comparing; only the advice is another. */
const toCompare = ({ advice: _, rule: __, found, ...finding }: Finding): Finding => ({
  ...finding,
  rule: 'compare.unreadable',
  found: found.replace('What can be taken in is', 'What can be compared is'),
  advice: 'Mend the file, or have whoever made it send it again; kinfonds validate says more of it.',
});

function fromJson(bytes: Uint8Array, file: string): ReadFindingAid {
  return { aid: findingAidFromJson(textIn(bytes, file), file) };
}

function textIn(bytes: Uint8Array, file: string): string {
  const decoded = decodeText(bytes, file, ACCEPTED);
  if ('trouble' in decoded) throw new CatalogueError([decoded.trouble]);
  return decoded.text.replace(/^\uFEFF/, '');
}

function refuse(bytes: Uint8Array, file: string): never {
  // A workbook, or a text in an unknown encoding, is said to be one.
  textIn(bytes, file);
  const found = 'This is no finding aid that can be read here.';
  throw new CatalogueError([
    { rule: 'compare.format', weight: 'must', place: { file }, found, advice: ACCEPTED },
  ]);
}
