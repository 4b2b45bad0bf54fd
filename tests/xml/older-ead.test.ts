import { describe, expect, test } from 'vitest';
import { documentTypeOf } from '../../src/xml/document-type.ts';
import { validateXml } from '../../src/xml/validate.ts';
import type { Validation } from '../../src/xml/validation.ts';
import { describeWithSchemas } from '../support/outside.ts';
import { SMALL_EAD2002 } from '../support/small-ead2002.ts';

const NAMESPACES = ' xmlns="urn:isbn:1-931666-22-9" xmlns:xlink="http://www.w3.org/1999/xlink"';
// The public names are from memory.
const PUBLIC_2002 =
  '+//ISBN 1-931666-00-8//DTD ead.dtd (Encoded Archival Description (EAD) Version 2002)//EN';
const PUBLIC_1 =
  '-//Society of American Archivists//DTD ead.dtd (Encoded Archival Description (EAD) Version 1.0)//EN';
const type = (name: string) => `<!DOCTYPE ead PUBLIC "${name}" "http://example.org/ead.dtd">\n`;
const DECLARATION = '<?xml version="1.0" encoding="UTF-8"?>\n';

/** The finding aid written by hand as the DTD would have it: no namespaces, links without a prefix. */
const DTD_FORM = SMALL_EAD2002.replace(NAMESPACES, '')
  .replaceAll('xlink:type=', 'linktype=')
  .replaceAll('xlink:', '');
const withType = (declared: string, xml = DTD_FORM) => xml.replace(DECLARATION, `${DECLARATION}${declared}`);

/** Without a published schema, so that every machine says the same. */
const check = (xml: string | Uint8Array): Promise<Validation> =>
  validateXml(typeof xml === 'string' ? Buffer.from(xml) : xml, 'old.xml', { env: {}, home: '/nonexistent' });
const said = ({ messages }: Validation) => messages.map(({ says }) => says).join('\n');

describe('EAD 2002 in its DTD form', () => {
  test('is named for what it is, and checked as if it had the namespace', async () => {
    const result = await check(withType(type(PUBLIC_2002)));
    expect(result).toMatchObject({ format: 'EAD 2002', valid: true, messages: [], remarks: [] });
    expect(result.notice).toContain('This is EAD 2002 in its older form');
    expect(result.notice).toContain(PUBLIC_2002);
    expect(result.notice).toContain('The DTD is not read');
    expect(result.notice).toContain('checked as if it had the namespace urn:isbn:1-931666-22-9');
    // Counted by hand in the five links of the file: 2 + 1 + 4 + 3 + 4.
    expect(result.notice).toContain('there are 14');
    expect(result.notice).toContain('begin with <ead xmlns="urn:isbn:1-931666-22-9"');
  });

  test.each([
    ['by the address alone', withType('<!DOCTYPE ead SYSTEM "ead.dtd">\n')],
    ['in single quotes', withType(`<!DOCTYPE ead PUBLIC '${PUBLIC_2002}' 'ead.dtd'>\n`)],
    [
      'with an internal subset',
      withType(`<!DOCTYPE ead PUBLIC "${PUBLIC_2002}" "ead.dtd" [<!ENTITY x "y">]>\n`),
    ],
    ['behind a comment', withType(`<!-- <!DOCTYPE html> -->\n${type(PUBLIC_2002)}`)],
    ['in UTF-16', Buffer.from(`\uFEFF${withType(type(PUBLIC_2002)).replace('UTF-8', 'UTF-16')}`, 'utf16le')],
  ])('is known %s', async (_, xml) => {
    expect(await check(xml)).toMatchObject({ valid: true, notice: expect.stringContaining('older form') });
  });

  test('is found faulty at the lines of the file, by its own names', async () => {
    const broken = withType(type(PUBLIC_2002)).replace('level="item"', 'level="bundle"');
    const line = broken.slice(0, broken.indexOf(' level="bundle"')).split('\n').length;
    const result = await check(broken);
    expect(result).toMatchObject({ valid: false, notice: expect.stringContaining('older form') });
    expect(result.messages).toMatchObject([{ line, path: '/ead/archdesc/dsc/c/c', element: 'c' }]);
    expect(said(result)).toContain('The attribute level of <c> is “bundle”');
  });

  test('may use an entity only if the file defines it', async () => {
    const using = (declared: string) => withType(declared).replace('Letter to Ada', 'Letter &amp; &who;');
    const defined = `<!DOCTYPE ead PUBLIC "${PUBLIC_2002}" "ead.dtd" [<!ENTITY who "Ada">]>\n`;
    expect(await check(using(defined))).toMatchObject({ valid: true });
    expect(said(await check(using(type(PUBLIC_2002))))).toContain('The entity &who; is defined nowhere');
  });

  test('keeps its namespace where it has both', async () => {
    const result = await check(withType(type(PUBLIC_2002), SMALL_EAD2002));
    expect(result).toMatchObject({ format: 'EAD 2002', valid: true });
    expect(result.notice).toBeUndefined();
  });
});

