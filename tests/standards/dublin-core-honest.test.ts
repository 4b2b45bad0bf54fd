import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import type { FindingAid } from '../../src/catalogue/finding-aid.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { dcterms, dublinCore } from '../../src/export/dublin-core/index.ts';
import type { OutFile } from '../../src/export/out-file.ts';
import { arbitraryFindingAid } from '../support/arbitrary-finding-aid.ts';
import {
  containerBesidePublished,
  publishedOaiDc,
  SIMPLE_PROFILE,
  TERMS_PROFILE,
} from '../support/dublin-core-schemas.ts';
import { validatorBy } from '../support/ead2002-schemas.ts';
import { expectHonest, mutantsOf } from '../support/honest-profile.ts';
import { describeWithSchemas, describeWithTool } from '../support/outside.ts';
import { invalidByXmllint } from '../support/outside-validators.ts';
import { SMALL_DCTERMS, SMALL_OAI_DC } from '../support/small-dublin-core.ts';
import { times } from '../support/times.ts';
import { parseTree } from '../support/xml-tree.ts';

const EXAMPLE = fileURLToPath(new URL('../../examples/quill-ferry', import.meta.url));
const textOf = ({ content }: OutFile) => [...content].join('');

/** All records there can be of a finding aid, those of every unit. */
const simpleRecords = (aid: FindingAid) =>
  [...dublinCore(aid, 'otherlevel')].filter(({ xml }) => xml).map(textOf);
const termsRecords = (aid: FindingAid) => dcterms(aid, 'otherlevel').map(textOf);

const FORMATS = [
  {
    ...{
      name: 'simple Dublin Core',
      profile: SIMPLE_PROFILE,
      published: publishedOaiDc,
      small: SMALL_OAI_DC,
    },
    ...{ recordsOf: simpleRecords, attributes: ['xml:lang', 'id'] },
    elements: [
      'dc:title',
      'dc:creator',
      'dc:language',
      'dc:identifier',
      'dc:rights',
      'dc:origin',
      'oai_dc:dc',
    ],
  },
  {
    ...{
      name: 'DCMI terms',
      profile: TERMS_PROFILE,
      published: containerBesidePublished,
      small: SMALL_DCTERMS,
    },
    ...{ recordsOf: termsRecords, attributes: ['xsi:type', 'xml:lang'] },
    elements: [
      'dcterms:title',
      'dcterms:created',
      'dcterms:type',
      'dcterms:audience',
      'dcterms:lost',
      'record',
    ],
  },
];

describe('what is written', () => {
  it.each(FORMATS)('is valid by the profile, whatever the finding aid: $name', ({ profile, recordsOf }) => {
    const byProfile = validatorBy(profile);
    fc.assert(
      fc.property(arbitraryFindingAid({ complete: false }), (aid) => {
        for (const xml of recordsOf(aid)) expect(byProfile(xml)).toEqual([]);
      }),
      { numRuns: times(250) },
    );
  });
});

// Sources: oai_dc.xsd of 2002-12-19; dcterms.xsd of 2008-02-11. What is valid by a profile is valid by these.
describeWithSchemas('the profiles and the published schemas of Dublin Core', (schemas) => {
  it.each(FORMATS)('both accept what is written: $name', ({ published, recordsOf }) => {
    const byPublished = validatorBy(published(schemas));
    fc.assert(
      fc.property(arbitraryFindingAid({ complete: false }), (aid) => {
        for (const xml of recordsOf(aid)) expect(byPublished(xml)).toEqual([]);
      }),
      { numRuns: times(250) },
    );
  });

  it.each(FORMATS)('agree on broken records as far as they must: $name', (format) => {
    const byProfile = validatorBy(format.profile);
    const byPublished = validatorBy(format.published(schemas));
    const whole = fc.oneof(
      fc.constant(format.small),
      arbitraryFindingAid({ largest: 2 }).map((aid) => format.recordsOf(aid).at(-1) ?? ''),
    );
    const { elements, attributes } = format;
    const mutants = mutantsOf(whole.map(parseTree), { elements, attributes });
    expectHonest(mutants, byProfile, byPublished, { accepted: 0.05, stricter: 0.05 });
  });
});

/** The records of the example and of generated finding aids, and one of each sort that is broken, as files. */
describeWithTool('xmllint', 'xmllint', (schemas) => {
  let folder = '';
  const files: Record<string, string[]> = {};
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'kinfonds-dublin-core-'));
    const example = arrange(await loadCatalogue(EXAMPLE), '2026-05-14');
    const aids = [example, ...fc.sample(arbitraryFindingAid({ complete: false, largest: 4 }), 60)];
    for (const [at, { name, recordsOf, small }] of FORMATS.entries()) {
      const broken = small.replace(/(<\w+:title>)/, '<lost/>$1');
      files[name] = [broken, ...aids.flatMap(recordsOf)].map((xml, index) => {
        const file = join(folder, `${at}-${index}.xml`);
        writeFileSync(file, xml);
        return file;
      });
    }
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it.each(FORMATS)('finds all that is written valid, and what is broken broken: $name', (format) => {
    const own = files[format.name] ?? [];
    expect(own.length).toBeGreaterThan(50);
    const broken = [`${FORMATS.indexOf(format)}-0.xml`];
    expect(invalidByXmllint(format.published(schemas), own)).toEqual(broken);
    expect(invalidByXmllint(format.profile, own)).toEqual(broken);
  });
});
