import { type Match, SCALE } from './match.ts';
import type { Index } from './open-index.ts';
import type { Unit } from './question.ts';

/** A unit of a question, and how all things fare with it. */
export interface Asked {
  unit: Unit;
  match: Match;
}

/** How much it is worth that a title is made of nothing but what was asked for. */
const TITLE_COVERED = 0.25;

/**
 * How all things fare with a question: how many have what they need to have, and the best of those, the best first; of
 * equals the first in the arrangement.
 * @param least how many of the units a thing has to have, of those that are not optional
 */
export function rank(
  index: Index,
  asked: readonly Asked[],
  passes: Uint8Array | undefined,
  least: number,
  most: number,
): { found: number; best: readonly number[] } {
  const strengths = asked.map(({ match }) => match.strength);
  const counts = asked.map(({ unit }) => (unit.optional ? 0 : 1));
  const rarities = asked.map(({ match }) => rarityOf(match.having, index.things) / SCALE);
  const rarest = rarestOf(asked, least);
  if (rarest?.having === 0) return { found: 0, best: [] };
  const ruledOut = rarest?.strength;
  const lengths = index.titleLengths();
  const top = topOf(most);
  let found = 0;
  // It runs over a hundred thousand things in a program that has only just started, so nothing is made in it.
  for (let thing = 0; thing < index.things; thing++) {
    if (ruledOut?.[thing] === 0) continue;
    let score = 0;
    let met = 0;
    let inTitle = 0;
    for (let at = 0; at < strengths.length; at++) {
      const strength = strengths[at]?.[thing] ?? 0;
      if (strength === 0) continue;
      score += strength * (rarities[at] ?? 0);
      met += counts[at] ?? 0;
      inTitle += strength & 1;
    }
    if (met < least || passes?.[thing] === 0) continue;
    found += 1;
    if (inTitle > 0) score *= 1 + TITLE_COVERED * Math.min(1, inTitle / (lengths[thing] ?? 1));
    if (score > top.least) top.offer(thing, score);
  }
  return { found, best: top.things() };
}

/** Where a thing has to have all: what the fewest have, by which most things are ruled out. */
function rarestOf(asked: readonly Asked[], least: number): Match | undefined {
  const needed = asked.filter(({ unit }) => !unit.optional).map(({ match }) => match);
  if (needed.length > least) return undefined;
  return needed.sort((one, other) => one.having - other.having)[0];
}

/** The fewer things have a word, the more it says (inverse document frequency, as BM25 has it; from memory). */
const rarityOf = (having: number, things: number): number =>
  Math.log(1 + (things - having + 0.5) / (having + 0.5));

/** The best things so far. */
interface Top {
  /** What scores no more is not among them. */
  least: number;
  offer(thing: number, score: number): void;
  things(): number[];
}

/** Of more than so many the order is found when all are known. */
const MANY = 100;

/** Keeps the best of what it is offered; of equals the first. */
function topOf(most: number): Top {
  const kept: { thing: number; score: number }[] = [];
  return {
    least: most === 0 ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY,
    offer(thing, score) {
      if (most > MANY) {
        kept.push({ thing, score });
        return;
      }
      const place = kept.findIndex((other) => score > other.score);
      kept.splice(place < 0 ? kept.length : place, 0, { thing, score });
      if (kept.length > most) kept.pop();
      if (kept.length === most) this.least = kept[most - 1]?.score ?? this.least;
    },
    things() {
      if (most > MANY) kept.sort((a, b) => b.score - a.score || a.thing - b.thing);
      return kept.slice(0, most).map(({ thing }) => thing);
    },
  };
}
