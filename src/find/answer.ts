import type { Entry } from './entry.ts';
import { matchTyped } from './match.ts';
import type { Index } from './open-index.ts';
import type { Proposal } from './proposals.ts';
import type { Question, Unit } from './question.ts';
import { type Asked, rank } from './rank.ts';
import { type Reason, reasonsFor } from './reasons.ts';
import { codeTerm } from './special-terms.ts';

/** A thing that was found. */
export interface Hit extends Entry {
  /** Everybody it was made by or is about. */
  persons: readonly string[];
  reasons: readonly Reason[];
  /** What was asked for and is not there. */
  lacks: readonly string[];
}

export interface Answer {
  /** How many things were found, shown or not. */
  found: number;
  /** The best of them, the best first. */
  hits: readonly Hit[];
  /** Where nothing was found. */
  proposals: readonly Proposal[];
  /** Where nothing was found: how many things there would be without the filters. */
  withoutFilters?: number;
}

/** Where fewer things have the words as they were typed, slips are forgiven. */
const FEW = 10;

/**
 * Answers a question from an index: the things that have all of what was asked for, each word as it was typed; where
 * these are few, also with slips; where there are none, those that have most of it, if at least half.
 * @param most how many things to tell of
 * @throws IndexBroken
 */
export async function answer(index: Index, question: Question, most: number): Promise<Answer> {
  const { units: typed, ...filters } = question;
  const units = resolved(index, typed);
  const passes =
    Object.keys(filters).length === 0 ? undefined : (await import('./filters.ts')).passing(index, filters);
  const needed = units.filter(({ optional }) => !optional).length;
  let asked: Asked[] = units.map((unit) => ({ unit, match: matchTyped(index, unit) }));
  let ranked = rank(index, asked, passes, needed, most);
  if (ranked.found < FEW && units.length > 0) {
    const { matchWithSlips } = await import('./match-with-slips.ts');
    asked = asked.map(({ unit, match }) => ({ unit, match: matchWithSlips(index, unit, match) }));
    ranked = rank(index, asked, passes, needed, most);
    for (let least = needed - 1; ranked.found === 0 && least > 0 && least * 2 >= needed; least--)
      ranked = rank(index, asked, passes, least, most);
  }
  const { found, best } = ranked;
  const hits = best.map((thing) => hitOf(index, thing, asked));
  if (found > 0) return { found, hits, proposals: [] };
  const { proposalsFor } = await import('./proposals.ts');
  const unknown = asked.flatMap(({ unit, match: { having } }) => (having === 0 ? [unit] : []));
  const without = passes === undefined ? 0 : (await answer(index, { units: typed }, 0)).found;
  return {
    found: 0,
    hits,
    proposals: proposalsFor(index, unknown),
    ...(without > 0 && typed.length > 0 && { withoutFilters: without }),
  };
}

/** Units with what may be a code taken for one or not. */
function resolved(index: Index, units: readonly Unit[]): Unit[] {
  return units.flatMap((unit) => {
    const { code, insteadOf } = unit;
    if (insteadOf === undefined || code === undefined) return [unit];
    return index.terms.find(codeTerm(code)) === undefined ? insteadOf : [unit];
  });
}

function hitOf(index: Index, thing: number, asked: readonly Asked[]): Hit {
  const entry = index.entry(thing);
  const met = asked.filter(({ match }) => match.strength[thing] !== 0);
  const lacking = asked.filter((one) => !met.includes(one) && !one.unit.optional);
  const all = new Set([...entry.creators, ...entry.people, ...entry.mentioned]);
  const names = new Map([...all].map((person) => [person, index.names(person)]));
  return {
    ...entry,
    persons: [...new Set([...entry.creators, ...entry.people])].map((person) => names.get(person)?.[0] ?? ''),
    reasons: reasonsFor(
      entry,
      names,
      met.map(({ unit, match: { words } }) => ({ unit, words })),
    ),
    lacks: lacking.map(({ unit }) => unit.typed),
  };
}
