import type { AgentLink } from '../catalogue/agent.ts';
import type { Component } from '../catalogue/component.ts';
import { csvRecord } from '../catalogue/csv-cell.ts';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import { unitsFrom } from '../catalogue/units.ts';
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
  const nameOf = ({ agent }: AgentLink) => names.get(agent) ?? agent;
  for (const unit of unitsFrom(aid.collection)) yield row(unit, nameOf);
}

function row(unit: Component, nameOf: (link: AgentLink) => string): string {
  return csvRecord([
    unit.referenceCode,
    list(unit.otherIdentifiers, ({ value }) => value),
    unit.level,
    unit.title,
    list(unit.dates, ({ expression }) => expression),
    list(unit.dates, ({ edtf }) => edtf),
    list(unit.extents, (extent) => sayExtent([extent])),
    list(unit.creators, nameOf),
    unit.scopeAndContent,
    list(unit.containers, ({ type, number }) => `${type} ${number}`),
    list(unit.people, nameOf),
    list(unit.accessPoints, ({ term }) => term),
    list(unit.languages, ({ name }) => name),
    unit.accessConditions?.statement,
    unit.accessConditions?.until,
    unit.physicalCharacteristics,
    list(unit.generalNotes, ({ head, text }) => (head === undefined ? text : `${head}: ${text}`)),
    list(unit.digitalCopies, ({ file }) => file),
  ]);
}

/** What is said of each, in one cell; nothing where there is none. */
function list<One>(ones: readonly One[], say: (one: One) => string | undefined): string | undefined {
  if (ones.length === 0) return undefined;
  return ones
    .map(say)
    .filter((said) => said !== undefined)
    .join('; ');
}
