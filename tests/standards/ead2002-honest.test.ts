import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { FindingAid } from '../../src/catalogue/finding-aid.ts';
import { ead2002 } from '../../src/export/ead2002/index.ts';
import type { XmlElement } from '../../src/xml/element.ts';
import { writeXml } from '../../src/xml/write.ts';
import { arbitraryFindingAid } from '../support/arbitrary-finding-aid.ts';
import { PROFILE, publishedXsd, validatorBy } from '../support/ead2002-schemas.ts';
import { mutated, mutations } from '../support/mutate-tree.ts';
import { describeWithSchemas } from '../support/outside.ts';
import { SMALL_EAD2002 } from '../support/small-ead2002.ts';
import { elementsOf, everyElement, parseTree, type Tree, textOf } from '../support/xml-tree.ts';

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
      { numRuns: 200 },
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
      { numRuns: 100 },
    );
    expect(count).toBeGreaterThan(200);
  });

  it('need not speak of elements that say nothing, for none is written', () => {
    fc.assert(
      fc.property(arbitraryFindingAid({ complete: false, largest: 4 }), (aid) => {
        const idle = everyElement(parseTree(exported(aid))).filter(
          ({ element }) => textOf(element).trim() === '' && !attributesSpeak(element),
        );
        expect(idle.map(({ path }) => path)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  it('part where DACS is not met: the published schema still accepts what is written', () => {
    fc.assert(
      fc.property(arbitraryFindingAid({ complete: false }), (aid) => {
        expect(byPublished(exported(aid))).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });

  it('agree on broken finding aids as far as they must: what the profile accepts, the published one accepts', () => {
    const count = { all: 0, accepted: 0, stricter: 0 };
    fc.assert(
      fc.property(mutants(schemas), (xml) => {
        const accepted = byProfile(xml).length === 0;
        const problems = byPublished(xml);
        count.all += 1;
        if (accepted) {
          count.accepted += 1;
          expect(problems).toEqual([]);
        } else if (problems.length === 0) count.stricter += 1;
      }),
      { numRuns: 1200 },
    );
    // Worth something only where mutants of every sort occur.
    expect(count.accepted / count.all).toBeGreaterThan(0.05);
    expect(count.stricter / count.all).toBeGreaterThan(0.03);
    expect(1 - count.accepted / count.all).toBeGreaterThan(0.5);
  });
});

/** Whether an element says something by attributes of its own, or by those of what is in it. */
const attributesSpeak = (element: Tree): boolean =>
  Object.keys(element.attributes).length > 0 || elementsOf(element).some(attributesSpeak);

/** Finding aids, written by hand or exported, each with one or two changes that do change it. */
function mutants(schemas: string): fc.Arbitrary<string> {
  const sources = [PROFILE, publishedXsd(schemas)].map((file) => readFileSync(file, 'utf8'));
  const names = (kind: string) => [
    ...new Set(
      sources.flatMap((source) =>
        [...source.matchAll(new RegExp(`<xs:${kind} [^>]*?name="([^"]+)"`, 'g'))].map(
          ([, name = '']) => name,
        ),
      ),
    ),
  ];
  const links = ['xlink:href', 'xlink:title', 'xlink:role', 'xlink:show', 'xlink:type'];
  const whole = fc.oneof(
    { weight: 3, arbitrary: fc.constant(SMALL_EAD2002).map(parseTree) },
    { weight: 1, arbitrary: arbitraryFindingAid({ largest: 2 }).map((aid) => parseTree(exported(aid))) },
  );
  return fc
    .tuple(whole, mutations(names('element'), [...names('attribute'), ...links]))
    .map(([tree, changes]) => ({ before: write(tree), after: write(mutated(tree, changes)) }))
    .filter(({ before, after }) => before !== after)
    .map(({ after }) => after);
}
