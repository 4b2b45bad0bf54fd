/**
 * Where the words of a thing stand, and how much it says for a thing that a word stands there: of ten. From the
 * weightiest down; the place in this table is the number that the index keeps, so a change needs a new `FORMAT`.
 * The weights are our own, held in place by the forty questions in tests/find.
 */
export const FIELDS = [
  { name: 'title', weight: 10 },
  { name: 'kind', weight: 7 },
  /** Every form of the name of whoever made it. */
  { name: 'creators', weight: 7 },
  /** Every form of the names of the people it concerns. */
  { name: 'people', weight: 7 },
  { name: 'places', weight: 6 },
  { name: 'occasion', weight: 6 },
  { name: 'dates', weight: 6 },
  { name: 'description', weight: 4 },
  /** Every form of the names of people met in a text ("the will of Grandfather Quill"). */
  { name: 'mentioned', weight: 3.5 },
  { name: 'note', weight: 3 },
  { name: 'group', weight: 3 },
  { name: 'condition', weight: 2 },
  { name: 'size', weight: 2 },
  { name: 'language', weight: 2 },
  { name: 'other', weight: 2 },
] as const;

export type FieldName = (typeof FIELDS)[number]['name'];

export const FIELD: Readonly<Record<FieldName, number>> = Object.fromEntries(
  FIELDS.map(({ name }, place) => [name, place]),
) as Record<FieldName, number>;

/** For each field from 0 to 1, in the order of the table. */
export const WEIGHTS: readonly number[] = FIELDS.map(({ weight }) => weight / 10);
