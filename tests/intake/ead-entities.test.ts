import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ead3 } from '../../src/export/ead3/index.ts';
import { ead2002 } from '../../src/export/ead2002/index.ts';
import { compact } from '../../src/intake/ead/compact.ts';
import { withCharacters } from '../../src/intake/ead/entities.ts';
import { scan } from '../../src/intake/ead/scan.ts';
import { writeXml } from '../../src/xml/write.ts';
import { arbitraryFindingAid } from '../support/arbitrary-finding-aid.ts';
import { parseTree, type Tree } from '../support/xml-tree.ts';

/** What the last part of a name says of the letter before it: Unicode, combining diacritical marks. */
const ACCENTS: Readonly<Record<string, string>> = {
  ...{ grave: '\u0300', acute: '\u0301', circ: '\u0302', tilde: '\u0303', uml: '\u0308' },
  ...{ ring: '\u030A', cedil: '\u0327', caron: '\u030C' },
};
const ACCENTED =
  'Agrave Aacute Acirc Atilde Auml Aring Ccedil Egrave Eacute Ecirc Euml Igrave Iacute Icirc Iuml Ntilde Ograve Oacute Ocirc Otilde Ouml Ugrave Uacute Ucirc Uuml Yacute agrave aacute acirc atilde auml aring ccedil egrave eacute ecirc euml igrave iacute icirc iuml ntilde ograve oacute ocirc otilde ouml ugrave uacute ucirc uuml yacute yuml Scaron scaron Yuml';
/** The others by their numbers in Unicode, from its code charts (from memory). */
const OTHERS: readonly (readonly [string, number])[] = [
  ...([
    ['nbsp', 0xa0],
    ['iexcl', 0xa1],
    ['cent', 0xa2],
    ['pound', 0xa3],
    ['yen', 0xa5],
    ['sect', 0xa7],
  ] as const),
  ...([
    ['copy', 0xa9],
    ['laquo', 0xab],
    ['shy', 0xad],
    ['reg', 0xae],
    ['deg', 0xb0],
    ['plusmn', 0xb1],
  ] as const),
  ...([
    ['sup2', 0xb2],
    ['micro', 0xb5],
    ['para', 0xb6],
    ['middot', 0xb7],
    ['raquo', 0xbb],
  ] as const),
  ...([
    ['frac14', 0xbc],
    ['frac12', 0xbd],
    ['frac34', 0xbe],
    ['iquest', 0xbf],
    ['AElig', 0xc6],
  ] as const),
  ...([
    ['ETH', 0xd0],
    ['times', 0xd7],
    ['Oslash', 0xd8],
    ['THORN', 0xde],
    ['szlig', 0xdf],
  ] as const),
  ...([
    ['aelig', 0xe6],
    ['eth', 0xf0],
    ['divide', 0xf7],
    ['oslash', 0xf8],
    ['thorn', 0xfe],
  ] as const),
  ...([
    ['OElig', 0x152],
    ['oelig', 0x153],
    ['ndash', 0x2013],
    ['mdash', 0x2014],
    ['lsquo', 0x2018],
  ] as const),
  ...([
    ['rsquo', 0x2019],
    ['ldquo', 0x201c],
    ['rdquo', 0x201d],
    ['dagger', 0x2020],
    ['bull', 0x2022],
  ] as const),
  ...([
    ['hellip', 0x2026],
    ['prime', 0x2032],
    ['euro', 0x20ac],
    ['trade', 0x2122],
  ] as const),
];

const characterOf = async (name: string) => {
  const file = `<!DOCTYPE ead PUBLIC "x" "ead.dtd"><ead>&${name};</ead>`;
  const { bytes, repaired } = await withCharacters(Buffer.from(file));
  expect(repaired).toHaveLength(1);
  return parseTree(bytes).children.join('');
};

describe('characters that a document type outside of the file names', () => {
  it.each(ACCENTED.split(' '))('&%s;', async (name) => {
    const accent = ACCENTS[name.slice(1)];
    expect((await characterOf(name)).normalize('NFD')).toBe(`${name[0]}${accent}`);
  });

  it.each(OTHERS)('&%s;', async (name, number) => {
    expect(await characterOf(name)).toBe(String.fromCodePoint(number));
  });

  it('are left alone in comments and CDATA, and where the file defines them', async () => {
    const file =
      '<!DOCTYPE ead PUBLIC "x" "ead.dtd" [<!ENTITY copy "a copy">]><ead><!-- &eacute; --><![CDATA[&eacute;]]>&copy;&eacute;</ead>';
    const { bytes } = await withCharacters(Buffer.from(file));
    expect(Buffer.from(bytes).toString()).toBe(file.replace('&copy;&eacute;<', '&copy;&#233;<'));
  });
});

describe('the scanner', () => {
  it('reads what the writers write as libxml2 does, and again from one line', () => {
    fc.assert(
      fc.property(arbitraryFindingAid({ complete: false, largest: 4 }), (aid) => {
        for (const write of [ead3, ead2002]) {
          // The reader of these tests drops a byte order mark where a text begins with one.
          const xml = [...writeXml(write(aid))].join('').replaceAll('\uFEFF', '');
          const tree = scan(xml);
          expect(sorted(tree)).toEqual(sorted(parseTree(xml)));
          expect(scan(compact(tree))).toEqual(tree);
        }
      }),
      { numRuns: 40 },
    );
  });

  // XML 1.0, 3.1: start and end tags match; 2.1: one outermost element.
  it.each([
    '<c>',
    '<c></d>',
    '<c/><c/>',
    'c',
    '<c a=1/>',
    '<c a="1" a="2"/>',
    '<c>&nosuch;</c>',
    '<c',
    '',
    '<c>]]></c></c>',
  ])('refuses %s', (xml) => {
    expect(() => scan(xml)).toThrow(/at character \d+/);
  });
});

/** The two readers keep attributes in another order where namespaces are declared. */
const sorted = ({ name, attributes, children }: Tree): unknown => [
  name,
  Object.entries(attributes).sort(([a], [b]) => (a < b ? -1 : 1)),
  children.map((child) => (typeof child === 'string' ? child : sorted(child))),
];
