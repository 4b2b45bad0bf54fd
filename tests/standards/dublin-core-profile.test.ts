import { describe, expect, it } from 'vitest';
import { DC_ELEMENTS, DCMI_TERMS } from '../../src/export/crosswalk/row.ts';
import {
  containerBesidePublished,
  publishedOaiDc,
  SIMPLE_PROFILE,
  TERMS_PROFILE,
} from '../support/dublin-core-schemas.ts';
import { validatorBy } from '../support/ead2002-schemas.ts';
import { describeWithSchemas } from '../support/outside.ts';
import { SMALL_DCTERMS, SMALL_OAI_DC, withChange } from '../support/small-dublin-core.ts';

const simple = validatorBy(SIMPLE_PROFILE);
const terms = validatorBy(TERMS_PROFILE);

/** What the profile of simple Dublin Core refuses, and oai_dc.xsd lets pass. */
const STRICTER: readonly (readonly [string, string])[] = [
  ['a record without a title', withChange(SMALL_OAI_DC, /<dc:title>.*<\/dc:title>/, '')],
  ['a record without an identifier', withChange(SMALL_OAI_DC, /<dc:identifier>.*<\/dc:identifier>/, '')],
  ['an empty element', withChange(SMALL_OAI_DC, '>Open.<', '><')],
  ['a blank element', withChange(SMALL_OAI_DC, '>Open.<', '> \n\t<')],
  ['a language in words', withChange(SMALL_OAI_DC, '>nor<', '>Norwegian<')],
  ['a language of two letters', withChange(SMALL_OAI_DC, '>nor<', '>no<')],
  [
    'elements out of order',
    withChange(SMALL_OAI_DC, /(<dc:title>.*<\/dc:title>)\s*(<dc:creator>.*)/, '$2$1'),
  ],
];

describe('the profile of simple Dublin Core', () => {
  it('accepts a record written by hand, which has every element', () => {
    for (const name of DC_ELEMENTS) expect(SMALL_OAI_DC).toContain(`<dc:${name}>`);
    expect(simple(SMALL_OAI_DC)).toEqual([]);
  });

  it.each(STRICTER)('rejects %s', (_, xml) => expect(simple(xml)).not.toEqual([]));

  it.each([
    ['an element that is none', withChange(SMALL_OAI_DC, /dc:source/g, 'dc:origin')],
    ['text between elements', withChange(SMALL_OAI_DC, '<dc:creator>', 'and<dc:creator>')],
    ['an element in an element', withChange(SMALL_OAI_DC, 'Ferries', 'Fer<dc:title>r</dc:title>ies')],
  ])('rejects %s', (_, xml) => expect(simple(xml)).not.toEqual([]));
});

/** What the profile of DCMI terms refuses, and dcterms.xsd in our container lets pass. */
const STRICTER_TERMS: readonly (readonly [string, string])[] = [
  ['a record without a title', withChange(SMALL_DCTERMS, /<dcterms:title>.*<\/dcterms:title>/, '')],
  [
    'a record without an identifier',
    withChange(SMALL_DCTERMS, /<dcterms:identifier.*<\/dcterms:identifier>/gs, ''),
  ],
  ['an empty element', withChange(SMALL_DCTERMS, '>Ask the heirs.<', '><')],
  ['a language without a scheme', withChange(SMALL_DCTERMS, ' xsi:type="dcterms:ISO639-2"', '')],
  [
    'a scheme where it does not fit',
    withChange(SMALL_DCTERMS, '"dcterms:DCMIType">Text', '"dcterms:URI">Text'),
  ],
  ['a period without limits', withChange(SMALL_DCTERMS, ' start=1936; end=1938;', '')],
  ['a term that is not written', withChange(SMALL_DCTERMS, /dcterms:provenance/g, 'dcterms:audience')],
];

describe('the profile of DCMI terms', () => {
  it('accepts records written by hand, which have every term', () => {
    for (const name of DCMI_TERMS) expect(SMALL_DCTERMS).toMatch(new RegExp(`<dcterms:${name}[ >]`));
    expect(terms(SMALL_DCTERMS)).toEqual([]);
  });

  it.each(STRICTER_TERMS)('rejects %s', (_, xml) => expect(terms(xml)).not.toEqual([]));

  // W3C Note "Date and Time Formats", 1997-09-15, as far as days go.
  it.each([
    [true, ['1936', '1936-05', '1936-05-31', '2000-02-29', '1904-02-29', '0001-12-31']],
    [
      false,
      ['36', '1936-13', '1936-02-30', '1900-02-29', '1936-04-31', '1936?', '193X', '1936/1938', '0000', ''],
    ],
  ])('takes dates in W3CDTF: %s for %j', (valid, dates) => {
    for (const date of dates) {
      expect([date, terms(withChange(SMALL_DCTERMS, '>1936-05-14<', `>${date}<`)).length === 0]).toEqual([
        date,
        valid,
      ]);
    }
  });

  it('takes no type that the DCMI Type Vocabulary has not', () => {
    expect(
      terms(withChange(SMALL_DCTERMS, '"dcterms:DCMIType">Text', '"dcterms:DCMIType">Letter')),
    ).not.toEqual([]);
  });
});

// Sources: oai_dc.xsd of 2002-12-19; dcterms.xsd of 2008-02-11.
describeWithSchemas('the published schemas of Dublin Core, beside the profiles', (schemas) => {
  it('accept what was written by hand', () => {
    expect(validatorBy(publishedOaiDc(schemas))(SMALL_OAI_DC)).toEqual([]);
    expect(validatorBy(containerBesidePublished(schemas))(SMALL_DCTERMS)).toEqual([]);
  });

  it.each(STRICTER)('let pass %s', (_, xml) => expect(validatorBy(publishedOaiDc(schemas))(xml)).toEqual([]));

  it.each(STRICTER_TERMS)('let pass, in the container, %s', (_, xml) => {
    expect(validatorBy(containerBesidePublished(schemas))(xml)).toEqual([]);
  });
});
