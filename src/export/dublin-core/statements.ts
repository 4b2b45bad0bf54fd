import type { Component } from '../../catalogue/component.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { isRestricted } from '../../catalogue/restricted.ts';
import { NO_PLACE, type Row, type Targets, WITHIN } from '../crosswalk/row.ts';
import { CONVERSIONS, type Conversion } from './conversions.ts';
import { fieldReader } from './field-reader.ts';
import type { DescribedUnit } from './units.ts';
import type { About, Value } from './value.ts';

/** One element of a record, with its value. */
export interface Statement<Name extends string> {
  element: Name;
  text: string;
  /** The encoding scheme of DCMI terms that the value follows. */
  scheme?: string;
}

type Read = (unit: Component, about: About) => readonly Value[];

interface Maker<Name extends string> {
  element: Name;
  read: Read;
  inherited: boolean;
}

/**
 * The engine of Dublin Core: makes of the rows of the crosswalk a function that tells a unit in statements, in the
 * order of the elements, and of the rows within one element. The same value is told once in an element.
 * @param targetsOf which column of the rows is meant
 */
export function statementsBy<Name extends string>(
  rows: readonly Row[],
  elements: readonly Name[],
  targetsOf: (row: Row) => Targets<Name>,
): (aid: FindingAid) => (described: DescribedUnit) => Statement<Name>[] {
  const makers = rows.flatMap((row) => makersOf(row, targetsOf(row)));
  const inOrder = elements.map((element) => makers.filter((maker) => maker.element === element));
  return ({ control: { recordId }, people }) => {
    const names = new Map(people.map(({ id, name, authorizedForm }) => [id, authorizedForm ?? name]));
    const nameOf = (agentId: string) => names.get(agentId);
    return ({ unit, above, parent }) => {
      const isClosed = [...above, unit].some(isRestricted);
      const about: About = { parent, recordId, nameOf, isClosed, forPart: false };
      const statements: Statement<Name>[] = [];
      for (const alike of inOrder) {
        const from = statements.length;
        for (const maker of alike) {
          for (const value of valuesOf(maker, unit, above, about))
            tell(statements, from, maker.element, value);
        }
      }
      return statements;
    };
  };
}

function makersOf<Name extends string>(row: Row, targets: Targets<Name>): Maker<Name>[] {
  if (targets === NO_PLACE) return [];
  const inherited = row.inherited === true;
  if (typeof targets === 'string') {
    return [{ element: targets as Name, read: fieldReader(row), inherited }];
  }
  const named = Object.entries(targets) as [Name, Conversion | typeof WITHIN][];
  return named.flatMap(([element, how]) =>
    how === WITHIN ? [] : [{ element, read: CONVERSIONS[how], inherited }],
  );
}

/** A record stands alone, so what holds for the unit though only a unit above says it is told as well. */
function valuesOf<Name extends string>(
  { read, inherited }: Maker<Name>,
  unit: Component,
  above: readonly Component[],
  about: About,
): readonly Value[] {
  let values = read(unit, about);
  if (!inherited) return values;
  for (let at = above.length - 1; at >= 0 && values.length === 0; at -= 1) {
    const higher = above[at];
    if (higher !== undefined) values = read(higher, { ...about, forPart: true });
  }
  return values;
}

function tell<Name extends string>(
  statements: Statement<Name>[],
  from: number,
  element: Name,
  value: Value,
): void {
  const text = typeof value === 'string' ? value : value.text;
  for (let at = from; at < statements.length; at += 1) if (statements[at]?.text === text) return;
  statements.push(typeof value === 'string' ? { element, text } : { element, text, scheme: value.scheme });
}
