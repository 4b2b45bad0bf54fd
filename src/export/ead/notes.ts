import type { Agent } from '../../catalogue/agent.ts';
import type { AccessConditions, Component } from '../../catalogue/component.ts';
import { paragraphs } from '../../catalogue/text.ts';
import { displayDate, normalDate } from '../../dates/index.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import { headingOf } from './names.ts';
import { optional, ps } from './text.ts';

/** Running texts of a component and the element of each, in the order of ISAD(G) 3.2 to 3.7. */
const NOTES = [
  { field: 'custodialHistory', name: 'custodhist' },
  { field: 'acquisition', name: 'acqinfo' },
  { field: 'scopeAndContent', name: 'scopecontent' },
  { field: 'appraisal', name: 'appraisal' },
  { field: 'accruals', name: 'accruals' },
  { field: 'arrangement', name: 'arrangement' },
  { field: 'accessConditions', name: 'accessrestrict' },
  { field: 'useConditions', name: 'userestrict' },
  { field: 'legalStatus', name: 'legalstatus' },
  { field: 'physicalCharacteristics', name: 'phystech', kind: 'physical characteristics' },
  { field: 'technicalRequirements', name: 'phystech', kind: 'technical requirements' },
  { field: 'otherFindingAids', name: 'otherfindaid' },
  { field: 'originals', name: 'originalsloc' },
  { field: 'copies', name: 'altformavail' },
  { field: 'relatedMaterial', name: 'relatedmaterial' },
  { field: 'separatedMaterial', name: 'separatedmaterial' },
  { field: 'publications', name: 'bibliography' },
] as const satisfies readonly { field: keyof Component; name: string; kind?: string }[];

/** In what the versions of EAD differ where notes are concerned. */
export interface NoteStyle {
  /** The attribute that says which kind of note an element holds, where two kinds share it. */
  kind: 'localtype' | 'type';
  /** Whether the legal status is a note of its own, or one of the conditions governing access. */
  legalStatus: 'own note' | 'in accessrestrict';
}

/**
 * All notes of a component, from its history to how it was described.
 * @param histories the agents whose own histories stand under their names beside that of the component
 */
export function notes(
  component: Component,
  style: NoteStyle,
  histories: readonly Agent[] = [],
): XmlElement[] {
  const found: XmlElement[] = [];
  const { biographicalHistory } = component;
  const history = biographicalHistory === undefined ? [] : ps(biographicalHistory);
  history.push(...histories.flatMap(historyOf));
  if (history.length > 0) found.push(element('bioghist', {}, history));
  for (const row of NOTES) {
    const { field, name } = row;
    // Most units have none of them; a legal status may stand with the conditions of access.
    if (component[field] === undefined && field !== 'accessConditions') continue;
    const content = contentOf(component, field, style);
    if (content === undefined) continue;
    const kind = 'kind' in row ? row.kind : field === 'accessConditions' ? closed(component) : undefined;
    found.push(element(name, kind === undefined ? {} : { [style.kind]: kind }, content));
  }
  for (const { head, text } of component.generalNotes)
    found.push(element('odd', {}, [...optional('head', head), ...ps(text)]));
  if (component.preferredCitation !== undefined)
    found.push(element('prefercite', {}, ps(component.preferredCitation)));
  if (component.processing !== undefined) found.push(element('processinfo', {}, ps(component.processing)));
  return found;
}

/** EAD has no word of its own for it, and a statement in words tells a program nothing. */
const RESTRICTED = 'restricted';

const closed = ({ accessConditions: access }: Component) => (access?.restricted ? RESTRICTED : undefined);

function historyOf(agent: Agent): XmlElement[] {
  if (agent.history === undefined) return [];
  return [element('bioghist', {}, [element('head', {}, headingOf(agent)), ...ps(agent.history)])];
}

function contentOf(
  component: Component,
  field: (typeof NOTES)[number]['field'],
  style: NoteStyle,
): XmlElement[] | undefined {
  const { accessConditions: access, legalStatus } = component;
  const within = style.legalStatus === 'in accessrestrict' && legalStatus !== undefined;
  if (field === 'accessConditions') {
    if (!within) return access && accessConditions(access);
    return [...(access === undefined ? [] : accessConditions(access)), ...legalStatuses(legalStatus)];
  }
  if (field === 'legalStatus' && within) return undefined;
  const text = component[field];
  return text === undefined ? undefined : ps(text);
}

/** The statement; the end of the restriction follows as a date that machines can read. */
function accessConditions({ statement, until }: AccessConditions): XmlElement[] {
  if (until === undefined) return ps(statement);
  const end = element('date', { normal: normalDate(until) }, displayDate(until));
  return [...ps(statement), element('p', {}, ['End of the restriction: ', end, '.'])];
}

/** EAD 2002 gives `legalstatus` no paragraphs, but lets there be several of it. */
const legalStatuses = (text: string) =>
  paragraphs(text).map((paragraph) => element('legalstatus', {}, paragraph));
