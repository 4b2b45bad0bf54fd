import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { FindingAid } from '../../src/catalogue/finding-aid.ts';
import { ead2002 } from '../../src/export/ead2002/index.ts';
import type { XmlElement } from '../../src/xml/element.ts';
import { writeXml } from '../../src/xml/write.ts';
import { arbitraryFindingAid } from '../support/arbitrary-finding-aid.ts';
import { PROFILE, publishedXsd, validatorBy } from '../support/ead2002-schemas.ts';
import { attributesSpeak, expectHonest, mutantsOf, namesIn } from '../support/honest-profile.ts';
import { describeWithSchemas } from '../support/outside.ts';
import { SMALL_EAD2002 } from '../support/small-ead2002.ts';
import { times } from '../support/times.ts';
import { everyElement, parseTree, textOf } from '../support/xml-tree.ts';

const write = (tree: XmlElement) => [...writeXml(tree)].join('');
const exported = (aid: FindingAid) => write(ead2002(aid));

// CHECKS of the project: EAD 2002 @normal takes YYYY, YYYY-MM or YYYYMM, YYYY-MM-DD or YYYYMMDD, years 0000 to 2999,
// and two of them with a slash; nothing else of EDTF may reach it. Written here apart from the profile.
const DATE = String.raw`[0-2]\d{3}(?:-?(?:0[1-9]|1[0-2])(?:-?(?:0[1-9]|[12]\d|3[01]))?)?`;
const NORMAL = new RegExp(`^${DATE}(?:/${DATE})?$`);

// Source: EAD 2002, ead.xsd of 2021-04-12. The rule that makes the profile honest: whatever is valid by it is valid.
describeWithSchemas('the EAD 2002 profile and the published schema', (schemas) => {
  const byProfile = validatorBy(PROFILE);
  const byPublished = validatorBy(publishedXsd(schemas));

  it('both accept finding aids of every shape and with hostile text', () => {
    fc.assert(
      fc.property(arbitraryFindingAid(), (aid) => {
        const xml = exported(aid);
        expect(byProfile(xml)).toEqual([]);
        expect(byPublished(xml)).toEqual([]);
      }),
      { numRuns: times(200) },
    );
  });

  it('let nothing of EDTF reach @normal', () => {
    let count = 0;
    fc.assert(
      fc.property(arbitraryFindingAid({ complete: false, largest: 6 }), (aid) => {
        for (const { element } of everyElement(parseTree(exported(aid)))) {
          const { normal } = element.attributes;
          if (normal === undefined) continue;
          count += 1;
          expect(normal).toMatch(NORMAL);
        }
      }),
      { numRuns: times(100) },
    );
    expect(count).toBeGreaterThan(times(200));
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
    expectHonest(mutants(schemas), byProfile, byPublished, { accepted: 0.05, stricter: 0.03 });
  });
});

/** Finding aids, written by hand or exported, each with one or two changes that do change it. */
function mutants(schemas: string): fc.Arbitrary<string> {
  const whole = fc.oneof(
    { weight: 3, arbitrary: fc.constant(SMALL_EAD2002).map(parseTree) },
    { weight: 1, arbitrary: arbitraryFindingAid({ largest: 2 }).map((aid) => parseTree(exported(aid))) },
  );
  const { elements, attributes } = namesIn([PROFILE, publishedXsd(schemas)]);
  const links = ['xlink:href', 'xlink:title', 'xlink:role', 'xlink:show', 'xlink:type'];
  return mutantsOf(whole, { elements, attributes: [...attributes, ...links] });
}
