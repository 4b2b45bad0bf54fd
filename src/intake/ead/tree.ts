import type { EadVersion, Found } from './found.ts';
import { withPlainNames } from './namespaces.ts';
import { plainFile } from './plain-file.ts';
import { refusal } from './unreadable.ts';
import { NAMESPACES, versionOf } from './versions.ts';

/** Four times that is what the parsed file takes in memory. */
const MAX_BYTES = 400_000_000;

/** A finding aid as a tree, and what had to be mended to make one of it. */
export interface EadTree {
  version: EadVersion;
  root: Found;
  /** The ids of all its elements. */
  ids: Set<string>;
  /** What was mended, as sentences. */
  repaired: string[];
}

/**
 * Parses a finding aid in EAD3 or EAD 2002, in any encoding and also in the form that the document type of EAD 2002
 * had. Nothing but its bytes is read, whatever it asks for.
 * @param file its name, for messages
 * @throws CatalogueError where it is not well-formed, is neither of the two, or asks for more than is safe
 */
export async function eadTree(bytes: Uint8Array, file: string): Promise<EadTree> {
  if (bytes.byteLength === 0) throw refusal(file, [{ line: 1, says: 'The file is empty.' }]);
  if (bytes.byteLength > MAX_BYTES) {
    const says = `The file holds ${Math.ceil(bytes.byteLength / 1e6)} MB; at most ${MAX_BYTES / 1e6} MB can be taken in.`;
    throw refusal(file, [{ line: 1, says }]);
  }
  const plain = plainFile(bytes);
  const version = plain && versionOf(plain.root.name, plain.root.attributes.xmlns ?? '');
  if (plain === undefined || version === undefined) {
    // Loaded for such files only.
    const { otherFile } = await import('./other-file.ts');
    return otherFile(bytes, file);
  }
  const { root, ids } = plain;
  return { version, root: withPlainNames(root, NAMESPACES[version], false), ids, repaired: [] };
}
