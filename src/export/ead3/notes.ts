import type { Agent } from '../../catalogue/agent.ts';
import type { AccessConditions, Component } from '../../catalogue/component.ts';
import { displayDate, normalDate } from '../../dates/index.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import { optional, ps } from './text.ts';

/** Running texts of a component and the EAD3 element of each, in the order of ISAD(G) 3.2 to 3.7. */
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

/**
 * All notes of a component, from its history to how it was described.
 * @param histories the agents whose own histories stand under their names beside that of the component
 */
export function* notes(component: Component, histories: readonly Agent[] = []): Generator<XmlElement> {
  const history = [...ps(component.biographicalHistory ?? ''), ...histories.flatMap(historyOf)];
  if (history.length > 0) yield element('bioghist', {}, history);
  for (const [field, name, localtype] of NOTES) {
    const text = component[field];
    if (text === undefined) continue;
    yield element(name, { localtype }, typeof text === 'string' ? ps(text) : accessConditions(text));
  }
  for (const { head, text } of component.generalNotes)
    yield element('odd', {}, [...optional('head', head), ...ps(text)]);
  if (component.preferredCitation !== undefined)
    yield element('prefercite', {}, ps(component.preferredCitation));
  if (component.processing !== undefined) yield element('processinfo', {}, ps(component.processing));
}

function historyOf({ name, authorizedForm, history }: Agent): XmlElement[] {
  if (history === undefined) return [];
  return [element('bioghist', {}, [element('head', {}, authorizedForm ?? name), ...ps(history)])];
}

/** The statement; the end of the restriction follows as a date that machines can read. */
function accessConditions({ statement, until }: AccessConditions): XmlElement[] {
  if (until === undefined) return ps(statement);
  const end = element('date', { normal: normalDate(until) }, displayDate(until));
  return [...ps(statement), element('p', {}, ['End of the restriction: ', end, '.'])];
}
