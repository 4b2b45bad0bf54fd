import type { XmlDocument, XsdValidator } from 'libxml2-wasm';
import type { FoundSchema } from './schemas.ts';

/** What libxml2 says about one place. `xpath` has positions in place of names, since EAD3 has a namespace. */
export interface EngineMessage {
  message: string;
  line: number;
  column?: number;
  xpath?: string;
}

/** Out of memory, the engine stops without a word; so it does at a date that it cannot judge (unjudged-dates.ts). */
export const OUT_OF_MEMORY: EngineMessage = { message: 'out of memory', line: 1 };

type Library = typeof import('libxml2-wasm');

/** Beyond so many messages the rest are only counted. */
export const MESSAGE_LIMIT = 100;

let library: Promise<Library> | undefined;

/** libxml2, loaded only when the first file is validated: it costs 25 ms that `kinfonds --help` must not pay. */
function load(): Promise<Library> {
  library ??= Promise.all([import('libxml2-wasm'), import('libxml2-wasm/lib/libxml2.mjs')]).then(
    ([loaded, internals]) => {
      limitPaths(internals.XmlErrorStruct);
      return loaded;
    },
  );
  return library;
}

let pathsLeft = MESSAGE_LIMIT;

/**
 * The library works out the path of every element that is refused, and walks over all siblings before it to do so. In
 * a finding aid with the same fault in each of 80,000 components that takes 20 seconds, for paths that nobody sees. So
 * after the messages that are shown, it is told that the place of an error is not known.
 */
function limitPaths(struct: { node: (error: number) => number }): void {
  const nodeOf = struct.node;
  struct.node = (error) => {
    pathsLeft -= 1;
    return pathsLeft >= 0 ? nodeOf(error) : 0;
  };
}

/**
 * Parses a file that may come from anyone. Nothing outside its bytes is read: no network, no other file, no external
 * part of a document type definition. Entities that the file itself defines are put in; libxml2 refuses those that
 * multiply, and what is nested, long or large without reason (XML_PARSE_HUGE stays off).
 * @param blanks whether indentation is part of the document: beside elements alone nothing tells it from the blank
 * between two words
 * @returns the document, to be disposed of by the caller, with what the parser warned of; or why it is none
 */
export async function parse(
  bytes: Uint8Array,
  blanks: 'kept' | 'dropped' = 'dropped',
): Promise<
  { document: XmlDocument; warnings: EngineMessage[] } | { document?: never; faults: EngineMessage[] }
> {
  const { ParseOption, XmlDocument, XmlParseError } = await load();
  const careful =
    ParseOption.XML_PARSE_NO_XXE |
    ParseOption.XML_PARSE_NONET |
    ParseOption.XML_PARSE_NOENT |
    ParseOption.XML_PARSE_BIG_LINES |
    ParseOption.XML_PARSE_COMPACT;
  const option = blanks === 'dropped' && isPlain(bytes) ? careful | ParseOption.XML_PARSE_NOBLANKS : careful;
  pathsLeft = MESSAGE_LIMIT;
  try {
    const document = XmlDocument.fromBuffer(bytes, { option });
    return { document, warnings: document.warnings.map(engineMessage) };
  } catch (error) {
    if (!(error instanceof XmlParseError)) throw error;
    const faults = error.details.filter(({ level }) => level > 1).map(engineMessage);
    return { faults: faults.length > 0 ? faults : [OUT_OF_MEMORY] };
  }
}

/**
 * Whether a file holds nothing but elements and text. Indentation makes up half the nodes of a finding aid, and where
 * only elements stand beside it, it means nothing to a schema: left out, the tree of a file of 100 MB is smaller by
 * 130 MB and ready a quarter sooner. Beside a comment it may mean something: in an element that must be empty, say.
 */
function isPlain(bytes: Uint8Array): boolean {
  // Two bytes a letter: the marks below would not be seen. XML 1.0, appendix F.
  if (bytes[0] === 0 || bytes[1] === 0 || bytes[0] === 0xfe || bytes[0] === 0xff) return false;
  const file = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const LESS_THAN = 0x3c;
  /** After the XML declaration, which may have a byte order mark before it. */
  const START = 5;
  return ['!', '?'].every((mark) => {
    const code = mark.charCodeAt(0);
    let at = file.indexOf(code, START);
    while (at >= 0 && file[at - 1] !== LESS_THAN) at = file.indexOf(code, at + 1);
    return at < 0;
  });
}

/** What a schema has against a document; nothing where it is valid. */
export async function validate(document: XmlDocument, schema: FoundSchema): Promise<EngineMessage[]> {
  const { XmlError, XmlValidateError } = await load();
  const validator = await compiled(schema);
  pathsLeft = MESSAGE_LIMIT;
  try {
    validator.validate(document);
    return [];
  } catch (error) {
    if (error instanceof XmlValidateError)
      return error.details.filter(({ level }) => level > 1).map(engineMessage);
    if (error instanceof XmlError) return [OUT_OF_MEMORY];
    throw error;
  }
}

const validators = new Map<string, XsdValidator>();

/** Compiles a schema, once in a process. @throws Error where the schema itself is no good */
async function compiled(schema: FoundSchema): Promise<XsdValidator> {
  const known = validators.get(schema.fingerprint);
  if (known !== undefined) return known;
  const { ParseOption, XmlBufferInputProvider, XmlDocument, XmlLibError, XsdValidator, ...input } =
    await load();
  // The files of the schema lie in a place of their own that no real path leads to. What they import is looked up
  // there, and nowhere else; and only while they are compiled.
  const at = (name: string) => `schema/${name}`;
  const buffers = [...schema.files].map(([name, bytes]): [string, Uint8Array] => [at(name), bytes]);
  const aliases = [...schema.aliases].map(([as, name]): [string, Uint8Array | undefined] => [
    as,
    schema.files.get(name),
  ]);
  const provided = [...buffers, ...aliases].filter(
    (entry): entry is [string, Uint8Array] => entry[1] !== undefined,
  );
  // The library has room for few such places; whoever else uses it in this process may have taken them up.
  input.xmlCleanupInputProvider();
  input.xmlRegisterInputProvider(new XmlBufferInputProvider(Object.fromEntries(provided)));
  let xsd: XmlDocument | undefined;
  try {
    const option = ParseOption.XML_PARSE_NO_XXE | ParseOption.XML_PARSE_NONET;
    xsd = XmlDocument.fromBuffer(schema.files.get(schema.main) ?? new Uint8Array(), {
      url: at(schema.main),
      option,
    });
    const validator = XsdValidator.fromDoc(xsd);
    validators.set(schema.fingerprint, validator);
    return validator;
  } catch (error) {
    if (!(error instanceof XmlLibError)) throw error;
    throw new Error(
      `The schema ${schema.path} cannot be used: ${error.details[0]?.message.trim() ?? error.message}`,
    );
  } finally {
    xsd?.dispose();
    input.xmlCleanupInputProvider();
  }
}

function engineMessage({
  message,
  line,
  col,
  xpath,
}: {
  message: string;
  line: number;
  col: number;
  xpath?: string;
}): EngineMessage {
  return {
    message: message.trim(),
    line,
    ...(col > 0 && { column: col }),
    ...(xpath !== undefined && { xpath }),
  };
}
