import {
  copyFileSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { PUBLISHED, type PublishedSchema, XSD_FOLDER } from '../../src/xml/published.ts';
import { cacheFolder, schemaFolders } from '../../src/xml/schema-folders.ts';
import { findProfile, findSchema, listSchemas, sha256 } from '../../src/xml/schemas.ts';
import { validateXml } from '../../src/xml/validate.ts';
import { describeWithSamples, describeWithSchemas } from '../support/outside.ts';
import { validateAgainst } from '../support/validate-against.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'kinfonds-schemas-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

/** Two made-up schemas, the first of one file, the second of two. */
const XSD =
  '<xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema" targetNamespace="urn:boat"><xs:element name="boat"/></xs:schema>';
const common = { namespace: 'urn:boat', root: 'boat', references: [], dates: [], version: '2.0' };
const file = (name: string, text: string) => ({
  name,
  addresses: [],
  sha256: sha256(Buffer.from(text)),
  imports: [],
});
const profile = { name: 'our boats', version: '1', file: 'kinfonds-ead3.xsd' };
const BOAT: PublishedSchema = {
  ...{ ...common, id: 'boat', format: 'Boat', name: 'Boats', main: 'boat.xsd', profile },
  files: [file('boat.xsd', XSD)],
};
const FLEET: PublishedSchema = {
  ...{ ...common, id: 'fleet', format: 'Fleet', name: 'Fleets', main: 'fleet.xsd', profile },
  files: [file('fleet.xsd', 'a'), file('oars.xsd', 'b')],
};

test('published.json has everything of every schema', () => {
  const name = z.string().min(1);
  const hash = z.string().regex(/^[0-9a-f]{64}$/);
  const address = z.url({ protocol: /^https$/ });
  const schema = z.strictObject({
    id: z.string().regex(/^[a-z0-9-]+$/),
    folder: name.optional(),
    container: name.optional(),
    ...{
      format: name,
      name,
      version: name,
      namespace: name,
      root: name,
      references: z.array(name),
      dates: z.array(name),
      main: name,
    },
    files: z
      .array(
        z.strictObject({
          ...{ name, addresses: z.array(address).min(1), sha256: hash },
          imports: z.array(z.strictObject({ as: name, file: name })),
        }),
      )
      .min(1),
    profile: z.strictObject({ name, version: name, file: name }),
  });
  z.array(schema).parse(PUBLISHED);
  for (const { main, files, profile } of PUBLISHED) {
    const names = files.map((file) => file.name);
    expect(names).toContain(main);
    for (const { imports } of files) for (const { file } of imports) expect(names).toContain(file);
    expect(readdirSync(XSD_FOLDER)).toContain(profile.file);
  }
});

describe('folders', () => {
  const home = '/home/ada';
  const cache = (platform: NodeJS.Platform, env: Record<string, string>) =>
    cacheFolder({ platform, env, home });

  test('the cache is where each system wants it (XDG Base Directory Specification; from memory for the others)', () => {
    expect(cache('linux', {})).toBe(join(home, '.cache', 'kinfonds', 'schemas'));
    expect(cache('linux', { XDG_CACHE_HOME: '/var/ada' })).toBe(join('/var/ada', 'kinfonds', 'schemas'));
    expect(cache('linux', { XDG_CACHE_HOME: 'relative' })).toBe(join(home, '.cache', 'kinfonds', 'schemas'));
    expect(cache('darwin', {})).toBe(join(home, 'Library', 'Caches', 'kinfonds', 'schemas'));
    expect(cache('win32', { LOCALAPPDATA: '/c/local' })).toBe(join('/c/local', 'kinfonds', 'schemas'));
    expect(cache('win32', {})).toBe(join(home, 'AppData', 'Local', 'kinfonds', 'schemas'));
  });

  test('--schemas comes before KINFONDS_SCHEMAS, and that before the cache', () => {
    const env = { KINFONDS_SCHEMAS: '/b', XDG_CACHE_HOME: '/c' };
    const folders = schemaFolders({ folder: '/a', env, platform: 'linux', home });
    expect(folders.map(({ path }) => path)).toEqual(['/a', '/b', join('/c', 'kinfonds', 'schemas')]);
    expect(schemaFolders({ env: { KINFONDS_SCHEMAS: '' }, home }).map(({ namedBy }) => namedBy)).toEqual([
      'cache',
    ]);
  });
});

describe('finding', () => {
  const only = () => ({ folder, env: {}, home: join(folder, 'home') });

  test.each(['', 'boat'])('a schema lies in the folder or in one of its name (%j)', async (below) => {
    mkdirSync(join(folder, below), { recursive: true });
    const path = join(folder, below, 'boat.xsd');
    writeFileSync(path, XSD);
    const found = await findSchema(BOAT, only());
    expect(found).toMatchObject({ kind: 'published', name: 'Boats', version: '2.0', path });
    expect(found.note).toBeUndefined();
  });

  test('one that differs from the release tested against is used, and said to differ', async () => {
    writeFileSync(join(folder, 'boat.xsd'), `${XSD}\n`);
    const found = await findSchema(BOAT, only());
    expect(found.kind).toBe('published');
    expect(found.note).toBe(
      `${join(folder, 'boat.xsd')} differs from the release tested against (Boat 2.0).`,
    );
    const result = await validateAgainst(Buffer.from('<boat xmlns="urn:boat"/>'), 'boat.xml', found);
    // Boats are no format that the program knows.
    expect(result.messages[0]?.says).toContain('The outermost element is <boat> in the namespace urn:boat.');
  });

  test('where there is none, the profile serves, and says so', async () => {
    const found = await findSchema(BOAT, only());
    expect(found).toMatchObject({ kind: 'profile', name: 'our boats', version: '1' });
    expect(found.note).toContain('Where no published schema is on this machine (looked for in ');
    expect(found.note).toContain(folder);
    expect(found.note).toContain('kinfonds schemas --get');
  });

  test('a schema of two files is not used with one missing', async () => {
    writeFileSync(join(folder, 'fleet.xsd'), 'a');
    const half = await findSchema(FLEET, only());
    expect(half.kind).toBe('profile');
    expect(half.note).toContain(
      `${join(folder, 'fleet.xsd')} was left aside, since oars.xsd, which it needs, is not there.`,
    );
    writeFileSync(join(folder, 'oars.xsd'), 'b');
    expect((await findSchema(FLEET, only())).kind).toBe('published');
  });

  test('a list of all, found or not', async () => {
    writeFileSync(join(folder, 'boat.xsd'), XSD);
    expect(await listSchemas(only(), [BOAT, FLEET])).toEqual([
      expect.objectContaining({
        id: 'boat',
        path: join(folder, 'boat.xsd'),
        namedBy: '--schemas',
        profile: 'our boats',
      }),
      { id: 'fleet', format: 'Fleet', name: 'Fleets', version: '2.0', profile: 'our boats' },
    ]);
  });

  test('a profile that is missing, and a schema that is none, are said in plain words', async () => {
    const lost = { ...BOAT, profile: { ...profile, file: 'lost.xsd' } };
    await expect(findProfile(lost)).rejects.toThrow('lost.xsd is missing from this installation');
    mkdirSync(join(folder, 'ead3'));
    writeFileSync(join(folder, 'ead3', 'ead3.xsd'), '<html/>');
    const ead = Buffer.from('<ead xmlns="http://ead3.archivists.org/schema/"/>');
    await expect(validateXml(ead, 'a.xml', only())).rejects.toThrow(
      /^The schema .*ead3\.xsd cannot be used: /,
    );
  });
});

describeWithSchemas('the published schemas', (schemas) => {
  test('are those of the release tested against', async () => {
    for (const schema of PUBLISHED) {
      const found = await findSchema(schema, { folder: schemas, env: {} });
      expect(found).toMatchObject({
        kind: 'published',
        path: join(schemas, schema.folder ?? schema.id, schema.main),
      });
      expect(found.note).toBeUndefined();
    }
  });

  test('are found when they lie loose', async () => {
    copyFileSync(join(schemas, 'ead3', 'ead3.xsd'), join(folder, 'ead3.xsd'));
    const ead = Buffer.from('<ead xmlns="http://ead3.archivists.org/schema/"/>');
    const result = await validateXml(ead, 'a.xml', { folder, env: {} });
    expect(result.schema).toMatchObject({ kind: 'published', path: join(folder, 'ead3.xsd') });
    expect(result.messages).toEqual([
      {
        ...{
          line: 1,
          path: '/ead',
          element: 'ead',
          says: '<ead> is not complete. It still needs <control>.',
        },
        engine: expect.stringContaining('Missing child element(s)'),
      },
    ]);
  });
});

describeWithSamples('schemas of several files, EAD 2002 for one', (samples, schemas) => {
  const files = new Map(
    ['ead.xsd', 'xlink.xsd'].map((name) => [name, () => readFileSync(join(schemas, 'ead2002', name))]),
  );
  const bytes = (name: string) => files.get(name)?.() ?? Buffer.from('');
  /** The sample in the namespace of EAD3 would be refused; so its root is not asked, only that the schema compiles. */
  const found = (aliases: [string, string][], main: Buffer) => ({
    ...{
      format: 'EAD 2002',
      name: 'EAD 2002',
      version: '',
      kind: 'published' as const,
      path: 'ead.xsd',
      main: 'ead.xsd',
    },
    files: new Map<string, Uint8Array>([
      ['ead.xsd', main],
      ['xlink.xsd', bytes('xlink.xsd')],
    ]),
    aliases: new Map(aliases),
    fingerprint: JSON.stringify(aliases) + sha256(main),
  });
  const ead3 = Buffer.from('<ead xmlns="http://ead3.archivists.org/schema/"/>');
  const unknown = { valid: false, messages: [{ line: 1, says: '<ead> is not known to the schema.' }] };

  test('import what lies beside them', async () => {
    expect(samples).not.toBe('');
    expect(await validateAgainst(ead3, 'a.xml', found([], bytes('ead.xsd')))).toMatchObject(unknown);
  });

  test('import by their public address what lies beside them', async () => {
    const address = 'http://www.loc.gov/standards/xlink/xlink.xsd';
    const remote = Buffer.from(
      bytes('ead.xsd').toString().replace('schemaLocation="xlink.xsd"', `schemaLocation="${address}"`),
    );
    expect(remote.toString()).toContain(address);
    expect(await validateAgainst(ead3, 'a.xml', found([[address, 'xlink.xsd']], remote))).toMatchObject(
      unknown,
    );
    await expect(validateAgainst(ead3, 'a.xml', found([], remote))).rejects.toThrow('cannot be used');
  });
});
