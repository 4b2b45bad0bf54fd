import { CatalogueError, type Finding } from '../../catalogue/finding.ts';
import { type EngineMessage, parse } from '../../xml/engine.ts';
import { legible } from '../../xml/legible.ts';
import { EAD2002_NAMESPACE, olderEad } from '../../xml/older-ead.ts';
import { outsideEntities } from '../../xml/outside-entities.ts';
import { sayMessage } from '../../xml/say.ts';
import { isUndefined, withCharacters } from './entities.ts';
import type { EadVersion, Found } from './found.ts';
import { withoutIndentation } from './mixed.ts';
import { withPlainNames } from './namespaces.ts';
import { scan } from './scan.ts';

const EAD3_NAMESPACE = 'http://ead3.archivists.org/schema/';
/** More faults than this say nothing new. */
const MOST = 20;
/** Four times that is what the parsed file takes in memory. */
const MAX_BYTES = 400_000_000;

/** A finding aid as a tree, and what had to be mended to make one of it. */
export interface EadTree {
  version: EadVersion;
  root: Found;
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
  const named = await withCharacters(bytes);
  const parsed = await parse(named.bytes);
  if (parsed.document === undefined) throw refusal(file, parsed.faults.map(said));
  const { document } = parsed;
  const undefinedEntities = parsed.warnings.filter(({ message }) => isUndefined(message));
  if (undefinedEntities.length > 0) {
    document.dispose();
    throw refusal(file, undefinedEntities.map(said));
  }
  try {
    const older = olderEad(document, bytes);
    if (older?.readable === false)
      throw refusal(file, [older.fault ?? { line: 1, says: older.notice ?? '' }]);
    const { root } = document;
    const version = versionOf(root.name, root.namespaceUri);
    if (version === undefined) throw refusal(file, [unknown(root.name, root.namespaceUri, root.line)]);
    const text = root.toString({ format: false });
    const outside = outsideEntities(document, bytes);
    if (outside.length > 0) throw refusal(file, outside);
    const repaired = [
      ...(older === undefined ? [] : [oldForm(older.notice !== undefined)]),
      ...named.repaired,
    ];
    const namespace = version === 'ead3' ? EAD3_NAMESPACE : EAD2002_NAMESPACE;
    const others = text.includes('xmlns', text.indexOf('>'));
    return { version, root: withPlainNames(scan(text, withoutIndentation), namespace, others), repaired };
  } finally {
    document.dispose();
  }
}

const said = (message: EngineMessage) => ({ line: message.line, says: sayMessage(message).says });

function versionOf(name: string, namespace: string): EadVersion | undefined {
  if (name !== 'ead') return undefined;
  if (namespace === EAD3_NAMESPACE) return 'ead3';
  return namespace === EAD2002_NAMESPACE ? 'ead2002' : undefined;
}

const unknown = (name: string, namespace: string, line: number) => ({
  line,
  says:
    `The outermost element is <${legible(name)}> in ${namespace === '' ? 'no namespace' : `the namespace ${legible(namespace, 200)}`}. ` +
    `What can be taken in is <ead> in the namespace ${EAD3_NAMESPACE} (EAD3) or ${EAD2002_NAMESPACE} (EAD 2002).`,
});

const oldForm = (declared: boolean) =>
  `The file has no namespace${declared ? ', but names a document type' : ''}: it was read as EAD 2002, and it is written with the namespace of its schema.`;

function refusal(file: string, faults: readonly { line: number; says: string }[]): CatalogueError {
  return new CatalogueError(
    faults.slice(0, MOST).map(
      ({ line, says }): Finding => ({
        rule: 'take-in.unreadable',
        weight: 'must',
        place: { file, line },
        found: says,
        advice: 'Mend the file, or have whoever made it send it again; then take it in.',
      }),
    ),
  );
}
