import type { XmlDocument } from 'libxml2-wasm';
import { danglingReferences } from './dangling.ts';
import { type ElementPath, elementPaths } from './element-path.ts';
import { type EngineMessage, MESSAGE_LIMIT, OUT_OF_MEMORY, parse, validate } from './engine.ts';
import { legible } from './legible.ts';
import { olderEad } from './older-ead.ts';
import { outsideEntities } from './outside-entities.ts';
import { PUBLISHED, type PublishedSchema } from './published.ts';
import { sayMessage } from './say.ts';
import type { FoundSchema } from './schemas.ts';
import { unjudgedDates } from './unjudged-dates.ts';
import type { Validation, ValidationMessage } from './validation.ts';

/** Four times that is what the parsed file takes in memory, and the engine has 2 GB. */
const MAX_BYTES = 400_000_000;

/**
 * Holds one file against the schema that is chosen for its format, which its root element tells.
 * @param file its name, for the messages
 * @param choose asked only where the file is well-formed XML of a format that is known
 * @throws Error only where no schema can be used, never for what is in the file
 */
export async function holdAgainst(
  bytes: Uint8Array,
  file: string,
  choose: (format: PublishedSchema) => Promise<FoundSchema>,
): Promise<Validation> {
  const refused = (messages: ValidationMessage[], more = 0): Validation => ({
    file,
    valid: false,
    messages,
    more,
    remarks: [],
  });
  if (bytes.byteLength === 0) return refused([{ line: 1, says: 'The file is empty.' }]);
  if (bytes.byteLength > MAX_BYTES) {
    const says = `The file holds ${Math.ceil(bytes.byteLength / 1e6)} MB; at most ${MAX_BYTES / 1e6} MB can be checked.`;
    return refused([{ line: 1, says }]);
  }
  const parsed = await parse(bytes);
  if (parsed.document === undefined) {
    return refused(...shown(parsed.faults));
  }
  const { document, warnings } = parsed;
  try {
    const older = olderEad(document, bytes);
    const format = older?.readable === false ? undefined : formatOf(document);
    if (format === undefined) return refused([older?.fault ?? unknownRoot(document)]);
    const schema = await choose(format);
    const undefinedEntities = warnings.filter(({ message }) => /^Entity '.*' not defined/s.test(message));
    const faults = [...undefinedEntities, ...(await validate(document, schema))];
    const dates = faults.includes(OUT_OF_MEMORY) ? unjudgedDates(document, format.dates) : [];
    const [messages, more] = dates.length > 0 ? [dates, 0] : shown(faults, elementPaths(document));
    const remarks = faults.length === 0 ? danglingReferences(document, format.references) : [];
    // Last, since it takes the document apart.
    const outside = outsideEntities(document, bytes);
    const all = [
      ...(older?.fault === undefined ? [] : [older.fault]),
      ...outside.slice(0, MESSAGE_LIMIT),
      ...messages,
    ];
    const { name, version, kind, path, note } = schema;
    return {
      file,
      format: format.format,
      schema: { name, version, kind, path, ...(note !== undefined && { note }) },
      valid: all.length === 0,
      ...(older?.notice !== undefined && { notice: older.notice }),
      messages: all,
      more: more + outside.length - Math.min(outside.length, MESSAGE_LIMIT),
      remarks,
    };
  } finally {
    document.dispose();
  }
}

function formatOf({ root }: XmlDocument): PublishedSchema | undefined {
  return PUBLISHED.find((schema) => schema.root === root.name && schema.namespace === root.namespaceUri);
}

function unknownRoot({ root }: XmlDocument): ValidationMessage {
  const name = legible(root.name);
  const space =
    root.namespaceUri === '' ? 'no namespace' : `the namespace ${legible(root.namespaceUri, 200)}`;
  const accepted = PUBLISHED.map(
    (known) => `<${known.root}> in the namespace ${known.namespace} (${known.format})`,
  );
  return {
    line: root.line,
    path: `/${name}`,
    element: name,
    says: `The outermost element is <${name}> in ${space}. What can be checked is ${accepted.join(', or ')}.`,
  };
}

/** The messages that are shown, and the number of those that are not. */
function shown(
  faults: readonly EngineMessage[],
  pathOf?: (xpath: string) => ElementPath | undefined,
): [ValidationMessage[], number] {
  const own = faults.filter((fault, at) => !repeats(fault, faults[at - 1]));
  const messages = own.slice(0, MESSAGE_LIMIT).map((fault) => ({
    line: fault.line,
    ...(fault.column !== undefined && { column: fault.column }),
    ...(fault.xpath !== undefined && pathOf?.(fault.xpath)),
    ...sayMessage(fault),
  }));
  return [messages, own.length - messages.length];
}

/**
 * After "not in the list" the engine says once more that the value is not valid, and after a reference that can be
 * none, that it has no value for it: the same fault twice.
 */
function repeats(fault: EngineMessage, before: EngineMessage | undefined): boolean {
  if (before === undefined || before.line !== fault.line) return false;
  if (fault.message.includes(': Warning: No precomputed value available')) return true;
  if (!before.message.includes(': [facet ')) return false;
  const [subject = ''] = before.message.split(': [facet ');
  return fault.message.startsWith(`${subject}: `) && fault.message.includes(' is not a valid value of the ');
}
