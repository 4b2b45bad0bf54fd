import type { Control, MaintenanceEvent } from '../../catalogue/finding-aid.ts';
import { normalDate } from '../../dates/index.ts';
import { element, type XmlElement, type XmlNode } from '../../xml/element.ts';
import { address, optional, ps } from '../ead/text.ts';
import { languageList } from './languages.ts';
import { simpleLink } from './link.ts';
import { tokenOnly } from './token.ts';

/** Which lists the codes of the document are taken from. */
const ENCODINGS = {
  countryencoding: 'iso3166-1',
  dateencoding: 'iso8601',
  langencoding: 'iso639-2b',
  repositoryencoding: 'iso15511',
  scriptencoding: 'iso15924',
};

/** `eadheader`: the record of the description itself. ISAD(G) 3.7, DACS 8. */
export function header(record: Control): XmlElement {
  const { maintenanceAgency: agency, history, publicationStatus } = record;
  const codes = { countrycode: agency.country, mainagencycode: tokenOnly(agency.isil) };
  return element('eadheader', { ...ENCODINGS, findaidstatus: publicationStatus }, [
    element('eadid', codes, record.recordId),
    fileDescription(record),
    element('profiledesc', {}, [
      ...history.slice(0, 1).map(creation),
      element('langusage', {}, languageList(record.languages)),
      element('descrules', {}, conventions(record)),
    ]),
    ...(history.length < 2 ? [] : [element('revisiondesc', {}, history.slice(1).map(change))]),
  ]);
}

function fileDescription(record: Control): XmlElement {
  const { title, subtitle, author, edition, publisher, publicationDate, publisherAddress } = record;
  const publication = [
    ...optional('publisher', publisher),
    ...(publicationDate === undefined ? [] : [date(publicationDate)]),
    ...address(publisherAddress),
    ...rights(record),
  ];
  return element('filedesc', {}, [
    element('titlestmt', {}, [
      element('titleproper', {}, title),
      ...optional('subtitle', subtitle),
      ...optional('author', author),
    ]),
    ...(edition === undefined ? [] : [element('editionstmt', {}, [element('edition', {}, edition)])]),
    ...(publication.length === 0 ? [] : [element('publicationstmt', {}, publication)]),
    element('notestmt', {}, [maintenanceAgency(record), ...sources(record)]),
  ]);
}

/** Rights in the description: DACS 8.2. EAD 2002 has no element of its own for them. */
function rights({ rights: statements }: Control): XmlElement[] {
  return statements.flatMap(({ citation, address: href, statement }) => [
    element('p', {}, href === undefined ? citation : [element('extref', simpleLink(href), citation)]),
    ...ps(statement ?? ''),
  ]);
}

/** Who keeps the description; EAD 2002 has an attribute for the code alone. */
function maintenanceAgency({ maintenanceAgency: agency }: Control): XmlElement {
  const { name, isil, address: lines = [] } = agency;
  const code = isil === undefined ? '' : ` (${isil})`;
  return note('maintenance agency', [[`${name}${code}`, ...lines].join(', ')]);
}

function sources({ sources: entries }: Control): XmlElement[] {
  return entries.length === 0 ? [] : [note('sources', entries)];
}

const note = (type: string, lines: readonly string[]) =>
  element(
    'note',
    { type },
    lines.map((line) => element('p', {}, line)),
  );

/** ISAD(G) 3.7.2, DACS 8.1.4. */
function conventions({ conventions: rules }: Control): XmlNode[] {
  return rules.flatMap(({ abbreviation, citation }, index) => [
    `${index === 0 ? '' : '; '}${citation}`,
    ...(abbreviation === undefined ? [] : [' (', element('abbr', {}, abbreviation), ')']),
  ]);
}

const DONE: Readonly<Record<MaintenanceEvent['type'], string>> = {
  created: 'Created',
  revised: 'Revised',
  derived: 'Derived',
  updated: 'Updated',
  unknown: 'Worked on',
};

const deed = ({ type, agent, agentType }: MaintenanceEvent) =>
  `${DONE[type]} by ${agentType === 'machine' ? 'the program ' : ''}${agent}`;

/** How the description came to be: ISAD(G) 3.7.3. */
function creation(event: MaintenanceEvent): XmlElement {
  const { description } = event;
  const end = description === undefined ? '.' : `. ${description}`;
  return element('creation', {}, [`${deed(event)}, `, date(event.date), end]);
}

/** What was done to it later. */
function change(event: MaintenanceEvent): XmlElement {
  const { description } = event;
  const words = description === undefined ? deed(event) : `${deed(event)}. ${description}`;
  return element('change', {}, [date(event.date), element('item', {}, words)]);
}

/** A day as written; of an instant, `normal` holds the day. */
const date = (text: string) => element('date', { normal: normalDate(text.replace(/T.*$/s, '')) }, text);
