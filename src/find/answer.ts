import type { Above, Entry } from './entry.ts';
import { matchTyped } from './match.ts';
import type { NotThere } from './not-there.ts';
import type { Index } from './open-index.ts';
import type { Proposal } from './proposals.ts';
import type { Question, Unit } from './question.ts';
import { type Asked, rank } from './rank.ts';
import { type Reason, reasonsFor } from './reasons.ts';
import { boxTerm, codeTerm, withinTerm } from './special-terms.ts';

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
  /** The folder or group whose reference code was asked for; the hits are then what is in it. */
  unit?: Above;
  /** The number of a box, where nothing but `box 3` was asked for, and there is one. */
  box?: string;
  /** The best of them, the best first. */
  hits: readonly Hit[];
  /** Where nothing was found. */
  proposals: readonly Proposal[];
  /** Where nothing was found: how many things there would be without the filters. */
  withoutFilters?: number;
  /** Where nothing was found: what the filters ask for and is nowhere. */
  notThere?: NotThere;
  /** Where nothing was found: no word was asked for, only filters. */
  wordless?: true;
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
  const unit = unitAsked(units, hits);
  const box = boxAsked(index, question);
  const meant = { ...(unit !== undefined && { unit }), ...(box !== undefined && { box }) };
  if (found > 0) return { found, ...meant, hits, proposals: [] };
  const { proposalsFor } = await import('./proposals.ts');
  const unknown = asked.flatMap(({ unit, match: { having } }) => (having === 0 ? [unit] : []));
  const without = passes === undefined ? 0 : (await answer(index, { units: typed }, 0)).found;
  const missing =
    passes === undefined ? undefined : (await import('./not-there.ts')).notThere(index, filters);
  return {
    found: 0,
    ...meant,
    hits,
    proposals: proposalsFor(index, unknown),
    ...(without > 0 && typed.length > 0 && { withoutFilters: without }),
    ...(missing !== undefined && { notThere: missing }),
    ...(typed.length === 0 && { wordless: true }),
  };
}

/** Units with what may be a code taken for one or not. */
function resolved(index: Index, units: readonly Unit[]): Unit[] {
  return units.flatMap((unit) => {
    const { code, insteadOf } = unit;
    if (insteadOf === undefined || code === undefined) return [unit];
    const isCode = [codeTerm, withinTerm].some((termOf) => index.terms.find(termOf(code)) !== undefined);
    return isCode ? [unit] : insteadOf;
  });
}

/** The folder or group that was asked for by its code and nothing else. */
function unitAsked(units: readonly Unit[], [hit]: readonly Hit[]): Above | undefined {
  const [{ code = '', insteadOf } = {}, ...others] = units;
  if (insteadOf === undefined || others.length > 0) return undefined;
  return hit?.above.find(({ referenceCode }) => withinTerm(referenceCode) === withinTerm(code));
}

function boxAsked(index: Index, { units, box }: Question): string | undefined {
  const [what, which, ...others] = units;
  if (box !== undefined || others.length > 0 || !/^(?:box|package)$/i.test(what?.typed ?? ''))
    return undefined;
  const number = which?.code;
  return number !== undefined && index.terms.find(boxTerm(number)) !== undefined ? number : undefined;
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
