import { describe, expect, it } from 'vitest';
import type { Component } from '../../src/catalogue/component.ts';
import { keptWhereNeeded } from '../../src/export/ead/needed.ts';
import { ead3 } from '../../src/export/ead3/index.ts';
import { ead2002 } from '../../src/export/ead2002/index.ts';
import { readEad } from '../../src/intake/ead/index.ts';
import { writeXml } from '../../src/xml/write.ts';
import { foreignEad3, foreignEad2002 } from '../support/foreign-ead.ts';

const read = async (xml: string | Uint8Array) => {
  const result = await readEad(Buffer.from(xml), 'foreign.xml', '2026-05-14');
  return { ...result, aid: keptWhereNeeded(result) };
};
const titles = (unit: Component): unknown[] => unit.children.map((child) => [child.title, ...titles(child)]);
const again = async (xml: string | Uint8Array) => {
  const { aid, version } = await read(xml);
  return [...writeXml((version === 'ead3' ? ead3 : ead2002)(aid))].join('');
};
const did = (title: string) => `<did><unittitle>${title}</unittitle></did>`;

// EAD 2002 Tag Library: a dsc holds numbered components (c01 to c12) or unnumbered ones (c).
describe('components are read', () => {
  const nested = [['Letters', ['1911']], ['Maps']];
  it.each([
    [
      'numbered',
      `<dsc><c01 level="series">${did('Letters')}<c02>${did('1911')}</c02></c01><c01>${did('Maps')}</c01></dsc>`,
    ],
    [
      'unnumbered',
      `<dsc><c level="series">${did('Letters')}<c>${did('1911')}</c></c><c>${did('Maps')}</c></dsc>`,
    ],
    [
      'mixed, as no schema allows',
      `<dsc><c01 level="series">${did('Letters')}<c>${did('1911')}</c></c01><c>${did('Maps')}</c></dsc>`,
    ],
    [
      'in several dsc',
      `<dsc type="analyticover"><head>Overview</head><c level="series">${did('Letters')}<c>${did('1911')}</c></c></dsc>
       <dsc type="in-depth"><head>In depth</head><c>${did('Maps')}</c></dsc>`,
    ],
  ])('%s', async (_, dsc) => {
    const { aid } = await read(foreignEad2002({ dsc }));
    expect(titles(aid.collection)).toEqual(nested);
    const [series] = aid.collection.children;
    expect(series?.level).toBe('series');
  });

  it('twelve deep', async () => {
    const numbers = Array.from({ length: 12 }, (_, at) => String(at + 1).padStart(2, '0'));
    const open = numbers.map((number) => `<c${number}>${did(`Level ${number}`)}`).join('');
    const close = numbers
      .toReversed()
      .map((number) => `</c${number}>`)
      .join('');
    const { aid, repaired } = await read(foreignEad2002({ dsc: `<dsc>${open}${close}</dsc>` }));
    let unit: Component | undefined = aid.collection;
    for (const number of numbers) {
      unit = unit?.children[0];
      expect(unit?.title).toBe(`Level ${number}`);
    }
    expect(repaired).toEqual(['Numbered components (c01, c02 and so on) are written as c. (12 times)']);
  });

  it('with what stands in each dsc beside them, which goes back there', async () => {
    const xml = await again(
      foreignEad2002({
        dsc: `<dsc type="analyticover"><head>Overview</head><p>In two parts.</p><c>${did('Letters')}</c></dsc>
          <dsc type="in-depth" id="second"><head>In depth</head><thead><row><entry>Box</entry></row></thead><c>${did('Maps')}</c></dsc>
          <dsc type="othertype"><p>A list on paper.</p></dsc>`,
      }),
    );
    const flat = xml.replace(/>\s+</g, '><');
    expect(flat).toMatch(/<dsc type="analyticover"><head>Overview<\/head><p>In two parts.<\/p><c><did>/);
    expect(flat).toMatch(/<\/c><\/dsc><dsc type="in-depth" id="second"><head>In depth<\/head>/);
    expect(flat).toMatch(/<thead><row><entry>Box<\/entry><\/row><\/thead><c>.*Maps/);
    expect(flat).toContain('<dsc type="othertype"><p>A list on paper.</p></dsc>');
  });
});

