import { describe, expect, test } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import type { Component } from '../../src/catalogue/component.ts';
import { type FindingAid, findingAid } from '../../src/catalogue/finding-aid.ts';
import { ead2002 } from '../../src/export/ead2002/index.ts';
import { FORMATS } from '../../src/export/formats.ts';
import { writeXml } from '../../src/xml/write.ts';
import { dated, someSettings, someThing } from '../support/catalogue.ts';

const xmlOf = (aid: FindingAid) => [...writeXml(ead2002(aid))].join('').replace(/\s+/g, ' ');

/** The finding aid of a small list, its collection changed by `over`. */
function aidWith(over: Partial<Component> = {}, control: Partial<FindingAid['control']> = {}): FindingAid {
  const things = [
    someThing({
      row: 2,
      title: 'Ada to Nils on the flood',
      kind: 'letter',
      date: dated('1962-05-14'),
      creators: ['Ada Quill'],
      box: '3',
    }),
  ];
  const aid = arrange({ settings: someSettings({ described: '2026' }), things }, '2026-01-01');
  return findingAid.parse({
    ...aid,
    control: { ...aid.control, ...control },
    collection: { ...aid.collection, ...over },
  });
}

/** The finding aid with one item in place of all components, for a look at one element. */
const itemXml = (over: Partial<Component>) =>
  xmlOf(
    aidWith({ children: [{ ...aidWith().collection, id: 'QF-9', level: 'item', children: [], ...over }] }),
  ).split('<dsc')[1] ?? '';

const headerXml = (control: Partial<FindingAid['control']>) =>
  xmlOf(aidWith({}, control)).split('<archdesc')[0] ?? '';

const inclusive = 'inclusive' as const;

