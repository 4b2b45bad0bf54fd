import { capitalised } from '../../catalogue/capitalised.ts';
import type { Container } from '../../catalogue/component.ts';
import { sayContainer } from '../../catalogue/say-container.ts';

/** A container that stands by itself, and those that stand in it. */
interface Shelved {
  outer: Container;
  inner: readonly Container[];
}

/** Containers as they stand in one another. A parent that is not among them is no parent. */
export function shelved(containers: readonly Container[]): Shelved[] {
  const ids = new Set(containers.map(({ id }) => id).filter((id) => id !== undefined));
  const isOuter = ({ id, parent }: Container) => parent === undefined || parent === id || !ids.has(parent);
  const outer = containers.filter(isOuter);
  // Containers that stand in one another in a ring have no outer one; then each stands by itself.
  if (outer.length === 0) return containers.map((one) => ({ outer: one, inner: [] }));
  return outer.map((one) => ({ outer: one, inner: within(one, containers, new Set([one])) }));
}

function within(one: Container, all: readonly Container[], seen: Set<Container>): Container[] {
  if (one.id === undefined) return [];
  return all.flatMap((other) => {
    if (other.parent !== one.id || seen.has(other)) return [];
    seen.add(other);
    return [other, ...within(other, all, seen)];
  });
}

/** Box 2, folder 5. */
export const sayShelved = ({ outer, inner }: Shelved): string => {
  const words = [outer, ...inner].map(sayContainer).join(', ');
  return capitalised(words);
};

/** A container by its kind and number, whichever unit names it. */
export const shelfKey = ({ type, number }: Container): string => `${type}\n${number}`;
