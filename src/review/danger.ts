import { addTo } from '../catalogue/add-to.ts';
import type { Finding } from '../catalogue/finding.ts';
import type { Thing } from '../catalogue/thing.ts';
import { finderOfHazards } from './danger-found.ts';
import { HAZARDS, type Hazard, type HazardName } from './danger-hazards.ts';
import { DANGER_WORDS, type DangerWord } from './danger-words.ts';
import type { Rules } from './index.ts';
import { sayThings } from './said-together.ts';

interface Hit {
  thing: Thing;
  column: string;
}

/** What can hurt somebody or decays, by kind and date and by the words of a table. */
export function dangerRules(words: readonly DangerWord[]): Rules {
  const hazardsOf = finderOfHazards(words);
  return ({ things }) => {
    const hits = new Map<HazardName, Hit[]>();
    for (const thing of things) {
      for (const [name, column] of hazardsOf(thing)) {
        const hit = { thing, column };
        addTo(hits, name, hit);
      }
    }
    return HAZARDS.flatMap((hazard) => findingsOn(hazard, hits.get(hazard.name) ?? []));
  };
}

/**
 * What can hurt somebody or decays, for each row of the list that has any of it; the most urgent first.
 * @param words the table of words, with those of `collection.yaml`
 */
export function hazardsByRow(
  things: readonly Thing[],
  words: readonly DangerWord[] = DANGER_WORDS,
): ReadonlyMap<number, HazardName[]> {
  const hazardsOf = finderOfHazards(words);
  return new Map(
    things.flatMap((thing) => {
      const found = hazardsOf(thing);
      if (found.size === 0) return [];
      return [[thing.row, HAZARDS.map(({ name }) => name).filter((name) => found.has(name))] as const];
    }),
  );
}

function findingsOn(hazard: Hazard, hits: readonly Hit[]): Finding[] {
  const together = hazard.alone === true ? hits.map((hit) => [hit]) : [hits];
  return together.flatMap((those): Finding[] => {
    const [first] = those;
    if (first === undefined) return [];
    return [
      {
        rule: `danger.${hazard.name}`,
        weight: 'caution',
        place: { file: 'list.csv', row: first.thing.row, column: first.column },
        found: `${hazard.says}: ${sayThings(those.map(({ thing }) => thing))}. ${hazard.because}`,
        advice: hazard.advice,
        source: hazard.source,
      },
    ];
  });
}
