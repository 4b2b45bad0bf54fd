import { describe, expect, it } from 'vitest';
import { findingAid } from '../../src/catalogue/finding-aid.ts';
import { schemasAt } from '../../src/catalogue/schema-at.ts';

/** An element of a standard, and every place that the model has for what it asks for. `[]` is any of a list. */
type Row = readonly [number: string, element: string, ...places: string[]];

// ISAD(G): General International Standard Archival Description, 2nd ed., Ottawa 2000, part 3. Numbers and names from
// memory.
const ISAD_G: readonly Row[] = [
  ['3.1.1', 'Reference code(s)', 'collection.referenceCode', 'collection.repository.country'],
  ['3.1.2', 'Title', 'collection.title'],
  ['3.1.3', 'Date(s)', 'collection.dates[].expression', 'collection.dates[].edtf', 'collection.dates[].type'],
  ['3.1.4', 'Level of description', 'collection.level', 'collection.children[].level'],
  [
    ...(['3.1.5', 'Extent and medium of the unit of description'] as const),
    ...['collection.extents[].quantity', 'collection.extents[].unit', 'collection.physicalDescription'],
  ],
  ['3.2.1', 'Name of creator(s)', 'collection.creators[].agent', 'people[].name', 'people[].authorizedForm'],
  ['3.2.2', 'Administrative / Biographical history', 'collection.biographicalHistory', 'people[].history'],
  ['3.2.3', 'Archival history', 'collection.custodialHistory'],
  ['3.2.4', 'Immediate source of acquisition or transfer', 'collection.acquisition'],
  ['3.3.1', 'Scope and content', 'collection.scopeAndContent', 'collection.abstract'],
  ['3.3.2', 'Appraisal, destruction and scheduling information', 'collection.appraisal'],
  ['3.3.3', 'Accruals', 'collection.accruals'],
  ['3.3.4', 'System of arrangement', 'collection.arrangement'],
  [
    ...(['3.4.1', 'Conditions governing access', 'collection.accessConditions.statement'] as const),
    ...['collection.accessConditions.until', 'collection.legalStatus'],
  ],
  ['3.4.2', 'Conditions governing reproduction', 'collection.useConditions'],
  [
    '3.4.3',
    'Language / scripts of material',
    'collection.languages[].code',
    'collection.languages[].script.code',
  ],
  [
    ...(['3.4.4', 'Physical characteristics and technical requirements'] as const),
    ...['collection.physicalCharacteristics', 'collection.technicalRequirements'],
  ],
  ['3.4.5', 'Finding aids', 'collection.otherFindingAids'],
  ['3.5.1', 'Existence and location of originals', 'collection.originals'],
  ['3.5.2', 'Existence and location of copies', 'collection.copies', 'collection.digitalCopies[].file'],
  ['3.5.3', 'Related units of description', 'collection.relatedMaterial', 'collection.separatedMaterial'],
  ['3.5.4', 'Publication note', 'collection.publications'],
  ['3.6.1', 'Note', 'collection.generalNotes[].text'],
  ['3.7.1', "Archivist's note", 'collection.processing', 'control.author', 'control.sources[]'],
  ['3.7.2', 'Rules or conventions', 'control.conventions[].citation'],
  ['3.7.3', 'Date(s) of descriptions', 'control.history[].date'],
];

// Describing Archives: A Content Standard, version 2022, part I. Numbers and names from memory; those of chapter 2,
// 3.1, 4.1, 4.5 and 8.2 also as in the list of required elements in chapter 1.
const DACS: readonly Row[] = [
  ['2.1', 'Reference Code', 'collection.referenceCode', 'collection.repository.isil'],
  ['2.2', 'Name and Location of Repository', 'collection.repository.name', 'collection.repository.address[]'],
  ['2.3', 'Title', 'collection.title'],
  ['2.4', 'Date', 'collection.dates[].expression', 'collection.dates[].type'],
  [
    '2.5',
    'Extent',
    'collection.extents[].quantity',
    'collection.extents[].unit',
    'collection.physicalDescription',
  ],
  ['2.6', 'Name of Creator(s)', 'collection.creators[].agent', 'people[].authorizedForm', 'people[].type'],
  ['2.7', 'Administrative/Biographical History', 'collection.biographicalHistory', 'people[].history'],
  ['3.1', 'Scope and Content', 'collection.scopeAndContent'],
  ['3.2', 'System of Arrangement', 'collection.arrangement'],
  [
    '4.1',
    'Conditions Governing Access',
    'collection.accessConditions.statement',
    'collection.accessConditions.until',
  ],
  ['4.2', 'Physical Access', 'collection.physicalCharacteristics', 'collection.physicalLocation'],
  ['4.3', 'Technical Access', 'collection.technicalRequirements'],
  ['4.4', 'Conditions Governing Reproduction and Use', 'collection.useConditions'],
  ['4.5', 'Languages and Scripts of the Material', 'collection.languages[].name', 'collection.languageNote'],
  ['4.6', 'Finding Aids', 'collection.otherFindingAids'],
  ['5.1', 'Custodial History', 'collection.custodialHistory'],
  ['5.2', 'Immediate Source of Acquisition', 'collection.acquisition'],
  ['5.3', 'Appraisal, Destruction, and Scheduling Information', 'collection.appraisal'],
  ['5.4', 'Accruals', 'collection.accruals'],
  ['6.1', 'Existence and Location of Originals', 'collection.originals'],
  ['6.2', 'Existence and Location of Copies', 'collection.copies', 'collection.digitalCopies[].file'],
  ['6.3', 'Related Archival Materials', 'collection.relatedMaterial', 'collection.separatedMaterial'],
  ['6.4', 'Publication Note', 'collection.publications'],
  ['7.1', 'Notes', 'collection.generalNotes[].text', 'collection.preferredCitation'],
  [
    ...(['8.1', 'Description Control', 'control.sources[]', 'control.conventions[].citation'] as const),
    ...['control.history[].agent', 'control.history[].date', 'control.author', 'collection.processing'],
  ],
];
const DACS_RIGHTS: Row = ['8.2', 'Rights Statements for Archival Description', 'control.rights[].citation'];

const pathOf = (place: string) =>
  place.split('.').flatMap((part) => (part.endsWith('[]') ? [part.slice(0, -2), 0] : [part]));
const inEveryUnit = (place: string) => place.replace(/^collection\./, 'collection.children[].children[].');

describe.each([
  ['ISAD(G)', 26, ISAD_G],
  ['DACS', 25, DACS],
  ['DACS, added in 2019', 1, [DACS_RIGHTS]],
] as const)('the model has a place for every element of %s', (_, count, rows) => {
  it(`which are ${count}, each once`, () => expect(new Set(rows.map(([number]) => number)).size).toBe(count));

  it.each(rows)('%s %s', (...[, , ...places]: Row) => {
    expect(places.length).toBeGreaterThan(0);
    for (const place of places) {
      expect(schemasAt(findingAid, pathOf(place)), place).not.toEqual([]);
      // A part may say for itself whatever the whole can: ISAD(G) 2, DACS chapter 1, multilevel description.
      expect(schemasAt(findingAid, pathOf(inEveryUnit(place))), place).not.toEqual([]);
    }
  });
});

it('a place that is not there is noticed', () => {
  expect(schemasAt(findingAid, pathOf('collection.accessCondition'))).toEqual([]);
  expect(schemasAt(findingAid, pathOf('control.rights.citation'))).toEqual([]);
});