describe('the older and the unusual forms of a file', () => {
  // EAD 2002 Tag Library: the DTD came before the schema, and with it no namespace.
  it('EAD 2002 with a document type and no namespace, its links without XLink', async () => {
    const xml = foreignEad2002({
      head: '<?xml version="1.0"?><!DOCTYPE ead PUBLIC "+//ISBN 1-931666-00-8//DTD ead.dtd (Encoded Archival Description (EAD) Version 2002)//EN" "ead.dtd">',
      root: '',
      did: '<dao href="copies/heron.tif" title="The Heron"/>',
    });
    const { aid, version, repaired } = await read(xml);
    expect(version).toBe('ead2002');
    expect(aid.collection.digitalCopies).toEqual([
      { file: 'copies/heron.tif', origin: 'derived', title: 'The Heron' },
    ]);
    expect(repaired.join()).toMatch(/no namespace, but names a document type/);
    expect(await again(xml)).toContain('xlink:href="copies/heron.tif"');
  });

  it('ISO-8859-1', async () => {
    const xml = foreignEad2002({
      head: '<?xml version="1.0" encoding="ISO-8859-1"?>',
      did: '<abstract>Æbler på fergen, señor</abstract>',
    });
    const { aid } = await read(Buffer.from(xml, 'latin1'));
    expect(aid.collection.abstract).toBe('Æbler på fergen, señor');
    expect(await again(Buffer.from(xml, 'latin1'))).toContain('Æbler på fergen, señor');
  });

  it('UTF-16', async () => {
    const xml = foreignEad3({ did: '<abstract>Åse på fergen</abstract>' }).replace('UTF-8', 'UTF-16');
    const { aid } = await read(Buffer.from(`\uFEFF${xml}`, 'utf16le'));
    expect(aid.collection.abstract).toBe('Åse på fergen');
  });

  it('entities of its own, references to characters, CDATA', async () => {
    const xml = foreignEad2002({
      head: '<?xml version="1.0"?><!DOCTYPE ead [<!ENTITY ferry "the Heron">]>',
      did: '<abstract>Of &ferry; &#38; &#x2014; <![CDATA[<b>&more;]]></abstract>',
    });
    const { aid } = await read(xml);
    expect(aid.collection.abstract).toBe('Of the Heron & — <b>&more;');
    expect(await again(xml)).toContain('Of the Heron &amp; — &lt;b&gt;&amp;more;');
  });

  it('names of characters that only the document type outside of the file defines', async () => {
    const xml = foreignEad2002({
      head: '<?xml version="1.0"?><!DOCTYPE ead PUBLIC "+//ISBN 1-931666-00-8//DTD ead.dtd (Encoded Archival Description (EAD) Version 2002)//EN" "ead.dtd">',
      root: '',
      did: '<abstract>Caf&eacute; &amp; orchard &ndash; 1911</abstract>',
    });
    const { aid, repaired } = await read(xml);
    expect(aid.collection.abstract).toBe('Café & orchard – 1911');
    expect(repaired.join()).toMatch(/&eacute;, &ndash;: only a document type/);
    await expect(read(xml.replace('&eacute;', '&nosuch;'))).rejects.toThrow(/&nosuch; is defined nowhere/);
  });

  it('prefixes of its own for EAD and XLink', async () => {
    const xml = foreignEad2002({
      root: 'xmlns="urn:isbn:1-931666-22-9" xmlns:l="http://www.w3.org/1999/xlink"',
      did: '<dao l:href="heron.tif"/>',
    })
      .replaceAll(/<(\/?)([a-z])/g, '<$1e:$2')
      .replace('xmlns=', 'xmlns:e=');
    const { aid } = await read(xml);
    expect(aid.collection.title).toBe('Heron papers');
    expect(aid.collection.digitalCopies[0]?.file).toBe('heron.tif');
    expect(await again(xml)).toContain('<dao xlink:href="heron.tif"/>');
  });

  it('elements of another namespace, which can still be read where they are put back', async () => {
    const xml = foreignEad3({
      root: 'xmlns="http://ead3.archivists.org/schema/" xmlns:q="https://example.org/quill"',
      beside:
        '<relations><relation relationtype="resourcerelation"><objectxmlwrap><q:ferry q:name="Heron">1911</q:ferry></objectxmlwrap></relation></relations>',
    });
    expect(await again(xml)).toMatch(
      /<q:ferry[^>]* xmlns:q="https:\/\/example.org\/quill"[^>]* q:name="Heron"/,
    );
  });
});

// XML 1.0, 2.2 to 2.11. What comes from a stranger is refused with a reason, or read; never fetched, never endless.
describe('what is hostile or no finding aid is refused', () => {
  const laughs = Array.from({ length: 9 }, (_, at) => `<!ENTITY e${at + 1} "${`&e${at};`.repeat(10)}">`).join(
    '',
  );
  it.each<[string, string | Uint8Array, RegExp]>([
    [
      'a billion laughs',
      foreignEad2002({
        head: `<!DOCTYPE ead [<!ENTITY e0 "ha">${laughs}]>`,
        did: '<abstract>&e9;</abstract>',
      }),
      /blow it up/,
    ],
    [
      'an entity from outside',
      foreignEad2002({
        head: '<!DOCTYPE ead [<!ENTITY x SYSTEM "file:///etc/hostname">]>',
        did: '<abstract>&x;</abstract>',
      }),
      /No other file is read/,
    ],
    [
      '10,000 components in one another',
      foreignEad2002({ dsc: `<dsc>${`<c>${did('x')}`.repeat(10_000)}${'</c>'.repeat(10_000)}</dsc>` }),
      /more than 256 deep/,
    ],
    ['a file that is cut off', foreignEad3().slice(0, -20), /line/],
    ['an empty file', '', /empty/],
    ['a list', 'title,date\nLetters,1911\n', /no XML file/],
    ['another kind of XML', '<html xmlns="http://www.w3.org/1999/xhtml"/>', /outermost element is <html>/],
    ['bytes that are no text', Uint8Array.from([0x1f, 0x8b, 8, 0, 1, 2, 3]), /XML/],
  ])('%s', { timeout: 20_000 }, async (_, xml, says) => {
    await expect(read(xml)).rejects.toThrow(says);
  });
});

describe('rules of description in EAD 2002 are one text, parted by semicolons', () => {
  it.each([
    ['DACS; local rules', ['DACS', 'local rules']],
    ['DACS; ; local rules', ['DACS', 'local rules']],
    ['; DACS', ['DACS']],
    ['; ;', [';']],
  ])('%s', async (said, citations) => {
    const header = `<profiledesc><descrules>${said}</descrules></profiledesc>`;
    const xml = foreignEad2002({ header });
    const { aid } = await read(xml);
    expect(aid.control.conventions.map(({ citation }) => citation)).toEqual(citations);
    // Whatever was not understood is kept as found.
    expect(await again(xml)).toContain(`<descrules>${said}</descrules>`);
  });
});
