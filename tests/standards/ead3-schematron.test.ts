import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { describeWithSamples, describeWithSchemas } from '../support/outside.ts';
import {
  breachesIn,
  DATE_OR_RANGE,
  ISIL,
  ONE_DATE,
  PATTERN_IDS,
  readCodeLists,
} from '../support/schematron-ead3.ts';
import { SMALL_EAD3, smallEad3With } from '../support/small-ead3.ts';

const folderOf = (schemas: string) => join(schemas, 'ead3', 'schematron');

// Each breaks one rule of ead3.sch (EAD3 1.1.1), told by the id of its pattern.
const BROKEN: readonly (readonly [pattern: string, what: string, xml: string])[] = [
  ['langcodes', 'a language that is in no list', smallEad3With('langcode="nor"', 'langcode="xqx"')],
  ['langcodes', 'a code of two letters', smallEad3With('langcode="nor"', 'langcode="no"')],
  ['langcodes', '@lang', smallEad3With('<abstract>', '<abstract lang="xqx">')],
  [
    'countrycode',
    'a country that is none',
    smallEad3With('<maintenanceagency countrycode="US"', '<maintenanceagency countrycode="XQ"'),
  ],
  [
    'countrycode',
    'a country in small letters',
    smallEad3With('<unitid countrycode="US"', '<unitid countrycode="us"'),
  ],
  ['scriptcode', 'a script that is none', smallEad3With('scriptcode="Latn"', 'scriptcode="Xxxx"')],
  ['scriptcode', '@script', smallEad3With('<abstract>', '<abstract script="latin">')],
  [
    'repositorycode',
    'a repository code that is no ISIL',
    smallEad3With('repositorycode="US-HeHS"', 'repositorycode="HeHS"'),
  ],
  ['agencycode', 'an agency code that is no ISIL', smallEad3With('<agencycode>US-HeHS', '<agencycode>HeHS')],
  ['co-occurrence-constraints', 'a level without a name', smallEad3With(' otherlevel="bundle"', '')],
  [
    'co-occurrence-constraints',
    'a level with a blank name',
    smallEad3With('otherlevel="bundle"', 'otherlevel=" "'),
  ],
  [
    'co-occurrence-constraints',
    'an extent of no kind',
    smallEad3With(
      'physdescstructuredtype="spaceoccupied"',
      'physdescstructuredtype="otherphysdescstructuredtype"',
    ),
  ],
  [
    'co-occurrence-constraints',
    'a copy of no kind',
    smallEad3With('daotype="unknown"', 'daotype="otherdaotype"'),
  ],
  [
    'co-occurrence-constraints',
    'parts of no kind',
    smallEad3With('dsctype="combined"', 'dsctype="otherdsctype"'),
  ],
  [
    'co-occurrence-constraints',
    'a relation of no kind',
    smallEad3With('<odd>', '<relations><relation relationtype="otherrelationtype"/></relations><odd>'),
  ],
  [
    'co-occurrence-constraints',
    'a list without marks',
    smallEad3With('<odd>', '<odd><list listtype="unordered"/>'),
  ],
  [
    'co-occurrence-constraints',
    'a list without numbers',
    smallEad3With('<odd>', '<odd><list listtype="ordered"/>'),
  ],
  ['dates', 'EDTF in @normal', smallEad3With('normal="2040"', 'normal="204X"')],
  ['dates', 'words in @standarddate', smallEad3With('standarddate="1960"', 'standarddate="circa 1960"')],
  ['dates', 'a range in @standarddate', smallEad3With('standarddate="1960"', 'standarddate="1960/1961"')],
  ['dates', 'a month 13 in @notbefore', smallEad3With('notbefore="1974-01-01"', 'notbefore="1974-13-01"')],
  ['dates', 'the year 3000 in @notafter', smallEad3With('notafter="1974-12-31"', 'notafter="3000"')],
  ['cardinality', 'a second dsc', smallEad3With('</dsc>', '</dsc><dsc dsctype="combined"/>')],
  ['era', 'an era of our own', smallEad3With('<unitdate ', '<unitdate era="modern" ')],
];

