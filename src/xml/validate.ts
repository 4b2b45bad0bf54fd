import type { XmlDocument } from 'libxml2-wasm';
import { once } from '../catalogue/once.ts';
import { danglingReferences } from './dangling.ts';
import { type ElementPath, elementPaths } from './element-path.ts';
import { type EngineMessage, MESSAGE_LIMIT, OUT_OF_MEMORY, parse, validate } from './engine.ts';
import { legible } from './legible.ts';
import { olderEad } from './older-ead.ts';
import { outsideEntities } from './outside-entities.ts';
import { PUBLISHED, type PublishedSchema } from './published.ts';
import { sayMessage } from './say.ts';
import type { SchemaPlaces } from './schema-folders.ts';
import { type FoundSchema, findSchema } from './schemas.ts';
import { unjudgedDates } from './unjudged-dates.ts';

/** One thing that is wrong with a file. Lines and columns count from 1. */
export interface ValidationMessage {
  line: number;
  /** Known only where the file is not well-formed XML. */
  column?: number;
  /** The element, such as `/ead/archdesc/dsc/c[3]/did`; unknown where the file is not well-formed XML. */
  path?: string;
  element?: string;
  /** In plain words, as sentences. */
  says: string;
  /** In the words of libxml2, for those who know them; undefined where it is this program that objects. */
  engine?: string;
}

/** What came of holding a file against its schema. */
export interface Validation {
  file: string;
  /** EAD3, for instance; undefined where the file is not well-formed XML, or of no format that is known. */
  format?: string;
  /** Which schema spoke; undefined where none was asked. */
  schema?: Pick<FoundSchema, 'name' | 'version' | 'kind' | 'path' | 'note'>;
  valid: boolean;
  /** What the file is and how it was therefore read, where it is in an older form of its format; in sentences. */
  notice?: string;
  messages: ValidationMessage[];
  /** How many messages there were beyond those. */
  more: number;
  /** What is doubtful in a valid file, such as a reference to an id that no element has. */
  remarks: ValidationMessage[];
}

/** Four times that is what the parsed file takes in memory, and the engine has 2 GB. */
const MAX_BYTES = 400_000_000;

/**
 * A validator of many files: it holds each against the schema of its format, which its root element tells, and looks
 * for each schema once. Nothing but the bytes of a file and the schema is read, whatever the file asks for.
 * @param places where to look for published schemas
 */
export function validatorWith(
  places: SchemaPlaces,
): (bytes: Uint8Array, file: string) => Promise<Validation> {
  const schemaFor = once((format: PublishedSchema) => findSchema(format, places));
  return (bytes, file) => holdAgainst(bytes, file, schemaFor);
}

/**
 * Holds one file against the schema of its format.
 * @param file its name, for the messages
 * @throws Error only where no schema can be used, never for what is in the file
 */
export async function validateXml(
  bytes: Uint8Array,
  file: string,
  places: SchemaPlaces = {},
): Promise<Validation> {
  return validatorWith(places)(bytes, file);
}

/** Holds a file against a certain schema: one that was found before, or the profile of this project. */
export async function validateAgainst(
  bytes: Uint8Array,
  file: string,
  schema: FoundSchema,
): Promise<Validation> {
  return holdAgainst(bytes, file, async () => schema);
}

async function holdAgainst(
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
