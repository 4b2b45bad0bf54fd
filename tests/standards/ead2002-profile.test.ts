import { describe, expect, it } from 'vitest';
import { declaredNames } from '../support/declared-names.ts';
import { PROFILE, publishedXsd, validatorBy } from '../support/ead2002-schemas.ts';
import { describeWithSchemas } from '../support/outside.ts';
import { declarationsOf } from '../support/schema-declarations.ts';
import { SMALL_EAD2002, smallEad2002With } from '../support/small-ead2002.ts';
import { everyElement, parseTree } from '../support/xml-tree.ts';

const byProfile = validatorBy(PROFILE);

const without = (name: string, below = '') =>
  smallEad2002With(new RegExp(`(${below}[\\s\\S]*?)<${name}[ >][\\s\\S]*?</${name}>`), '$1');

// Each is what DACS requires at the top level of a description, by its number there, and how to take it out of the
// finding aid; EAD 2002 itself requires none of it.
const REQUIRED: readonly (readonly [string, string])[] = [
  ['2.1 reference code', smallEad2002With(/<unitid c.*?<\/unitid>\s*<unitid t.*?<\/unitid>/s, '')],
  ['2.2 repository', without('repository')],
  ['2.3 title', without('unittitle')],
  [
    '2.4 date',
    smallEad2002With(/<unitdate type="inclusive" c.*?<\/unitdate>\s*<unitdate.*?<\/unitdate>/s, ''),
  ],
  ['2.5 extent', smallEad2002With(/<physdesc l.*?<\/physdesc>\s*<physdesc>.*?<\/physdesc>/s, '')],
  ['3.1 scope and content', without('scopecontent')],
  ['4.1 conditions governing access', without('accessrestrict')],
  ['4.1, where only the legal status is told', smallEad2002With(/<p>Open, save.*?<leg/s, '<leg')],
  ['4.5 languages', without('langmaterial')],
  ['8.2 rights statement for the description', smallEad2002With(/<p><extref.*?<\/p>\s*<p>.*?<\/p>/s, '')],
  ['8.1.4 rules followed', without('descrules')],
  ['8.1.5 who made it and when', without('creation')],
];