describeWithSchemas('the Schematron rules of EAD3', (schemas) => {
  let lists: ReturnType<typeof readCodeLists> | undefined;
  const breaches = (xml: string) => {
    lists ??= readCodeLists(folderOf(schemas));
    return breachesIn(xml, lists);
  };

  it('find nothing in a finding aid written by hand', () => {
    expect(breaches(SMALL_EAD3)).toEqual([]);
  });

  it.each(BROKEN)('%s: find %s', (pattern, _, xml) => {
    expect(breaches(xml)).toMatchObject([{ pattern }]);
  });

  it('are each tried on a broken finding aid', () => {
    expect(new Set(BROKEN.map(([pattern]) => pattern))).toEqual(new Set(PATTERN_IDS));
  });

  it('are all there: each pattern of ead3.sch has its place, and each rule in it', () => {
    const source = readFileSync(join(folderOf(schemas), 'ead3.sch'), 'utf8');
    const ids = [...source.matchAll(/<pattern(?: id="([^"]+)")?/g)].map(([, id]) => id ?? 'era');
    expect(ids).toEqual(PATTERN_IDS);
    // The places told by the broken finding aids: 7 co-occurrences, 2 kinds of date, one for each other pattern.
    expect(source.match(/<rule/g)).toHaveLength(7 + 2 + (ids.length - 2));
  });

  it('name the place of what they find', () => {
    const xml = smallEad3With('daotype="unknown"', 'daotype="otherdaotype"');
    expect(breaches(xml)).toMatchObject([{ path: '/ead/archdesc[1]/dsc[1]/c[1]/c[1]/did[1]/dao[1]' }]);
  });

  it('take repository codes for ISILs only where control says so', () => {
    const xml = smallEad3With('repositorycode="US-HeHS"', 'repositorycode="HeHS"');
    expect(breaches(xml.replace(' repositoryencoding="iso15511"', ''))).toEqual([]);
  });

  it('look languages up in the list that control names', () => {
    const xml = smallEad3With('langencoding="iso639-2b"', 'langencoding="iso639-1"');
    expect(breaches(xml)).toHaveLength(3); // eng, nor, eng
    expect(breaches(xml.replaceAll('="eng"', '="en"').replace('="nor"', '="no"'))).toEqual([]);
  });

  it('read whole code lists', () => {
    const { countries, languages, scripts } = readCodeLists(folderOf(schemas));
    expect(countries.size).toBe(249); // "The 249 officially assigned codes", iso_3166.xml
    expect(languages['iso639-1'].size).toBe(184); // ISO 639-1 has 184 codes since 2003 (from memory)
    for (const code of ['eng', 'nor', 'ger', 'mul', 'zxx']) expect(languages['iso639-2b']).toContain(code);
    for (const code of ['Latn', 'Cyrl', 'Zyyy']) expect(scripts).toContain(code);
  });

  it('use expressions that agree with those in ead3.sch', () => {
    const theirs = expressionsIn(readFileSync(join(folderOf(schemas), 'ead3.sch'), 'utf8'));
    const alphabet = fc.string({ unit: fc.constantFrom(...'0123456789-/ZaU:é '), maxLength: 24 });
    const digits = (text: string) =>
      fc.string({ unit: fc.constantFrom(...text), minLength: 2, maxLength: 2 });
    const year = fc.tuple(digits('0123'), digits('0589')).map(([a, b]) => a + b);
    const datelike = fc
      .tuple(
        fc.constantFrom('', '-'),
        year,
        fc.constantFrom('', '-'),
        digits('0123'),
        fc.constantFrom('', '-'),
        digits('0123'),
      )
      .chain((parts) => fc.integer({ min: 2, max: 6 }).map((length) => parts.slice(0, length).join('')));
    const pair = fc.tuple(datelike, datelike).map((dates) => dates.join('/'));
    const code = fc
      .tuple(
        alphabet,
        fc.constantFrom('US', 'U', 'OCLC', 'us', 'ABCDE', ''),
        fc.constantFrom('-', ''),
        alphabet,
      )
      .map((parts) => parts.slice(1).join(''));
    const value = fc.oneof(alphabet, datelike, pair, code);
    fc.assert(
      fc.property(value, (text) => {
        expect([text, ISIL.test(text)]).toEqual([text, theirs.iso15511Pattern.test(text)]);
        expect([text, DATE_OR_RANGE.test(text)]).toEqual([text, theirs.isoRangePattern.test(text)]);
        expect([text, ONE_DATE.test(text)]).toEqual([text, theirs.isoPattern.test(text)]);
      }),
      { numRuns: 5000 },
    );
  });
});

// Read by hand: three samples give MnU, which has no hyphen, as agency code; one of them has the country code mnu; one
// has a relation of an other type without its name. Nothing else in them breaks a rule.
const IN_SAMPLES: Readonly<Record<string, readonly (readonly [string, RegExp])[]>> = {
  'CLRC-2155.xml': [['agencycode', /<agencycode>MnU</]],
  'EAD3test.xml': [['co-occurrence-constraints', /relationtype="otherrelationtype"/]],
  'mss060.xml': [
    ['countrycode', /<unitid[^>]*countrycode="mnu"/],
    ['agencycode', /<agencycode>MnU</],
  ],
  'naa213.xml': [['agencycode', /<agencycode>MnU</]],
};

describeWithSamples('the Schematron rules of EAD3 on real finding aids', (samples, schemas) => {
  it('find what there is to find, and nothing else', () => {
    const lists = readCodeLists(folderOf(schemas));
    const files = readdirSync(join(samples, 'ead3')).filter((file) => file.endsWith('.xml'));
    expect(files).toHaveLength(16);
    for (const file of files) {
      const xml = readFileSync(join(samples, 'ead3', file));
      const expected = IN_SAMPLES[file] ?? [];
      for (const [, words] of expected) expect(xml.toString()).toMatch(words);
      const patterns = breachesIn(xml, lists).map(({ pattern }) => pattern);
      expect([file, patterns]).toEqual([file, expected.map(([pattern]) => pattern)]);
    }
  });
});

/** The expressions of ead3.sch, put together as its `let` elements do with `concat`. */
function expressionsIn(source: string) {
  const values = new Map<string, string>();
  for (const [, name = '', value = ''] of source.matchAll(
    /<let name="(iso[A-Za-z0-9]+)"\s+value="([^"]*)"/g,
  )) {
    const parts = [...value.matchAll(/'([^']*)'|\$(\w+)/g)];
    values.set(name, parts.map(([, text, ref]) => text ?? values.get(ref ?? '') ?? '').join(''));
  }
  const expression = (name: string) => {
    const text = values.get(name);
    if (text === undefined) throw new Error(`ead3.sch has no expression ${name}`);
    return new RegExp(text);
  };
  return {
    iso15511Pattern: expression('iso15511Pattern'),
    isoRangePattern: expression('isoRangePattern'),
    isoPattern: expression('isoPattern'),
  };
}
