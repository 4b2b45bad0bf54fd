import type { Component } from '../../catalogue/component.ts';
import type { Place } from '../../catalogue/finding.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { unitsFrom } from '../../catalogue/units.ts';
import { textsIn } from '../texts-in.ts';
import { textsInKept } from './markup.ts';

/**
 * Every text of a finding aid that was taken in, also of what was kept as found, with where it stands. Ids, links to
 * names, and codes say nothing of anything else.
 */
export function* textsInAid({
  control,
  people,
  collection,
}: FindingAid): Generator<[text: string, place: Place]> {
  const { kept, ...said } = control;
  const at = (column: string): Place => ({ file: 'finding-aid.json', column });
  for (const [text] of textsIn(said)) yield [text, at('control')];
  if (kept !== undefined) for (const text of textsInKept(kept)) yield [text, at('control')];
  for (const { id: _, name, relations: __, ...agent } of people)
    for (const [text] of textsIn(agent)) yield [text, at(name)];
  for (const unit of unitsFrom(collection)) {
    for (const text of textsInUnit(unit)) yield [text, at(unit.title)];
  }
}

function* textsInUnit({
  id: _,
  referenceCode: __,
  otherIdentifiers: ___,
  creators: ____,
  people: _____,
  containers: ______,
  children: _______,
  kept,
  ...unit
}: Component): Generator<string> {
  for (const [text] of textsIn(unit)) yield text;
  if (kept !== undefined) yield* textsInKept(kept);
}
