import { expect, test } from 'vitest';
import { CatalogueError } from '../../src/catalogue/finding.ts';
import { findingAidToJson } from '../../src/catalogue/finding-aid-file.ts';
import { readFindingAid } from '../../src/compare/index.ts';
import { foreignEad3, foreignEad2002 } from '../support/foreign-ead.ts';
import { aid, unit } from './finding-aids.ts';

const bytes = (text: string) => new TextEncoder().encode(text);

const refusal = (text: string | Uint8Array): Promise<string> =>
  readFindingAid(typeof text === 'string' ? bytes(text) : text, 'some file').then(
    () => 'read',
    (error: unknown) => {
      if (error instanceof CatalogueError) return error.message;
      throw error;
    },
  );

test('a finding-aid.json, with a byte order mark or without', async () => {
  const one = aid([unit('u', 'Letter')]);
  const json = [...findingAidToJson(one)].join('');
  expect(await readFindingAid(bytes(json), 'x')).toEqual({ aid: one });
  expect(await readFindingAid(bytes(`\uFEFF${json}`), 'x')).toEqual({ aid: one });
});

test('EAD in both versions, in any encoding, with a byte order mark and blanks before it', async () => {
  const ead2002 = foreignEad2002({ head: '' }).trim();
  // XML 1.0, 4.3.3: UTF-16 is known by its byte order mark, others by what the declaration says.
  const forms: [Uint8Array, string][] = [
    [bytes(foreignEad3()), 'ead3'],
    [bytes(foreignEad2002()), 'ead2002'],
    [bytes(`\uFEFF\n ${ead2002}`), 'ead2002'],
    [Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(ead2002, 'utf16le')]), 'ead2002'],
    [
      Buffer.from(
        `<?xml version="1.0" encoding="ISO-8859-1"?>${ead2002.replace('Heron papers', 'Hérons')}`,
        'latin1',
      ),
      'ead2002',
    ],
  ];
  for (const [form, version] of forms) {
    const read = await readFindingAid(form, 'x');
    expect(read.version).toBe(version);
    expect(read.aid.collection.title).toMatch(/^(?:Heron papers|Hérons)$/);
  }
});

test('what is none is refused in words', async () => {
  expect(await refusal('title,date\r\nLetter,1911\r\n')).toMatch(
    /some file: This is no finding aid .* EAD3 or EAD 2002, or the finding-aid\.json/,
  );
  expect(await refusal('')).toMatch(/no finding aid/);
  expect(await refusal('{"format": "kinfonds finding aid"')).toMatch(/not whole JSON/);
  expect(await refusal('PK\u0003\u0004')).toMatch(/workbook/);
});

test('XML that cannot be compared is refused in words, with the line', async () => {
  expect(await refusal('<html><body/></html>')).toMatch(
    /outermost element is <html>.*What can be compared is <ead>/,
  );
  const broken = await refusal(foreignEad3().replace('</ead>', ''));
  expect(broken).toMatch(/some file, line \d+: .*kinfonds validate says more of it/);
  const hostile = '<!DOCTYPE ead [<!ENTITY secret SYSTEM "file:///etc/passwd">]>';
  const head = `<?xml version="1.0"?>${hostile}`;
  const did = '<abstract>&secret;</abstract>';
  expect(await refusal(foreignEad2002({ head, did }))).toMatch(/secret/);
  const many = Array.from({ length: 9 }, (_, at) => `<!ENTITY e${at + 1} "${`&e${at};`.repeat(10)}">`);
  const laughs = `<?xml version="1.0"?><!DOCTYPE ead [<!ENTITY e0 "ha">${many.join('')}]>`;
  expect(await refusal(foreignEad2002({ head: laughs, did: '<abstract>&e9;</abstract>' }))).not.toBe('read');
});
