import { describe, expect, it } from 'vitest';
import type { FindingAid } from '../../src/catalogue/finding-aid.ts';
import { keptWhereNeeded } from '../../src/export/ead/needed.ts';
import { ead3 } from '../../src/export/ead3/index.ts';
import { ead2002 } from '../../src/export/ead2002/index.ts';
import { readEad } from '../../src/intake/ead/index.ts';
import { writeXml } from '../../src/xml/write.ts';
import { foreignEad3, foreignEad2002 } from '../support/foreign-ead.ts';

const read = async (xml: string) => keptWhereNeeded(await readEad(Buffer.from(xml), 'f.xml', '2026-05-14'));
const flat = (aid: FindingAid, write: typeof ead3) =>
  [...writeXml(write(aid))].join('').replace(/>\s+</g, '><');

// Where each element goes: the crosswalk (docs/crosswalk.md), read from right to left.
describe('the fields of the model, from EAD 2002', () => {
  it('what identifies a unit', async () => {
    const { collection } = await read(
      foreignEad2002({
        did: `<unitdate type="inclusive" normal="1898/1957" certainty="approximate">circa 1898-1957</unitdate>
          <unitdate type="bulk" normal="1911">bulk 1911</unitdate>
          <physdesc><extent>2.5 linear feet</extent></physdesc><physdesc>Some damp.</physdesc>
          <origination label="Creator"><persname source="local" role="creator">Quill, Ada, 1902-1988</persname></origination>
          <langmaterial>In <language langcode="nor" scriptcode="Latn">Norwegian</language>.</langmaterial>
          <container type="box" id="b1">3</container><container type="folder" parent="b1">4</container>
          <physloc>Cellar</physloc>`,
      }),
    );
    expect(collection).toMatchObject({
      title: 'Heron papers',
      referenceCode: 'MS 7',
      dates: [
        { type: 'inclusive', expression: 'circa 1898-1957', edtf: '1898~/1957~' },
        { type: 'bulk', expression: 'bulk 1911', edtf: '1911' },
      ],
      extents: [{ type: 'spaceoccupied', coverage: 'whole', quantity: 2.5, unit: 'linear feet' }],
      physicalDescription: 'Some damp.',
      repository: { name: 'Applegarth Historical Society' },
      languages: [{ code: 'nor', name: 'Norwegian', script: { code: 'Latn' } }],
      containers: [
        { id: 'b1', type: 'box', number: '3' },
        { type: 'folder', number: '4', parent: 'b1' },
      ],
      physicalLocation: 'Cellar',
      creators: [{ role: 'creator' }],
    });
  });

  it('names, with the form for headings', async () => {
    const { people, collection } = await read(
      foreignEad2002({
        beside: `<controlaccess><head>Names</head><persname source="local">Quill, Ada, 1902-1988</persname>
          <famname>Quill family</famname><controlaccess><subject authfilenumber="s1">Ferries</subject></controlaccess></controlaccess>`,
      }),
    );
    expect(people).toMatchObject([
      { type: 'person', name: 'Ada Quill', authorizedForm: 'Quill, Ada, 1902-1988', source: 'local' },
      { type: 'family', name: 'Quill family' },
    ]);
    expect(collection.people).toHaveLength(2);
    expect(collection.accessPoints).toEqual([{ type: 'subject', term: 'Ferries', identifier: 's1' }]);
  });

  it('running text, its lists and chronologies in plain paragraphs', async () => {
    const { collection } = await read(
      foreignEad2002({
        beside: `<bioghist><head>History</head><p>The <title render="italic">Heron</title>
          crossed.</p><chronlist><chronitem><date>1898</date><event>Bought</event></chronitem></chronlist></bioghist>
          <descgrp><head>Use</head><accessrestrict><p>Closed until 2040.</p></accessrestrict><userestrict><p>Ask.</p></userestrict></descgrp>
          <index><head>Boats</head><indexentry><subject>Heron</subject></indexentry></index>`,
      }),
    );
    expect(collection.biographicalHistory).toBe('The Heron crossed.\n\n1898: Bought');
    expect(collection.accessConditions).toEqual({ statement: 'Closed until 2040.', restricted: true });
    expect(collection.useConditions).toBe('Ask.');
    expect(collection.generalNotes).toEqual([{ head: 'Boats', text: 'Heron' }]);
  });

  it('calls a unit without a title by its date, and writes it without one again', async () => {
    const aid = await read(foreignEad2002({ dsc: '<dsc><c><did><unitdate>1911</unitdate></did></c></dsc>' }));
    expect(aid.collection.children[0]).toMatchObject({ title: '1911', level: 'file' });
    expect(flat(aid, ead2002)).toContain('<c><did><unitdate>1911</unitdate></did></c>');
  });
});

