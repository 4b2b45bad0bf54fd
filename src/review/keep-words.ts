/**
 * What an access cell says where a thing is not to be given away. Such words count wherever they stand in the cell, as
 * whole words, whatever comes behind: “family only until 2035” stays. Small letters without punctuation.
 * Source of all rows: common practice.
 */
export const KEEP_WORDS: readonly string[] = [
  'stays with the family',
  'stay with the family',
  'stays with our family',
  'stays in the family',
  'stay in the family',
  'stays with us',
  'stay with us',
  'stays here',
  'remains with the family',
  'remain with the family',
  'remains in the family',
  'kept by the family',
  'keep in the family',
  'we keep',
  'not to be given',
  'not to be handed over',
  'not to leave the family',
  'not to leave the house',
  'not for the archive',
  'not for giving',
  'do not give',
  'never give',
  'don t give',
];

/**
 * What says who may see a thing, and so that nobody else is to get it. Whoever writes this may mean less: that the archive
 * has it and keeps it closed. Source of all rows: common practice.
 */
export const FAMILY_ONLY_WORDS: readonly string[] = [
  'family only',
  'only family',
  'only the family',
  'only for family',
  'only for the family',
  'for us only',
  'only for us',
  'only us',
];
