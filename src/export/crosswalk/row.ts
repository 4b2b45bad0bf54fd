import type { Conversion } from '../dublin-core/conversions.ts';
import type { DACS, ISAD_G } from './standards.ts';

/** What a row says of a format that has nowhere to put the field. */
export const NO_PLACE = 'no place';

/** What a row says of an element into whose value the field goes together with others: the unit of an extent. */
export const WITHIN = 'within';

/**
 * Where a field goes in an XML format: `archdesc/did/unittitle`, attributes as `@level`. Alternatives for one step
 * are parted by `|`. `archdesc` stands for itself and, further down, for every `c`; the root is left out.
 */
export type Places = typeof NO_PLACE | string | readonly string[];

/** The fifteen elements of simple Dublin Core, in the order of the Dublin Core Metadata Element Set, version 1.1. */
export const DC_ELEMENTS = [
  ...(['title', 'creator', 'subject', 'description', 'publisher', 'contributor', 'date', 'type'] as const),
  ...(['format', 'identifier', 'source', 'language', 'relation', 'coverage', 'rights'] as const),
] as const;

/** The DCMI terms that are written, in the order in which a record holds them: each after the element it refines. */
export const DCMI_TERMS = [
  ...(['title', 'creator', 'subject', 'description', 'abstract', 'publisher', 'contributor'] as const),
  ...(['created', 'type', 'format', 'extent', 'medium', 'identifier', 'bibliographicCitation'] as const),
  ...(['source', 'language', 'relation', 'isPartOf', 'hasFormat', 'isReferencedBy'] as const),
  ...(['spatial', 'temporal', 'rights', 'accessRights', 'rightsHolder', 'provenance'] as const),
  'accrualPolicy',
] as const;

export type DcElement = (typeof DC_ELEMENTS)[number];
export type DcmiTerm = (typeof DCMI_TERMS)[number];

/**
 * Where a field goes in Dublin Core: an element that takes it as it is, or elements each with the name of what makes
 * their values of it.
 */
export type Targets<Name extends string> =
  | typeof NO_PLACE
  | Name
  | Readonly<Partial<Record<Name, Conversion | typeof WITHIN>>>;

/** One element of the model, and its place in each standard and format. */
export interface Row {
  /**
   * Its path in the model. `component` is the collection and every unit in it, `agent` one of the people; `[]` is any
   * member of a list.
   */
  field: string;
  /** The row holds only where the object that has the field also has these values. */
  when?: Readonly<Record<string, string>>;
  /** Number in part 3 of ISAD(G), where it has one. */
  isadG?: keyof typeof ISAD_G;
  /** Number in part I of DACS, where it has one. */
  dacs?: keyof typeof DACS;
  ead3: Places;
  ead2002: Places;
  eacCpf: Places;
  dc: Targets<DcElement>;
  dcterms: Targets<DcmiTerm>;
  /** A unit that says nothing itself is told in Dublin Core with the value of the nearest unit above that does. */
  inherited?: true;
}

/** The elements of Dublin Core to which a row sends its field; none where there is no place. */
export function elementsOf<Name extends string>(targets: Targets<Name>): Name[] {
  if (targets === NO_PLACE) return [];
  return typeof targets === 'string' ? [targets] : (Object.keys(targets) as Name[]);
}
