import type { Agent } from '../catalogue/agent.ts';
import type { Component } from '../catalogue/component.ts';
import type { Control } from '../catalogue/finding-aid.ts';
import { DACS, ISAD_G } from '../export/crosswalk/standards.ts';

/**
 * What the fields of a unit are called: as the element of ISAD(G) or DACS to which the crosswalk sends them. Where an
 * element takes several fields, or none of the two standards has one, the field has a name in plain words of our own.
 */
export const UNIT_FIELDS: Readonly<Record<Exclude<keyof Component, 'id' | 'children'>, string>> = {
  level: ISAD_G['3.1.4'],
  otherLevel: 'Name of the level',
  referenceCode: ISAD_G['3.1.1'],
  otherIdentifiers: 'Other numbers',
  title: ISAD_G['3.1.2'],
  dates: ISAD_G['3.1.3'],
  extents: DACS['2.5'],
  physicalDescription: 'Physical description',
  creators: ISAD_G['3.2.1'],
  repository: DACS['2.2'],
  abstract: 'Abstract',
  languages: ISAD_G['3.4.3'],
  languageNote: 'Note on languages',
  containers: 'Containers',
  physicalLocation: 'Physical location',
  digitalCopies: 'Digital copies',
  biographicalHistory: ISAD_G['3.2.2'],
  custodialHistory: DACS['5.1'],
  acquisition: ISAD_G['3.2.4'],
  scopeAndContent: ISAD_G['3.3.1'],
  appraisal: ISAD_G['3.3.2'],
  accruals: ISAD_G['3.3.3'],
  arrangement: ISAD_G['3.3.4'],
  accessConditions: ISAD_G['3.4.1'],
  useConditions: ISAD_G['3.4.2'],
  legalStatus: 'Legal status',
  physicalCharacteristics: 'Physical characteristics',
  technicalRequirements: 'Technical requirements',
  otherFindingAids: ISAD_G['3.4.5'],
  originals: ISAD_G['3.5.1'],
  copies: ISAD_G['3.5.2'],
  relatedMaterial: ISAD_G['3.5.3'],
  separatedMaterial: 'Separated material',
  publications: ISAD_G['3.5.4'],
  preferredCitation: 'Preferred citation',
  processing: ISAD_G['3.7.1'],
  generalNotes: ISAD_G['3.6.1'],
  people: 'Names as access points',
  accessPoints: 'Access points',
  kept: 'Markup of the finding aid taken in',
};

/** What the fields of a person, family or corporate body are called: ISAAR(CPF), 5.1 and 5.2, in plain words. */
export const AGENT_FIELDS: Readonly<Record<Exclude<keyof Agent, 'id'>, string>> = {
  type: 'Type of entity',
  name: 'Name',
  authorizedForm: 'Authorized form of name',
  nameParts: 'Parts of the name',
  variants: 'Other forms of name',
  birth: 'Birth or founding',
  death: 'Death or end',
  places: 'Places',
  occupations: 'Occupations',
  relations: 'Relations',
  history: 'History',
  source: 'Authority file',
  identifier: 'Identifier in the authority file',
};

/** What is told of the description itself: ISAD(G) 3.7, DACS 8. */
export const CONTROL_FIELDS: Readonly<Record<keyof Control, string>> = {
  recordId: 'Identifier of the finding aid',
  title: 'Title of the finding aid',
  subtitle: 'Subtitle of the finding aid',
  author: 'Author of the finding aid',
  edition: 'Edition',
  publisher: 'Publisher',
  publisherAddress: 'Address of the publisher',
  publicationDate: 'Date of publication',
  maintenanceStatus: 'State of the record',
  publicationStatus: 'State of publication',
  maintenanceAgency: 'Agency in charge of the description',
  languages: 'Languages of the description',
  conventions: ISAD_G['3.7.2'],
  rights: DACS['8.2'],
  sources: 'Sources used',
  history: ISAD_G['3.7.3'],
  kept: 'Markup of the finding aid taken in',
};
