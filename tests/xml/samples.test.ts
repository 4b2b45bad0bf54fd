import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { validateXml } from '../../src/xml/validate.ts';
import { describeWithSamples, describeWithTool, samples } from '../support/outside.ts';
import { VARIANTS } from './broken-variants.ts';
import { spread } from './change-text.ts';
import { ILL_FORMED } from './ill-formed-variants.ts';

const ALL = [...VARIANTS, ...ILL_FORMED];

describeWithSamples('the sample finding aids of the EAD3 standard', (samples, schemas) => {
  const folder = join(samples, 'ead3');
  const files = existsSync(folder) ? readdirSync(folder).filter((file) => file.endsWith('.xml')) : [];

  test('are all there', () => expect(files.length).toBe(16));

  test.each(files)('%s is valid by the published schema', async (file) => {
    const result = await validateXml(readFileSync(join(folder, file)), file, { folder: schemas });
    expect(result).toMatchObject({ format: 'EAD3', valid: true, messages: [], more: 0, remarks: [] });
    expect(result.schema).toMatchObject({ version: '1.1.1', kind: 'published' });
  });
});

/** What xmllint says. Its exit code: 0 for valid, 1 for not well-formed, 3 for invalid; all others mean trouble. */
function xmllint(schema: string, file: string): { valid: boolean; lines: number[] } {
  const { status, stderr } = spawnSync('xmllint', ['--nonet', '--noout', '--schema', schema, file], {
    encoding: 'utf8',
  });
  expect([0, 1, 3]).toContain(status);
  const faults =
    /^[^\n]*?\.xml:(\d+): (?:element \S+: Schemas validity error|parser error|namespace error) :/gm;
  return { valid: status === 0, lines: [...stderr.matchAll(faults)].map(([, line]) => Number(line)) };
}

describeWithTool('xmllint', 'changed samples get the verdict of xmllint, and the first line', (schemas) => {
  const schema = join(schemas, 'ead3', 'ead3.xsd');
  let work = '';
  beforeAll(() => {
    work = mkdtempSync(join(tmpdir(), 'kinfonds-variants-'));
  });
  afterAll(() => rmSync(work, { recursive: true }));

  test.skipIf(samples === undefined).each(ALL)(
    '$name',
    async ({ name, sample, change, valid = false, place, remark }) => {
      const file = join(work, `${name.replaceAll(/\W+/g, '-')}.xml`);
      writeFileSync(file, change(spread(readFileSync(join(samples ?? '', 'ead3', sample), 'utf8'))));
      const theirs = xmllint(schema, file);
      const ours = await validateXml(readFileSync(file), file, { folder: schemas });
      expect(theirs.valid).toBe(valid);
      expect(ours.valid).toBe(theirs.valid);
      expect(ours.messages[0]?.line).toBe(theirs.lines[0]);
      if (place !== undefined) expect(ours.messages[0]?.path).toBe(place);
      expect(ours.remarks.map(({ says }) => says)).toEqual(
        remark === undefined ? [] : [expect.stringContaining(remark)],
      );
      for (const { says, path } of ours.messages) {
        // Every kind of fault among these has words of its own.
        expect(says).not.toMatch(/^(?:The schema refuses|This is not well-formed XML)/);
        expect(says).toMatch(/^[A-Z"<].*[.?]$/s);
        expect(says).not.toContain('{http');
        if (ours.schema !== undefined) expect(path).toMatch(/^\/ead/);
      }
    },
  );
});

test('at least 30 of them are broken', () => {
  expect(new Set(ALL.map(({ name }) => name)).size).toBe(ALL.length);
  expect(ALL.filter(({ valid }) => valid !== true).length).toBeGreaterThanOrEqual(30);
});
