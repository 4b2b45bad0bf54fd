import { expect, test } from 'vitest';
import { validateAgainst } from '../support/validate-against.ts';
import { SMALL_SCHEMA, smallEad3 } from './small-file.ts';

const LEVEL = '<xs:attribute name="level" type="xs:NMTOKEN"/>';
const IDS = '<xs:attribute name="id" type="xs:ID"/><xs:attribute name="parent" type="xs:IDREFS"/>';
const xsd = Buffer.from(SMALL_SCHEMA.files.get('small.xsd') ?? []).toString();
const schema = {
  ...SMALL_SCHEMA,
  fingerprint: 'small, with ids',
  files: new Map([['small.xsd', Buffer.from(xsd.replace(LEVEL, `${LEVEL}${IDS}`))]]),
};

const COMPONENT = '<c id="c1" parent="">\n<did><unittitle>Log</unittitle></did></c>';
const XML = smallEad3()
  .replace('level="collection"', 'level="collection" id="top"')
  .replace('</did>', `</did><dsc>\n${COMPONENT}</dsc>`);

// XML Schema 1.0, Part 1, 3.15.4: every id in a list of references (xs:IDREFS) must be that of some element.
test.each([
  ['top', []],
  ['nowhere', ['nowhere']],
  ['top c1', []],
  ['top nowhere', ['nowhere']],
  ['nowhere top', ['nowhere']],
  ['nowhere top neither', ['nowhere', 'neither']],
  [' top ', []],
])('of the references “%s”, %j are lost', async (parent, lost) => {
  const xml = XML.replace('parent=""', `parent="${parent}"`);
  const { valid, messages, remarks } = await validateAgainst(Buffer.from(xml), 'small.xml', schema);
  expect(messages).toEqual([]);
  expect(valid).toBe(true);
  const line = xml.slice(0, xml.indexOf('parent=')).split('\n').length;
  expect(remarks).toEqual(
    lost.map((id) => ({
      line,
      says: `The attribute parent of <c> points to “${id}”, and no element of this file has that id.`,
    })),
  );
});

test('a reference that can be none is one fault, told once', async () => {
  const one = Buffer.from(xsd.replace(LEVEL, `${LEVEL}${IDS.replace('IDREFS', 'IDREF')}`));
  const strict = { ...schema, fingerprint: 'small, with one id each', files: new Map([['small.xsd', one]]) };
  for (const parent of ['top c1', '1']) {
    const xml = XML.replace('parent=""', `parent="${parent}"`);
    const { messages } = await validateAgainst(Buffer.from(xml), 'small.xml', strict);
    expect(messages.map(({ says }) => says)).toEqual([
      `The attribute parent of <c> is “${parent}”; it must be the id of an element of this file.`,
    ]);
  }
});
