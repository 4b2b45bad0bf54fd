import type { Agent } from '../../catalogue/agent.ts';

/** What makes a record worth writing: a heading, taken apart or not, is still only a name. */
const MORE_THAN_A_NAME = [
  'birth',
  'death',
  'variants',
  'places',
  'occupations',
  'relations',
  'history',
  'identifier',
] as const satisfies readonly (keyof Agent)[];

/** Whether more is known of an agent than a name. */
export function hasRecord(agent: Agent): boolean {
  return MORE_THAN_A_NAME.some((field) => {
    const value = agent[field];
    return value !== undefined && value.length > 0;
  });
}
