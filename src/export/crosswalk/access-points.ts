import { NO_PLACE, type Row, WITHIN } from './row.ts';

/** Access points other than agents; EAD gathers them in `controlaccess`. ISAD(G) and DACS count none as an element. */
export const ACCESS_POINTS: readonly Row[] = [
  {
    field: 'component.accessPoints[].term',
    when: { type: 'subject' },
    ...{
      ead3: 'archdesc/controlaccess/subject/part',
      ead2002: 'archdesc/controlaccess/subject',
      eacCpf: NO_PLACE,
    },
    ...{ dc: 'subject', dcterms: { subject: 'subjects' } },
  },
  {
    field: 'component.accessPoints[].term',
    when: { type: 'place' },
    ...{
      ead3: 'archdesc/controlaccess/geogname/part',
      ead2002: 'archdesc/controlaccess/geogname',
      eacCpf: NO_PLACE,
    },
    ...{ dc: 'coverage', dcterms: { spatial: 'places' } },
  },
  {
    field: 'component.accessPoints[].term',
    when: { type: 'genre' },
    ...{
      ead3: 'archdesc/controlaccess/genreform/part',
      ead2002: 'archdesc/controlaccess/genreform',
      eacCpf: NO_PLACE,
    },
    ...{ dc: 'type', dcterms: 'type' },
  },
  {
    field: 'component.accessPoints[].term',
    when: { type: 'occupation' },
    ...{
      ead3: 'archdesc/controlaccess/occupation/part',
      ead2002: 'archdesc/controlaccess/occupation',
      eacCpf: NO_PLACE,
    },
    ...{ dc: 'subject', dcterms: 'subject' },
  },
  {
    field: 'component.accessPoints[].term',
    when: { type: 'function' },
    ...{
      ead3: 'archdesc/controlaccess/function/part',
      ead2002: 'archdesc/controlaccess/function',
      eacCpf: NO_PLACE,
    },
    ...{ dc: 'subject', dcterms: 'subject' },
  },
  {
    field: 'component.accessPoints[].term',
    when: { type: 'title' },
    ...{
      ead3: 'archdesc/controlaccess/title/part',
      ead2002: 'archdesc/controlaccess/title',
      eacCpf: NO_PLACE,
    },
    ...{ dc: 'subject', dcterms: 'subject' },
  },
  {
    field: 'component.accessPoints[].type',
    ead3: 'archdesc/controlaccess/subject|geogname|genreform|occupation|function|title',
    ead2002: 'archdesc/controlaccess/subject|geogname|genreform|occupation|function|title',
    eacCpf: NO_PLACE,
    dc: { subject: WITHIN, coverage: WITHIN, type: WITHIN },
    dcterms: { subject: WITHIN, spatial: WITHIN, type: WITHIN },
  },
  {
    // In DCMI terms as the encoding scheme of the value, where it is a vocabulary that has one.
    field: 'component.accessPoints[].source',
    ead3: 'archdesc/controlaccess/subject|geogname|genreform|occupation|function|title/@source',
    ead2002: 'archdesc/controlaccess/subject|geogname|genreform|occupation|function|title/@source',
    ...{ eacCpf: NO_PLACE, dc: NO_PLACE, dcterms: { subject: WITHIN, spatial: WITHIN } },
  },
  {
    field: 'component.accessPoints[].identifier',
    ead3: 'archdesc/controlaccess/subject|geogname|genreform|occupation|function|title/@identifier',
    ead2002: 'archdesc/controlaccess/subject|geogname|genreform|occupation|function|title/@authfilenumber',
    ...{ eacCpf: NO_PLACE, dc: NO_PLACE, dcterms: NO_PLACE },
  },
];
