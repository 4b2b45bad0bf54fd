import { NO_PLACE, type Row, WITHIN } from './row.ts';

/** Allied materials, notes, and what the archivist says of the work: ISAD(G) 3.5 to 3.7.1, DACS chapters 6 to 8. */
export const ALLIED: readonly Row[] = [
  {
    field: 'component.originals',
    ...{ isadG: '3.5.1', dacs: '6.1' },
    ...{ ead3: 'archdesc/originalsloc/p', ead2002: 'archdesc/originalsloc/p', eacCpf: NO_PLACE },
    ...{ dc: 'source', dcterms: 'source' },
  },
  {
    field: 'component.copies',
    ...{ isadG: '3.5.2', dacs: '6.2' },
    ...{ ead3: 'archdesc/altformavail/p', ead2002: 'archdesc/altformavail/p', eacCpf: NO_PLACE },
    ...{ dc: 'relation', dcterms: 'hasFormat' },
  },
  {
    field: 'component.digitalCopies[].file',
    ...{ isadG: '3.5.2', dacs: '6.2' },
    ...{
      ead3: ['archdesc/did/dao/@href', 'archdesc/did/daoset/dao/@href'],
      ead2002: ['archdesc/did/dao/@xlink:href', 'archdesc/did/daogrp/daoloc/@xlink:href'],
      eacCpf: NO_PLACE,
    },
    ...{
      dc: { relation: 'copies', identifier: 'bornDigital' },
      dcterms: { hasFormat: 'copies', identifier: 'bornDigital' },
    },
  },
  {
    field: 'component.digitalCopies[].origin',

    ...{
      ead3: ['archdesc/did/dao/@daotype', 'archdesc/did/daoset/dao/@daotype'],
      ead2002: ['archdesc/did/dao/@xlink:role', 'archdesc/did/daogrp/daoloc/@xlink:role'],
      eacCpf: NO_PLACE,
    },
    ...{ dc: { relation: WITHIN }, dcterms: { hasFormat: WITHIN } },
  },
  {
    field: 'component.digitalCopies[].title',

    ...{
      ead3: ['archdesc/did/dao/@linktitle', 'archdesc/did/daoset/dao/@linktitle'],
      ead2002: ['archdesc/did/dao/@xlink:title', 'archdesc/did/daogrp/daoloc/@xlink:title'],
      eacCpf: NO_PLACE,
    },
    ...{ dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'component.digitalCopies[].note',

    ...{
      ead3: ['archdesc/did/dao/descriptivenote/p', 'archdesc/did/daoset/dao/descriptivenote/p'],
      ead2002: ['archdesc/did/dao/daodesc/p', 'archdesc/did/daogrp/daoloc/daodesc/p'],
      eacCpf: NO_PLACE,
    },
    ...{ dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'component.digitalCopies[].mediaType',

    ...{ ead3: NO_PLACE, ead2002: NO_PLACE, eacCpf: NO_PLACE },
    ...{ dc: { format: 'mediaTypes' }, dcterms: { format: 'mediaTypes' } },
  },
  {
    field: 'component.digitalCopies[].sha256',

    ...{ ead3: NO_PLACE, ead2002: NO_PLACE, eacCpf: NO_PLACE },
    ...{ dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'component.relatedMaterial',
    ...{ isadG: '3.5.3', dacs: '6.3' },
    ...{ ead3: 'archdesc/relatedmaterial/p', ead2002: 'archdesc/relatedmaterial/p', eacCpf: NO_PLACE },
    ...{ dc: 'relation', dcterms: 'relation' },
  },
  {
    field: 'component.separatedMaterial',
    ...{ isadG: '3.5.3', dacs: '6.3' },
    ...{ ead3: 'archdesc/separatedmaterial/p', ead2002: 'archdesc/separatedmaterial/p', eacCpf: NO_PLACE },
    ...{ dc: 'relation', dcterms: 'relation' },
  },
  {
    field: 'component.publications',
    ...{ isadG: '3.5.4', dacs: '6.4' },
    ...{ ead3: 'archdesc/bibliography/p', ead2002: 'archdesc/bibliography/p', eacCpf: NO_PLACE },
    ...{ dc: 'relation', dcterms: 'isReferencedBy' },
  },
  {
    field: 'component.generalNotes[].text',
    ...{ isadG: '3.6.1', dacs: '7.1' },
    ...{ ead3: 'archdesc/odd/p', ead2002: 'archdesc/odd/p', eacCpf: NO_PLACE },
    ...{ dc: { description: 'notes' }, dcterms: { description: 'notes' } },
  },
  {
    field: 'component.generalNotes[].head',
    ...{ isadG: '3.6.1', dacs: '7.1' },
    ...{ ead3: 'archdesc/odd/head', ead2002: 'archdesc/odd/head', eacCpf: NO_PLACE },
    ...{ dc: { description: WITHIN }, dcterms: { description: WITHIN } },
  },
  {
    field: 'component.preferredCitation',
    ...{ dacs: '7.1' },
    ...{ ead3: 'archdesc/prefercite/p', ead2002: 'archdesc/prefercite/p', eacCpf: NO_PLACE },
    ...{ dc: NO_PLACE, dcterms: 'bibliographicCitation' },
  },
  {
    field: 'component.processing',
    ...{ isadG: '3.7.1', dacs: '8.1' },
    ...{ ead3: 'archdesc/processinfo/p', ead2002: 'archdesc/processinfo/p', eacCpf: NO_PLACE },
    ...{ dc: NO_PLACE, dcterms: NO_PLACE },
  },
];
