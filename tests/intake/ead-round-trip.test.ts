import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import type { FindingAid } from '../../src/catalogue/finding-aid.ts';
import { findingAid } from '../../src/catalogue/finding-aid.ts';
import { findingAidFromJson, findingAidToJson } from '../../src/catalogue/finding-aid-file.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { keptWhereNeeded } from '../../src/export/ead/needed.ts';
import { ead3 } from '../../src/export/ead3/index.ts';
import { ead2002 } from '../../src/export/ead2002/index.ts';
import { readEad } from '../../src/intake/ead/index.ts';
import { writeXml } from '../../src/xml/write.ts';
import { arbitraryFindingAid } from '../support/arbitrary-finding-aid.ts';
import { everyComponent } from '../support/quill-page.ts';
import { times } from '../support/times.ts';

const EXAMPLE = fileURLToPath(new URL('../../examples/quill-ferry', import.meta.url));
const WRITE = { ead3, ead2002 };
const VERSIONS = ['ead3', 'ead2002'] as const;
type Version = (typeof VERSIONS)[number];

/** A byte order mark at the end of a text is white space to JavaScript, and goes as other white space there does. */
const withoutMarks = (aid: FindingAid): FindingAid =>
  JSON.parse(JSON.stringify(aid).replaceAll('\uFEFF', 'x'));

const xmlOf = (aid: FindingAid, version: Version) => [...writeXml(WRITE[version](aid))].join('');

/** Taken in from its own export, put on disk as JSON and read from there. */
async function takenIn(xml: string): Promise<FindingAid> {
  const read = await readEad(Buffer.from(xml), 'own.xml', '2026-05-14');
  return findingAidFromJson([...findingAidToJson(keptWhereNeeded(read))].join(''));
}

describe('export, take in, export again', () => {
  it.each(VERSIONS)('gives the same bytes for the example, in %s', async (version) => {
    const aid = arrange(await loadCatalogue(EXAMPLE, '2026-05-14'), '2026-05-14');
    const xml = xmlOf(aid, version);
    const again = await takenIn(xml);
    expect(findingAid.safeParse(again).success).toBe(true);
    expect(xmlOf(again, version)).toBe(xml);
  });

  // By words alone, “family only” would be no restriction to anybody.
  it.each(VERSIONS)('opens nothing that was closed, in %s', async (version) => {
    const aid = arrange(await loadCatalogue(EXAMPLE, '2026-05-14'), '2026-05-14');
    const again = await takenIn(xmlOf(aid, version));
    const closed = (one: FindingAid) =>
      [...everyComponent(one.collection)].filter(({ accessConditions }) => accessConditions?.restricted);
    expect(closed(aid).length).toBeGreaterThan(3);
    expect(closed(again).map(({ title }) => title)).toEqual(closed(aid).map(({ title }) => title));
  });

  it.each(VERSIONS)(
    'gives the same bytes for generated finding aids, in %s',
    async (version) => {
      await fc.assert(
        fc.asyncProperty(arbitraryFindingAid({ complete: false, largest: 6 }), async (made) => {
          const aid = withoutMarks(made);
          const xml = xmlOf(aid, version);
          expect(xmlOf(await takenIn(xml), version)).toBe(xml);
        }),
        { numRuns: times(100), endOnFailure: true },
      );
    },
    300_000,
  );
});
