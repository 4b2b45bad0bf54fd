import { type Agent, agent as agentSchema } from '../catalogue/agent.ts';
import { fold } from '../catalogue/fold.ts';
import { plainWords } from '../review/plain-words.ts';
import { fieldChanges } from './field-changes.ts';
import { AGENT_FIELDS } from './field-names.ts';
import type { AgentName, Comparison } from './model.ts';
import { joinByKey, leftInA, leftInB, noPairs, type Pairs, soleByKey } from './pairs.ts';

const headingOf = ({ name, authorizedForm }: Agent): string => authorizedForm ?? name;

/**
 * The same person, family or corporate body on both sides: by name first, since an id may only be a place in a list;
 * then by the identifier in an authority file, by the id, by another form of the name.
 */
export function matchAgents(as: readonly Agent[], bs: readonly Agent[]): Pairs<Agent> {
  const pairs = noPairs<Agent>();
  const idsStay = !contradicted(as, bs);
  joinByKey(pairs, as, bs, ({ id, type, name }) => `${id}\n${type}\n${name}`);
  joinByKey(pairs, as, bs, ({ type, ...agent }) => `${type}\n${fold(headingOf(agent as Agent))}`);
  joinByKey(pairs, as, bs, ({ identifier, source }) => identifier && `${source ?? ''}\n${identifier}`);
  joinByKey(
    pairs,
    as,
    bs,
    ({ id }) => id,
    (a, b) => idsStay || shareWord(a, b),
  );
  joinByKey(pairs, as, bs, ({ type, name }) => `${type}\n${fold(name)}`);
  const variants = soleByKey(
    leftInB(pairs, bs).flatMap((b) => namesOf(b).map((name) => ({ b, name }))),
    ({ name }) => name,
  );
  for (const a of leftInA(pairs, as)) {
    const known = namesOf(a).map((name) => variants.get(name)?.b);
    const b = known.find((one) => one !== undefined);
    if (b !== undefined && b.type === a.type && pairs.inA(b) === undefined) pairs.join(a, b);
  }
  return pairs;
}

/** Whether somebody whose name is the same, and nobody else's, has another id: then an id says nothing. */
function contradicted(as: readonly Agent[], bs: readonly Agent[]): boolean {
  const keyOf = (agent: Agent) => `${agent.type}\n${fold(headingOf(agent))}`;
  const inB = soleByKey(bs, keyOf);
  return [...soleByKey(as, keyOf)].some(([key, a]) => {
    const b = inB.get(key);
    return a !== undefined && b !== undefined && a.id !== b.id;
  });
}

const namesOf = ({ name, variants = [] }: Agent): string[] => [...new Set([name, ...variants].map(fold))];

function shareWord(a: Agent, b: Agent): boolean {
  const words = new Set(plainWords(headingOf(a)).split(' '));
  return plainWords(headingOf(b))
    .split(' ')
    .some((word) => words.has(word));
}

/** What a link to an agent says, whichever id the agent has: for each side, a name for every id. */
export interface AgentNames {
  inA(id: string): string;
  inB(id: string): string;
  /** Whether each id means the same agent on both sides. */
  sameIds: boolean;
}

/** Whoever is on both sides has one name, that of the first: another name of the same agent changes no link. */
export function agentNames(as: readonly Agent[], bs: readonly Agent[], pairs: Pairs<Agent>): AgentNames {
  const named = new Map<Agent, string>();
  const used = new Set<string>();
  const give = (agent: Agent) => {
    // Two of one name are told apart by their ids.
    let name = headingOf(agent);
    for (let id = agent.id; used.has(name); id = `${id}'`) name = `${headingOf(agent)} (${id})`;
    used.add(name);
    named.set(agent, name);
  };
  as.forEach(give);
  for (const b of bs) {
    const a = pairs.inA(b);
    if (a === undefined) give(b);
    else named.set(b, named.get(a) ?? headingOf(b));
  }
  const ofA = new Map(as.map((agent) => [agent.id, named.get(agent)]));
  const ofB = new Map(bs.map((agent) => [agent.id, named.get(agent)]));
  return {
    inA: (id) => ofA.get(id) ?? id,
    inB: (id) => ofB.get(id) ?? id,
    sameIds: [...ofB].every(([id, name]) => !ofA.has(id) || ofA.get(id) === name),
  };
}

/** People who came, went, or of whom something else is said. */
export function compareAgents(
  as: readonly Agent[],
  bs: readonly Agent[],
  pairs: Pairs<Agent>,
  names: AgentNames,
): Comparison['people'] {
  const changed = as.flatMap((a) => {
    const b = pairs.inB(a);
    if (b === undefined) return [];
    const fields = fieldChanges(agentSchema, related(a, names.inA), related(b, names.inB), AGENT_FIELDS);
    return fields.length === 0 ? [] : [{ was: agentName(a), now: agentName(b), fields }];
  });
  return {
    added: leftInB(pairs, bs).map(agentName),
    removed: leftInA(pairs, as).map(agentName),
    changed,
  };
}

const related = ({ relations, ...agent }: Agent, nameOf: (id: string) => string) => ({
  ...agent,
  relations: relations?.map(({ agent: id, as }) => ({ name: nameOf(id), as })),
});

const agentName = (agent: Agent): AgentName => ({ id: agent.id, type: agent.type, name: headingOf(agent) });
