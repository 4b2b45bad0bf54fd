import { type Component, component } from '../catalogue/component.ts';
import { once } from '../catalogue/once.ts';
import { fieldsOf } from '../catalogue/schema-at.ts';
import { type WeightOf, weightsFrom } from './alike.ts';
import { matchByLikeness } from './match-by-likeness.ts';
import { matchByNumber } from './match-by-number.ts';
import { matchByCode, matchByVotes, matchWithinParents } from './match-by-place.ts';
import { joinByKey, leftInA, leftInB, noPairs, type Pairs, soleByKey } from './pairs.ts';
import { same } from './same.ts';
import type { Unit } from './units.ts';

type Units = readonly [top: Unit, ...below: Unit[]];

/** Whether two units that look alike may be one. */
export type Fits = (a: Unit, b: Unit) => boolean;

/**
 * Finds for each unit the one on the other side that describes the same: by its number in the list, by its id where ids
 * stay with what they were given to, then by what is said of it: the same words in the same place, the same words
 * elsewhere, most units below in common, the same code and some units below in common, and last by likeness. The same
 * two finding aids always give the same pairs.
 * @param idsStay false where it is known that ids are only places, as in a catalogue in which nothing is settled
 */
export function matchUnits(as: Units, bs: Units, idsStay: boolean): Pairs<Unit> {
  const pairs = noPairs<Unit>();
  const told = once(toldOf);
  pairs.join(as[0], bs[0]);
  const numbered = matchByNumber(pairs, as, bs);
  const fits: Fits = (a, b) => !(numbered && otherNumbers(a, b));
  const hold = idsStay && idsHold(pairs, as, bs);
  const idOf = ({ component }: Unit) => component.id;
  if (hold) joinByKey(pairs, as, bs, idOf);
  joinByKey(pairs, as, bs, idOf, (a, b) => fits(a, b) && saysTheSame(a, b));
  joinByKey(pairs, as, bs, told, fits);
  let weight: WeightOf | undefined;
  for (let before = -1; before < pairs.size; ) {
    before = pairs.size;
    matchByLook(pairs, as, bs, { told, fits });
    if (idsStay) matchByCode(pairs, as, fits);
    if (leftInA(pairs, as).length === 0 || leftInB(pairs, bs).length === 0) break;
    weight ??= weightsFrom([...as, ...bs]);
    matchByLikeness(pairs, as, bs, weight, fits);
  }
  return pairs;
}

interface Ways {
  /** All that is told of it. */
  told: (unit: Unit) => string;
  fits: Fits;
}

/** The same look below the same unit, then the same look anywhere; then units with the same units in them. */
function matchByLook(pairs: Pairs<Unit>, as: Units, bs: Units, { told, fits }: Ways): void {
  const isUnknown = (a: Unit) => a.children.every((child) => pairs.inB(child) === undefined);
  const ofLeaf = (unit: Unit) => (unit.children.length === 0 ? unit.look : undefined);
  for (let before = -1; before < pairs.size; ) {
    before = pairs.size;
    matchWithinParents(pairs, as, told, fits);
    matchWithinParents(pairs, as, look, fits);
    joinByKey(pairs, as, bs, ofLeaf, fits);
    matchByVotes(pairs, as, fits);
    joinByKey(pairs, as, bs, look, (a, b) => fits(a, b) && isUnknown(a));
  }
}

function otherNumbers({ component: a }: Unit, { component: b }: Unit): boolean {
  const [one, other] = [a.otherIdentifiers[0], b.otherIdentifiers[0]];
  return one !== undefined && other !== undefined && one.type === other.type && one.value !== other.value;
}

/** Whether no unit that is plainly the same has another id; a place that something was put before has. */
function idsHold(pairs: Pairs<Unit>, [, ...as]: Units, [, ...bs]: Units): boolean {
  const inB = soleByKey(bs, look);
  for (const [its, a] of soleByKey(as, look)) {
    const b = inB.get(its);
    if (a !== undefined && b !== undefined && a.component.id !== b.component.id) return false;
  }
  return as.every((a) => (pairs.inB(a) ?? a).component.id === a.component.id);
}

/** What only says where a unit is; all else is told of the unit itself. */
const OF_PLACE = ['id', 'referenceCode', 'children', 'containers', 'physicalLocation', 'kept'];
const OWN = fieldsOf(component).flatMap(([field]) =>
  OF_PLACE.includes(field) ? [] : [field as keyof Component],
);

const saysTheSame = ({ component: a }: Unit, { component: b }: Unit): boolean =>
  OWN.every((field) => same(a[field], b[field]));

const toldOf = ({ component: unit }: Unit): string => JSON.stringify(OWN.map((field) => unit[field]));

const look = (unit: Unit): string => unit.look;
