import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { FindingAid } from '../../src/catalogue/finding-aid.ts';
import { ead3 } from '../../src/export/ead3/index.ts';
import type { XmlElement } from '../../src/xml/element.ts';
import { writeXml } from '../../src/xml/write.ts';
import { arbitraryFindingAid } from '../support/arbitrary-finding-aid.ts';
import { PROFILE, publishedRng, publishedXsd, validatorBy } from '../support/ead3-schemas.ts';
import { attributesSpeak, expectHonest, mutantsOf, namesIn } from '../support/honest-profile.ts';
import { describeWithSchemas, describeWithTool } from '../support/outside.ts';
import { invalidByJing } from '../support/outside-validators.ts';
import { SMALL_EAD3 } from '../support/small-ead3.ts';
import { times } from '../support/times.ts';
import { everyElement, parseTree, textOf } from '../support/xml-tree.ts';

const write = (tree: XmlElement) => [...writeXml(tree)].join('');
const exported = (aid: FindingAid) => write(ead3(aid));

// Source: EAD3 1.1.1, ead3.xsd. The rule that makes the profile honest: whatever is valid by it is valid EAD3.
describeWithSchemas('the EAD3 profile and the published schema', (schemas) => {
  const byProfile = validatorBy(PROFILE);
  const byPublished = validatorBy(publishedXsd(schemas));

  it('both accept finding aids of every shape and with hostile text', () => {
    fc.assert(
      fc.property(arbitraryFindingAid(), (aid) => {
        const xml = exported(aid);
        expect(byProfile(xml)).toEqual([]);
        expect(byPublished(xml)).toEqual([]);
      }),
      { numRuns: times(250) },
    );
  });

  it('need not speak of elements that say nothing, for none is written', () => {
    fc.assert(
      fc.property(arbitraryFindingAid({ complete: false, largest: 4 }), (aid) => {
        const idle = everyElement(parseTree(exported(aid))).filter(
          ({ element }) => textOf(element).trim() === '' && !attributesSpeak(element),
        );
        expect(idle.map(({ path }) => path)).toEqual([]);
      }),
      { numRuns: times(60) },
    );
  });

  it('part where DACS is not met: the published schema still accepts what is written', () => {
    fc.assert(
      fc.property(arbitraryFindingAid({ complete: false }), (aid) => {
        expect(byPublished(exported(aid))).toEqual([]);
      }),
      { numRuns: times(150) },
    );
  });

  it('agree on broken finding aids as far as they must: what the profile accepts, the published one accepts', () => {
    // Measured: of a hundred mutants, some 15 are valid by both, 6 by the published schema alone, 79 by neither.
    expectHonest(mutants(schemas), byProfile, byPublished, { accepted: 0.05, stricter: 0.015 });
  });
});

// Source: EAD3 1.1.1, ead3.rng. It knows one thing that libxml2 does not look at: whether an IDREF has its id.
describeWithTool('jing', 'the EAD3 profile and the published RELAX NG schema', (schemas) => {
  let folder = '';
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'kinfonds-mutants-'));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it('agree the same way', () => {
    const byProfile = validatorBy(PROFILE);
    const files = [...new Set(fc.sample(mutants(schemas), 600))].map((xml, index) => {
      const accepted = byProfile(xml).length === 0;
      const file = join(folder, `${accepted ? 'accepted' : 'rejected'}-${index}.xml`);
      writeFileSync(file, xml);
      return { accepted, file };
    });
    const names = invalidByJing(
      publishedRng(schemas),
      files.map(({ file }) => file),
    );
    expect(names.filter((name) => name.startsWith('accepted'))).toEqual([]);
    expect(names.length).toBeGreaterThan(200);
    expect(files.filter(({ accepted }) => accepted).length).toBeGreaterThan(20);
  });
});

/** Finding aids, written by hand or exported, each with one or two changes that do change it. */
function mutants(schemas: string): fc.Arbitrary<string> {
  const whole = fc.oneof(
    { weight: 3, arbitrary: fc.constant(SMALL_EAD3).map(parseTree) },
    { weight: 1, arbitrary: arbitraryFindingAid({ largest: 2 }).map((aid) => parseTree(exported(aid))) },
  );
  return mutantsOf(whole, namesIn([PROFILE, publishedXsd(schemas)]));
}
