import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { ead3 } from '../../src/export/ead3/index.ts';
import { writeXml } from '../../src/xml/write.ts';
import { arbitraryFindingAid } from '../support/arbitrary-finding-aid.ts';
import { PROFILE, publishedRng, publishedXsd, validatorBy } from '../support/ead3-schemas.ts';
import { describeWithSchemas, describeWithTool } from '../support/outside.ts';
import { invalidByJing, invalidByXmllint } from '../support/outside-validators.ts';
import { breachesIn, readCodeLists } from '../support/schematron-ead3.ts';
import { SMALL_EAD3, smallEad3With } from '../support/small-ead3.ts';
import { everyElement, parseTree, textOf } from '../support/xml-tree.ts';

const EXAMPLE = fileURLToPath(new URL('../../examples/quill-ferry', import.meta.url));

async function exampleXml(): Promise<string> {
  const catalogue = await loadCatalogue(EXAMPLE);
  return [...writeXml(ead3(arrange(catalogue, '2026-05-14')))].join('');
}

let example = '';
beforeAll(async () => {
  example = await exampleXml();
});

describe('the EAD3 of the example', () => {
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
});

// Source: EAD3 1.1.1, ead3.xsd and ead3.sch.
describeWithSchemas('the EAD3 of the example, by the published rules', (schemas) => {
  it('is valid by ead3.xsd', () => {
    expect(validatorBy(publishedXsd(schemas))(example)).toEqual([]);
  });

  it('keeps the rules of ead3.sch', () => {
    expect(breachesIn(example, readCodeLists(join(schemas, 'ead3', 'schematron')))).toEqual([]);
  });
});

/** Finding aids of every shape, the one written by hand, the example, and two that are broken, as files. */
let folder = '';
let files: string[] = [];
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'kinfonds-ead3-'));
  const documents: [string, string][] = fc
    // The same each time: jing has once, in some thousands, given up on a file that libxml2 and xmllint find valid.
    .sample(arbitraryFindingAid({ largest: 6 }), { numRuns: 100, seed: 1889 })
    .map((aid, index) => [`generated-${index + 1}.xml`, [...writeXml(ead3(aid))].join('')]);
  documents.push(
    ['example.xml', example],
    ['by-hand.xml', SMALL_EAD3],
    ['broken-order.xml', smallEad3With(/(<recordid>.*<\/recordid>)([\s\S]*<\/filedesc>)/, '$2$1')],
    ['broken-attribute.xml', smallEad3With(' level="item"', ' level="bundle"')],
  );
  files = documents.map(([name]) => join(folder, name));
  for (const [name, xml] of documents) writeFileSync(join(folder, name), xml);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const BROKEN = ['broken-order.xml', 'broken-attribute.xml'];

describeWithTool('xmllint', 'xmllint', (schemas) => {
  it('finds all that is exported valid by ead3.xsd, and what is broken broken', () => {
    expect(invalidByXmllint(publishedXsd(schemas), files)).toEqual(BROKEN);
  });

  it('finds the same by the profile', () => {
    expect(invalidByXmllint(PROFILE, files)).toEqual(BROKEN);
  });
});

describeWithTool('jing', 'jing', (schemas) => {
  it('finds all that is exported valid by ead3.rng, and what is broken broken', () => {
    expect(invalidByJing(publishedRng(schemas), files)).toEqual(BROKEN);
  });
});

describeWithSchemas('generated finding aids in EAD3', (schemas) => {
  it('keep the rules of ead3.sch', () => {
    const lists = readCodeLists(join(schemas, 'ead3', 'schematron'));
    fc.assert(
      fc.property(arbitraryFindingAid({ largest: 6 }), (aid) => {
        expect(breachesIn([...writeXml(ead3(aid))].join(''), lists)).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });
});