describe('the profile of EAD 2002', () => {
  it('accepts a finding aid written by hand', () => {
    expect(byProfile(SMALL_EAD2002)).toEqual([]);
  });

  it('accepts it without a creator, which DACS 2.6 asks for only where it is known', () => {
    expect(byProfile(smallEad2002With(/<origination>[\s\S]*<\/origination>/, ''))).toEqual([]);
  });

  it('is all used by that finding aid, so that nothing in it goes untried', () => {
    const used = new Set(
      everyElement(parseTree(SMALL_EAD2002)).flatMap(({ element: { name, attributes } }) => [
        name,
        ...Object.keys(attributes).map((attribute) => `${name}/@${attribute}`),
      ]),
    );
    const declared = declaredNames(declarationsOf(PROFILE, 'ead'));
    // The creators and access points are of one type: their attributes are tried on one of them.
    const alike = /^(?:persname|famname|corpname|geogname|subject|genreform|occupation|function|title)\/@/;
    expect([...declared].filter((name) => !used.has(name) && !alike.test(name))).toEqual([]);
    expect(declared.size).toBeGreaterThan(90);
  });

  it.each(REQUIRED)('rejects a finding aid without DACS %s', (_, xml) => {
    expect(byProfile(xml)).not.toEqual([]);
  });

  it.each([
    ['a part without a title', smallEad2002With('<unittitle>Letter to Ada</unittitle>', '')],
    ['a part without an id', smallEad2002With('id="c2" ', '')],
    ['a part without a level', smallEad2002With(' level="item"', '')],
    ['a level that is none', smallEad2002With('level="item"', 'level="bundle"')],
    ['an id twice', smallEad2002With('id="c2"', 'id="c1"')],
    ['a level named by two words', smallEad2002With('otherlevel="bundle"', 'otherlevel="a bundle"')],
    ['a container within one that is not there', smallEad2002With('parent="box1"', 'parent="box9"')],
    ['a container within a part of the description', smallEad2002With('parent="box1"', 'parent="c1"')],
    ['a group of one digital copy', smallEad2002With(/<daoloc[^>]*borndigital"\/>/, '')],
    ['a digital copy that leads nowhere', smallEad2002With('xlink:href="copies/letter.pdf" ', '')],
    ['a link without the namespace of XLink', smallEad2002With('xlink:href="copies/letter.pdf"', 'href="x"')],
    [
      'a locator that says it is a simple link',
      smallEad2002With('"locator" xlink:href="c', '"simple" xlink:href="c'),
    ],
    [
      'an attribute of XLink that is not written',
      smallEad2002With('xlink:role="unknown"', 'xlink:role="unknown" xlink:show="new"'),
    ],
    ['numbered parts', smallEad2002With(/<c id="c2"([\s\S]*?)<\/c>/, '<c01 id="c2"$1</c01>')],
    [
      'languages without a code',
      smallEad2002With('<language langcode="eng">English</language>', '<language>English</language>'),
    ],
    ['an empty title', smallEad2002With('Quill family papers</unittitle>', '</unittitle>')],
    ['a title of blanks', smallEad2002With('Letters</unittitle>', ' \n\t </unittitle>')],
    ['a blank paragraph', smallEad2002With('<p>None expected.</p>', '<p> </p>')],
    ['a blank attribute', smallEad2002With('xlink:title="Front"', 'xlink:title=" "')],
    [
      'a list of access points without any',
      smallEad2002With(/<controlaccess>[\s\S]*<\/controlaccess>/, '<controlaccess/>'),
    ],
    [
      'notes out of order',
      smallEad2002With(/(<bioghist>.*<\/bioghist>)\s*(<custodhist>.*<\/custodhist>)/s, '$2$1'),
    ],
    [
      'a legal status by itself',
      smallEad2002With('<userestrict>', '<legalstatus>Given.</legalstatus><userestrict>'),
    ],
    ['text between elements', smallEad2002With('<dsc type="combined">', '<dsc type="combined">and')],
  ])('rejects %s', (_, xml) => {
    expect(byProfile(xml)).not.toEqual([]);
  });

  // EAD 2002 @normal: YYYY, YYYY-MM, YYYY-MM-DD, years 0000 to 2999, one of them or two with a slash between.
  it.each([
    [
      true,
      ['0000', '2999', '1952-01', '1952-12', '1952-02-29', '1952-04-30', '1952/1953-02-28', '2999-12-31'],
    ],
    [
      false,
      ['', '52', '3000', '1952-00', '1952-13', '1952-5', '1952-02-30', '1952/', '/1952', '1952/1953/1954'],
    ],
    [
      false,
      ['1952-12-32', '-1952', '1952?', '1952~', '195X', '1952-21', '[1952,1953]', '1952/..', '1952 - 1953'],
    ],
  ])('holds dates to their form: %s for %j', (valid, dates) => {
    for (const date of dates) {
      for (const place of ['normal="1891/1974"', 'normal="2040"', 'normal="2026-05-14"']) {
        const xml = smallEad2002With(place, `normal="${date}"`);
        expect([place, date, byProfile(xml).length === 0]).toEqual([place, date, valid]);
      }
    }
  });

  it.each([
    // ISO 639-2: three small letters; ISO 15924: four; ISO 3166-1: two capitals; ISO 15511, save for the slash.
    ['langcode="nor"', ['eng', 'mul'], ['en', 'ENG', 'norw', '']],
    ['scriptcode="Latn"', ['Cyrl'], ['latn', 'Lat', '']],
    ['countrycode="US"', ['NO'], ['no', 'USA', '']],
    [
      'repositorycode="US-HeHS"',
      ['US-CtY', 'O-1', 'OCLC-A:-b'],
      ['US', 'US-', 'us1-x', 'US-ABCDEFGHIJKL', 'US-a/b'],
    ],
    ['source="local"', ['lcnaf', 'viaf'], ['two words', '']],
  ])('holds %s to its form', (place, good, bad) => {
    const verdicts = [...good, ...bad].map((value) => {
      const xml = smallEad2002With(place, place.replace(/".*"/, `"${value}"`));
      return [value, byProfile(xml).length === 0];
    });
    expect(verdicts).toEqual([...good.map((value) => [value, true]), ...bad.map((value) => [value, false])]);
  });
});

describeWithSchemas('the published schema of EAD 2002, beside the profile', (schemas) => {
  const byPublished = validatorBy(publishedXsd(schemas));

  it('accepts the finding aid written by hand', () => {
    expect(byPublished(SMALL_EAD2002)).toEqual([]);
  });

  it.each(REQUIRED)('does not ask for DACS %s, which the profile adds', (_, xml) => {
    expect(byPublished(xml)).toEqual([]);
  });
});
