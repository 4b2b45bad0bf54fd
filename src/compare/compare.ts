import type { Component } from '../catalogue/component.ts';
import { control as controlSchema, type FindingAid } from '../catalogue/finding-aid.ts';
import { agentNames, compareAgents, matchAgents } from './agents.ts';
import { fieldChanges } from './field-changes.ts';
import { CONTROL_FIELDS } from './field-names.ts';
import { matchUnits } from './match-units.ts';
import type { Changed, Comparison, FieldChange, PlacedUnit, UnitName } from './model.ts';
import { movedUnits } from './moves.ts';
import { leftInA, leftInB } from './pairs.ts';
import { same } from './same.ts';
import { unitChanges } from './unit-fields.ts';
import { nameOf, type Unit, unitsOf } from './units.ts';

/**
 * What changed from one finding aid to another: units and people that came, went, moved, or of which something else is
 * said, each field with its value before and after.
 * @param known.idsStay false where ids and reference codes are known to be mere places on one side, as in a catalogue in
 * which nothing is settled; else what is the same on both sides shows whether they are
 * @param known.inFormOf gives a unit of the first in the form of one of the second, where only the form differs
 */
export function compareFindingAids(
  a: FindingAid,
  b: FindingAid,
  known: { idsStay?: boolean; inFormOf?: ((was: Component, now: Component) => Component) | undefined } = {},
): Comparison {
  const [as, bs] = [unitsOf(a.collection), unitsOf(b.collection)];
  const pairs = matchUnits(as, bs, known.idsStay ?? true);
  const agents = matchAgents(a.people, b.people);
  const names = agentNames(a.people, b.people, agents);
  const inForm = known.inFormOf ?? ((was: Component) => was);
  const changed: Changed<UnitName>[] = [];
  for (const now of bs) {
    const was = pairs.inA(now);
    if (was === undefined) continue;
    const fields = unitChanges(inForm(was.component, now.component), now.component, names);
    if (fields.length > 0) changed.push({ was: nameOf(was), now: nameOf(now), fields });
  }
  return {
    added: leftInB(pairs, bs).map(placed),
    removed: leftInA(pairs, as).map(placed),
    moved: movedUnits(bs, pairs),
    changed,
    people: compareAgents(a.people, b.people, agents, names),
    description: [
      ...fieldChanges(controlSchema, a.control, b.control, CONTROL_FIELDS),
      ...recipientChange(a, b),
    ],
  };
}

/** Whether there is nothing to say of a comparison. */
export const isEmpty = ({ added, removed, moved, changed, people, description }: Comparison): boolean =>
  [added, removed, moved, changed, people.added, people.removed, people.changed, description].every(
    ({ length }) => length === 0,
  );

const placed = (unit: Unit): PlacedUnit => ({
  unit: nameOf(unit),
  ...(unit.parent !== undefined && { within: nameOf(unit.parent) }),
});

function recipientChange({ recipient: was }: FindingAid, { recipient: now }: FindingAid): FieldChange[] {
  if (same(was, now)) return [];
  const value = { ...(was !== undefined && { was }), ...(now !== undefined && { now }) };
  return [{ field: 'recipient', name: 'Recipient', values: [value] }];
}
