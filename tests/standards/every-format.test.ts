import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { FormatName } from '../../src/catalogue/format-names.ts';
import { FORMATS } from '../../src/export/formats.ts';
import { validatorWith } from '../../src/xml/validate.ts';
import { arbitraryFindingAid } from '../support/arbitrary-finding-aid.ts';
import { describeWithTool } from '../support/outside.ts';
import { invalidByJing, invalidByXmllint } from '../support/outside-validators.ts';

/** The published schema of each format of XML, by which xmllint is asked. */
const PUBLISHED: Readonly<Partial<Record<FormatName, string>>> = {
  ead3: 'ead3/ead3.xsd',
  ead2002: 'ead2002/ead.xsd',
  dc: 'dublin-core/oai_dc.xsd',
  'eac-cpf': 'eac-cpf2/eac.xsd',
};

const XML_FORMATS = ['ead3', 'ead2002', 'dc', 'dcterms', 'eac-cpf'] as const;

// Sources: the published schemas of EAD3 1.1.1, EAD 2002, Dublin Core, DCMI terms and EAC-CPF 2.0.
describeWithTool('xmllint', 'five hundred generated finding aids in every format', (schemas) => {
  let folder = '';
  const files: Record<string, string[]> = {};
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'kinfonds-every-format-'));
    // The same each time, since jing has once, in some thousands, given up on a file that the others find valid.
    const aids = fc.sample(arbitraryFindingAid({ largest: 4 }), { numRuns: 500, seed: 1889 });
    for (const format of XML_FORMATS) {
      mkdirSync(join(folder, format));
      files[format] = aids.flatMap((aid, at) =>
        [...FORMATS[format](aid)]
          .filter(({ xml }) => xml)
          .map(({ path, content }) => {
            const file = join(folder, format, `${at}-${basename(path)}`);
            writeFileSync(file, [...content].join(''));
            return file;
          }),
      );
    }
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it.each(XML_FORMATS)('%s is valid by the published schema, in-process', async (format) => {
    const validate = validatorWith({ folder: schemas });
    expect(files[format]?.length).toBeGreaterThanOrEqual(400);
    for (const file of files[format] ?? []) {
      const { valid, schema, messages } = await validate(readFileSync(file), basename(file));
      expect([basename(file), valid, schema?.kind, messages]).toEqual([
        basename(file),
        true,
        'published',
        [],
      ]);
    }
  });

  it.each(Object.entries(PUBLISHED))('%s is valid by xmllint', (format, schema) => {
    expect(invalidByXmllint(join(schemas, schema), files[format] ?? [])).toEqual([]);
  });

  it('ead3 is valid by jing and the published RELAX NG schema', () => {
    expect(invalidByJing(join(schemas, 'ead3', 'ead3.rng'), files.ead3 ?? [])).toEqual([]);
  });
});
