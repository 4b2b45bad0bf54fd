import type { AgentType } from '../catalogue/agent.ts';

/**
 * Words that only organisations have in their names; a name in the list with one of them is not a person's.
 * Common practice.
 */
const ORGANISATION_WORDS = [
  'association',
  'bank',
  'bros',
  'church',
  'club',
  'co',
  'college',
  'committee',
  'company',
  'council',
  'gmbh',
  'hospital',
  'inc',
  'ltd',
  'ministry',
  'museum',
  'newspaper',
  'office',
  'railway',
  'school',
  'society',
  'sons',
  'studio',
  'union',
  'university',
];

const ORGANISATION = new RegExp(`(?:^|[^\\p{L}])(?:${ORGANISATION_WORDS.join('|')})(?:$|[^\\p{L}])`, 'u');

/** What a name that stands in the list alone most likely names. @param name in small letters */
export function typeOf(name: string): AgentType {
  if (/(?:^| )family$/.test(name)) return 'family';
  return ORGANISATION.test(name) ? 'corporateBody' : 'person';
}
