import { describe, expect, test } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import type { Component } from '../../src/catalogue/component.ts';
import { type FindingAid, findingAid } from '../../src/catalogue/finding-aid.ts';
import { ead3 } from '../../src/export/ead3/index.ts';
import { writeXml } from '../../src/xml/write.ts';
import { dated, someSettings, someThing } from '../support/catalogue.ts';

const xmlOf = (aid: FindingAid) => [...writeXml(ead3(aid))].join('');

/** The finding aid of a small list, its collection changed by `over`. */
function aidWith(over: Partial<Component> = {}, settings: Record<string, unknown> = {}): FindingAid {
  const things = [
    someThing({
      row: 2,
      title: 'Ada to Nils on the flood',
      kind: 'letter',
      date: dated('1962-05-14'),
      creators: ['Ada Quill'],
      box: '3',
    }),
    someThing({
      row: 3,
      title: 'The new cable',
      kind: 'photo',
      date: dated('c. 1950'),
      places: ['Quill Landing'],
    }),
  ];
  const aid = arrange({ settings: someSettings({ described: '2026', ...settings }), things }, '2026-01-01');
  return findingAid.parse({ ...aid, collection: { ...aid.collection, ...over } });
}

/** The finding aid with one item in place of all components, for a look at one element. */
const itemXml = (over: Partial<Component>) =>
  xmlOf(
    aidWith({ children: [{ ...aidWith().collection, id: 'QF-9', level: 'item', children: [], ...over }] }),
  )
    .split('<dsc')[1]
    ?.replace(/\s+/g, ' ') ?? '';

describe('EAD3, EAD3 Tag Library 1.1.1', () => {
  test('the same finding aid gives the same bytes', () => {
    expect(xmlOf(aidWith())).toBe(xmlOf(aidWith()));
  });

  test('no element is empty but those that hold their value in an attribute', () => {
    const empty = [...xmlOf(aidWith()).matchAll(/<([a-z]+)(?: [^>]*)?\/>/g)].map(([, name]) => name);
    expect(new Set(empty)).toEqual(
      new Set(['maintenancestatus', 'publicationstatus', 'eventtype', 'agenttype']),
    );
    expect(xmlOf(aidWith())).not.toMatch(/<([a-z]+)(?: [^>]*)?>\s*<\/\1>/);
  });

  test.each([
    [
      '1962-05-14',
      '<unitdatestructured unitdatetype="inclusive"> <datesingle standarddate="1962-05-14">shown</datesingle> </unitdatestructured>',
    ],
    [
      '1950~',
      '<unitdatestructured certainty="approximate" unitdatetype="inclusive"> <datesingle standarddate="1950">shown</datesingle> </unitdatestructured>',
    ],
    ['195X', '<datesingle notafter="1959" notbefore="1950">shown</datesingle>'],
    [
      '1958/1963',
      '<daterange> <fromdate standarddate="1958">1958</fromdate> <todate standarddate="1963">1963</todate> </daterange>',
    ],
  ])('date %s', (edtf, expected) => {
    expect(itemXml({ dates: [{ type: 'inclusive', expression: 'shown', edtf }] })).toContain(expected);
  });

  test('a date in words only is a unitdate', () => {
    const dates = [{ type: 'inclusive' as const, expression: 'before the bridge' }];
    expect(itemXml({ dates })).toContain('<unitdate unitdatetype="inclusive">before the bridge</unitdate>');
  });

  test('bulk dates are marked as such beside the inclusive ones (DACS 2.4.10)', () => {
    const dates = [
      { type: 'inclusive' as const, expression: '1785-1960', edtf: '1785/1960' },
      { type: 'bulk' as const, expression: 'bulk 1916-1958', edtf: '1916/1958' },
    ];
    expect(itemXml({ dates }).match(/unitdatetype="[a-z]+"/g)).toEqual([
      'unitdatetype="inclusive"',
      'unitdatetype="bulk"',
    ]);
  });

  test('a folder points to the box it stands in', () => {
    const xml = xmlOf(aidWith());
    expect(xml).toContain('<container id="QF-1-1-box" localtype="box">3</container>');
    expect(xml).toContain('<container localtype="folder" parent="QF-1-1-box">1</container>');
  });

  test('one digital copy is a dao, several are a daoset; paths are percent-encoded', () => {
    const copy = (file: string) => ({ file, origin: 'derived' as const });
    expect(itemXml({ digitalCopies: [copy('copies/ferry & bell.jpg')] })).toContain(
      '<dao daotype="derived" href="copies/ferry%20%26%20bell.jpg"/>',
    );
    expect(itemXml({ digitalCopies: [copy('a.jpg'), copy('https://example.org/b c')] })).toContain(
      '<daoset coverage="whole"> <dao daotype="derived" href="a.jpg"/> <dao daotype="derived" href="https://example.org/b%20c"/> </daoset>',
    );
  });

  test('running text is parted into paragraphs', () => {
    expect(itemXml({ custodialHistory: 'First.\n\nSecond\nline.' })).toContain(
      '<custodhist> <p>First.</p> <p>Second line.</p> </custodhist>',
    );
  });

  test('conditions governing access end on a date that machines can read', () => {
    const accessConditions = { statement: 'Family only', restricted: true, until: '2050' };
    expect(itemXml({ accessConditions })).toContain(
      '<accessrestrict localtype="restricted"> <p>Family only</p> <p>End of the restriction: <date normal="2050">2050</date>.</p> </accessrestrict>',
    );
  });

  test('languages carry the codes of ISO 639-2/B and ISO 15924', () => {
    const xml = xmlOf(aidWith({}, { languages: ['German', 'no'] })).replace(/\s+/g, ' ');
    const pair = (code: string, name: string) =>
      `<languageset> <language langcode="${code}">${name}</language> <script scriptcode="Latn">Latin</script> </languageset>`;
    expect(xml).toContain(
      `<langmaterial> ${pair('ger', 'German')} ${pair('nor', 'Norwegian')} </langmaterial>`,
    );
  });

  test('codes of languages are of ISO 639-3 where the recipient wants them so', () => {
    const recipient = { name: 'An archive', languageCodes: 'iso639-3' };
    const xml = xmlOf(aidWith({}, { languages: ['German', 'Norwegian'], recipient }));
    expect(xml).toContain('langencoding="iso639-3"');
    expect([...xml.matchAll(/langcode="([a-z]+)"/g)].map(([, code]) => code)).toEqual(['eng', 'deu', 'nor']);
  });
});
