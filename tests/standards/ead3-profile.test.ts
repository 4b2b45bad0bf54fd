import { describe, expect, it } from 'vitest';
import { PROFILE, publishedXsd, validatorBy } from '../support/ead3-schemas.ts';
import { describeWithSchemas } from '../support/outside.ts';
import { declarationsOf, type ElementType } from '../support/schema-declarations.ts';
import { SMALL_EAD3, smallEad3With } from '../support/small-ead3.ts';
import { everyElement, parseTree } from '../support/xml-tree.ts';

const byProfile = validatorBy(PROFILE);

const without = (name: string, below = '') =>
  smallEad3With(new RegExp(`(${below}[\\s\\S]*?)<${name}[ >][\\s\\S]*?</${name}>`), '$1');

// Each is what DACS, chapter 1, requires at the top level of a description, by its number there, and how to take it
// out of the finding aid; EAD3 itself requires none of it.
const REQUIRED: readonly (readonly [string, string])[] = [
  [
    '2.1 reference code',
    smallEad3With(/<unitid c[\s\S]*?<\/unitid>/, '').replace(/<unitid l[\s\S]*?<\/unitid>/, ''),
  ],
  ['2.2 repository', without('repository')],
  ['2.3 title', without('unittitle')],
  ['2.4 date', smallEad3With(/<unitdatestructured[\s\S]*<\/unitdatestructured>/, '')],
  ['2.5 extent', without('physdescstructured').replace(/<physdesc>.*?<\/physdesc>/, '')],
  ['3.1 scope and content', without('scopecontent')],
  ['4.1 conditions governing access', without('accessrestrict')],
  ['4.5 languages', without('langmaterial')],
  ['8.2 rights statement for the description', without('rightsdeclaration')],
  ['8.1.4 rules followed', without('conventiondeclaration')],
];

