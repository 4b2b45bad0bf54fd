import type { Agent } from '../../catalogue/agent.ts';
import type { AccessConditions, Component } from '../../catalogue/component.ts';
import { paragraphs } from '../../catalogue/text.ts';
import { displayDate, normalDate } from '../../dates/index.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import { headingOf } from './names.ts';
import { optional, ps } from './text.ts';

/** Running texts of a component and the element of each, in the order of ISAD(G) 3.2 to 3.7. */
const NOTES = [
  ['custodialHistory', 'custodhist'],
  ['acquisition', 'acqinfo'],
  ['scopeAndContent', 'scopecontent'],
  ['appraisal', 'appraisal'],
  ['accruals', 'accruals'],
  ['arrangement', 'arrangement'],
  ['accessConditions', 'accessrestrict'],
  ['useConditions', 'userestrict'],
  ['legalStatus', 'legalstatus'],
  ['physicalCharacteristics', 'phystech', 'physical characteristics'],
  ['technicalRequirements', 'phystech', 'technical requirements'],
  ['otherFindingAids', 'otherfindaid'],
  ['originals', 'originalsloc'],
  ['copies', 'altformavail'],
  ['relatedMaterial', 'relatedmaterial'],
  ['separatedMaterial', 'separatedmaterial'],
  ['publications', 'bibliography'],
] as const satisfies readonly (readonly [keyof Component, string, string?])[];

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
export function* notes(
  component: Component,
  style: NoteStyle,
  histories: readonly Agent[] = [],
): Generator<XmlElement> {
  const history = [...ps(component.biographicalHistory ?? ''), ...histories.flatMap(historyOf)];
  if (history.length > 0) yield element('bioghist', {}, history);
  for (const [field, name, kind] of NOTES) {
    const content = contentOf(component, field, style);
    if (content === undefined) continue;
    yield element(name, kind === undefined ? {} : { [style.kind]: kind }, content);
  }
  for (const { head, text } of component.generalNotes)
    yield element('odd', {}, [...optional('head', head), ...ps(text)]);
  if (component.preferredCitation !== undefined)
    yield element('prefercite', {}, ps(component.preferredCitation));
  if (component.processing !== undefined) yield element('processinfo', {}, ps(component.processing));
}

function historyOf(agent: Agent): XmlElement[] {
  if (agent.history === undefined) return [];
  return [element('bioghist', {}, [element('head', {}, headingOf(agent)), ...ps(agent.history)])];
}

function contentOf(
  component: Component,
  field: (typeof NOTES)[number][0],
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
