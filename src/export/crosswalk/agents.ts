import { NO_PLACE, type Row, WITHIN } from './row.ts';

const MAKERS = 'archdesc/did/origination/persname|famname|corpname';
const OTHERS = 'archdesc/controlaccess/persname|famname|corpname';
const NAMES = [MAKERS, OTHERS];
const below = (step: string) => NAMES.map((path) => `${path}/${step}`);
const HEAD = 'archdesc/bioghist/bioghist/head';
const NAME = 'cpfDescription/identity/nameEntry/part';
/** The roles stand in a sentence about the relation to the collection. */
const RELATION = 'cpfDescription/relations/relation';

/** In Dublin Core a name is all that is told of an agent: the one-to-one principle. */
const NAME_ONLY = { creator: WITHIN, contributor: WITHIN, subject: WITHIN, rights: WITHIN } as const;
const NAME_ONLY_IN_TERMS = {
  creator: WITHIN,
  contributor: WITHIN,
  subject: WITHIN,
  rightsHolder: WITHIN,
} as const;

/** The people, families and corporate bodies, and what points to them: ISAD(G) 3.2.1, DACS 2.6; ISAAR(CPF). */
export const AGENTS: readonly Row[] = [
  {
    field: 'component.creators[].agent',
    ...{ isadG: '3.2.1', dacs: '2.6', ead3: MAKERS, ead2002: MAKERS },
    eacCpf: `${RELATION}/relationType`,
    ...{ dc: { creator: 'creators' }, dcterms: { creator: 'creators' } },
  },
  {
    field: 'component.creators[].role',
    ...{ ead3: `${MAKERS}/@relator`, ead2002: `${MAKERS}/@role` },
    ...{ eacCpf: `${RELATION}/descriptiveNote/p`, dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'component.people[].agent',
    ...{ ead3: OTHERS, ead2002: OTHERS, eacCpf: `${RELATION}/relationType` },
    dc: { contributor: 'contributors', subject: 'namesAsSubjects', rights: 'rightsHoldersInWords' },
    dcterms: { contributor: 'contributors', subject: 'namesAsSubjects', rightsHolder: 'rightsHolders' },
  },
  {
    // It decides which element the name goes to, and is not told itself.
    field: 'component.people[].role',
    ...{ ead3: `${OTHERS}/@relator`, ead2002: `${OTHERS}/@role` },
    ...{
      eacCpf: `${RELATION}/descriptiveNote/p`,
      dc: { contributor: WITHIN, subject: WITHIN, rights: WITHIN },
      dcterms: { contributor: WITHIN, subject: WITHIN, rightsHolder: WITHIN },
    },
  },
  {
    field: 'agent.id',
    ...{
      ead3: NO_PLACE,
      ead2002: NO_PLACE,
      eacCpf: ['control/recordId', `${RELATION}/targetEntity/@valueURI`],
      dc: NO_PLACE,
      dcterms: NO_PLACE,
    },
  },
  {
    field: 'agent.type',
    ...{ ead3: NAMES, ead2002: NAMES, eacCpf: 'cpfDescription/identity/entityType/@value' },
    ...{ dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'agent.authorizedForm',
    ...{ isadG: '3.2.1', dacs: '2.6', ead3: [...below('part'), HEAD], ead2002: [...NAMES, HEAD] },
    ...{ eacCpf: [NAME, `${RELATION}/targetEntity/part`], dc: NAME_ONLY, dcterms: NAME_ONLY_IN_TERMS },
  },
  {
    // Where there is an authorized form, that one is told in its place, save in EAC-CPF.
    field: 'agent.name',
    ...{ isadG: '3.2.1', dacs: '2.6', ead3: [...below('part'), HEAD], ead2002: [...NAMES, HEAD] },
    ...{ eacCpf: [NAME, `${RELATION}/targetEntity/part`], dc: NAME_ONLY, dcterms: NAME_ONLY_IN_TERMS },
  },
  {
    field: 'agent.nameParts[].type',
    ...{ ead3: NO_PLACE, ead2002: NO_PLACE, eacCpf: `${NAME}/@localType`, dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'agent.nameParts[].text',
    ...{ ead3: NO_PLACE, ead2002: NO_PLACE, eacCpf: NAME, dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'agent.variants[]',
    ...{ ead3: NO_PLACE, ead2002: NO_PLACE, eacCpf: NAME, dc: NO_PLACE, dcterms: NO_PLACE },
  },
  ...(['birth', 'death'] as const).map((field, at): Row => {
    const end = `cpfDescription/description/existDates/dateRange/${at === 0 ? 'fromDate' : 'toDate'}`;
    return {
      field: `agent.${field}`,
      ...{ ead3: NO_PLACE, ead2002: NO_PLACE },
      eacCpf: [end, `${end}/@standardDate|@notBefore|@notAfter|@certainty`],
      ...{ dc: NO_PLACE, dcterms: NO_PLACE },
    };
  }),
  {
    field: 'agent.places[].name',
    ...{ ead3: NO_PLACE, ead2002: NO_PLACE, eacCpf: 'cpfDescription/description/places/place/placeName' },
    ...{ dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'agent.places[].role',
    ...{ ead3: NO_PLACE, ead2002: NO_PLACE, eacCpf: 'cpfDescription/description/places/place/placeRole' },
    ...{ dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'agent.occupations[]',
    ...{
      ead3: NO_PLACE,
      ead2002: NO_PLACE,
      eacCpf: 'cpfDescription/description/occupations/occupation/term',
    },
    ...{ dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'agent.relations[].agent',
    ...{ ead3: NO_PLACE, ead2002: NO_PLACE, eacCpf: `${RELATION}/targetEntity/@valueURI` },
    ...{ dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'agent.relations[].as',
    ...{
      ead3: NO_PLACE,
      ead2002: NO_PLACE,
      eacCpf: `${RELATION}/targetRole`,
      dc: NO_PLACE,
      dcterms: NO_PLACE,
    },
  },
  {
    field: 'agent.history',
    ...{ isadG: '3.2.2', dacs: '2.7', ead3: 'archdesc/bioghist/bioghist/p' },
    ...{ ead2002: 'archdesc/bioghist/bioghist/p', eacCpf: 'cpfDescription/description/biogHist/p' },
    ...{ dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'agent.source',
    ...{ ead3: below('@source'), ead2002: below('@source') },
    eacCpf: [
      'cpfDescription/identity/nameEntry/@vocabularySource',
      'cpfDescription/identity/identityId/@vocabularySource',
    ],
    ...{ dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'agent.identifier',
    ...{ ead3: below('@identifier'), ead2002: below('@authfilenumber') },
    eacCpf: ['cpfDescription/identity/identityId', 'cpfDescription/identity/identityId/@valueURI'],
    ...{ dc: NO_PLACE, dcterms: NO_PLACE },
  },
];
