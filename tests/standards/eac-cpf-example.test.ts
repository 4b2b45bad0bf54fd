import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import type { FindingAid } from '../../src/catalogue/finding-aid.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { eacCpfRecords } from '../../src/export/eac-cpf/records.ts';
import { validateXml } from '../../src/xml/validate.ts';
import { arbitraryFindingAid } from '../support/arbitrary-finding-aid.ts';
import { PROFILE, publishedXsd } from '../support/eac-cpf-schemas.ts';
import { validatorBy } from '../support/ead3-schemas.ts';
import { describeWithSchemas, describeWithTool } from '../support/outside.ts';
import { invalidByXmllint } from '../support/outside-validators.ts';
import { SMALL_EAC_CPF, smallEacCpfWith } from '../support/small-eac-cpf.ts';
import { everyElement, parseTree, textOf } from '../support/xml-tree.ts';

const EXAMPLE = fileURLToPath(new URL('../../examples/quill-ferry', import.meta.url));

const recordsOf = (aid: FindingAid) =>
  new Map([...eacCpfRecords(aid)].map(({ path, content }) => [path, [...content].join('')]));

const example = async () => arrange(await loadCatalogue(EXAMPLE), '2026-05-14');

let aid: FindingAid;
let records = new Map<string, string>();
beforeAll(async () => {
  aid = await example();
  records = recordsOf(aid);
});

describe('the EAC-CPF of the example', () => {
  it('is a record for each of the people of collection.yaml, and for nobody else', () => {
    expect([...records.keys()]).toHaveLength(17);
    expect(aid.people.length).toBeGreaterThan(20);
    expect(records.has('eac-cpf/ada-quill.xml')).toBe(true);
    expect(records.has('eac-cpf/daniel-quill.xml')).toBe(false);
  });

  it('is valid by the profile, record by record', () => {
    const byProfile = validatorBy(PROFILE);
    for (const [path, xml] of records) expect([path, byProfile(xml)]).toEqual([path, []]);
  });

  it('points only to records that are there, and to the finding aid', () => {
    const ids = new Set([aid.control.recordId]);
    const pointers: string[] = [];
    for (const xml of records.values()) {
      for (const { element } of everyElement(parseTree(xml))) {
        if (element.name === 'recordId') ids.add(textOf(element));
        if (element.name === 'targetEntity') pointers.push(element.attributes.valueURI ?? 'none');
      }
    }
    expect(pointers.length).toBeGreaterThan(30);
    expect(pointers.filter((pointer) => !ids.has(decodeURIComponent(pointer)))).toEqual([]);
  });

  it('is the same from one export to the next', async () => {
    expect(recordsOf(await example())).toEqual(records);
  });
});

// Source: EAC-CPF 2.0, eac.xsd.
describeWithSchemas('EAC-CPF, by the published schema', (schemas) => {
  it('of the example is valid', () => {
    const byPublished = validatorBy(publishedXsd(schemas));
    for (const [path, xml] of records) expect([path, byPublished(xml)]).toEqual([path, []]);
  });

  it('is known to the program by root and namespace', async () => {
    const places = { folder: schemas };
    const good = await validateXml(Buffer.from(SMALL_EAC_CPF), 'ada.xml', places);
    expect(good).toMatchObject({
      format: 'EAC-CPF',
      valid: true,
      schema: { kind: 'published', version: '2.0' },
    });
    expect(good.schema?.note).toBeUndefined();
    const bad = smallEacCpfWith('<part>Aunt Ada</part>', '');
    const verdict = await validateXml(Buffer.from(bad), 'ada.xml', places);
    expect(verdict).toMatchObject({ format: 'EAC-CPF', valid: false });
    expect(verdict.messages[0]?.path).toBe('/eac/cpfDescription/identity/nameEntry[2]');
  });

  it('tells that a time which is none is wrong, and that a reference leads nowhere', async () => {
    const places = { folder: schemas };
    const noTime = smallEacCpfWith('2026-05-14T10:20:30Z', 'yesterday');
    const { valid, messages } = await validateXml(Buffer.from(noTime), 'ada.xml', places);
    expect(valid).toBe(false);
    expect(messages[0]?.says).toContain('yesterday');
    const lost = smallEacCpfWith('<biogHist>', '<biogHist sourceReference="bible">');
    const { valid: still, remarks } = await validateXml(Buffer.from(lost), 'ada.xml', places);
    expect(still).toBe(true);
    expect(remarks[0]?.says).toContain('“bible”');
  });
});

describeWithTool('xmllint', 'xmllint', (schemas) => {
  let folder = '';
  let files: string[] = [];
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'kinfonds-eac-cpf-'));
    const aids = fc.sample(arbitraryFindingAid({ largest: 3 }), 200);
    const generated = aids.flatMap((one) => [...recordsOf(one).values()]).slice(0, 50);
    const documents: [string, string][] = [
      ...generated.map((xml, at): [string, string] => [`generated-${at + 1}.xml`, xml]),
      ...[...records.values()].map((xml, at): [string, string] => [`example-${at + 1}.xml`, xml]),
      ['by-hand.xml', SMALL_EAC_CPF],
      ['broken-name.xml', smallEacCpfWith('<part>Aunt Ada</part>', '')],
    ];
    files = documents.map(([name]) => join(folder, name));
    for (const [name, xml] of documents) writeFileSync(join(folder, name), xml);
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it('finds all that is exported valid by eac.xsd, and what is broken broken', () => {
    expect(files.length).toBe(50 + 17 + 2);
    expect(invalidByXmllint(publishedXsd(schemas), files)).toEqual(['broken-name.xml']);
  });

  it('finds the same by the profile', () => {
    expect(invalidByXmllint(PROFILE, files)).toEqual(['broken-name.xml']);
  });
});
