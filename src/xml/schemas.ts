import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { PUBLISHED, type PublishedFile, type PublishedSchema, XSD_FOLDER } from './published.ts';
import { type SchemaFolder, type SchemaPlaces, schemaFolders } from './schema-folders.ts';

/** A schema as it lies on this machine. */
export interface FoundSchema {
  format: string;
  name: string;
  version: string;
  /** Whether the publisher's own schema was found, or this project's profile has to serve. */
  kind: 'published' | 'profile';
  /** The file to begin with. */
  path: string;
  /** What a reader has to know about it, in sentences. */
  note?: string;
  main: string;
  /** All its files by name, and the names under which they import one another. */
  files: ReadonlyMap<string, Uint8Array>;
  aliases: ReadonlyMap<string, string>;
  /** Of all its bytes: two schemas with the same fingerprint are the same. */
  fingerprint: string;
}

/** A line of `kinfonds schemas`. */
export interface ListedSchema {
  id: string;
  format: string;
  name: string;
  version: string;
  /** Where it was found, and by whom that folder was named; undefined where this machine has none. */
  path?: string;
  namedBy?: SchemaFolder['namedBy'];
  note?: string;
  /** The profile that serves where there is none. */
  profile: string;
}

/**
 * The schema to hold a format against: the published one where a folder holds it, else the profile of this project.
 * @throws Error where neither is there
 */
export async function findSchema(schema: PublishedSchema, places: SchemaPlaces = {}): Promise<FoundSchema> {
  const { found, notes } = await findPublished(schema, places);
  if (found !== undefined) return found.schema;
  const profile = await findProfile(schema);
  const looked = schemaFolders(places)
    .map(({ path }) => path)
    .join(', ');
  // The same words for every format, so that they can be said once.
  const note = [
    `Where no published schema is on this machine (looked for in ${looked}), this project’s own profile is used. It is`,
    'stricter: it may refuse what the standard allows. To fetch the published ones: kinfonds schemas --get',
  ].join(' ');
  return { ...profile, note: [note, ...notes].join(' ') };
}

/** The profile of this project for a format, whatever else is on this machine. */
export async function findProfile(schema: PublishedSchema): Promise<FoundSchema> {
  const { name, version, file } = schema.profile;
  const path = join(XSD_FOLDER, file);
  const bytes = await readIfThere(path);
  if (bytes === undefined)
    throw new Error(`The profile ${path} is missing from this installation of kinfonds.`);
  const files = await withImports(file, bytes);
  const fingerprint = [...files.values()].map(sha256).join(' ');
  return {
    format: schema.format,
    name,
    version,
    kind: 'profile',
    path,
    main: file,
    files,
    aliases: new Map(),
    fingerprint,
  };
}

/** A profile with the files that it imports, which lie beside it. */
async function withImports(file: string, bytes: Uint8Array): Promise<Map<string, Uint8Array>> {
  const files = new Map([[file, bytes]]);
  for (const schema of files.values()) {
    for (const [, name = ''] of Buffer.from(schema)
      .toString()
      .matchAll(/\sschemaLocation="([^"]*)"/g)) {
      const imported = files.has(name) ? undefined : await readIfThere(join(XSD_FOLDER, name));
      if (imported !== undefined) files.set(name, imported);
    }
  }
  return files;
}

/** Which published schemas there are, and where on this machine. */
export async function listSchemas(
  places: SchemaPlaces = {},
  schemas: readonly PublishedSchema[] = PUBLISHED,
): Promise<ListedSchema[]> {
  const list = schemas.map(async (schema): Promise<ListedSchema> => {
    const { id, format, name, version, profile } = schema;
    const { found, notes } = await findPublished(schema, places);
    const note = [found?.schema.note, ...notes].filter((text) => text !== undefined).join(' ');
    return {
      ...{ id, format, name, version },
      ...(found && { path: found.schema.path, namedBy: found.folder.namedBy }),
      ...(note !== '' && { note }),
      profile: profile.name,
    };
  });
  return Promise.all(list);
}

/** The published schema in the first folder that holds it whole; a note on every folder that holds it in part. */
async function findPublished(
  schema: PublishedSchema,
  places: SchemaPlaces,
): Promise<{ found?: { schema: FoundSchema; folder: SchemaFolder }; notes: string[] }> {
  const notes: string[] = [];
  for (const folder of schemaFolders(places)) {
    for (const path of [folder.path, join(folder.path, schema.folder ?? schema.id)]) {
      const files = await readFiles(schema, path);
      const missing = schema.files.filter(({ name }) => !files.has(name)).map(({ name }) => name);
      if (missing.length === 0)
        return { found: { schema: await published(schema, path, files), folder }, notes };
      if (files.has(schema.main)) {
        notes.push(
          `${join(path, schema.main)} was left aside, since ${missing.join(', ')}, which it needs, is not there.`,
        );
      }
    }
  }
  return { notes };
}

async function published(
  schema: PublishedSchema,
  folder: string,
  files: Map<string, Uint8Array>,
): Promise<FoundSchema> {
  const { format, name, version, main, container } = schema;
  const sums = schema.files.map((file) => {
    const bytes = importsBeside(files.get(file.name) ?? new Uint8Array(), file);
    return { file, sum: sha256(bytes) };
  });
  if (container !== undefined) files.set(container, await readFile(join(XSD_FOLDER, container)));
  const other = sums
    .filter(({ file, sum }) => sum !== file.sha256)
    .map(({ file }) => join(folder, file.name));
  return {
    ...{ format, name, version, kind: 'published', path: join(folder, main), main: container ?? main, files },
    ...(other.length > 0 && {
      note: `${other.join(', ')} differs from the release tested against (${format} ${version}).`,
    }),
    aliases: new Map(schema.files.flatMap(({ imports }) => imports.map(({ as, file }) => [as, file]))),
    fingerprint: sums.map(({ sum }) => sum).join(' '),
  };
}

/**
 * A file of a published schema as `published.json` knows it: what it imports lies beside it. Some publishers name an
 * address there instead; that is all that is changed.
 */
export function importsBeside(bytes: Uint8Array, { imports }: PublishedFile): Uint8Array {
  if (imports.length === 0) return bytes;
  // One letter a byte, so that nothing else changes whatever the encoding.
  const text = imports.reduce(
    (source, { as, file }) => source.replaceAll(`schemaLocation="${as}"`, `schemaLocation="${file}"`),
    Buffer.from(bytes).toString('latin1'),
  );
  return Buffer.from(text, 'latin1');
}

async function readFiles(schema: PublishedSchema, folder: string): Promise<Map<string, Uint8Array>> {
  const files = new Map<string, Uint8Array>();
  for (const { name } of schema.files) {
    const bytes = await readIfThere(join(folder, name));
    if (bytes !== undefined) files.set(name, bytes);
  }
  return files;
}

async function readIfThere(path: string): Promise<Uint8Array | undefined> {
  try {
    return await readFile(path);
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (code === 'ENOENT' || code === 'ENOTDIR' || code === 'EISDIR') return undefined;
    throw new Error(`The schema ${path} is there but could not be read (${code}).`);
  }
}

/** The SHA-256 of some bytes, in lower-case hexadecimal. */
export function sha256(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
