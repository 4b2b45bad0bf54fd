import type { Control, MaintenanceEvent } from '../../catalogue/finding-aid.ts';
import { paragraphs } from '../../catalogue/text.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import { addressOf } from './address.ts';
import { descriptiveNote, optional } from './text.ts';

/** Which lists the codes of the record are taken from. */
const ENCODINGS = {
  countryEncoding: 'iso3166-1',
  dateEncoding: 'iso8601',
  languageEncoding: 'iso639-2b',
  repositoryEncoding: 'iso15511',
  scriptEncoding: 'iso15924',
};

const PUBLICATION_STATUS: Record<NonNullable<Control['publicationStatus']>, string> = {
  inprocess: 'inProcess',
  approved: 'approved',
  published: 'published',
};

/** `control`: the record itself, made with the finding aid and by the same rules. ISAAR(CPF) 5.4. */
export function control(record: Control, recordId: string): XmlElement {
  const status = {
    maintenanceStatus: record.maintenanceStatus,
    publicationStatus: PUBLICATION_STATUS[record.publicationStatus ?? 'inprocess'],
  };
  return element('control', { ...ENCODINGS, ...status }, [
    element('recordId', {}, recordId),
    maintenanceAgency(record),
    element('maintenanceHistory', {}, record.history.map(maintenanceEvent)),
    ...sources(record.sources),
    ...record.conventions.map(({ abbreviation, citation }) =>
      element('conventionDeclaration', {}, [
        element('reference', {}, citation),
        ...optional('shortCode', abbreviation),
      ]),
    ),
    ...record.languages.map(({ code, script }) =>
      element('languageDeclaration', { languageCode: code, scriptCode: script?.code }),
    ),
    ...record.rights.map(rightsDeclaration),
  ]);
}

function maintenanceAgency({ maintenanceAgency: agency }: Control): XmlElement {
  return element('maintenanceAgency', { countryCode: agency.country }, [
    ...optional('agencyCode', agency.isil),
    element('agencyName', {}, agency.name),
    ...descriptiveNote(agency.address?.join(', ') || undefined),
  ]);
}

function maintenanceEvent({ type, date, agent, agentType, description }: MaintenanceEvent): XmlElement {
  return element('maintenanceEvent', { maintenanceEventType: type }, [
    element('agent', { agentType }, agent),
    element('eventDateTime', { standardDateTime: date }, date),
    ...paragraphs(description ?? '').map((text) => element('eventDescription', {}, text)),
  ]);
}

function sources(entries: readonly string[]): XmlElement[] {
  if (entries.length === 0) return [];
  const source = (entry: string) => element('source', {}, [element('reference', {}, entry)]);
  return [element('sources', {}, entries.map(source))];
}

/** An address that no link can hold is still told, as a text. */
function rightsDeclaration({ citation, address, statement }: Control['rights'][number]): XmlElement {
  const href = addressOf(address);
  const inWords = href === undefined ? address : undefined;
  const note = [statement, inWords].filter((text) => text !== undefined).join('\n\n');
  return element('rightsDeclaration', {}, [
    element('reference', { href }, citation),
    ...descriptiveNote(note || undefined),
  ]);
}