describe('the profile of EAD3', () => {
  it('accepts a finding aid written by hand', () => {
    expect(byProfile(SMALL_EAD3)).toEqual([]);
  });

  it('accepts it without a creator, which DACS 2.6 asks for only where it is known', () => {
    expect(byProfile(without('origination'))).toEqual([]);
  });

  it('is all used by that finding aid, so that nothing in it goes untried', () => {
    const used = new Set(
      everyElement(parseTree(SMALL_EAD3)).flatMap(({ element: { name, attributes } }) => [
        name,
        ...Object.keys(attributes).map((attribute) => `${name}/@${attribute}`),
      ]),
    );
    const declared = namesIn(declarationsOf(PROFILE, 'ead'));
    // The creators and access points are of one type: their attributes are tried on one of them.
    const alike = /^(?:persname|famname|corpname|geogname|subject|genreform|occupation|function|title)\/@/;
    expect([...declared].filter((name) => !used.has(name) && !alike.test(name))).toEqual([]);
  });

  it.each(REQUIRED)('rejects a finding aid without DACS %s', (_, xml) => {
    expect(byProfile(xml)).not.toEqual([]);
  });

  it.each([
    ['a part without a title', smallEad3With('<unittitle>Letter to Ada</unittitle>', '')],
    ['a part without an id', smallEad3With('id="c2" ', '')],
    ['a part without a level', smallEad3With(' level="item"', '')],
    ['a level that is none', smallEad3With('level="item"', 'level="bundle"')],
    ['an id twice', smallEad3With('id="c2"', 'id="c1"')],
    ['an id that begins with a digit', smallEad3With('id="c2"', 'id="2"')],
    ['a container within one that is not there', smallEad3With('parent="box1"', 'parent="box9"')],
    ['a container within a part of the description', smallEad3With('parent="box1"', 'parent="c1"')],
    ['a set of one digital copy', smallEad3With(/<dao daotype="borndigital".*?\/>/, '')],
    ['a span without ends', smallEad3With('<todate standarddate="1960">1960</todate>', '')],
    ['an empty title', smallEad3With('Quill family papers</unittitle>', '</unittitle>')],
    ['a title of blanks', smallEad3With('Letters</unittitle>', ' \n\t </unittitle>')],
    ['a blank paragraph', smallEad3With('<p>None expected.</p>', '<p> </p>')],
    ['a blank attribute', smallEad3With('linktitle="Front"', 'linktitle=" "')],
    [
      'a list of access points without any',
      smallEad3With(/<controlaccess>[\s\S]*<\/controlaccess>/, '<controlaccess/>'),
    ],
    [
      'notes out of order',
      smallEad3With(/(<bioghist>.*<\/bioghist>)\s*(<custodhist>.*<\/custodhist>)/s, '$2$1'),
    ],
    ['text between elements', smallEad3With('<dsc dsctype="combined">', '<dsc dsctype="combined">and')],
    [
      'two lists of parts',
      smallEad3With(
        /(<dsc[\s\S]*<\/dsc>)/,
        '$1<dsc dsctype="combined"><c id="x" level="item"><did><unittitle>x</unittitle></did></c></dsc>',
      ),
    ],
  ])('rejects %s', (_, xml) => {
    expect(byProfile(xml)).not.toEqual([]);
  });

  // EAD 2002 @normal and the EAD3 Schematron: YYYY, YYYY-MM, YYYY-MM-DD, years 0000 to 2999; nothing else of EDTF.
  it.each([
    [
      true,
      ['0000', '1952', '2999', '1952-01', '1952-12', '1952-02-29', '1952-04-30', '1952-12-31', '2999-12-31'],
    ],
    [
      false,
      ['', '52', '3000', '19520514', '195205', '1952-00', '1952-13', '1952-5', '1952-02-30', '1952-04-31'],
    ],
    [false, ['1952-12-32', '-1952', '1952?', '1952~', '195X', '1952-21', '[1952,1953]', '1952-05-14Z']],
  ])('holds dates to their form: %s for %j', (valid, dates) => {
    for (const date of dates) {
      for (const place of ['standarddate="1891"', 'notbefore="1974-01-01"', 'normal="2040"']) {
        const xml = smallEad3With(place, place.replace(/".*"/, `"${date}"`));
        expect([place, date, byProfile(xml).length === 0]).toEqual([place, date, valid]);
      }
    }
  });

  it('takes a pair of dates in @normal, and nowhere else', () => {
    const verdicts = (value: string) =>
      ['standarddate="1891"', 'notafter="1974-12-31"', 'normal="2040"'].map(
        (place) => byProfile(smallEad3With(place, place.replace(/".*"/, `"${value}"`))).length === 0,
      );
    expect(verdicts('1952/1953-02-28')).toEqual([false, false, true]);
    expect(verdicts('1952/')).toEqual([false, false, false]);
    expect(verdicts('1952/1953/1954')).toEqual([false, false, false]);
  });

  it.each([
    // ISO 639-2: three small letters; ISO 15924: four; ISO 3166-1: two capitals.
    ['langcode="nor"', ['eng', 'mul'], ['en', 'ENG', 'norw', '']],
    ['scriptcode="Latn"', ['Cyrl'], ['latn', 'Lat', '']],
    ['countrycode="US"', ['NO'], ['no', 'USA', '']],
    // ISO 15511 by the pattern in ead3.sch: a prefix, a hyphen, one to eleven letters, digits, colons, slashes, hyphens.
    [
      'repositorycode="US-HeHS"',
      ['US-CtY', 'O-1', 'OCLC-A:/-b'],
      ['US', 'US-', 'us1-x', 'US-ABCDEFGHIJKL', 'US-é'],
    ],
    // xs:date, xs:gYear, xs:gYearMonth and xs:dateTime up to 2099 (ead3.xsd).
    [
      'standarddatetime="2026-05-14T10:20:30Z"',
      ['2026', '2026-05', '2026-05-14', '2026-05-14T10:20:30', '2026-05-14T10:20:30.5+02:00', '2098-12-31'],
      ['2026-02-30', '2026-05-14T25:00:00', '2100', '14 May 2026', '20260514', ''],
    ],
  ])('holds %s to its form', (place, good, bad) => {
    const verdicts = [...good, ...bad].map((value) => {
      const xml = smallEad3With(place, place.replace(/".*"/, `"${value}"`));
      return [value, byProfile(xml).length === 0];
    });
    expect(verdicts).toEqual([...good.map((value) => [value, true]), ...bad.map((value) => [value, false])]);
  });

  it.each([
    [true, ['1', '0.5', '1000000', '0.0000001']],
    [false, ['0', '-1', '+1', '1,5', '1e21', 'many', '', '.5', '1.', '0.0', 'INF']],
  ])('takes quantities as plain numbers: %s for %j', (valid, quantities) => {
    for (const quantity of quantities) {
      const xml = smallEad3With('>1.25<', `>${quantity}<`);
      expect([quantity, byProfile(xml).length === 0]).toEqual([quantity, valid]);
    }
  });
});

describeWithSchemas('the published schema of EAD3, beside the profile', (schemas) => {
  const byPublished = validatorBy(publishedXsd(schemas));

  it('accepts the finding aid written by hand', () => {
    expect(byPublished(SMALL_EAD3)).toEqual([]);
  });

  it.each(REQUIRED)('does not ask for DACS %s, which the profile adds', (_, xml) => {
    expect(byPublished(xml)).toEqual([]);
  });
});

/** The names of all elements and attributes that may stand below an element, itself excepted. */
function namesIn(type: ElementType, seen = new Set<string>(), names = new Set<string>()): Set<string> {
  if (seen.has(type.key)) return names;
  seen.add(type.key);
  for (const [name, child] of type.childTypes) {
    names.add(name);
    for (const attribute of child().attributes.keys()) names.add(`${name}/@${attribute}`);
    namesIn(child(), seen, names);
  }
  return names;
}
