import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { ead2002 } from '../../src/export/ead2002/index.ts';
import { validateXml } from '../../src/xml/validate.ts';
import { writeXml } from '../../src/xml/write.ts';
import { arbitraryFindingAid } from '../support/arbitrary-finding-aid.ts';
import { PROFILE, publishedXsd, validatorBy } from '../support/ead2002-schemas.ts';
import { describeWithSamples, describeWithSchemas, describeWithTool } from '../support/outside.ts';
import { invalidByXmllint } from '../support/outside-validators.ts';
import { SMALL_EAD2002, smallEad2002With } from '../support/small-ead2002.ts';
import { everyElement, parseTree, textOf } from '../support/xml-tree.ts';

const EXAMPLE = fileURLToPath(new URL('../../examples/quill-ferry', import.meta.url));

async function exampleXml(): Promise<string> {
  const catalogue = await loadCatalogue(EXAMPLE);
  return [...writeXml(ead2002(arrange(catalogue, '2026-05-14')))].join('');
}

let example = '';
beforeAll(async () => {
  example = await exampleXml();
});

describe('the EAD 2002 of the example', () => {
  it('is valid by the profile', () => {
    expect(validatorBy(PROFILE)(example)).toEqual([]);
  });

  it('is a whole finding aid: the title of every row of the list is in it, as often as there', async () => {
    const { things } = await loadCatalogue(EXAMPLE);
    const titles = everyElement(parseTree(example))
      .filter(({ element: { name } }) => name === 'unittitle')
      .map(({ element }) => textOf(element));
    expect(things.length).toBeGreaterThan(150);
    for (const { title } of things) {
      const place = titles.indexOf(title);
      expect([title, place >= 0]).toEqual([title, true]);
      titles.splice(place, 1);
    }
  });

  it('is the same from one export to the next', async () => {
    expect(await exampleXml()).toBe(example);
  });

  it('is known and held against the profile where no published schema is there', async () => {
    const places = { env: {}, home: '/nonexistent' };
    const result = await validateXml(Buffer.from(example), 'ead2002.xml', places);
    expect(result).toMatchObject({
      format: 'EAD 2002',
      valid: true,
      messages: [],
      schema: { kind: 'profile' },
    });
    expect(result.notice).toBeUndefined();
  });
});

// Source: EAD 2002, ead.xsd of 2021-04-12.
describeWithSchemas('the EAD 2002 of the example, by the published schema', (schemas) => {
  it('is valid', async () => {
    expect(validatorBy(publishedXsd(schemas))(example)).toEqual([]);
    const result = await validateXml(Buffer.from(example), 'ead2002.xml', { folder: schemas });
    expect(result).toMatchObject({ format: 'EAD 2002', valid: true, schema: { kind: 'published' } });
    // The copies of the schema are those that published.json tells of.
    expect(result.schema?.note).toBeUndefined();
  });
});

/** Finding aids of every shape, the one written by hand, the example, and two that are broken, as files. */
let folder = '';
let files: string[] = [];
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'kinfonds-ead2002-'));
  const documents: [string, string][] = fc
    .sample(arbitraryFindingAid({ largest: 6 }), 100)
    .map((aid, index) => [`generated-${index + 1}.xml`, [...writeXml(ead2002(aid))].join('')]);
  documents.push(
    ['example.xml', example],
    ['by-hand.xml', SMALL_EAD2002],
    ['broken-order.xml', smallEad2002With(/(<eadid .*<\/eadid>)([\s\S]*<\/filedesc>)/, '$2$1')],
    ['broken-attribute.xml', smallEad2002With(' level="item"', ' level="bundle"')],
  );
  files = documents.map(([name]) => join(folder, name));
  for (const [name, xml] of documents) writeFileSync(join(folder, name), xml);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const BROKEN = ['broken-order.xml', 'broken-attribute.xml'];

describeWithTool('xmllint', 'xmllint', (schemas) => {
  it('finds all that is exported valid by ead.xsd, and what is broken broken', () => {
    expect(invalidByXmllint(publishedXsd(schemas), files)).toEqual(BROKEN);
  });

  it('finds the same by the profile', () => {
    expect(invalidByXmllint(PROFILE, files)).toEqual(BROKEN);
  });
});

describeWithSamples('real finding aids in EAD 2002', (samples, schemas) => {
  it('are found valid, all ten', async () => {
    const names = readdirSync(join(samples, 'ead2002')).filter((name) => name.endsWith('.xml'));
    expect(names).toHaveLength(10);
    for (const name of names) {
      const bytes = readFileSync(join(samples, 'ead2002', name));
      const result = await validateXml(bytes, name, { folder: schemas });
      expect(result).toMatchObject({ file: name, format: 'EAD 2002', valid: true, messages: [], more: 0 });
      expect(result.schema).toMatchObject({ kind: 'published', version: '2021-04-12' });
      expect(result.notice).toBeUndefined();
    }
  });
});
