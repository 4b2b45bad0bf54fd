import type { Component } from '../catalogue/component.ts';
import { csvRecord } from '../catalogue/csv-cell.ts';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import { sayExtent } from '../housing/extent.ts';

const HEADINGS = [
  'reference code',
  'other identifiers',
  'level',
  'title',
  'dates',
  'date (EDTF)',
  'extent',
  'creators',
  'scope and content',
  'containers',
  'people',
  'access points',
  'language',
  'conditions governing access',
  'end of the restriction',
  'condition',
  'notes',
  'digital copies',
];

/** The finding aid as a table, one row a unit of description (RFC 4180, UTF-8 with a byte order mark for spreadsheets). */
export function* csv(aid: FindingAid): Generator<string> {
  const names = new Map(aid.people.map(({ id, name, authorizedForm }) => [id, authorizedForm ?? name]));
  yield `\uFEFF${csvRecord(HEADINGS)}`;
  yield* rows(aid.collection, (links) => links.map(({ agent }) => names.get(agent) ?? agent));
}

type NamesOf = (links: Component['people']) => string[];

function* rows(unit: Component, namesOf: NamesOf): Generator<string> {
  yield csvRecord([
    unit.referenceCode,
    list(unit.otherIdentifiers.map(({ value }) => value)),
    unit.level,
    unit.title,
    list(unit.dates.map(({ expression }) => expression)),
    list(unit.dates.map(({ edtf }) => edtf)),
    list(unit.extents.map((extent) => sayExtent([extent]))),
    list(namesOf(unit.creators)),
    unit.scopeAndContent,
    list(unit.containers.map(({ type, number }) => `${type} ${number}`)),
    list(namesOf(unit.people)),
    list(unit.accessPoints.map(({ term }) => term)),
    list(unit.languages.map(({ name }) => name)),
    unit.accessConditions?.statement,
    unit.accessConditions?.until,
    unit.physicalCharacteristics,
    list(unit.generalNotes.map(({ head, text }) => (head === undefined ? text : `${head}: ${text}`))),
    list(unit.digitalCopies.map(({ file }) => file)),
  ]);
  for (const child of unit.children) yield* rows(child, namesOf);
}

const list = (values: readonly (string | undefined)[]) =>
  values.filter((value) => value !== undefined).join('; ');
