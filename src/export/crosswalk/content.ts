import { NO_PLACE, type Row } from './row.ts';

/**
 * Context, content and structure: ISAD(G) 3.2 and 3.3. The history of a maker describes the maker, and a record of
 * Dublin Core one resource only (the one-to-one principle), so it has no place there.
 */
export const CONTENT: readonly Row[] = [
  {
    field: 'component.biographicalHistory',
    ...{ isadG: '3.2.2', dacs: '2.7' },
    ...{ ead3: 'archdesc/bioghist/p', ead2002: 'archdesc/bioghist/p', eacCpf: NO_PLACE },
    ...{ dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'component.custodialHistory',
    ...{ isadG: '3.2.3', dacs: '5.1' },
    ...{ ead3: 'archdesc/custodhist/p', ead2002: 'archdesc/custodhist/p', eacCpf: NO_PLACE },
    ...{ dc: NO_PLACE, dcterms: 'provenance' },
  },
  {
    field: 'component.acquisition',
    ...{ isadG: '3.2.4', dacs: '5.2' },
    ...{ ead3: 'archdesc/acqinfo/p', ead2002: 'archdesc/acqinfo/p', eacCpf: NO_PLACE },
    ...{ dc: NO_PLACE, dcterms: 'provenance' },
  },
  {
    field: 'component.scopeAndContent',
    ...{ isadG: '3.3.1', dacs: '3.1' },
    ...{ ead3: 'archdesc/scopecontent/p', ead2002: 'archdesc/scopecontent/p', eacCpf: NO_PLACE },
    ...{ dc: 'description', dcterms: 'description' },
  },
  {
    field: 'component.appraisal',
    ...{ isadG: '3.3.2', dacs: '5.3' },
    ...{ ead3: 'archdesc/appraisal/p', ead2002: 'archdesc/appraisal/p', eacCpf: NO_PLACE },
    ...{ dc: NO_PLACE, dcterms: NO_PLACE },
  },
  {
    field: 'component.accruals',
    ...{ isadG: '3.3.3', dacs: '5.4' },
    ...{ ead3: 'archdesc/accruals/p', ead2002: 'archdesc/accruals/p', eacCpf: NO_PLACE },
    ...{ dc: NO_PLACE, dcterms: 'accrualPolicy' },
  },
  {
    field: 'component.arrangement',
    ...{ isadG: '3.3.4', dacs: '3.2' },
    ...{ ead3: 'archdesc/arrangement/p', ead2002: 'archdesc/arrangement/p', eacCpf: NO_PLACE },
    ...{ dc: 'description', dcterms: 'description' },
  },
  {
    field: 'component.children[]',
    ...{
      ead3: ['archdesc/dsc/c', 'archdesc/c'],
      ead2002: ['archdesc/dsc/c', 'archdesc/c'],
      eacCpf: NO_PLACE,
    },
    ...{ dc: { relation: 'parent' }, dcterms: { isPartOf: 'parent' } },
  },
];
