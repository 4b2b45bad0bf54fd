import { NO_PLACE, type Row, WITHIN } from './row.ts';

/** Conditions of access and use: ISAD(G) 3.4, DACS chapter 4. */
export const CONDITIONS: readonly Row[] = [
  {
    field: 'component.accessConditions.statement',
    ...{ isadG: '3.4.1', dacs: '4.1' },
    ...{ ead3: 'archdesc/accessrestrict/p', ead2002: 'archdesc/accessrestrict/p', eacCpf: NO_PLACE },
    ...{ dc: { rights: 'access' }, dcterms: { accessRights: 'access' }, inherited: true },
  },
  {
    field: 'component.accessConditions.until',
    ...{ isadG: '3.4.1', dacs: '4.1' },
    ...{
      ead3: ['archdesc/accessrestrict/p/date', 'archdesc/accessrestrict/p/date/@normal'],
      ead2002: ['archdesc/accessrestrict/p/date', 'archdesc/accessrestrict/p/date/@normal'],
      eacCpf: NO_PLACE,
    },
    ...{ dc: { rights: WITHIN }, dcterms: { accessRights: WITHIN }, inherited: true },
  },
  {
    field: 'component.accessConditions.restricted',

    ...{
      ead3: 'archdesc/accessrestrict/@localtype',
      ead2002: 'archdesc/accessrestrict/@type',
      eacCpf: NO_PLACE,
    },
    // The copy of what is closed is not told; and what is said of the whole does not hold for a closed part.
    ...{
      dc: { format: WITHIN, identifier: WITHIN, relation: WITHIN },
      dcterms: { format: WITHIN, identifier: WITHIN, hasFormat: WITHIN },
    },
  },
  {
    field: 'component.legalStatus',
    ...{ isadG: '3.4.1', dacs: '4.1' },
    ...{ ead3: 'archdesc/legalstatus/p', ead2002: 'archdesc/accessrestrict/legalstatus', eacCpf: NO_PLACE },
    ...{ dc: 'rights', dcterms: 'rights', inherited: true },
  },
  {
    field: 'component.useConditions',
    ...{ isadG: '3.4.2', dacs: '4.4' },
    ...{ ead3: 'archdesc/userestrict/p', ead2002: 'archdesc/userestrict/p', eacCpf: NO_PLACE },
    ...{ dc: 'rights', dcterms: 'rights', inherited: true },
  },
  {
    field: 'component.languages[].code',
    ...{ isadG: '3.4.3', dacs: '4.5' },
    ...{
      ead3: [
        'archdesc/did/langmaterial/language/@langcode',
        'archdesc/did/langmaterial/languageset/language/@langcode',
      ],
      ead2002: 'archdesc/did/langmaterial/language/@langcode',
      eacCpf: NO_PLACE,
    },
    ...{ dc: 'language', dcterms: { language: 'languages' } },
  },
  {
    field: 'component.languages[].name',
    ...{ isadG: '3.4.3', dacs: '4.5' },
    ...{
      ead3: ['archdesc/did/langmaterial/language', 'archdesc/did/langmaterial/languageset/language'],
      ead2002: 'archdesc/did/langmaterial/language',
      eacCpf: NO_PLACE,
    },
    ...{ dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'component.languages[].script.code',
    ...{ isadG: '3.4.3', dacs: '4.5' },
    ...{
      ead3: 'archdesc/did/langmaterial/languageset/script/@scriptcode',
      ead2002: 'archdesc/did/langmaterial/language/@scriptcode',
      eacCpf: NO_PLACE,
    },
    ...{ dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'component.languages[].script.name',
    ...{ isadG: '3.4.3', dacs: '4.5' },
    ...{ ead3: 'archdesc/did/langmaterial/languageset/script', ead2002: NO_PLACE, eacCpf: NO_PLACE },
    ...{ dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'component.languageNote',
    ...{ isadG: '3.4.3', dacs: '4.5' },
    ...{
      ead3: 'archdesc/did/langmaterial/descriptivenote/p',
      ead2002: 'archdesc/did/langmaterial',
      eacCpf: NO_PLACE,
    },
    ...{ dc: 'description', dcterms: 'description' },
  },
  {
    field: 'component.physicalCharacteristics',
    ...{ isadG: '3.4.4', dacs: '4.2' },
    ...{ ead3: 'archdesc/phystech/p', ead2002: 'archdesc/phystech/p', eacCpf: NO_PLACE },
    ...{ dc: 'description', dcterms: 'description' },
  },
  {
    field: 'component.technicalRequirements',
    ...{ isadG: '3.4.4', dacs: '4.3' },
    ...{ ead3: 'archdesc/phystech/p', ead2002: 'archdesc/phystech/p', eacCpf: NO_PLACE },
    ...{ dc: 'description', dcterms: 'description' },
  },
  {
    field: 'component.otherFindingAids',
    ...{ isadG: '3.4.5', dacs: '4.6' },
    ...{ ead3: 'archdesc/otherfindaid/p', ead2002: 'archdesc/otherfindaid/p', eacCpf: NO_PLACE },
    ...{ dc: 'relation', dcterms: 'isReferencedBy' },
  },
  {
    field: 'component.containers[].type',
    ...{ dacs: '4.2' },
    ...{
      ead3: 'archdesc/did/container/@localtype',
      ead2002: 'archdesc/did/container/@type|@label',
      eacCpf: NO_PLACE,
    },
    ...{ dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'component.containers[].number',
    ...{ dacs: '4.2' },
    ...{ ead3: 'archdesc/did/container', ead2002: 'archdesc/did/container', eacCpf: NO_PLACE },
    ...{ dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'component.containers[].id',

    ...{ ead3: 'archdesc/did/container/@id', ead2002: 'archdesc/did/container/@id', eacCpf: NO_PLACE },
    ...{ dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'component.containers[].parent',

    ...{
      ead3: 'archdesc/did/container/@parent',
      ead2002: 'archdesc/did/container/@parent',
      eacCpf: NO_PLACE,
    },
    ...{ dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'component.physicalLocation',
    ...{ dacs: '4.2' },
    ...{ ead3: 'archdesc/did/physloc', ead2002: 'archdesc/did/physloc', eacCpf: NO_PLACE },
    ...{ dc: NO_PLACE, dcterms: NO_PLACE },
  },
];
