import type { AgentType } from '../catalogue/agent.ts';
import { isOrganisation } from '../catalogue/organisation-words.ts';

/** What a name that stands in the list alone most likely names. @param name in small letters */
export function typeOf(name: string): AgentType {
  if (/(?:^| )family$/.test(name)) return 'family';
  return isOrganisation(name) ? 'corporateBody' : 'person';
}
