import type { AccessConditions, AccessPoint, Component } from '../../catalogue/component.ts';
import { displayDate } from '../../dates/index.ts';
import { heading, NAMES, type People } from './agents.ts';
import { at, elementsOf, type Found, isElement, within } from './found.ts';
import { isSeen, lineOf, paragraphsOf, proseOf, words } from './text.ts';

type ProseField =
  | 'biographicalHistory'
  | 'custodialHistory'
  | 'acquisition'
  | 'scopeAndContent'
  | 'appraisal'
  | 'accruals'
  | 'arrangement'
  | 'useConditions'
  | 'legalStatus'
  | 'physicalCharacteristics'
  | 'technicalRequirements'
  | 'otherFindingAids'
  | 'originals'
  | 'copies'
  | 'relatedMaterial'
  | 'separatedMaterial'
  | 'publications'
  | 'preferredCitation'
  | 'processing';

/** The field of each running text: the crosswalk, read from right to left. */
const FIELDS: Readonly<Record<string, ProseField>> = {
  ...{ bioghist: 'biographicalHistory', custodhist: 'custodialHistory', acqinfo: 'acquisition' },
  ...{ scopecontent: 'scopeAndContent', appraisal: 'appraisal', accruals: 'accruals' },
  ...{ arrangement: 'arrangement', organization: 'arrangement', userestrict: 'useConditions' },
  ...{ legalstatus: 'legalStatus', phystech: 'physicalCharacteristics', otherfindaid: 'otherFindingAids' },
  ...{ originalsloc: 'originals', altformavail: 'copies', relatedmaterial: 'relatedMaterial' },
  ...{ separatedmaterial: 'separatedMaterial', bibliography: 'publications' },
  ...{ prefercite: 'preferredCitation', processinfo: 'processing' },
};
/** Elements that only hold such texts together; gone from EAD 2002's successor. */
const WRAPPERS = new Set(['descgrp', 'admininfo', 'add']);

/** Reads one element that stands beside the `did` of a unit, but for the units below it, into the unit. */
export function describe(unit: Component, element: Found, people: People): void {
  const { name } = element;
  const field = fieldOf(element);
  if (WRAPPERS.has(name)) {
    for (const part of elementsOf(element)) if (part.name !== 'head') describe(unit, part, people);
  } else if (name === 'controlaccess') addAccessPoints(unit, element, people);
  else if (name === 'accessrestrict') {
    const access = accessConditions(element, unit.accessConditions);
    if (access !== undefined) unit.accessConditions = access;
    for (const status of within(element, LEGAL))
      add(unit, 'legalStatus', paragraphsOf(status).join('\n\n') || undefined);
  } else if (field === undefined) addNote(unit, element);
  else add(unit, field, proseOf(element));
}

function add(unit: Component, field: ProseField, text: string | undefined): void {
  if (text === undefined) return;
  const before = unit[field];
  unit[field] = before === undefined ? text : `${before}\n\n${text}`;
}

function addNote(unit: Component, element: Found): void {
  const text = proseOf(element);
  const head = lineOf(at(element, 'head')) ?? TITLES[element.name];
  if (text !== undefined) unit.generalNotes.push({ ...(head !== undefined && { head }), text });
}

/** What stands over a note whose element says what it is and that has no heading of its own. */
const TITLES: Readonly<Record<string, string>> = { fileplan: 'File plan', index: 'Index' };

const LEGAL: ReadonlySet<string> = new Set(['legalstatus']);

const kindOf = ({ attributes }: Found): string | undefined => attributes.localtype ?? attributes.type;

function fieldOf(element: Found): ProseField | undefined {
  const { name } = element;
  if (name === 'phystech' && kindOf(element) === 'technical requirements') return 'technicalRequirements';
  return Object.hasOwn(FIELDS, name) ? FIELDS[name] : undefined;
}

/** Words by which a statement says that a unit is not open to everybody. Common practice. */
const RESTRICTED = /\b(?:restricted|closed|not open|not available|permission|embargo|sealed)\b/i;
/** And those by which it says that it is. */
const OPEN =
  /\b(?:no restrictions?|unrestricted|(?:is|are) open|open (?:for|to)|not restricted|without restrictions?)\b/i;

function accessConditions(
  element: Found,
  before: AccessConditions | undefined,
): AccessConditions | undefined {
  let until = before?.until;
  const statement = proseOf(element, (child) => {
    if (child.name === 'legalstatus') return true;
    const end = endOf(child);
    until = end ?? until;
    return end !== undefined;
  });
  const said = [before?.statement, statement].filter((text) => text !== undefined).join('\n\n');
  if (said === '') return before;
  return {
    statement: said,
    restricted:
      before?.restricted === true ||
      kindOf(element) === 'restricted' ||
      until !== undefined ||
      (RESTRICTED.test(said) && !OPEN.test(said)),
    ...(until !== undefined && { until }),
  };
}

/** The paragraph in which the end of a restriction stands as a date for machines. */
function endOf(paragraph: Found): string | undefined {
  const [before, date, after] = paragraph.children;
  if (before !== 'End of the restriction: ' || after !== '.' || date === undefined || !isElement(date))
    return undefined;
  const { normal } = date.attributes;
  return normal !== undefined && displayDate(normal) === words(date) ? normal : undefined;
}

const POINTS: Readonly<Record<string, AccessPoint['type']>> = {
  ...{ subject: 'subject', geogname: 'place', genreform: 'genre' },
  ...{ occupation: 'occupation', function: 'function', title: 'title' },
};
const HEADINGS: ReadonlySet<string> = new Set([...NAMES, ...Object.keys(POINTS)]);

function addAccessPoints(unit: Component, element: Found, people: People): void {
  for (const one of within(element, HEADINGS)) {
    const type = POINTS[one.name];
    if (type === undefined) {
      const link = people.link(one);
      if (link !== undefined) unit.people.push(link);
      continue;
    }
    const term = heading(one, ' -- ');
    const { source, identifier = one.attributes.authfilenumber } = one.attributes;
    if (term === '') continue;
    unit.accessPoints.push({
      type,
      term,
      ...(isSeen(source) && { source }),
      ...(isSeen(identifier) && { identifier }),
    });
  }
}
