import { fold } from '../catalogue/fold.ts';
import { wordsInCommon } from '../review/plain-words.ts';
import { mayBeOne } from './likeness.ts';
import { joinByKey, type KeyOf, leftInA, leftInB, type Pairs, soleByKey } from './pairs.ts';
import type { Unit } from './units.ts';

/**
 * Joins units that have the same number, such as the number in the list: first those whose titles and dates do not speak
 * against it, then those of which the title, the date or the kind at least is alike. Where all three are others, two
 * people gave one number to two things.
 * @returns whether the numbers of both sides are of one counting
 */
export function matchByNumber(pairs: Pairs<Unit>, as: readonly Unit[], bs: readonly Unit[]): boolean {
  const before = pairs.size;
  for (let at = 0; at < Math.min(mostNumbers(as), mostNumbers(bs)); at++) {
    const keyOf = ({ component }: Unit) => {
      const number = component.otherIdentifiers[at];
      // Where EAD 2002 takes one word only, it says number-in-the-list.
      return number && `${number.type.replaceAll(' ', '-')}\n${number.value}`;
    };
    const known = pairs.size;
    joinByKey(pairs, as, bs, keyOf, (a, b) => mayBeOne(described(a), described(b)));
    joinRetold(pairs, as, bs, keyOf, pairs.size - known);
  }
  return pairs.size > before;
}

const mostNumbers = (units: readonly Unit[]) =>
  units.reduce((count, { component }) => Math.max(count, component.otherIdentifiers.length), 0);

/**
 * Joins what was described anew. A title or a kind in common tells little where the two sides count different things:
 * it is enough where half of the numbers of both are known to stand for the same.
 * @param known how many are joined by number already
 */
function joinRetold(
  pairs: Pairs<Unit>,
  as: readonly Unit[],
  bs: readonly Unit[],
  keyOf: KeyOf<Unit>,
  known: number,
): void {
  const numbers = new Set(leftInB(pairs, bs).map(keyOf));
  const unknown = leftInA(pairs, as).filter((a) => keyOf(a) !== undefined && numbers.has(keyOf(a))).length;
  if (unknown === 0) return;
  const oneCounting = known >= unknown;
  const look = (unit: Unit) => unit.look;
  const [inA, inB] = [soleByKey(as, look), soleByKey(bs, look)];
  // What is plainly the same under another number shows that a number was given anew.
  const renumbered = (one: Unit | undefined, number: string | undefined) =>
    one !== undefined && keyOf(one) !== undefined && keyOf(one) !== number;
  joinByKey(pairs, as, bs, keyOf, (a, b) => {
    if (renumbered(inB.get(a.look), keyOf(a)) || renumbered(inA.get(b.look), keyOf(b))) return false;
    const [one, other] = [described(a), described(b)];
    if (one.date !== undefined && one.date === other.date) return true;
    return oneCounting && (wordsInCommon(one.title, other.title) >= 0.5 || sameKind(a, b));
  });
}

const described = ({ component: { title, dates } }: Unit) => ({
  title,
  date: dates.find(({ edtf }) => edtf !== undefined)?.edtf,
});

function sameKind(a: Unit, b: Unit): boolean {
  const kinds = kindsOf(a);
  return kindsOf(b).some((kind) => kinds.includes(kind));
}

/** What it is, as an access point tells it: letters, diaries. */
const kindsOf = ({ component: { accessPoints } }: Unit): string[] =>
  accessPoints.flatMap(({ type, term }) => (type === 'genre' ? [fold(term)] : []));
