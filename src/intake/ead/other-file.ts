import { type EngineMessage, parse } from '../../xml/engine.ts';
import { legible } from '../../xml/legible.ts';
import { EAD2002_NAMESPACE, olderEad } from '../../xml/older-ead.ts';
import { outsideEntities } from '../../xml/outside-entities.ts';
import { sayMessage } from '../../xml/say.ts';
import { isUndefined, withCharacters } from './entities.ts';
import { withoutIndentation } from './mixed.ts';
import { withPlainNames } from './namespaces.ts';
import { scan } from './scan.ts';
import type { Seen } from './scan-tag.ts';
import type { EadTree } from './tree.ts';
import { refusal } from './unreadable.ts';
import { EAD3_NAMESPACE, NAMESPACES, versionOf } from './versions.ts';

/**
 * Parses a finding aid of any kind with libxml2, and says what is wrong with one that cannot be read.
 * @param file its name, for messages
 * @throws CatalogueError as `eadTree` does
 */
export async function otherFile(bytes: Uint8Array, file: string): Promise<EadTree> {
  const named = await withCharacters(bytes);
  const parsed = await parse(named.bytes, 'kept');
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
    const others = text.includes('xmlns', text.indexOf('>'));
    const seen: Seen = { names: new Map(), ids: new Set() };
    const tree = scan(text, { finish: withoutIndentation, seen });
    return { version, root: withPlainNames(tree, NAMESPACES[version], others), ids: seen.ids, repaired };
  } finally {
    document.dispose();
  }
}

const said = (message: EngineMessage) => ({ line: message.line, says: sayMessage(message).says });

const unknown = (name: string, namespace: string, line: number) => ({
  line,
  says:
    `The outermost element is <${legible(name)}> in ${namespace === '' ? 'no namespace' : `the namespace ${legible(namespace, 200)}`}. ` +
    `What can be taken in is <ead> in the namespace ${EAD3_NAMESPACE} (EAD3) or ${EAD2002_NAMESPACE} (EAD 2002).`,
});

const oldForm = (declared: boolean) =>
  `The file has no namespace${declared ? ', but names a document type' : ''}: it was read as EAD 2002, and it is written with the namespace of its schema.`;
