import { afterAll, beforeAll, expect, test } from 'vitest';
import { type ElementPath, elementPaths } from '../../src/xml/element-path.ts';
import { parse } from '../../src/xml/engine.ts';

const XML =
  '<ead xmlns="urn:a" xmlns:q="urn:b"><head/><c level="item">Log</c><q:c/><c><did>x</did></c></ead>';

let pathOf: (xpath: string) => ElementPath | undefined;
let close = () => {};
beforeAll(async () => {
  const { document } = await parse(Buffer.from(XML));
  if (document === undefined) throw new Error('The file of this test is not well-formed.');
  pathOf = elementPaths(document);
  close = () => document.dispose();
});
afterAll(() => close());

// XPath 1.0, 2.5: /*/*[3] is the third element in the outermost one. Counted by hand in the file above.
test.each([
  ['/*', '/ead', 'ead'],
  ['/*/*[1]', '/ead/head', 'head'],
  ['/*/*[2]', '/ead/c[1]', 'c'],
  ['/*/*[4]', '/ead/c[2]', 'c'],
  ['/*/*[4]/*', '/ead/c[2]/did', 'did'],
  // Of another namespace and so of another name; the engine says it with its prefix.
  ['/*/q:c', '/ead/q:c', 'q:c'],
  // The place of an attribute or a text is its element.
  ['/*/*[2]/@level', '/ead/c[1]', 'c'],
  ['/*/*[2]/@*', '/ead/c[1]', 'c'],
  ['/*/*[2]/text()', '/ead/c[1]', 'c'],
  ['/*/*[2]/text()[1]', '/ead/c[1]', 'c'],
  ['/*/*[1]/processing-instruction()[2]', '/ead/head', 'head'],
])('%s is %s', (xpath, path, element) => {
  expect(pathOf(xpath)).toEqual({ path, element });
  // And once more, when it is known.
  expect(pathOf(xpath)).toEqual({ path, element });
});

test('a place that is not there has no path, nor has anything in it', () => {
  expect(pathOf('/*/*[9]')).toBeUndefined();
  expect(pathOf('/*/*[9]/*[1]')).toBeUndefined();
});
