import type { Agent } from '../../catalogue/agent.ts';
import type { AccessConditions, Component } from '../../catalogue/component.ts';
import { paragraphs } from '../../catalogue/text.ts';
import { displayDate, normalDate } from '../../dates/index.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import { headingOf } from './names.ts';
import { optional, ps } from './text.ts';

/** A running text of a component: the element it goes to, and how it is read. */
interface NoteRow {
  name: string;
  /** Which kind of note it is, where two kinds share the element. */
  kind?: string;
  of: (component: Component) => string | undefined;
}

// In the order of ISAD(G) 3.2 to 3.7, parted where the conditions of access and the legal status stand. Each row has a
// reader of its own: that a unit has nothing there, as most have, is so found out soonest.
const BEFORE_ACCESS: readonly NoteRow[] = [
  { name: 'custodhist', of: ({ custodialHistory }) => custodialHistory },
  { name: 'acqinfo', of: ({ acquisition }) => acquisition },
  { name: 'scopecontent', of: ({ scopeAndContent }) => scopeAndContent },
  { name: 'appraisal', of: ({ appraisal }) => appraisal },
  { name: 'accruals', of: ({ accruals }) => accruals },
  { name: 'arrangement', of: ({ arrangement }) => arrangement },
];
const AFTER_LEGAL: readonly NoteRow[] = [
  {
    name: 'phystech',
    kind: 'physical characteristics',
    of: ({ physicalCharacteristics }) => physicalCharacteristics,
  },
  {
    name: 'phystech',
    kind: 'technical requirements',
    of: ({ technicalRequirements }) => technicalRequirements,
  },
  { name: 'otherfindaid', of: ({ otherFindingAids }) => otherFindingAids },
  { name: 'originalsloc', of: ({ originals }) => originals },
  { name: 'altformavail', of: ({ copies }) => copies },
  { name: 'relatedmaterial', of: ({ relatedMaterial }) => relatedMaterial },
  { name: 'separatedmaterial', of: ({ separatedMaterial }) => separatedMaterial },
  { name: 'bibliography', of: ({ publications }) => publications },
];

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
  add(found, component, BEFORE_ACCESS, style);
  const access = accessRestrict(component, style);
  if (access !== undefined) found.push(access);
  if (component.useConditions !== undefined)
    found.push(element('userestrict', {}, ps(component.useConditions)));
  if (style.legalStatus === 'own note' && component.legalStatus !== undefined)
    found.push(element('legalstatus', {}, ps(component.legalStatus)));
  add(found, component, AFTER_LEGAL, style);
  for (const { head, text } of component.generalNotes)
    found.push(element('odd', {}, [...optional('head', head), ...ps(text)]));
  if (component.preferredCitation !== undefined)
    found.push(element('prefercite', {}, ps(component.preferredCitation)));
  if (component.processing !== undefined) found.push(element('processinfo', {}, ps(component.processing)));
  return found;
}

function add(found: XmlElement[], component: Component, rows: readonly NoteRow[], style: NoteStyle): void {
  for (const { name, kind, of } of rows) {
    const text = of(component);
    if (text !== undefined)
      found.push(element(name, kind === undefined ? {} : { [style.kind]: kind }, ps(text)));
  }
}

function historyOf(agent: Agent): XmlElement[] {
  if (agent.history === undefined) return [];
  return [element('bioghist', {}, [element('head', {}, headingOf(agent)), ...ps(agent.history)])];
}

/** EAD has no word of its own for it, and a statement in words tells a program nothing. */
const RESTRICTED = 'restricted';

/** The conditions of access, and in EAD 2002 the legal status with them. */
function accessRestrict(
  { accessConditions: access, legalStatus }: Component,
  style: NoteStyle,
): XmlElement | undefined {
  const legal = style.legalStatus === 'in accessrestrict' ? legalStatus : undefined;
  if (access === undefined && legal === undefined) return undefined;
  return element('accessrestrict', access?.restricted ? { [style.kind]: RESTRICTED } : {}, [
    ...(access === undefined ? [] : accessConditions(access)),
    ...(legal === undefined ? [] : legalStatuses(legal)),
  ]);
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
