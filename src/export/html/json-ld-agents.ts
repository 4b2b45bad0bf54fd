import type { Agent } from '../../catalogue/agent.ts';
import { w3cDate } from '../../dates/index.ts';
import type { Context } from './context.ts';

/** Families are told as organisations: schema.org has nothing nearer (from memory). */
const TYPES: Readonly<Record<Agent['type'], string>> = {
  person: 'Person',
  family: 'Organization',
  corporateBody: 'Organization',
};

/** What the terms for beginning and end are called. */
const LIFE = {
  person: ['birthDate', 'deathDate'],
  family: ['foundingDate', 'dissolutionDate'],
  corporateBody: ['foundingDate', 'dissolutionDate'],
} as const;

/** A person, family or corporate body in terms of schema.org. Only exact dates are dates there. */
export function agentNode(agent: Agent, { register }: Context): object {
  const {
    type,
    name,
    authorizedForm,
    variants = [],
    birth,
    death,
    history,
    nameParts = [],
    identifier,
  } = agent;
  const [began, ended] = LIFE[type];
  const part = (which: 'surname' | 'forename') =>
    type === 'person' ? nameParts.find((one) => one.type === which)?.text : undefined;
  const others = [...new Set([...(authorizedForm === undefined ? [] : [authorizedForm]), ...variants])];
  const node: Record<string, unknown> = {
    '@id': `#${register.agents.get(agent.id)?.anchor ?? agent.id}`,
    '@type': TYPES[type],
    name,
    alternateName: others.length === 0 ? undefined : others,
    familyName: part('surname'),
    givenName: part('forename'),
    [began]: birth === undefined ? undefined : w3cDate(birth),
    [ended]: death === undefined ? undefined : w3cDate(death),
    jobTitle: type === 'person' ? agent.occupations : undefined,
    description: history,
    sameAs: identifier !== undefined && /^https?:\/\//i.test(identifier) ? identifier : undefined,
  };
  return Object.fromEntries(Object.entries(node).filter(([, value]) => value !== undefined));
}
