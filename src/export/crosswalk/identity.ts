import { NO_PLACE, type Row, WITHIN } from './row.ts';

/** What identifies a unit: ISAD(G) 3.1, and DACS chapter 2 without the creators. */
export const IDENTITY: readonly Row[] = [
  {
    field: 'component.referenceCode',
    ...{ isadG: '3.1.1', dacs: '2.1', ead3: 'archdesc/did/unitid', ead2002: 'archdesc/did/unitid' },
    eacCpf: 'cpfDescription/relations/relation/targetEntity/part',
    dc: { identifier: 'referenceCode', relation: WITHIN },
    dcterms: { identifier: 'referenceCode', isPartOf: WITHIN },
  },
  {
    field: 'component.id',
    ...{ ead3: 'archdesc/@id', ead2002: 'archdesc/@id', eacCpf: NO_PLACE },
    dc: { identifier: 'idWithoutCode', relation: WITHIN },
    dcterms: { identifier: 'idWithoutCode', isPartOf: WITHIN },
  },
  {
    field: 'component.otherIdentifiers[].value',
    ...{ isadG: '3.1.1', dacs: '2.1', ead3: 'archdesc/did/unitid', ead2002: 'archdesc/did/unitid' },
    eacCpf: NO_PLACE,
    ...{ dc: { identifier: 'otherIdentifiers' }, dcterms: { identifier: 'otherIdentifiers' } },
  },
  {
    field: 'component.otherIdentifiers[].type',
    ...{ ead3: 'archdesc/did/unitid/@localtype', ead2002: 'archdesc/did/unitid/@type', eacCpf: NO_PLACE },
    ...{ dc: { identifier: WITHIN }, dcterms: { identifier: WITHIN } },
  },
  {
    field: 'component.title',
    ...{ isadG: '3.1.2', dacs: '2.3', ead3: 'archdesc/did/unittitle', ead2002: 'archdesc/did/unittitle' },
    eacCpf: 'cpfDescription/relations/relation/targetEntity/part',
    ...{ dc: 'title', dcterms: 'title' },
  },
  {
    field: 'component.dates[].edtf',
    ...{ isadG: '3.1.3', dacs: '2.4' },
    ead3: [
      'archdesc/did/unitdatestructured/@certainty',
      'archdesc/did/unitdatestructured/datesingle/@standarddate|@notbefore|@notafter',
      'archdesc/did/unitdatestructured/daterange/fromdate|todate',
      'archdesc/did/unitdatestructured/daterange/fromdate|todate/@standarddate|@notbefore|@notafter',
      'archdesc/did/unitdatestructured/dateset/datesingle',
      'archdesc/did/unitdatestructured/dateset/datesingle/@standarddate|@notbefore|@notafter',
      'archdesc/did/unitdatestructured/dateset/daterange/fromdate|todate',
      'archdesc/did/unitdatestructured/dateset/daterange/fromdate|todate/@standarddate|@notbefore|@notafter',
    ],
    ead2002: ['archdesc/did/unitdate/@normal', 'archdesc/did/unitdate/@certainty'],
    eacCpf: NO_PLACE,
    dc: { date: 'machineDates', coverage: WITHIN },
    dcterms: { created: 'machineCreated', temporal: 'temporal' },
  },
  {
    field: 'component.dates[].expression',
    ...{ isadG: '3.1.3', dacs: '2.4' },
    ead3: ['archdesc/did/unitdate', 'archdesc/did/unitdatestructured/datesingle'],
    ead2002: 'archdesc/did/unitdate',
    eacCpf: NO_PLACE,
    dc: { date: 'wordsOfDates', coverage: 'span' },
    dcterms: { created: 'wordsOfCreated', temporal: WITHIN },
  },
  {
    field: 'component.dates[].type',
    ...{ dacs: '2.4', ead3: 'archdesc/did/unitdate|unitdatestructured/@unitdatetype' },
    ...{ ead2002: 'archdesc/did/unitdate/@type', eacCpf: NO_PLACE },
    ...{ dc: { date: WITHIN, coverage: WITHIN }, dcterms: { created: WITHIN, temporal: WITHIN } },
  },
  {
    field: 'component.dates[].written',
    ...{ ead3: NO_PLACE, ead2002: NO_PLACE, eacCpf: NO_PLACE, dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'component.dates[].note',
    ...{ isadG: '3.6.1', dacs: '7.1', ead3: 'archdesc/did/didnote', ead2002: 'archdesc/did/note/p' },
    ...{ eacCpf: NO_PLACE, dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'component.level',
    ...{ isadG: '3.1.4', ead3: 'archdesc/@level', ead2002: 'archdesc/@level', eacCpf: NO_PLACE },
    ...{ dc: { type: 'dcmiType' }, dcterms: { type: 'dcmiType' } },
  },
  {
    field: 'component.otherLevel',
    ...{ isadG: '3.1.4', ead3: 'archdesc/@otherlevel', ead2002: 'archdesc/@otherlevel', eacCpf: NO_PLACE },
    ...{ dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'component.extents[].quantity',
    ...{ isadG: '3.1.5', dacs: '2.5', ead3: 'archdesc/did/physdescstructured/quantity' },
    ...{ ead2002: 'archdesc/did/physdesc/extent', eacCpf: NO_PLACE },
    ...{ dc: { format: 'extents' }, dcterms: { extent: 'extents' } },
  },
  {
    field: 'component.extents[].unit',
    ...{ isadG: '3.1.5', dacs: '2.5', ead3: 'archdesc/did/physdescstructured/unittype' },
    ...{ ead2002: 'archdesc/did/physdesc/extent', eacCpf: NO_PLACE },
    ...{ dc: { format: WITHIN }, dcterms: { extent: WITHIN } },
  },
  {
    field: 'component.extents[].approximate',
    ...{ dacs: '2.5', ead3: 'archdesc/did/physdescstructured/quantity/@approximate' },
    ...{ ead2002: 'archdesc/did/physdesc/extent', eacCpf: NO_PLACE },
    ...{ dc: { format: WITHIN }, dcterms: { extent: WITHIN } },
  },
  {
    field: 'component.extents[].dimensions',
    ...{ isadG: '3.1.5', dacs: '2.5', ead3: 'archdesc/did/physdescstructured/dimensions' },
    ...{ ead2002: 'archdesc/did/physdesc/dimensions', eacCpf: NO_PLACE },
    ...{ dc: { format: WITHIN }, dcterms: { extent: WITHIN } },
  },
  {
    field: 'component.extents[].facets[]',
    ...{ isadG: '3.1.5', dacs: '2.5', ead3: 'archdesc/did/physdescstructured/physfacet' },
    ...{ ead2002: 'archdesc/did/physdesc/physfacet', eacCpf: NO_PLACE, dc: 'format', dcterms: 'medium' },
  },
  {
    field: 'component.extents[].type',
    ...{ ead3: 'archdesc/did/physdescstructured/@physdescstructuredtype' },
    ...{ ead2002: 'archdesc/did/physdesc/extent/@type', eacCpf: NO_PLACE, dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'component.extents[].coverage',
    ...{ ead3: 'archdesc/did/physdescstructured/@coverage', ead2002: 'archdesc/did/physdesc/@label' },
    ...{ eacCpf: NO_PLACE, dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'component.physicalDescription',
    ...{ isadG: '3.1.5', dacs: '2.5', ead3: 'archdesc/did/physdesc', ead2002: 'archdesc/did/physdesc' },
    ...{ eacCpf: NO_PLACE, dc: 'format', dcterms: 'format' },
  },
  {
    field: 'component.abstract',
    ...{ isadG: '3.3.1', dacs: '3.1', ead3: 'archdesc/did/abstract', ead2002: 'archdesc/did/abstract' },
    ...{ eacCpf: NO_PLACE, dc: 'description', dcterms: 'abstract' },
  },
  {
    field: 'component.repository.name',
    ...{ dacs: '2.2', ead3: 'archdesc/did/repository/corpname/part' },
    ...{ ead2002: 'archdesc/did/repository/corpname', eacCpf: NO_PLACE },
    ...{ dc: 'publisher', dcterms: 'publisher', inherited: true },
  },
  {
    field: 'component.repository.address[]',
    ...{ dacs: '2.2', ead3: 'archdesc/did/repository/address/addressline' },
    ...{ ead2002: 'archdesc/did/repository/address/addressline' },
    ...{ eacCpf: NO_PLACE, dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'component.repository.country',
    ...{ isadG: '3.1.1', dacs: '2.1', ead3: 'archdesc/did/unitid/@countrycode' },
    ...{ ead2002: 'archdesc/did/unitid/@countrycode', eacCpf: NO_PLACE, dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'component.repository.isil',
    ...{ isadG: '3.1.1', dacs: '2.1', ead3: 'archdesc/did/unitid/@repositorycode' },
    ...{
      ead2002: ['archdesc/did/unitid/@repositorycode', 'archdesc/did/repository/corpname/@authfilenumber'],
      eacCpf: NO_PLACE,
      dc: NO_PLACE,
      dcterms: NO_PLACE,
    },
  },
];
