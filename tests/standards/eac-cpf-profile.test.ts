import { describe, expect, it } from 'vitest';
import { declaredNames } from '../support/declared-names.ts';
import { PROFILE, publishedXsd } from '../support/eac-cpf-schemas.ts';
import { validatorBy } from '../support/ead3-schemas.ts';
import { describeWithSchemas } from '../support/outside.ts';
import { declarationsOf } from '../support/schema-declarations.ts';
import { SMALL_EAC_CPF, smallEacCpfWith } from '../support/small-eac-cpf.ts';
import { everyElement, parseTree } from '../support/xml-tree.ts';

const byProfile = validatorBy(PROFILE);

// Each is what the profile asks for and EAC-CPF 2.0 leaves open; the numbers are those of ISAAR(CPF), from memory.
const REQUIRED: readonly (readonly [string, string])[] = [
  ['the name of the agency (5.4.2)', smallEacCpfWith(/<agencyName>.*<\/agencyName>/, '')],
  [
    'the rules followed (5.4.3)',
    smallEacCpfWith(/<conventionDeclaration>[\s\S]*<\/conventionDeclaration>/, ''),
  ],
  ['the status of the record (5.4.4)', smallEacCpfWith(' publicationStatus="inProcess"', '')],
  ['the language of the record (5.4.7)', smallEacCpfWith(/<languageDeclaration .*\/>/, '')],
  ['the list that dates follow', smallEacCpfWith(' dateEncoding="iso8601"', '')],
  ['the status of a name (5.1.2, 5.1.5)', smallEacCpfWith(' status="alternative"', '')],
  ['the role of a place (5.2.3)', smallEacCpfWith('<placeRole>birth</placeRole>', '')],
  ['the nature of a relation (5.3.2)', smallEacCpfWith('<targetRole>brother</targetRole>', '')],
  ['anything in the description', smallEacCpfWith(/<description>[\s\S]*<\/description>/, '<description/>')],
  ['a date in the form of ISO 8601', smallEacCpfWith('standardDate="1902-05-14"', 'standardDate="1902~"')],
];

describe('the profile of EAC-CPF', () => {
  it('accepts a record written by hand', () => {
    expect(byProfile(SMALL_EAC_CPF)).toEqual([]);
  });

  it('accepts one that knows only a name and where it occurs', () => {
    expect(byProfile(smallEacCpfWith(/<description>[\s\S]*<\/description>/, ''))).toEqual([]);
  });

  it('is all used by that record, so that nothing in it goes untried', () => {
    // Both ends of a life are of one type: its attributes are tried on one of them.
    const alike = (name: string) => name.replace(/^(?:from|to)Date\//, 'date/');
    const used = new Set(
      everyElement(parseTree(SMALL_EAC_CPF)).flatMap(({ element: { name, attributes } }) => [
        name,
        ...Object.keys(attributes).map((attribute) => alike(`${name}/@${attribute}`)),
      ]),
    );
    const declared = [...declaredNames(declarationsOf(PROFILE, 'eac'))];
    expect(declared.length).toBeGreaterThan(60);
    expect(declared.filter((name) => !used.has(alike(name)))).toEqual([]);
  });

  it.each(REQUIRED)('rejects a record without %s', (_, xml) => {
    expect(byProfile(xml)).not.toEqual([]);
  });

  it.each([
    ['a record without an id', smallEacCpfWith(/<recordId>.*<\/recordId>/, '')],
    ['a blank id', smallEacCpfWith('QF-ada-quill</recordId>', ' \n </recordId>')],
    ['a record without a history', smallEacCpfWith(/<maintenanceEvent [\s\S]*<\/maintenanceEvent>/, '')],
    [
      'a type of agent that is none',
      smallEacCpfWith('entityType value="person"', 'entityType value="ferry"'),
    ],
    ['a name without parts', smallEacCpfWith('<part>Aunt Ada</part>', '')],
    ['a blank name', smallEacCpfWith('>Aunt Ada<', '> <')],
    ['no name at all', smallEacCpfWith(/<nameEntry [\s\S]*<\/nameEntry>/, '')],
    ['a life without ends', smallEacCpfWith(/<fromDate [\s\S]*<\/toDate>/, '')],
    [
      'a history before the dates',
      smallEacCpfWith(/(<existDates>[\s\S]*<\/existDates>)\s*(<biogHist>.*<\/biogHist>)/, '$2$1'),
    ],
    ['a role of a place that is none', smallEacCpfWith('>residence<', '>holiday<')],
    ['a relation to a function', smallEacCpfWith('targetType="resource"', 'targetType="function"')],
    [
      'an address with a percent sign that means nothing',
      smallEacCpfWith('https://example.org/cc0', 'https://example.org/%zz'),
    ],
    ['text between elements', smallEacCpfWith('<relations>', '<relations>and')],
    ['an instant that does not exist', smallEacCpfWith('2026-05-14T10:20:30Z', '2026-02-30T10:20:30Z')],
  ])('rejects %s', (_, xml) => {
    expect(byProfile(xml)).not.toEqual([]);
  });

  // ISO 8601: YYYY, YYYY-MM, YYYY-MM-DD, years 0000 to 2999, as EAD has them; nothing else of EDTF.
  it.each([
    [true, ['0000', '1952', '2999', '1952-12', '1952-02-29', '1952-04-30', '2999-12-31']],
    [false, ['', '52', '3000', '195205', '1952-13', '1952-5', '1952-02-30', '1952?', '195X', '1952/1953']],
  ])('holds dates to their form: %s for %j', (valid, dates) => {
    for (const date of dates) {
      for (const place of ['standardDate="1902-05-14"', 'notBefore="1980"', 'notAfter="1989-12-31"']) {
        const xml = smallEacCpfWith(place, place.replace(/".*"/, `"${date}"`));
        expect([place, date, byProfile(xml).length === 0]).toEqual([place, date, valid]);
      }
    }
  });
});

describeWithSchemas('the published schema of EAC-CPF, beside the profile', (schemas) => {
  const byPublished = validatorBy(publishedXsd(schemas));

  it('accepts the record written by hand', () => {
    expect(byPublished(SMALL_EAC_CPF)).toEqual([]);
  });

  it.each(REQUIRED)('does not ask for %s, which the profile adds', (_, xml) => {
    expect(byPublished(xml)).toEqual([]);
  });
});
