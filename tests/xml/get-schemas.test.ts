import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { type GetOptions, getSchemas } from '../../src/xml/get-schemas.ts';
import type { PublishedSchema } from '../../src/xml/published.ts';
import { findSchema, sha256 } from '../../src/xml/schemas.ts';

const BOAT = Buffer.from('<the boats/>');
const OARS = Buffer.from('<the oars/>');
const FLEET: PublishedSchema = {
  ...{
    id: 'fleet',
    format: 'Fleet',
    name: 'Fleets',
    version: '2.0',
    namespace: 'urn:f',
    root: 'fleet',
    references: [],
    dates: [],
  },
  main: 'boat.xsd',
  files: [
    {
      name: 'boat.xsd',
      addresses: ['https://one.example/boat.xsd', 'https://two.example/boat.xsd'],
      sha256: sha256(BOAT),
      imports: [{ as: 'oars.xsd', file: 'oars.xsd' }],
    },
    { name: 'oars.xsd', addresses: ['https://one.example/oars.xsd'], sha256: sha256(OARS), imports: [] },
  ],
  profile: { name: 'none', version: '0', file: 'none.xsd' },
};

let home = '';
let cache = '';
beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), 'kinfonds-get-'));
  cache = join(home, 'cache', 'schemas');
});
afterEach(() => rmSync(home, { recursive: true }));

/** A network of a few pages. */
function get(pages: Record<string, () => Response | Promise<Response>>, options: Partial<GetOptions> = {}) {
  const asked: string[] = [];
  const fetch = async (url: string | URL | Request, init?: RequestInit) => {
    asked.push(String(url));
    expect(init?.redirect).toBe('manual');
    const page = pages[String(url)];
    if (page === undefined)
      throw new TypeError('fetch failed', { cause: new Error('getaddrinfo ENOTFOUND') });
    return page();
  };
  const places = { env: {}, home };
  const got = getSchemas({ fetch, cacheFolder: cache, places, published: [FLEET], ...options });
  return got.then(([first]) => ({ ...first, asked }));
}
const oars = { 'https://one.example/oars.xsd': () => new Response(OARS) };
const redirect = (to: string) => () => new Response(null, { status: 302, headers: { location: to } });
const kept = () =>
  existsSync(cache)
    ? readdirSync(cache, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile())
    : [];

test('what is missing is fetched and kept, and then found', async () => {
  const got = await get({ 'https://one.example/boat.xsd': () => new Response(BOAT), ...oars });
  expect(got).toMatchObject({ outcome: 'fetched', path: join(cache, 'fleet', 'boat.xsd') });
  expect(readFileSync(join(cache, 'fleet', 'boat.xsd'))).toEqual(BOAT);
  expect(readFileSync(join(cache, 'fleet', 'oars.xsd'))).toEqual(OARS);
  expect(kept().length).toBe(2);
  expect(await findSchema(FLEET, { folder: cache, env: {}, home })).toMatchObject({ kind: 'published' });
});

test('what is there is not asked for', async () => {
  writeFileSync(join(home, 'boat.xsd'), BOAT);
  writeFileSync(join(home, 'oars.xsd'), OARS);
  const got = await get({}, { places: { folder: home, env: {}, home } });
  expect(got).toMatchObject({ outcome: 'already there', path: join(home, 'boat.xsd'), asked: [] });
});

test('other bytes than those of the release are not kept, and the next address is asked', async () => {
  const other = () => new Response('<other/>');
  const got = await get({
    'https://one.example/boat.xsd': other,
    'https://two.example/boat.xsd': other,
    ...oars,
  });
  expect(got.outcome).toBe('failed');
  expect(got.problems?.length).toBe(2);
  expect(got.problems?.[0]).toContain(
    'https://one.example/boat.xsd: what it gave is not the release tested against',
  );
  expect(got.problems?.[0]).toContain(sha256(Buffer.from('<other/>')));
  expect(got.problems?.[0]).toContain(sha256(BOAT));
  expect(kept()).toEqual([]);
  const second = await get({
    'https://one.example/boat.xsd': other,
    'https://two.example/boat.xsd': () => new Response(BOAT),
    ...oars,
  });
  expect(second.outcome).toBe('fetched');
});

test('nothing is kept where one file of the schema cannot be had', async () => {
  const got = await get({ 'https://one.example/boat.xsd': () => new Response(BOAT) });
  expect(got).toMatchObject({ outcome: 'failed' });
  expect(got.problems).toEqual([
    'https://one.example/oars.xsd: It could not be fetched: getaddrinfo ENOTFOUND.',
  ]);
  expect(kept()).toEqual([]);
});

