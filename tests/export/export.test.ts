import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import { findingAid } from '../../src/catalogue/finding-aid.ts';
import { findingAidFromJson } from '../../src/catalogue/finding-aid-file.ts';
import { csv } from '../../src/export/csv.ts';
import { hrefOf } from '../../src/export/href.ts';
import { exportFindingAid } from '../../src/export/index.ts';
import { dated, someSettings, someThing } from '../support/catalogue.ts';
import { contentsOf, freshFolder } from '../support/kinfonds.ts';

const aid = arrange(
  {
    settings: someSettings({ described: '2026' }),
    things: [
      someThing({ row: 2, title: '=HYPERLINK("x")', kind: 'letter', date: dated('1962-05-14') }),
      someThing({
        row: 3,
        title: 'Boat, "the Hester"\nside view',
        kind: 'photo',
        note: '-5 degrees, ferry frozen in',
      }),
    ],
  },
  '2026-01-01',
);

/** A schema for the namespace of EAD3 that nothing can satisfy. */
const IMPOSSIBLE = `<xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema" targetNamespace="http://ead3.archivists.org/schema/">
  <xs:element name="ead"><xs:complexType/></xs:element>
</xs:schema>`;

describe('exporting', () => {
  test('writes every format, and reads back the JSON as the same finding aid', async () => {
    const folder = join(freshFolder(), 'out');
    const steps: string[] = [];
    const result = await exportFindingAid(aid, ['ead3', 'json', 'csv'], folder, {
      step: (words) => steps.push(words),
    });
    expect(result).toMatchObject({
      written: [{ validation: { valid: true } }, { format: 'json' }, { format: 'csv' }],
    });
    expect(steps).toEqual(['writing ead3', 'writing json', 'writing csv']);
    const text = readFileSync(join(folder, 'finding-aid.json'), 'utf8');
    expect(findingAidFromJson(text, 'finding-aid.json')).toEqual(
      findingAid.parse(JSON.parse(JSON.stringify(aid))),
    );
  });

  test('what is not valid is not put in its place, and neither is what was written beside it', async () => {
    const folder = freshFolder();
    await exportFindingAid(aid, ['ead3', 'csv'], folder);
    const before = contentsOf(folder);
    const schemas = freshFolder();
    mkdirSync(join(schemas, 'ead3'));
    writeFileSync(join(schemas, 'ead3', 'ead3.xsd'), IMPOSSIBLE);
    const other = { ...aid, collection: { ...aid.collection, title: 'Another title' } };
    const result = await exportFindingAid(other, ['csv', 'ead3'], folder, { places: { folder: schemas } });
    expect(result).toMatchObject({ invalid: [{ valid: false, schema: { kind: 'published' } }] });
    expect(contentsOf(folder)).toEqual(before);
  });
});

describe('the finding aid as a table', () => {
  const rows: Record<string, string>[] = parse([...csv(aid)].join(''), { bom: true, columns: true });

  test('has a row for each unit, as csv-parse reads it (RFC 4180)', () => {
    expect(rows.map((row) => row['reference code'])).toEqual([
      'QF',
      'QF/1',
      'QF/1/1',
      'QF/1/1/1',
      'QF/2',
      'QF/2/1',
      'QF/2/1/1',
    ]);
    expect(rows[6]?.title).toBe('Boat, "the Hester"\nside view');
    expect(rows[3]).toMatchObject({
      level: 'item',
      dates: '1962 May 14',
      'date (EDTF)': '1962-05-14',
      extent: '1 letter',
    });
  });

  test('holds nothing that a spreadsheet would run as a formula', () => {
    expect(rows[3]?.title).toBe(`'=HYPERLINK("x")`);
    expect(rows[6]?.notes).toBe(`'-5 degrees, ferry frozen in`);
  });
});

test('paths of copies become relative addresses (RFC 3986); addresses stay', () => {
  expect(hrefOf('copies/été #1.jpg')).toBe('copies/%C3%A9t%C3%A9%20%231.jpg');
  expect(hrefOf('https://example.org/a?b=1%20c#d')).toBe('https://example.org/a?b=1%20c#d');
});
