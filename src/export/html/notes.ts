import type { Component } from '../../catalogue/component.ts';
import { paragraphs } from '../../catalogue/text.ts';
import { displayDate } from '../../dates/index.ts';

/** A running text of a component under a heading in plain words. */
export interface Note {
  head: string;
  /** Its paragraphs. */
  texts: readonly string[];
}

/** Running texts, with the headings under which readers find them, in the order of ISAD(G) 3.2 to 3.7. */
const NOTES = [
  ['abstract', 'In short'],
  ['biographicalHistory', 'History'],
  ['scopeAndContent', 'What is here'],
  ['arrangement', 'How it is arranged'],
  ['accessConditions', 'Who may see it'],
  ['useConditions', 'Using and copying it'],
  ['preferredCitation', 'How to cite'],
  ['languageNote', 'Languages'],
  ['physicalCharacteristics', 'Condition'],
  ['technicalRequirements', 'What is needed to see or hear it'],
  ['custodialHistory', 'Who kept it before'],
  ['acquisition', 'How it came here'],
  ['appraisal', 'What was kept and what was not'],
  ['accruals', 'What may still come'],
  ['legalStatus', 'Legal status'],
  ['otherFindingAids', 'Other finding aids'],
  ['originals', 'Where the originals are'],
  ['copies', 'Copies'],
  ['relatedMaterial', 'Related material'],
  ['separatedMaterial', 'What was taken out'],
  ['publications', 'Publications'],
  ['processing', 'Who described it, and how'],
] as const satisfies readonly (readonly [keyof Component, string])[];

export type NoteField = (typeof NOTES)[number][0];

/** The running texts of a component, with its general notes behind them; `only` picks some of them, without those. */
export function notesOf(component: Component, only?: readonly NoteField[]): Note[] {
  const notes = NOTES.flatMap(([field, head]): Note[] => {
    if (only !== undefined && !only.includes(field)) return [];
    const texts = textsOf(component, field);
    return texts.length === 0 ? [] : [{ head, texts }];
  });
  return only === undefined ? [...notes, ...generalNotes(component)] : notes;
}

export const generalNotes = ({ generalNotes }: Component): Note[] =>
  generalNotes.map(({ head, text }) => ({ head: head ?? 'Note', texts: paragraphs(text) }));

/** All fields but those that are told in a part of their own. */
export const otherFields = (told: readonly NoteField[]): NoteField[] =>
  NOTES.map(([field]) => field).filter((field) => !told.includes(field));

function textsOf(component: Component, field: NoteField): string[] {
  const said = component[field];
  if (said === undefined) return [];
  if (typeof said === 'string') return paragraphs(said);
  const end = said.until === undefined ? [] : [`End of the restriction: ${displayDate(said.until)}.`];
  return [...paragraphs(said.statement), ...end];
}
