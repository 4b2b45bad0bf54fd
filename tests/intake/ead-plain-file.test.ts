import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Found } from '../../src/intake/ead/found.ts';
import { readEad } from '../../src/intake/ead/index.ts';
import { plainFile } from '../../src/intake/ead/plain-file.ts';
import { scan } from '../../src/intake/ead/scan.ts';
import { parse } from '../../src/xml/engine.ts';
import { foreignEad3 } from '../support/foreign-ead.ts';
import { parseTree, type Tree } from '../support/xml-tree.ts';

const rootOf = (xml: string | Uint8Array) =>
  plainFile(typeof xml === 'string' ? Buffer.from(xml) : xml)?.root;

/** Adjacent texts as one, and attributes in one order: in these two readers differ that read the same. */
function settled({ name, attributes, children }: Tree): unknown {
  const nodes: unknown[] = [];
  for (const child of children) {
    const before = nodes.at(-1);
    if (typeof child !== 'string') nodes.push(settled(child));
    else if (typeof before === 'string') nodes.splice(-1, 1, before + child);
    else if (child !== '') nodes.push(child);
  }
  return [name, Object.entries(attributes).sort(([a], [b]) => (a < b ? -1 : 1)), nodes];
}

const SMALL =
  '<?xml version="1.0"?>\n<!-- A list --><ead xmlns="urn:e" xmlns:x="urn:x" a="1&amp;&#x41;">\n' +
  "<did x:b='2' c='\"'>Quill &lt; Rook ]] <![CDATA[a <b> ]]>é</did><c/><!-- end --></ead>\n";
const PARTS = (
  '< > / = " \' & ; - -- ! ? ]]> [ ] : x: xmlns xmlns:y="u" &amp; &#0; &#10; &#xD800; &lt &b; <!-- --> <? ?> <c> </c> ' +
  '<c/> <!DOCTYPE <![CDATA[ a="1" xml:id="1" xml:lang="en" 1 é \u0007 \uFFFE'
).split(' ');

describe('a file that needs no more than the scanner', () => {
  it('is always one that libxml2 finds well-formed, and reads in the same way', async () => {
    let read = 0;
    let left = 0;
    const change = fc.record({
      at: fc.nat(SMALL.length),
      drop: fc.nat(3),
      put: fc.constantFrom('', ' ', '\n', '\t', ...PARTS),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(change, { maxLength: 3 }), async (changes) => {
        let xml = SMALL;
        for (const { at, drop, put } of changes) xml = xml.slice(0, at) + put + xml.slice(at + drop);
        if (rootOf(xml) === undefined) {
          left += 1;
          return;
        }
        read += 1;
        const { document } = await parse(Buffer.from(xml));
        expect(document, xml).toBeDefined();
        document?.dispose();
        // The reader of these tests does not get past an instruction.
        if (!xml.includes('<?', 1)) expect(settled(scan(xml))).toEqual(settled(parseTree(xml)));
      }),
      { numRuns: 4000 },
    );
    // Else nothing was held against anything.
    expect(read).toBeGreaterThan(400);
    expect(left).toBeGreaterThan(400);
  });

  // XML 1.0 (Fifth Edition), by section; Namespaces in XML 1.0 where it says so.
  it.each([
    ['2.2 a control character', '<ead>\u0007</ead>'],
    ['2.4 the end of a CDATA section in a text', '<ead>]]></ead>'],
    ['2.5 two hyphens in a comment', '<ead><!-- a -- b --></ead>'],
    ['2.6 an instruction called XML', '<ead><?XML a?></ead>'],
    ['2.8 a declaration that is not the first', ' <?xml version="1.0"?><ead/>'],
    ['2.8 a declaration in capitals', '<?xml VERSION="1.0"?><ead/>'],
    ['2.8 another version', '<?xml version="1.1"?><ead/>'],
    ['2.8 a document type', '<!DOCTYPE ead><ead/>'],
    ['3.1 an attribute twice', '<ead a="1" a="1"/>'],
    ['3.1 no blank between attributes', '<ead a="1"b="2"/>'],
    ['3.1 a mark of markup in a value', '<ead a="<"/>'],
    ['4.1 a reference to no character', '<ead>&#xFFFF;</ead>'],
    ['4.1 an entity that is not defined', '<ead>&eacute;</ead>'],
    ['4.1 an ampersand alone', '<ead>Quill & Rook</ead>'],
    ['4.3.3 another encoding', '<?xml version="1.0" encoding="ISO-8859-1"?><ead/>'],
    ['Namespaces 3: a prefix of an attribute that is not declared', '<ead y:a="1"/>'],
    ['Namespaces 3: a prefix of an element that is not declared', '<ead><y:a/></ead>'],
    ['Namespaces 3: the name of another namespace for xml', '<ead xmlns:xml="urn:e"/>'],
    ['Namespaces 3: no name for a namespace', '<ead xmlns:y=""/>'],
    ['Namespaces 4: two colons', '<ead xmlns:y="urn:y"><y:a:b/></ead>'],
    [
      'Namespaces 6.3: an attribute twice under two prefixes',
      '<ead xmlns:y="u" xmlns:z="u" y:a="1" z:a="1"/>',
    ],
    ['a namespace that is declared below the root', '<ead><y:a xmlns:y="urn:y"/></ead>'],
    ['more than 256 elements in one another', `${'<c>'.repeat(257)}${'</c>'.repeat(257)}`],
  ])('is not: %s', (_, xml) => {
    expect(rootOf(xml)).toBeUndefined();
  });

  it('is not: bytes that are not UTF-8', () => {
    expect(rootOf(Buffer.from('<ead>F\u00e4hre</ead>', 'latin1'))).toBeUndefined();
    expect(rootOf(Buffer.from('<ead/>', 'utf16le'))).toBeUndefined();
  });

  it('may have a byte order mark, other line ends (2.11) and blanks in attributes (3.3.3)', () => {
    const found = rootOf(
      '\uFEFF<?xml version="1.0" encoding="utf-8"?>\r\n<ead a = "1\r\n2&#10;"\r\n><p>a\r\nb\rc</p></ead\r\n>',
    );
    const paragraph: Found = { name: 'p', attributes: {}, children: ['a\nb\nc'] };
    expect(found).toEqual({ name: 'ead', attributes: { a: '1 2\n' }, children: [paragraph] });
  });
});

describe('a blank between two elements of a line', () => {
  // The second file declares a namespace below its root, which sends it to libxml2.
  it.each(['', '<odd><p><y:z xmlns:y="urn:y"/></p></odd>'])(
    'parts two words, beside "%s"',
    async (beside) => {
      const did = '<unittitle><emph>Heron</emph> <emph>logbooks</emph></unittitle>';
      const xml = foreignEad3({ beside, dsc: `<dsc><c><did>${did}</did></c></dsc>` });
      expect(rootOf(xml) === undefined).toBe(beside !== '');
      const { aid } = await readEad(Buffer.from(xml), 'heron.xml', '2026-05-14');
      expect(aid.collection.children[0]?.title).toBe('Heron logbooks');
    },
  );
});
