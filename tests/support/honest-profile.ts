import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect } from 'vitest';
import { writeXml } from '../../src/xml/write.ts';
import type { Validator } from './ead3-schemas.ts';
import { mutated, mutations } from './mutate-tree.ts';
import { elementsOf, type Tree } from './xml-tree.ts';

/** Names that schemas declare, for mutants to use. */
export interface Names {
  elements: readonly string[];
  attributes: readonly string[];
}

/** The names of elements and attributes that some schema files declare. */
export function namesIn(files: readonly string[]): Names {
  const sources = files.map((file) => readFileSync(file, 'utf8'));
  const names = (kind: string) => {
    const declared = new RegExp(`<xs:${kind} [^>]*?name="([^"]+)"`, 'g');
    return [
      ...new Set(sources.flatMap((source) => [...source.matchAll(declared)].map(([, name = '']) => name))),
    ];
  };
  return { elements: names('element'), attributes: names('attribute') };
}

/** Documents, each with one or two changes that do change it. */
export function mutantsOf(
  documents: fc.Arbitrary<Tree>,
  { elements, attributes }: Names,
): fc.Arbitrary<string> {
  const write = (tree: Tree) => [...writeXml(tree)].join('');
  return fc
    .tuple(documents, mutations([...elements], [...attributes]))
    .map(([tree, changes]) => ({ before: write(tree), after: write(mutated(tree, changes)) }))
    .filter(({ before, after }) => before !== after)
    .map(({ after }) => after);
}

/**
 * The rule that makes a profile honest: whatever is valid by it is valid by the published schema.
 * @param least the share of mutants that must be valid by both, and by the published schema alone: the rule is worth
 * something only where mutants of every sort occur
 */
export function expectHonest(
  mutants: fc.Arbitrary<string>,
  byProfile: Validator,
  byPublished: Validator,
  least: { accepted: number; stricter: number },
): void {
  const count = { all: 0, accepted: 0, stricter: 0 };
  fc.assert(
    fc.property(mutants, (xml) => {
      const accepted = byProfile(xml).length === 0;
      const problems = byPublished(xml);
      count.all += 1;
      if (accepted) {
        count.accepted += 1;
        expect(problems).toEqual([]);
      } else if (problems.length === 0) count.stricter += 1;
    }),
    { numRuns: 1200 },
  );
  expect(count.accepted / count.all).toBeGreaterThan(least.accepted);
  expect(count.stricter / count.all).toBeGreaterThan(least.stricter);
  expect(1 - count.accepted / count.all - count.stricter / count.all).toBeGreaterThan(0.1);
}

/** Whether an element says something by attributes of its own, or by those of what is in it. */
export const attributesSpeak = (element: Tree): boolean =>
  Object.keys(element.attributes).length > 0 || elementsOf(element).some(attributesSpeak);