describe('EAD without a namespace', () => {
  test('and without a document type is EAD 2002 by its header, which is a fault', async () => {
    const result = await check(DTD_FORM);
    expect(result).toMatchObject({ format: 'EAD 2002', valid: false });
    expect(result.messages).toMatchObject([{ line: 2, path: '/ead' }]);
    expect(said(result)).toMatch(
      /EAD 2002 by its <eadheader>.*neither a namespace nor.*Begin with <ead xmlns=/s,
    );
  });

  test('tells its other faults as well', async () => {
    const result = await check(DTD_FORM.replace(' level="item"', ''));
    expect(result.messages).toHaveLength(2);
    expect(said(result)).toContain('must have the attribute level');
  });

  test('is EAD 1.0 where it says so, which is not checked', async () => {
    const result = await check(withType(type(PUBLIC_1)));
    expect(result).toMatchObject({ valid: false, messages: [{ path: '/ead' }] });
    expect(result.schema).toBeUndefined();
    expect(said(result)).toMatch(
      /This is EAD 1\.0, the first version, of 1998.*converted to EAD 2002 or EAD3/s,
    );
  });

  test('and without a header is of no format that is known', async () => {
    const result = await check('<ead><control/></ead>');
    expect(said(result)).toContain('The outermost element is <ead> in no namespace');
  });
});

// Source: the head of ead.xsd, "EAD DTD / Schema Relationship": the links are the one exception to the schema being a
// subset of the DTD. Values of show and actuate in the DTD are from memory.
describeWithSchemas('the links of the DTD form, by the published schema', (schemas) => {
  const byPublished = (links: string) => {
    const xml = withType(type(PUBLIC_2002)).replace('<p>None expected.</p>', `<p>${links}</p>`);
    return validateXml(Buffer.from(xml), 'old.xml', { folder: schemas });
  };

  test('are those of XLink under other names', async () => {
    for (const links of [
      '<extref href="x.html" show="new" actuate="onrequest" role="r" title="t">x</extref>',
      '<ref target="c1" linktype="simple" show="showother" actuate="actuatenone">x</ref>',
      '<extptr href="x.png" show="embed" actuate="onload"/>',
      '<title href="x.html" show="shownone" actuate="actuateother">x</title>',
      '<linkgrp linktype="extended"><extrefloc href="a" label="l">x</extrefloc><arc linktype="arc" from="l" to="l"/></linkgrp>',
    ]) {
      expect([links, (await byPublished(links)).messages]).toEqual([links, []]);
    }
  });

  test('are held to the values of XLink', async () => {
    expect(said(await byPublished('<extptr href="x.png" show="often"/>'))).toContain('“often”');
    expect((await byPublished('<persname role="r" href="x">x</persname>')).valid).toBe(false);
  });
});

// XML 1.0, appendix F: two bytes a letter, the high one first or last, with a byte order mark before them or without.
test('the document type is found in either form of UTF-16', () => {
  const low = (text: string) => Buffer.from(text, 'utf16le');
  const xml = '<!DOCTYPE a SYSTEM "b.dtd"><a/>';
  for (const text of [xml, `\uFEFF${xml}`]) {
    expect(documentTypeOf(low(text))).toBe('b.dtd');
    expect(documentTypeOf(low(text).swap16())).toBe('b.dtd');
  }
});

test.each([
  ['<a/>', undefined],
  ['<!DOCTYPE a><a/>', undefined],
  ['<!DOCTYPE a [<!ENTITY b PUBLIC "c" "d">]><a/>', undefined],
  ['<!DOCTYPE a SYSTEM "b.dtd"><a/>', 'b.dtd'],
  ["<?x <!DOCTYPE y SYSTEM 'z'>?><!DOCTYPE a PUBLIC\n'it' \"b.dtd\"><a/>", 'it'],
  ['<a><![CDATA[<!DOCTYPE a SYSTEM "b.dtd">]]></a>', undefined],
])('the document type of %s', (xml, expected) => {
  expect(documentTypeOf(Buffer.from(xml))).toBe(expected);
});
