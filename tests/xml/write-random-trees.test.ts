import fc from 'fast-check';
import { ParseOption, XmlDocument, XmlElement, XmlText, type XmlTreeNode } from 'libxml2-wasm';
import { expect, test } from 'vitest';
import { create } from 'xmlbuilder2';
import { forbiddenCharacter } from '../../src/catalogue/text.ts';
import { element, type XmlElement as Tree, type XmlNode } from '../../src/xml/element.ts';
import { writeXml } from '../../src/xml/write.ts';

const written = (root: Tree) => [...writeXml(root)].join('');

/** A tree as the property makes it: everything in arrays, and whether an element hands its children on as a lazy list. */
interface Plan {
  name: string;
  attributes: Record<string, string>;
  children: (Plan | string)[];
  lazy: boolean;
}

// What has broken writers of XML before: marks of markup, ends of CDATA sections and comments, entities, characters
// outside the Basic Multilingual Plane, combining and right-to-left ones, and every kind of white space.
const HOSTILE = [
  ...[
    '<',
    '>',
    '&',
    '"',
    "'",
    '&amp;',
    '&#0;',
    '<b>',
    '</c>',
    '<!--',
    '-->',
    '<![CDATA[',
    ']]>',
    ']]',
    '<?x ?>',
    '%',
  ],
  ...[
    '\t',
    '\n',
    '\r',
    '\r\n',
    ' ',
    '  ',
    '\u00A0',
    '\u0085',
    '\u2028',
    '\uFEFF',
    '\u200F',
    '\u202E',
    '\uFFFD',
  ],
  ...['😀', '👩‍👩‍👧', 'e\u0301', 'שלום', 'مرحبا', '\u{10FFFF}', '\u{E000}', 'ÿ', '漢字', '\u007F', '\u009F'],
];
const text = fc
  .array(
    fc.oneof(
      fc.constantFrom(...HOSTILE),
      fc.string({ unit: 'grapheme', maxLength: 8 }),
      fc.string({ unit: 'binary', maxLength: 4 }),
    ),
    {
      maxLength: 6,
    },
  )
  .map((parts) => parts.join(''))
  .filter((candidate) => forbiddenCharacter(candidate) === undefined);
const name = fc.constantFrom('ead', 'c', 'did', 'unittitle', 'p', 'emph', 'part', 'a-b.c_1', 'żółć', '文');

const { plan } = fc.letrec<{ plan: Plan; child: Plan | string }>((tie) => ({
  plan: fc
    .record({
      name,
      attributes: fc.dictionary(name, text, { maxKeys: 3, noNullPrototype: true }),
      children: fc.array(tie('child'), { maxLength: 5, depthIdentifier: 'tree' }),
      lazy: fc.boolean(),
    })
    // A lazy list holds elements only.
    .map((made) => ({
      ...made,
      lazy: made.lazy && made.children.every((child) => typeof child !== 'string'),
    })),
  child: fc.oneof({ depthIdentifier: 'tree', maxDepth: 5 }, text, tie('plan')),
}));

function treeOf({ name, attributes, children, lazy }: Plan): Tree {
  const made = () => children.map((child): XmlNode => (typeof child === 'string' ? child : treeOf(child)));
  return element(name, attributes, lazy ? made().values() : made());
}

/**
 * For xmlbuilder2: it takes for a reference whatever looks like one, and lets carriage returns and the white space of
 * attributes be lost. So it is handed references for those; everything else it has to escape by itself.
 */
const referenced = (text: string) => text.replace(/[&\t\r]/g, (character) => `&#${character.charCodeAt(0)};`);
const referencedAttribute = (text: string) => referenced(text).replaceAll('\n', '&#10;');

function byXmlbuilder(root: Plan): string {
  const add = (parent: ReturnType<typeof create>, { name, attributes, children }: Plan) => {
    const entries = Object.entries(attributes).map(([key, value]) => [key, referencedAttribute(value)]);
    const made = parent.ele(name, Object.fromEntries(entries));
    for (const child of children) {
      if (typeof child === 'string') made.txt(referenced(child));
      else add(made, child);
    }
  };
  const document = create({ version: '1.0', encoding: 'UTF-8' });
  add(document, root);
  return document.end();
}

function read<T>(xml: string, use: (document: XmlDocument) => T): T {
  const document = XmlDocument.fromString(xml, { option: ParseOption.XML_PARSE_NO_XXE });
  try {
    return use(document);
  } finally {
    document.dispose();
  }
}

function childrenOf(parent: XmlElement): XmlTreeNode[] {
  const children: XmlTreeNode[] = [];
  for (let child = parent.firstChild; child !== null; child = child.next) children.push(child);
  return children;
}

/** Canonical XML 1.0, with the texts of nothing but white space left out of elements that hold no other text. */
function canonical(xml: string): string {
  const strip = (parent: XmlElement) => {
    const children = childrenOf(parent);
    const texts = children.filter((child) => child instanceof XmlText);
    const indented = children.length > texts.length && texts.every(({ content }) => /^[ \n]*$/.test(content));
    for (const child of children) {
      if (child instanceof XmlElement) strip(child);
      else if (indented) child.remove();
    }
  };
  return read(xml, (document) => {
    strip(document.root);
    return document.canonicalizeToString();
  });
}

/** The library drops U+FEFF at the start of a longer text, taking it for a byte order mark; the file has it. */
const decoded = (text: string) => text.replace(/^\uFEFF+/, '');

/** Compares to the letter; only where an element was to hold no text at all may there be white space. */
function expectSame(node: XmlElement, { name, attributes, children }: Plan): void {
  expect(node.name).toBe(name);
  expect(node.attrs.map((attribute) => [attribute.name, decoded(attribute.value)])).toEqual(
    Object.entries(attributes).map(([key, value]) => [key, decoded(value)]),
  );
  const mixed = children.some((child) => typeof child === 'string');
  // Texts side by side are one text to a reader.
  const wanted: (Plan | string)[] = [];
  for (const child of children.filter((child) => child !== '')) {
    const last = wanted.at(-1);
    if (typeof child === 'string' && typeof last === 'string') wanted[wanted.length - 1] = last + child;
    else wanted.push(child);
  }
  const found = childrenOf(node).filter(
    (child) => mixed || !(child instanceof XmlText) || !/^\n *$/.test(child.content),
  );
  expect(found.length).toBe(wanted.length);
  for (const [at, child] of found.entries()) {
    const want = wanted[at];
    if (child instanceof XmlElement && typeof want === 'object') expectSame(child, want);
    else expect(decoded(child.content)).toBe(typeof want === 'string' ? decoded(want) : want);
  }
}

test('xmlbuilder2 writes the same, by canonical XML', () => {
  fc.assert(
    fc.property(plan, (root) => {
      expect(canonical(written(treeOf(root)))).toBe(canonical(byXmlbuilder(root)));
    }),
    { numRuns: 500 },
  );
});

test('libxml2 reads the same texts and attributes out of it, to the letter', () => {
  fc.assert(
    fc.property(plan, (root) => {
      read(written(treeOf(root)), (document) => expectSame(document.root, root));
    }),
    { numRuns: 500 },
  );
});

test('the same tree gives the same text', () => {
  fc.assert(
    fc.property(plan, (root) => {
      const first = written(treeOf(root));
      expect(written(treeOf(root))).toBe(first);
    }),
  );
});
