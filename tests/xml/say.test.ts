import { expect, test } from 'vitest';
import { legible } from '../../src/xml/legible.ts';
import { sayMessage } from '../../src/xml/say.ts';

const E = "Element '{http://ead3.archivists.org/schema/}c'";

// Left: what libxml2 writes (its sources, xmlschemas.c and parser.c). Right: what a person is to read.
test.each([
  [
    `${E}: This element is not expected. Expected is ( {urn:x}did ).`,
    '<c> may not stand here. What may stand here is <did>.',
  ],
  [
    `${E}: This element is not expected. Expected is one of ( ${Array.from({ length: 10 }, (_, at) => `{urn:x}e${at}`).join(', ')} ).`,
    '<c> may not stand here. What may stand here is <e0>, <e1>, <e2>, <e3>, <e4>, <e5>, <e6>, <e7> or one of 2 others.',
  ],
  [
    `${E}: Missing child element(s). Expected is one of ( {urn:x}did, ##other{urn:x}* ).`,
    '<c> is not complete. It still needs <did> or an element of another namespace.',
  ],
  [`${E}: Missing child element(s).`, '<c> is not complete: an element is missing in it.'],
  [`${E}: The attribute 'level' is required but missing.`, '<c> must have the attribute level, and has not.'],
  [
    `${E}, attribute 'level': [facet 'enumeration'] The value 'pile' is not an element of the set {'file', 'item'}.`,
    'The attribute level of <c> is “pile”; it must be one of file, item.',
  ],
  [
    `${E}, attribute 'langcode': [facet 'pattern'] The value 'x' is not accepted by the pattern '(([a-z]{3}|[a-z]{2})(-[A-Z][a-z]{3})?)|und'.`,
    'The attribute langcode of <c> is “x”, which has not the form that is asked for.',
  ],
  [
    `${E}, attribute 'langcode': [facet 'pattern'] The value 'x' is not accepted by the pattern '[a-z]{3}'.`,
    'The attribute langcode of <c> is “x”, which has not the form that is asked for ([a-z]{3}).',
  ],
  [
    `${E}: [facet 'minLength'] The value has a length of '0'; this underruns the allowed minimum length of '1'.`,
    'The text of <c> is empty; it must not be.',
  ],
  [
    `${E}: [facet 'maxInclusive'] The value '7' is greater than the maximum value allowed ('5').`,
    'The text of <c> is “7”, which is beyond the limit set for it (maxInclusive).',
  ],
  [
    `${E}: 'many' is not a valid value of the atomic type 'xs:decimal'.`,
    'The text of <c> is “many”; it must be a number such as 2 or 2.5.',
  ],
  [
    `${E}, attribute 'id': 'a' is not a valid value of the atomic type 'xs:ID'.`,
    'The attribute id of <c> is “a”, which is the id of another element already; every id may occur once only.',
  ],
  [
    `${E}: 'x' is not a valid value of the local union type.`,
    'The text of <c> is “x”, which is not of the kind that the schema asks for here.',
  ],
  [
    `${E}: Character content is not allowed, because the content type is empty.`,
    '<c> holds text; it must be empty.',
  ],
  [
    `${E}: Element content is not allowed, because the content type is empty.`,
    '<c> holds an element; it must be empty.',
  ],
  [
    `${E}: Element content is not allowed, because the content type is a simple type definition.`,
    '<c> holds an element; only text may stand in it.',
  ],
  [
    `${E}: Duplicate key-sequence ['a'] in unique identity-constraint '{urn:x}k'.`,
    '<c> repeats “a”, which may occur once only.',
  ],
  [
    `${E}: No match found for key-sequence ['a'] of keyref '{urn:x}k'.`,
    '<c> points to “a”, which is nowhere in this file.',
  ],
  [`${E}: Something new.`, 'The schema refuses <c>: Something new.'],
  ['Something new', 'This is not well-formed XML: Something new'],
  [
    'Premature end of data in tag c line 7',
    'The file ends while <c>, begun in line 7, is still open. Is it cut off?',
  ],
  ['CData section not finished', 'A CDATA section is not closed with "]]>".'],
  ['Comment not terminated', 'A comment is not closed with "-->".'],
  ["Sequence ']]>' not allowed in content", 'A "]]>" stands in a text; write it as "]]&gt;".'],
  ['ID a already defined', '“a” is the id of two elements; every id may occur once only.'],
  ["xmlns: 'a b' is not a valid URI", '“a b” cannot name a namespace; it must be an address.'],
  ['Memory allocation failed', 'The file needs more memory than there is.'],
])('%s', (engine, says) => {
  expect(sayMessage({ message: engine })).toEqual({ says, engine });
});

test('what a file quotes is cut short and can do nothing to a terminal', () => {
  expect(legible('a\u001B[2Jb\u202Ec\nd')).toBe('a[U+001B][2Jb[U+202E]c d');
  expect(legible('x'.repeat(100), 5)).toBe('xxxxx…');
  expect(legible(`xxxx${'😀'}`, 5)).toBe('xxxx…');
});