describe('the record of the finding aid, from EAD 2002', () => {
  const statement = (inside: string) =>
    foreignEad2002().replace('</filedesc>', `<publicationstmt>${inside}</publicationstmt></filedesc>`);

  // EAD 2002 tag library, publicationstmt and date; EAD3 has a date there too, and rights in rightsdeclaration.
  it('a date alone in a paragraph is that of publication, and no statement of rights', async () => {
    const { control } = await read(statement('<p><date>April 2011</date></p>'));
    expect([control.publicationDate, control.rights]).toEqual(['April 2011', []]);
    const rights = await read(statement('<p>Free to use since <date>2011</date></p>'));
    expect(rights.control.rights).toEqual([{ citation: 'Free to use since 2011' }]);
    expect(rights.control.publicationDate).toBeUndefined();
  });

  it('a state that is not told, or in words of somebody’s own, is not made up in the other version', async () => {
    for (const said of ['', ' findaidstatus="completed"']) {
      const aid = await read(foreignEad2002().replace('<eadheader', `<eadheader${said}`));
      expect(flat(aid, ead3)).not.toContain('publicationstatus');
    }
    const approved = await read(
      foreignEad2002().replace('<eadheader', '<eadheader findaidstatus="approved"'),
    );
    expect(flat(approved, ead3)).toContain('<publicationstatus value="approved"/>');
    expect(flat(await read(foreignEad3()), ead2002)).not.toContain('findaidstatus');
  });
});

describe('the fields of the model, from EAD3', () => {
  it('dates in words and in structure that tell the same are one', async () => {
    const { collection } = await read(
      foreignEad3({
        did: `<unitdate>1911-1913</unitdate><unitdatestructured unitdatetype="inclusive"><daterange><fromdate standarddate="1911">1911</fromdate><todate standarddate="1913">1913</todate></daterange></unitdatestructured>`,
      }),
    );
    expect(collection.dates).toEqual([{ type: 'inclusive', expression: '1911-1913', edtf: '1911/1913' }]);
  });

  it('an event without a date that machines can read', async () => {
    const { control } = await read(foreignEad3());
    expect(control.history).toEqual([
      { type: 'created', date: '2014', agent: 'Ada Quill', agentType: 'human' },
    ]);
  });
});