test('a redirect is followed as long as it is HTTPS', async () => {
  const pages = { 'https://three.example/b': () => new Response(BOAT), ...oars };
  const good = {
    'https://one.example/boat.xsd': redirect('/moved'),
    'https://one.example/moved': redirect('https://three.example/b'),
  };
  expect((await get({ ...pages, ...good })).outcome).toBe('fetched');
});

test('a redirect to HTTP is not followed', async () => {
  const got = await get({ 'https://one.example/boat.xsd': redirect('http://one.example/boat.xsd'), ...oars });
  expect(got.problems?.[0]).toContain('It leads to http://one.example/boat.xsd, which is not HTTPS');
  expect(got.asked.every((url) => url.startsWith('https://'))).toBe(true);
});

test('a circle of redirects ends', async () => {
  const got = await get({ 'https://one.example/boat.xsd': redirect('/boat.xsd') });
  expect(got.problems?.[0]).toContain('It redirects more than 5 times.');
});

test('five redirects are followed, and not a sixth', async () => {
  const way = (hops: number) => {
    const pages: Record<string, () => Response> = { ...oars };
    for (let hop = 0; hop < hops; hop++)
      pages[`https://one.example/${hop === 0 ? 'boat.xsd' : hop}`] = redirect(`/${hop + 1}`);
    pages[`https://one.example/${hops}`] = () => new Response(BOAT);
    return pages;
  };
  expect((await get(way(5))).outcome).toBe('fetched');
  rmSync(cache, { recursive: true });
  expect((await get(way(6))).outcome).toBe('failed');
});

// RFC 9110, 15.4 and 10.2.2: only an answer of the 300s sends elsewhere; in a 201, say, the field means something else.
test.each([200, 404])('an answer of %i is no redirect, whatever else it names', async (status) => {
  const elsewhere = () =>
    new Response(status === 200 ? BOAT : 'no', { status, headers: { location: 'https://three.example/b' } });
  const got = await get({ 'https://one.example/boat.xsd': elsewhere, ...oars });
  expect(got.outcome).toBe(status === 200 ? 'fetched' : 'failed');
  expect(got.asked).not.toContain('https://three.example/b');
});

test('an answer of the 300s that leads nowhere is no file', async () => {
  const nowhere = () => new Response(null, { status: 300 });
  const got = await get({ 'https://one.example/boat.xsd': nowhere, ...oars });
  expect(got.problems?.[0]).toContain('The server answered with 300 instead of the file.');
});

test('a page that is not there is said by its number', async () => {
  const got = await get({ 'https://one.example/boat.xsd': () => new Response('no', { status: 404 }) });
  expect(got.problems?.[0]).toBe(
    'https://one.example/boat.xsd: The server answered with 404 instead of the file.',
  );
});

test('a file of just the size that is allowed is not too large', async () => {
  const maxBytes = Math.max(BOAT.byteLength, OARS.byteLength);
  const pages = { 'https://one.example/boat.xsd': () => new Response(BOAT), ...oars };
  expect(await get(pages, { maxBytes })).toMatchObject({ outcome: 'fetched' });
  rmSync(cache, { recursive: true });
  const got = await get(pages, { maxBytes: maxBytes - 1 });
  expect(got.problems?.[0]).toContain('It is larger than');
});

test('a file without end is given up', async () => {
  let sent = 0;
  let closed = false;
  const endless = new ReadableStream({
    pull(controller) {
      sent += 1000;
      controller.enqueue(new Uint8Array(1000));
    },
    cancel() {
      closed = true;
    },
  });
  const got = await get(
    { 'https://one.example/boat.xsd': () => new Response(endless) },
    { maxBytes: 10_000 },
  );
  expect(got.problems?.[0]).toContain('It is larger than 10000 bytes, so it was given up.');
  expect(sent).toBeLessThan(20_000);
  expect(closed).toBe(true);
});

test.each([
  ['that never answers', () => new Promise<Response>(() => {})],
  [
    'that stops half-way',
    () => new Response(new ReadableStream({ start: (body) => body.enqueue(BOAT.subarray(0, 5)) })),
  ],
])('a server %s is given up', async (_, page) => {
  const got = await get({ 'https://one.example/boat.xsd': page }, { maxTime: 50 });
  expect(got.problems?.[0]).toContain('It took longer than 0.05 seconds, so it was given up.');
  expect(kept()).toEqual([]);
});
