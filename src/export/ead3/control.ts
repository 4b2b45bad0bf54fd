import type { Control, MaintenanceEvent } from '../../catalogue/finding-aid.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import type { Context } from '../ead/context.ts';
import { address, optional } from '../ead/text.ts';
import { languageDeclaration } from './languages.ts';
import { descriptiveNote } from './text.ts';

/** Which lists the codes of the document are taken from. */
const ENCODINGS = {
  countryencoding: 'iso3166-1',
  dateencoding: 'iso8601',
  repositoryencoding: 'iso15511',
  scriptencoding: 'iso15924',
};

/** `control`: the record of the description itself. ISAD(G) 3.7, DACS 8. */
export function control(record: Control, context: Context): XmlElement {
  return element('control', { ...ENCODINGS, langencoding: context.languageCodes }, [
    element('recordid', {}, record.recordId),
    fileDescription(record),
    element('maintenancestatus', { value: record.maintenanceStatus }),
    ...(record.publicationStatus === undefined
      ? []
      : [element('publicationstatus', { value: record.publicationStatus })]),
    maintenanceAgency(record),
    ...record.languages.map((use) => languageDeclaration(use, context)),
    ...record.conventions.map(({ abbreviation, citation }) =>
      element('conventiondeclaration', {}, [
        ...optional('abbr', abbreviation),
        element('citation', {}, citation),
      ]),
    ),
    ...record.rights.map(({ citation, address: href, statement }) =>
      element('rightsdeclaration', {}, [
        element('citation', { href }, citation),
        ...descriptiveNote(statement),
      ]),
    ),
    element('maintenancehistory', {}, record.history.map(maintenanceEvent)),
    ...sources(record.sources),
  ]);
}

function fileDescription(record: Control): XmlElement {
  const { title, subtitle, author, edition, publisher, publicationDate, publisherAddress } = record;
  const publication = [
    ...optional('publisher', publisher),
    ...optional('date', publicationDate),
    ...address(publisherAddress),
  ];
  return element('filedesc', {}, [
    element('titlestmt', {}, [
      element('titleproper', {}, title),
      ...optional('subtitle', subtitle),
      ...optional('author', author),
    ]),
    ...(edition === undefined ? [] : [element('editionstmt', {}, [element('edition', {}, edition)])]),
    ...(publication.length === 0 ? [] : [element('publicationstmt', {}, publication)]),
  ]);
}

function maintenanceAgency({ maintenanceAgency: agency }: Control): XmlElement {
  return element('maintenanceagency', { countrycode: agency.country }, [
    ...optional('agencycode', agency.isil),
    element('agencyname', {}, agency.name),
    ...descriptiveNote(agency.address?.join(', ') || undefined),
  ]);
}

function maintenanceEvent({ type, date, agent, agentType, description }: MaintenanceEvent): XmlElement {
  return element('maintenanceevent', {}, [
    element('eventtype', { value: type }),
    element('eventdatetime', { standarddatetime: date }, date),
    element('agenttype', { value: agentType }),
    element('agent', {}, agent),
    ...optional('eventdescription', description),
  ]);
}

function sources(entries: readonly string[]): XmlElement[] {
  if (entries.length === 0) return [];
  return [
    element(
      'sources',
      {},
      entries.map((entry) => element('source', {}, [element('sourceentry', {}, entry)])),
    ),
  ];
}
