import type { Component } from '../catalogue/component.ts';
import type { Finding } from '../catalogue/finding.ts';
import type { Recipient } from '../catalogue/finding-aid.ts';
import { lastYear } from '../dates/index.ts';
import type { Rules } from './index.ts';
import { LIFETIME } from './living.ts';

/** What to think of before records made of the catalogue are handed on. */
export const reviewRecords: Rules = ({ settings }, aid) => [
  ...settings.people.flatMap(({ name, type, died }, at): Finding[] => {
    const birth = aid.people[at]?.birth;
    const last = birth === undefined ? undefined : lastYear(birth);
    const described = Number(aid.control.history[0]?.date.slice(0, 4));
    if (type !== 'person' || died !== undefined || last === undefined || described - last >= LIFETIME)
      return [];
    return [
      {
        rule: 'records.may-be-living',
        weight: 'caution',
        place: { file: 'collection.yaml' },
        found: `“${name}” may be living: a birth is given, and no death.`,
        advice:
          'The finding aid and the eac-cpf record tell what is written there. Leave out what is private; the law differs from place to place.',
        source: 'common practice',
      },
    ];
  }),
  ...separatorWithin(aid.collection, aid.recipient),
];

/** A value that holds the separator cannot be told from two values in dublin-core.csv. */
function separatorWithin(collection: Component, recipient: Recipient | undefined): Finding[] {
  if (recipient === undefined) return [];
  const { separator } = recipient;
  const unit = unitWith(collection, separator);
  if (unit === undefined) return [];
  return [
    {
      rule: 'records.separator-in-value',
      weight: 'should',
      place: { component: unit.referenceCode ?? unit.title },
      found: `A text of this unit holds “${separator}”, which also parts the values in dublin-core.csv.`,
      advice: 'Agree on another separator with the recipient, such as " | ".',
    },
  ];
}

function unitWith(unit: Component, separator: string): Component | undefined {
  const { title, scopeAndContent, accessConditions, accessPoints, generalNotes } = unit;
  const texts = [
    ...[title, scopeAndContent, accessConditions?.statement],
    ...accessPoints.map(({ term }) => term),
    ...generalNotes.map(({ text }) => text),
  ];
  if (texts.some((text) => text?.includes(separator))) return unit;
  for (const child of unit.children) {
    const found = unitWith(child, separator);
    if (found !== undefined) return found;
  }
  return undefined;
}
