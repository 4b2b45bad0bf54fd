import { CatalogueError } from '../catalogue/finding.ts';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import { findingAidFromJson } from '../catalogue/finding-aid-file.ts';
import { decodeText } from '../intake/decode.ts';

/** A format in which a finding aid can be read to be compared. */
interface Reader {
  /** Whether a text, without blanks before it, begins as the format does. */
  begins: (text: string) => boolean;
  read: (text: string, file: string) => FindingAid;
}

/** The first that fits is used. A further format is one more row, before the last. */
const READERS: readonly Reader[] = [
  { begins: (text) => text.startsWith('<'), read: (_, file) => refuse(file, XML) },
  { begins: (text) => /^[{[]/.test(text), read: findingAidFromJson },
  { begins: () => true, read: (_, file) => refuse(file, OTHER) },
];

const XML = {
  found: 'This is an XML file, which cannot be compared yet.',
  advice: 'Name a catalogue folder, or the finding-aid.json that an export wrote.',
};
const OTHER = {
  found: 'This is no finding aid that can be read here.',
  advice: 'Name a catalogue folder, or the finding-aid.json that an export wrote.',
};

/**
 * Reads a finding aid, in whichever format it is.
 * @param file the name for messages
 * @throws CatalogueError where it is none, with everything that is wrong with it
 */
export function readFindingAid(bytes: Uint8Array, file: string): FindingAid {
  const decoded = decodeText(bytes, file, OTHER.advice);
  if ('trouble' in decoded) throw new CatalogueError([decoded.trouble]);
  const text = decoded.text.replace(/^\uFEFF/, '');
  const reader = READERS.find(({ begins }) => begins(text.trimStart()));
  return reader === undefined ? refuse(file, OTHER) : reader.read(text, file);
}

function refuse(file: string, said: typeof OTHER): never {
  throw new CatalogueError([{ rule: 'compare.format', weight: 'must', place: { file }, ...said }]);
}