describe('what is changed in the model wins over what was found', () => {
  const SOURCE = foreignEad2002({
    did: '<unitdate datechar="creation" normal="1911">1911</unitdate>',
    beside: `<scopecontent id="s"><head>Scope</head><p>Letters of the <emph>Heron</emph>.</p></scopecontent>
      <controlaccess><head>Terms</head><subject rules="aacr2">Ferries</subject><geogname rules="aacr2">Applegarth</geogname></controlaccess>`,
  });

  it('a title, while all else is as it was found', async () => {
    const aid = await read(SOURCE);
    const before = flat(aid, ead2002);
    const changed = { ...aid, collection: { ...aid.collection, title: 'Papers of the Heron' } };
    expect(flat(changed, ead2002)).toBe(
      before.replace('<unittitle label="Title:">Heron papers<', '<unittitle>Papers of the Heron<'),
    );
  });

  it('a running text, with its marks; and one access point among others', async () => {
    const aid = await read(SOURCE);
    const [first, second] = aid.collection.accessPoints;
    if (first === undefined || second === undefined) throw new Error('Two are there.');
    const xml = flat(
      {
        ...aid,
        collection: {
          ...aid.collection,
          scopeAndContent: 'Letters only.',
          accessPoints: [{ ...first, term: 'Ferry boats' }, second],
        },
      },
      ead2002,
    );
    expect(xml).not.toContain('of the <emph>Heron</emph>.');
    expect(xml).toContain('<scopecontent><p>Letters only.</p></scopecontent>');
    expect(xml).toContain(
      '<controlaccess><head>Terms</head><subject>Ferry boats</subject><geogname rules="aacr2">Applegarth</geogname></controlaccess>',
    );
    expect(xml).toContain('datechar="creation"');
  });

  it('what is taken away: nothing of it comes back', async () => {
    const aid = await read(SOURCE);
    const { scopeAndContent: _, ...collection } = aid.collection;
    const xml = flat({ ...aid, collection: { ...collection, dates: [], accessPoints: [] } }, ead2002);
    expect(xml).not.toMatch(/Letters of the|1911|Ferries|Applegarth</);
  });

  it('one note of several that stand together', async () => {
    const aid = await read(
      foreignEad2002({
        beside:
          '<descgrp><head>Use</head><accessrestrict><p>Open.</p></accessrestrict><userestrict><p>Ask.</p></userestrict></descgrp>',
      }),
    );
    expect(flat(aid, ead2002)).toContain('<descgrp><head>Use</head>');
    const xml = flat({ ...aid, collection: { ...aid.collection, useConditions: 'Do not ask.' } }, ead2002);
    expect(xml).toContain(
      '<accessrestrict><p>Open.</p></accessrestrict><userestrict><p>Do not ask.</p></userestrict>',
    );
    expect(xml).not.toContain('<p>Ask.</p>');
  });

  it('the title of the finding aid', async () => {
    const aid = await read(SOURCE);
    expect(flat(aid, ead2002)).toContain(
      '<titleproper>Guide to the <emph render="italic">Heron</emph> papers<',
    );
    const xml = flat({ ...aid, control: { ...aid.control, title: 'A guide' } }, ead2002);
    expect(xml).toContain('<titleproper>A guide</titleproper>');
    expect(xml).toContain('mainagencycode="US-XxQuill"');
  });

  it('says which unit cannot be read where what was kept is no XML any more', async () => {
    const aid = await read(SOURCE);
    const broken = { ...aid.collection, kept: { format: 'ead2002' as const, xml: '<archdesc><did>' } };
    expect(() => flat({ ...aid, collection: broken }, ead2002)).toThrow(
      /is not closed.*Take the entry "kept" out/s,
    );
  });
});

describe('in the other version of EAD', () => {
  it('marks, links, headings and lists are told by its means', async () => {
    const aid = await read(
      foreignEad2002({
        beside: `<scopecontent><head>Scope</head><p>See <extref xlink:type="simple" xlink:href="https://example.org/heron">the <emph render="bold">Heron</emph></extref>.</p>
          <list type="ordered" numeration="arabic"><item>One</item></list></scopecontent>
          <controlaccess><persname role="pilot" rules="aacr2">Quill, Ada</persname></controlaccess>`,
      }),
    );
    const xml = flat(aid, ead3);
    expect(xml).toContain(
      '<head>Scope</head><p>See <ref href="https://example.org/heron">the <emph render="bold">Heron</emph></ref>.</p>',
    );
    expect(xml).toContain('<list listtype="ordered" numeration="decimal"><item>One</item></list>');
    expect(xml).toContain('<persname rules="aacr2" relator="pilot"><part>Quill, Ada</part></persname>');
  });

  it('and from there back', async () => {
    const aid = await read(
      foreignEad3({
        did: '<didnote>Seen in 2014.</didnote>',
        beside:
          '<scopecontent><p>See <ref href="https://example.org/heron">this</ref>, <quote>all of it</quote>.</p></scopecontent>',
      }),
    );
    const xml = flat(aid, ead2002);
    expect(xml).toContain(
      'See <extref xlink:href="https://example.org/heron" xlink:type="simple">this</extref>, all of it.',
    );
    expect(xml).toContain('<note><p>Seen in 2014.</p></note>');
  });
});
