import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { writeWhole } from '../catalogue/write-whole.ts';
import { PUBLISHED, type PublishedFile, type PublishedSchema } from './published.ts';
import { cacheFolder, type SchemaPlaces } from './schema-folders.ts';
import { importsBeside, listSchemas, sha256 } from './schemas.ts';

/** How the missing schemas are fetched; what is left out has the usual value. */
export interface GetOptions {
  /** Stands for the network; `fetch` of Node in earnest. */
  fetch: typeof fetch;
  /** Where to put them; the cache of this user if not given. */
  cacheFolder?: string | undefined;
  places?: SchemaPlaces;
  published?: readonly PublishedSchema[];
  /** The most that one file may hold, in bytes. */
  maxBytes?: number;
  /** The longest that one file may take, in milliseconds. */
  maxTime?: number;
}

/** What became of one schema. */
interface GotSchema {
  id: string;
  name: string;
  version: string;
  outcome: 'already there' | 'fetched' | 'failed';
  /** Where it lies. */
  path?: string;
  /** Why not, a sentence for each address that was tried. */
  problems?: string[];
}

/** Far above what any of them needs: the largest published schema holds 120 KB. */
const MAX_BYTES = 5_000_000;
const MAX_TIME = 30_000;
const MAX_REDIRECTS = 5;

/**
 * Fetches the published schemas that are missing from this machine, over HTTPS only, and keeps those whose SHA-256 is
 * that of the release tested against. A file is kept whole or not at all, and a schema only with all its files.
 */
export async function getSchemas(options: GetOptions): Promise<GotSchema[]> {
  const { places = {}, published = PUBLISHED } = options;
  const target = options.cacheFolder ?? cacheFolder(places);
  const listed = await listSchemas(places, published);
  const got: GotSchema[] = [];
  for (const schema of published) {
    const { id, folder = id, name, version } = schema;
    const there = listed.find((row) => row.id === id)?.path;
    if (there !== undefined) got.push({ id, name, version, outcome: 'already there', path: there });
    else got.push({ id, name, version, ...(await getSchema(schema, join(target, folder), options)) });
  }
  return got;
}

async function getSchema(
  schema: PublishedSchema,
  folder: string,
  options: GetOptions,
): Promise<Pick<GotSchema, 'outcome' | 'path' | 'problems'>> {
  const files: { name: string; bytes: Uint8Array }[] = [];
  for (const file of schema.files) {
    const { bytes, problems } = await getFile(file, options);
    if (bytes === undefined) return { outcome: 'failed', problems };
    // The main file comes last: it is what makes a folder count as holding the schema.
    if (file.name === schema.main) files.push({ name: file.name, bytes });
    else files.unshift({ name: file.name, bytes });
  }
  await mkdir(folder, { recursive: true });
  for (const { name, bytes } of files) await writeWhole(join(folder, name), bytes);
  return { outcome: 'fetched', path: join(folder, schema.main) };
}

/** Asks one address after the other until one gives the very bytes that are wanted. */
async function getFile(
  file: PublishedFile,
  options: GetOptions,
): Promise<{ bytes?: Uint8Array; problems: string[] }> {
  const problems: string[] = [];
  for (const address of file.addresses) {
    try {
      const bytes = importsBeside(await download(address, options), file);
      const sum = sha256(bytes);
      if (sum === file.sha256) return { bytes, problems };
      problems.push(
        `${address}: what it gave is not the release tested against, so it was not kept. ` +
          `Its SHA-256 is ${sum}; expected was ${file.sha256}.`,
      );
    } catch (error) {
      problems.push(`${address}: ${error instanceof Error ? reason(error) : String(error)}`);
    }
  }
  return { problems };
}

/** Node says only "fetch failed", and keeps what happened in the cause. */
function reason({ message, cause }: Error): string {
  return cause instanceof Error ? `It could not be fetched: ${cause.message}.` : message;
}

async function download(address: string, options: GetOptions): Promise<Uint8Array> {
  const { maxTime = MAX_TIME, maxBytes = MAX_BYTES } = options;
  const abort = new AbortController();
  const tooLong = new Error(`It took longer than ${maxTime / 1000} seconds, so it was given up.`);
  let timer: NodeJS.Timeout | undefined;
  const deadline = new Promise<never>((_, reject) => {
    timer = setTimeout(() => {
      reject(tooLong);
      abort.abort(tooLong);
    }, maxTime);
  });
  try {
    const body = follow(address, options.fetch, abort.signal).then((response) =>
      readBody(response, maxBytes),
    );
    return await Promise.race([body, deadline]);
  } finally {
    clearTimeout(timer);
    // Ends the connection, also where the body was found too long half-way.
    abort.abort();
  }
}

/** Follows redirects itself, since each of them has to be HTTPS as well. */
async function follow(address: string, fetch: GetOptions['fetch'], signal: AbortSignal): Promise<Response> {
  let url = new URL(address);
  for (let hop = 0; hop <= MAX_REDIRECTS; hop++) {
    if (url.protocol !== 'https:') {
      throw new Error(`It leads to ${url.href}, which is not HTTPS, so it was not followed.`);
    }
    const response = await fetch(url.href, { redirect: 'manual', signal });
    const location = response.headers.get('location');
    if (response.status >= 300 && response.status < 400 && location !== null) {
      await response.body?.cancel();
      url = new URL(location, url);
    } else if (!response.ok) {
      throw new Error(`The server answered with ${response.status} instead of the file.`);
    } else {
      return response;
    }
  }
  throw new Error(`It redirects more than ${MAX_REDIRECTS} times.`);
}

async function readBody(response: Response, maxBytes: number): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of response.body ?? []) {
    size += chunk.byteLength;
    if (size > maxBytes) throw new Error(`It is larger than ${maxBytes} bytes, so it was given up.`);
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
}
