import { NO_PLACE, type Row } from './row.ts';

const NONE = { eacCpf: NO_PLACE, dc: NO_PLACE, dcterms: NO_PLACE } as const;
/** Where EAD 2002 has no element of its own. */
const EAD2002_NOTE = 'eadheader/filedesc/notestmt/note/p';
/** How the description came to be stands in a sentence; what was done to it later, in a list. */
const EAD2002_EVENT = ['eadheader/profiledesc/creation', 'eadheader/revisiondesc/change/item'];
const EAD2002_DATES = ['eadheader/profiledesc/creation/date', 'eadheader/revisiondesc/change/date'];
const NO_DC = { dc: NO_PLACE, dcterms: NO_PLACE } as const;

/**
 * The description itself: ISAD(G) 3.7, DACS 8. A record of Dublin Core describes the collection, not its finding aid,
 * so nothing of it has a place there but the identifier under which the finding aid is known.
 */
export const CONTROL: readonly Row[] = [
  {
    field: 'control.recordId',
    ...{ ead3: 'control/recordid', ead2002: 'eadheader/eadid' },
    eacCpf: ['control/recordId', 'cpfDescription/relations/relation/targetEntity/@valueURI'],
    ...{ dc: { identifier: 'recordId' }, dcterms: { identifier: 'recordId' } },
  },
  {
    field: 'control.title',
    ...{
      ead3: 'control/filedesc/titlestmt/titleproper',
      ead2002: 'eadheader/filedesc/titlestmt/titleproper',
    },
    ...NONE,
  },
  {
    field: 'control.subtitle',
    ...{
      ead3: 'control/filedesc/titlestmt/subtitle',
      ead2002: 'eadheader/filedesc/titlestmt/subtitle',
      ...NONE,
    },
  },
  {
    field: 'control.author',
    ...{ isadG: '3.7.1', dacs: '8.1', ead3: 'control/filedesc/titlestmt/author' },
    ...{ ead2002: 'eadheader/filedesc/titlestmt/author', ...NONE },
  },
  {
    field: 'control.edition',
    ...{
      ead3: 'control/filedesc/editionstmt/edition',
      ead2002: 'eadheader/filedesc/editionstmt/edition',
      ...NONE,
    },
  },
  {
    field: 'control.publisher',
    ...{ ead3: 'control/filedesc/publicationstmt/publisher' },
    ...{ ead2002: 'eadheader/filedesc/publicationstmt/publisher', ...NONE },
  },
  {
    field: 'control.publicationDate',
    ...{ ead3: 'control/filedesc/publicationstmt/date' },
    ...{
      ead2002: ['eadheader/filedesc/publicationstmt/date', 'eadheader/filedesc/publicationstmt/date/@normal'],
      ...NONE,
    },
  },
  {
    field: 'control.publisherAddress[]',
    ...{ ead3: 'control/filedesc/publicationstmt/address/addressline' },
    ...{ ead2002: 'eadheader/filedesc/publicationstmt/address/addressline', ...NONE },
  },
  {
    field: 'control.maintenanceStatus',
    ...{ ead3: 'control/maintenancestatus/@value', ead2002: NO_PLACE },
    ...{ eacCpf: 'control/@maintenanceStatus', ...NO_DC },
  },
  {
    field: 'control.publicationStatus',
    ...{ ead3: 'control/publicationstatus/@value', ead2002: 'eadheader/@findaidstatus' },
    ...{ eacCpf: 'control/@publicationStatus', ...NO_DC },
  },
  {
    field: 'control.maintenanceAgency.name',
    ...{ dacs: '8.1', ead3: 'control/maintenanceagency/agencyname', ead2002: EAD2002_NOTE },
    ...{ eacCpf: 'control/maintenanceAgency/agencyName', ...NO_DC },
  },
  {
    field: 'control.maintenanceAgency.isil',
    ...{
      ead3: 'control/maintenanceagency/agencycode',
      ead2002: ['eadheader/eadid/@mainagencycode', EAD2002_NOTE],
    },
    ...{ eacCpf: 'control/maintenanceAgency/agencyCode', ...NO_DC },
  },
  {
    field: 'control.maintenanceAgency.country',
    ...{ ead3: 'control/maintenanceagency/@countrycode', ead2002: 'eadheader/eadid/@countrycode' },
    ...{ eacCpf: 'control/maintenanceAgency/@countryCode', ...NO_DC },
  },
  {
    field: 'control.maintenanceAgency.address[]',
    ...{ ead3: 'control/maintenanceagency/descriptivenote/p', ead2002: EAD2002_NOTE },
    ...{ eacCpf: 'control/maintenanceAgency/descriptiveNote/p', ...NO_DC },
  },
  {
    field: 'control.languages[].code',
    ...{ ead3: 'control/languagedeclaration/language/@langcode' },
    ...{ ead2002: 'eadheader/profiledesc/langusage/language/@langcode' },
    ...{ eacCpf: 'control/languageDeclaration/@languageCode', ...NO_DC },
  },
  {
    field: 'control.languages[].name',
    ...{ ead3: 'control/languagedeclaration/language' },
    ...{ ead2002: 'eadheader/profiledesc/langusage/language', ...NONE },
  },
  {
    field: 'control.languages[].script.code',
    ...{ ead3: 'control/languagedeclaration/script/@scriptcode' },
    ...{ ead2002: 'eadheader/profiledesc/langusage/language/@scriptcode' },
    ...{ eacCpf: 'control/languageDeclaration/@scriptCode', ...NO_DC },
  },
  {
    field: 'control.languages[].script.name',
    ...{ ead3: 'control/languagedeclaration/script', ead2002: NO_PLACE, ...NONE },
  },
  {
    field: 'control.conventions[].citation',
    ...{ isadG: '3.7.2', dacs: '8.1', ead3: 'control/conventiondeclaration/citation' },
    ...{
      ead2002: 'eadheader/profiledesc/descrules',
      eacCpf: 'control/conventionDeclaration/reference',
      ...NO_DC,
    },
  },
  {
    field: 'control.conventions[].abbreviation',
    ...{ isadG: '3.7.2', dacs: '8.1', ead3: 'control/conventiondeclaration/abbr' },
    ...{
      ead2002: 'eadheader/profiledesc/descrules/abbr',
      eacCpf: 'control/conventionDeclaration/shortCode',
      ...NO_DC,
    },
  },
  {
    field: 'control.rights[].citation',
    ...{ dacs: '8.2', ead3: 'control/rightsdeclaration/citation' },
    ...{
      ead2002: ['eadheader/filedesc/publicationstmt/p', 'eadheader/filedesc/publicationstmt/p/extref'],
      eacCpf: 'control/rightsDeclaration/reference',
      ...NO_DC,
    },
  },
  {
    field: 'control.rights[].address',
    ...{ dacs: '8.2', ead3: 'control/rightsdeclaration/citation/@href' },
    ead2002: 'eadheader/filedesc/publicationstmt/p/extref/@xlink:href',
    eacCpf: ['control/rightsDeclaration/reference/@href', 'control/rightsDeclaration/descriptiveNote/p'],
    ...NO_DC,
  },
  {
    field: 'control.rights[].statement',
    ...{ dacs: '8.2', ead3: 'control/rightsdeclaration/descriptivenote/p' },
    ...{ ead2002: 'eadheader/filedesc/publicationstmt/p' },
    ...{ eacCpf: 'control/rightsDeclaration/descriptiveNote/p', ...NO_DC },
  },
  {
    field: 'control.sources[]',
    ...{ isadG: '3.7.1', dacs: '8.1', ead3: 'control/sources/source/sourceentry', ead2002: EAD2002_NOTE },
    ...{ eacCpf: 'control/sources/source/reference', ...NO_DC },
  },
  {
    field: 'control.history[].type',
    ...{ ead3: 'control/maintenancehistory/maintenanceevent/eventtype/@value', ead2002: EAD2002_EVENT },
    ...{ eacCpf: 'control/maintenanceHistory/maintenanceEvent/@maintenanceEventType', ...NO_DC },
  },
  {
    field: 'control.history[].date',
    ...{ isadG: '3.7.3', dacs: '8.1' },
    ead3: [
      'control/maintenancehistory/maintenanceevent/eventdatetime',
      'control/maintenancehistory/maintenanceevent/eventdatetime/@standarddatetime',
    ],
    ead2002: [...EAD2002_DATES, ...EAD2002_DATES.map((path) => `${path}/@normal`)],
    eacCpf: [
      'control/maintenanceHistory/maintenanceEvent/eventDateTime',
      'control/maintenanceHistory/maintenanceEvent/eventDateTime/@standardDateTime',
    ],
    ...NO_DC,
  },
  {
    field: 'control.history[].agent',
    ...{ dacs: '8.1', ead3: 'control/maintenancehistory/maintenanceevent/agent' },
    ...{ ead2002: EAD2002_EVENT },
    ...{ eacCpf: 'control/maintenanceHistory/maintenanceEvent/agent', ...NO_DC },
  },
  {
    field: 'control.history[].agentType',
    ...{ ead3: 'control/maintenancehistory/maintenanceevent/agenttype/@value', ead2002: EAD2002_EVENT },
    ...{ eacCpf: 'control/maintenanceHistory/maintenanceEvent/agent/@agentType', ...NO_DC },
  },
  {
    field: 'control.history[].description',
    ...{ ead3: 'control/maintenancehistory/maintenanceevent/eventdescription' },
    ...{ ead2002: EAD2002_EVENT },
    ...{ eacCpf: 'control/maintenanceHistory/maintenanceEvent/eventDescription', ...NO_DC },
  },
];