// What is expected here is written from the EAD 2002 schema of 2021-04-12 and, where it leaves room, from how the EAD
// 2002 Tag Library describes the elements (from memory).
describe('EAD 2002', () => {
  test('is one file of the export', () => {
    expect([...FORMATS.ead2002(aidWith())].map(({ path, xml }) => [path, xml])).toEqual([
      ['ead2002.xml', true],
    ]);
  });

  test('has its namespace, that of XLink, and the codes named as to their lists', () => {
    const xml = xmlOf(aidWith());
    expect(xml).toContain('<ead xmlns="urn:isbn:1-931666-22-9" xmlns:xlink="http://www.w3.org/1999/xlink">');
    for (const encoding of [
      ...['countryencoding="iso3166-1"', 'dateencoding="iso8601"', 'langencoding="iso639-2b"'],
      ...['repositoryencoding="iso15511"', 'scriptencoding="iso15924"'],
    ]) {
      expect(xml).toMatch(new RegExp(`<eadheader [^>]*${encoding}`));
    }
  });

  test('has components without numbers, in a dsc of the type combined', () => {
    const xml = xmlOf(aidWith());
    expect(xml).toContain('<dsc type="combined"> <c id="QF-1" level="series">');
    expect(xml).not.toMatch(/<c\d\d/);
  });

  test.each([
    ['1962-05-14', '<unitdate normal="1962-05-14" type="inclusive">shown</unitdate>'],
    ['1950~', '<unitdate certainty="approximate" normal="1950" type="inclusive">shown</unitdate>'],
    ['1867?', '<unitdate certainty="uncertain" normal="1867" type="inclusive">shown</unitdate>'],
    ['195X', '<unitdate normal="1950/1959" type="inclusive">shown</unitdate>'],
    ['1958/1963', '<unitdate normal="1958/1963" type="inclusive">shown</unitdate>'],
    // No end, no @normal: two dates or none.
    ['1958/..', '<unitdate type="inclusive">shown</unitdate>'],
  ])('date %s', (edtf, expected) => {
    expect(itemXml({ dates: [{ type: inclusive, expression: 'shown', edtf }] })).toContain(expected);
  });

  test('bulk dates are marked as such beside the inclusive ones (DACS 2.4.10)', () => {
    const dates = [
      { type: inclusive, expression: '1785-1960', edtf: '1785/1960' },
      { type: 'bulk' as const, expression: 'bulk 1916-1958', edtf: '1916/1958' },
    ];
    expect(itemXml({ dates })).toContain(
      '<unitdate normal="1785/1960" type="inclusive">1785-1960</unitdate> <unitdate normal="1916/1958" type="bulk">bulk 1916-1958</unitdate>',
    );
  });

  test('extent is counted in words, with what it is made of and how large it is', () => {
    const extents: Component['extents'] = [
      {
        type: 'materialtype',
        coverage: 'part',
        quantity: 2.5,
        unit: 'metres of film',
        approximate: true,
        dimensions: '8 mm',
        facets: ['acetate'],
      },
    ];
    expect(itemXml({ extents, physicalDescription: 'On two reels.' })).toContain(
      '<physdesc label="part"> <extent type="materialtype">approximately 2.5 metres of film</extent> <physfacet>acetate</physfacet> <dimensions>8 mm</dimensions> </physdesc> <physdesc>On two reels.</physdesc>',
    );
  });

  test('a folder points to the box it stands in; a type of several words is one word, and a label in its own', () => {
    expect(xmlOf(aidWith())).toContain(
      '<container id="QF-1-1-box" type="box">3</container> <container parent="QF-1-1-box" type="folder">1</container>',
    );
    expect(itemXml({ containers: [{ type: 'oversize folder', number: '2' }] })).toContain(
      '<container label="oversize folder" type="oversize-folder">2</container>',
    );
    expect(itemXml({ containers: [{ type: '📦', number: '2' }] })).toContain(
      '<container label="📦">2</container>',
    );
  });

  test('a level that EAD does not know is named by one word', () => {
    expect(itemXml({ level: 'otherlevel', otherLevel: 'bundle of letters' })).toContain(
      'level="otherlevel" otherlevel="bundle-of-letters"',
    );
  });

  test('one digital copy is a dao, several are a daogrp, all by XLink', () => {
    const copy = (file: string) => ({ file, origin: 'derived' as const, title: 'Front' });
    expect(itemXml({ digitalCopies: [{ ...copy('copies/ferry & bell.jpg'), note: 'A scan.' }] })).toContain(
      '<dao xlink:href="copies/ferry%20%26%20bell.jpg" xlink:role="derived" xlink:title="Front" xlink:type="simple"> <daodesc> <p>A scan.</p> </daodesc> </dao>',
    );
    expect(itemXml({ digitalCopies: [copy('a.jpg'), copy('b.jpg')] })).toContain(
      '<daogrp xlink:type="extended"> <daoloc xlink:href="a.jpg" xlink:role="derived" xlink:title="Front" xlink:type="locator"/> <daoloc xlink:href="b.jpg" ',
    );
  });

  test('names and terms stand without parts, with their role and where they are registered', () => {
    const ada = { id: 'ada', type: 'person', name: 'Ada', authorizedForm: 'Quill, Ada' } as const;
    const registered = { source: 'lcnaf', identifier: 'n79' };
    const unit = { creators: [{ agent: 'ada' }, { agent: 'ada', role: 'photographer' }] };
    const terms: Component['accessPoints'] = [
      { type: 'place', term: 'Quill Landing', source: 'tgn', identifier: '7' },
    ];
    const aid = aidWith({ ...unit, people: [{ agent: 'ada' }], accessPoints: terms });
    const xml = xmlOf({ ...aid, people: [...aid.people, { ...ada, ...registered }] });
    const name = (role: string) =>
      `<persname authfilenumber="n79" source="lcnaf"${role}>Quill, Ada</persname>`;
    const creator = name(' role="creator"');
    expect(xml).toContain(
      `<origination> ${creator} </origination> <origination> ${creator.replace('creator', 'photographer')} </origination>`,
    );
    expect(xml).toContain(
      `<controlaccess> ${name('')} <geogname authfilenumber="7" source="tgn">Quill Landing</geogname> </controlaccess>`,
    );
  });

  test('languages are told by ISO 639-2/B and ISO 15924, with a comma between and the note behind', () => {
    const latin = { code: 'Latn', name: 'Latin' };
    const languages = [
      { code: 'ger', name: 'German', script: latin },
      { code: 'nor', name: 'Norwegian' },
    ];
    expect(itemXml({ languages, languageNote: 'Mostly German' })).toContain(
      '<langmaterial><language langcode="ger" scriptcode="Latn">German</language>, <language langcode="nor">Norwegian</language>. Mostly German</langmaterial>',
    );
    expect(itemXml({ languages: [], languageNote: 'Unknown signs' })).toContain(
      '<langmaterial><language langcode="und">Undetermined</language>. Unknown signs</langmaterial>',
    );
  });

  test('the legal status stands among the conditions governing access, which may have an end', () => {
    const accessConditions = { statement: 'Family only', restricted: true, until: '2050' };
    expect(itemXml({ accessConditions, legalStatus: 'On loan.\n\nBy deed.' })).toContain(
      '<accessrestrict type="restricted"> <p>Family only</p> <p>End of the restriction: <date normal="2050">2050</date>.</p> <legalstatus>On loan.</legalstatus> <legalstatus>By deed.</legalstatus> </accessrestrict>',
    );
    const { accessConditions: _, ...open } = aidWith().collection;
    const only = xmlOf(
      aidWith({ children: [{ ...open, id: 'QF-9', children: [], legalStatus: 'On loan.' }] }),
    );
    expect(only).toContain('<accessrestrict> <legalstatus>On loan.</legalstatus> </accessrestrict>');
  });

  test('two kinds of technical note are told apart by their type', () => {
    expect(itemXml({ physicalCharacteristics: 'Brittle', technicalRequirements: 'A projector' })).toContain(
      '<phystech type="physical characteristics"> <p>Brittle</p> </phystech> <phystech type="technical requirements"> <p>A projector</p> </phystech>',
    );
  });

  test('a code that fits is in its attribute; one with a slash, which ISO 15511 allows, beside the name', () => {
    const keeper = (isil: string) => itemXml({ repository: { name: 'Society', country: 'US', isil } });
    expect(keeper('US-HeHS')).toContain('<unitid countrycode="US" repositorycode="US-HeHS">');
    expect(keeper('US-HeHS')).toContain('<corpname>Society</corpname>');
    expect(keeper('ZDB-1/2')).not.toContain('repositorycode');
    expect(keeper('ZDB-1/2')).toContain('<corpname authfilenumber="ZDB-1/2">Society</corpname>');
  });

  test('the header tells who made the description, by which rules, and what was done later', () => {
    const event = { agent: 'Nora Quill', agentType: 'human' as const };
    const xml = headerXml({
      history: [
        { ...event, type: 'created', date: '2026-05-14T10:20:30Z', description: 'From the list.' },
        { ...event, type: 'revised', date: '2026-06', agent: 'kinfonds', agentType: 'machine' },
      ],
      conventions: [{ abbreviation: 'DACS', citation: 'Describing Archives' }, { citation: 'House rules' }],
      maintenanceAgency: { name: 'Society', isil: 'US-HeHS', country: 'US', address: ['1 Landing Lane'] },
      rights: [{ citation: 'CC0', address: 'https://example.org/0', statement: 'Copy it.' }],
      sources: ['The family Bible'],
      publicationStatus: 'published',
    });
    for (const part of [
      'findaidstatus="published"',
      '<eadid countrycode="US" mainagencycode="US-HeHS">QF</eadid>',
      '<p> <extref xlink:href="https://example.org/0" xlink:type="simple">CC0</extref> </p> <p>Copy it.</p>',
      '<note type="maintenance agency"> <p>Society (US-HeHS), 1 Landing Lane</p> </note>',
      '<note type="sources"> <p>The family Bible</p> </note>',
      '<creation>Created by Nora Quill, <date normal="2026-05-14">2026-05-14T10:20:30Z</date>. From the list.</creation>',
      '<descrules>Describing Archives (<abbr>DACS</abbr>); House rules</descrules>',
      '<revisiondesc> <change> <date normal="2026-06">2026-06</date> <item>Revised by the program kinfonds</item> </change> </revisiondesc>',
    ]) {
      expect(xml).toContain(part);
    }
  });
});
