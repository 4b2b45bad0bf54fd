import type { Agent } from '../catalogue/agent.ts';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import { fold } from '../catalogue/fold.ts';
import { once } from '../catalogue/once.ts';

/** A function from a name as the list writes it to the person, family or corporate body that is meant. */
export function agentsByName({ people }: FindingAid): (name: string) => Agent | undefined {
  const known = new Map<string, Agent>();
  for (const agent of people) {
    const inverted = agent.nameParts?.map(({ text }) => text).join(', ');
    for (const name of [agent.name, ...(agent.variants ?? []), agent.authorizedForm, inverted]) {
      if (name !== undefined && !known.has(fold(name))) known.set(fold(name), agent);
    }
  }
  return once((name) => known.get(fold(name)));
}
