import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { getSchemas } from '../../src/xml/get-schemas.ts';
import { PUBLISHED, type PublishedSchema } from '../../src/xml/published.ts';
import { findProfile, findSchema, sha256 } from '../../src/xml/schemas.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'kinfonds-imports-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const AT = 'https://example.org/oar.xsd';
const boat = (oar: string) =>
  `<xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema"><xs:import namespace="urn:oar" schemaLocation="${oar}"/></xs:schema>`;
const OAR = '<xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema" targetNamespace="urn:oar"/>';
const file = (name: string, text: string, imports: { as: string; file: string }[]) => ({
  ...{ name, imports, addresses: [`https://example.org/${name}`], sha256: sha256(Buffer.from(text)) },
});
/** Two made-up schemas; the first is published with the address of the second in it. */
const BOAT: PublishedSchema = {
  ...{ id: 'boat', format: 'Boat', name: 'Boats', version: '1', namespace: 'urn:boat', root: 'boat' },
  ...{ references: [], dates: [], main: 'boat.xsd' },
  files: [file('boat.xsd', boat('oar.xsd'), [{ as: AT, file: 'oar.xsd' }]), file('oar.xsd', OAR, [])],
  profile: { name: 'our boats', version: '1', file: 'kinfonds-ead2002.xsd' },
};
const places = () => ({ folder, env: {}, home: join(folder, 'home') });

test('a schema that names another by its address is fetched, and its sum taken, with the path put right', async () => {
  const answers: Record<string, string> = { 'https://example.org/boat.xsd': boat(AT), [AT]: OAR };
  const fetch = async (url: string | URL | Request) => new Response(answers[String(url)] ?? '');
  const cacheFolder = join(folder, 'cache');
  const got = await getSchemas({ fetch, cacheFolder, places: places(), published: [BOAT] });
  expect(got).toMatchObject([{ id: 'boat', outcome: 'fetched' }]);
  expect(readFileSync(join(cacheFolder, 'boat', 'boat.xsd'), 'utf8')).toBe(boat('oar.xsd'));
});

test('one that differs in anything else is not kept', async () => {
  const answers: Record<string, string> = { 'https://example.org/boat.xsd': `${boat(AT)}\n`, [AT]: OAR };
  const fetch = async (url: string | URL | Request) => new Response(answers[String(url)] ?? '');
  const got = await getSchemas({ fetch, cacheFolder: folder, places: places(), published: [BOAT] });
  expect(got).toMatchObject([{ id: 'boat', outcome: 'failed' }]);
});

test('a copy with the address still in it counts as the release', async () => {
  writeFileSync(join(folder, 'oar.xsd'), OAR);
  writeFileSync(join(folder, 'boat.xsd'), boat(AT));
  expect((await findSchema(BOAT, places())).note).toBeUndefined();
  writeFileSync(join(folder, 'boat.xsd'), boat('https://example.org/other.xsd'));
  expect((await findSchema(BOAT, places())).note).toContain('differs from the release tested against');
});

test('a profile brings the files that it imports', async () => {
  const ead2002 = PUBLISHED.find(({ id }) => id === 'ead2002');
  if (ead2002 === undefined) throw new Error('EAD 2002 is not among the published schemas');
  const { files } = await findProfile(ead2002);
  expect([...files.keys()]).toEqual(['kinfonds-ead2002.xsd', 'kinfonds-xlink.xsd']);
});
