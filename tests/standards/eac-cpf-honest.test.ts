import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Agent } from '../../src/catalogue/agent.ts';
import type { FindingAid } from '../../src/catalogue/finding-aid.ts';
import { paragraphs } from '../../src/catalogue/text.ts';
import { hasRecord } from '../../src/export/eac-cpf/has-record.ts';
import { eacCpfRecords } from '../../src/export/eac-cpf/records.ts';
import { arbitraryFindingAid } from '../support/arbitrary-finding-aid.ts';
import { PROFILE, publishedXsd } from '../support/eac-cpf-schemas.ts';
import { validatorBy } from '../support/ead3-schemas.ts';
import { attributesSpeak, expectHonest, mutantsOf, namesIn } from '../support/honest-profile.ts';
import { describeWithSchemas } from '../support/outside.ts';
import { SMALL_EAC_CPF } from '../support/small-eac-cpf.ts';
import { times } from '../support/times.ts';
import { elementsOf, everyElement, parseTree, type Tree, textOf } from '../support/xml-tree.ts';

const recordsOf = (aid: FindingAid) => [...eacCpfRecords(aid)].map(({ content }) => [...content].join(''));

// Source: EAC-CPF 2.0, eac.xsd. The rule that makes the profile honest: whatever is valid by it is valid EAC-CPF.
describeWithSchemas('the EAC-CPF profile and the published schema', (schemas) => {
  const byProfile = validatorBy(PROFILE);
  const byPublished = validatorBy(publishedXsd(schemas));

  it('both accept the agents of finding aids of every shape and with hostile text', () => {
    let count = 0;
    fc.assert(
      fc.property(arbitraryFindingAid({ complete: false, largest: 3 }), (aid) => {
        for (const xml of recordsOf(aid)) {
          count += 1;
          expect(byProfile(xml)).toEqual([]);
          expect(byPublished(xml)).toEqual([]);
        }
      }),
      { numRuns: times(250) },
    );
    expect(count).toBeGreaterThan(times(200));
  });

  it('leave nothing out: every text of every agent is found in its record, to the letter', () => {
    fc.assert(
      fc.property(arbitraryFindingAid({ complete: false, largest: 1 }), (aid) => {
        const agents = aid.people.filter(hasRecord);
        for (const [at, xml] of recordsOf(aid).entries()) {
          const said = textsIn(parseTree(xml));
          expect(textsOf(agents[at]).filter((text) => !said.has(unmarked(text)))).toEqual([]);
        }
      }),
      { numRuns: times(200) },
    );
  });

  it('need not speak of elements that say nothing, for none is written', () => {
    fc.assert(
      fc.property(arbitraryFindingAid({ complete: false, largest: 1 }), (aid) => {
        const idle = recordsOf(aid)
          .flatMap((xml) => everyElement(parseTree(xml)))
          .filter(({ element }) => textOf(element).trim() === '' && !attributesSpeak(element));
        expect(idle.map(({ path }) => path)).toEqual([]);
      }),
      { numRuns: times(60) },
    );
  });

  it('agree on broken records as far as they must: what the profile accepts, the published one accepts', () => {
    // Measured: of a hundred mutants, some 13 are valid by both, 8 by the published schema alone, 79 by neither.
    expectHonest(mutants(schemas), byProfile, byPublished, { accepted: 0.05, stricter: 0.03 });
  });
});

/** Every text that the model holds of an agent, dates apart. */
function textsOf(agent: Agent | undefined): string[] {
  if (agent === undefined) return ['no such agent'];
  const { type, name, authorizedForm, nameParts, variants, places, occupations, relations } = agent;
  const { history, source, identifier } = agent;
  return [
    ...[type, name, authorizedForm, source, identifier],
    ...(nameParts ?? []).map(({ text }) => text),
    ...(variants ?? []),
    ...(places ?? []).flatMap(({ name, role }) => [name, role]),
    ...(occupations ?? []),
    ...(relations ?? []).map(({ as }) => as),
    ...paragraphs(history ?? ''),
  ].filter((text) => text !== undefined);
}

/** libxml2-wasm reads each text as if it were a file and passes no byte order mark at its head on: none is compared. */
const unmarked = (text: string) => text.replaceAll('\uFEFF', '');

/** Every text and attribute of a record; the parts of a name are a text together, too. */
const textsIn = (record: Tree) =>
  new Set(
    everyElement(record)
      .flatMap(({ element }) => [
        textOf(element),
        ...Object.values(element.attributes),
        elementsOf(element, 'part').map(textOf).join(', '),
      ])
      .map((text = '') => unmarked(text)),
  );

/** The record written by hand with one or two changes that do change it. */
const mutants = (schemas: string) =>
  mutantsOf(fc.constant(SMALL_EAC_CPF).map(parseTree), namesIn([PROFILE, publishedXsd(schemas)]));
