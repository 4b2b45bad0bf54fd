/** What `export` can write, in the order in which it is offered. */
export const FORMAT_NAMES = ['ead3', 'ead2002', 'dc', 'dcterms', 'eac-cpf', 'html', 'json', 'csv'] as const;

export type FormatName = (typeof FORMAT_NAMES)[number];
