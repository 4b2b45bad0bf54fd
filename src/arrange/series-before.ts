import type { Component } from '../catalogue/component.ts';
import { isCalled } from './extend.ts';
import type { UnitCode } from './reference-codes.ts';

/** A series of a finding aid that was taken in, into which things of the list go. */
export interface SeriesBefore {
  /** As the list calls it. */
  title: string;
  /** Its number among the series, as its reference code has it. */
  number: number;
  /** The highest number that the code of a unit in it has. */
  highest: number;
}

/**
 * The series of a finding aid that was taken in whose reference codes are made as ours are, by number within the unit
 * above, so that what the list adds can be numbered on: the next folder of QF/2 is QF/2/25. Where codes are made
 * otherwise nobody but their archive can go on with them.
 * @param titles of the groups of the list
 * @returns those series, and the highest number of any
 */
export function seriesBefore(
  { children }: Pick<Component, 'children'>,
  titles: readonly string[],
  codes: { top: UnitCode; below: (above: UnitCode, number: number) => UnitCode },
): { series: SeriesBefore[]; highest: number } {
  const numbers = numbersOf(children, codes.top, codes.below);
  if (numbers === undefined) return { series: [], highest: 0 };
  const series = titles.flatMap((title): SeriesBefore[] => {
    const at = children.findIndex((unit) => unit.level !== 'item' && isCalled(unit, title));
    const [unit, number] = [children[at], numbers[at]];
    if (unit === undefined || number === undefined) return [];
    const within = numbersOf(unit.children, codes.below(codes.top, number), codes.below);
    return within === undefined ? [] : [{ title, number, highest: Math.max(0, ...within) }];
  });
  return { series, highest: Math.max(0, ...numbers) };
}

/** The numbers that the codes of units end with; undefined where one of them has no code made so. */
function numbersOf(
  units: readonly Component[],
  above: UnitCode,
  below: (above: UnitCode, number: number) => UnitCode,
): number[] | undefined {
  const numbers = units.map(({ referenceCode = '' }) => Number(/\d{1,6}$/.exec(referenceCode)?.[0]));
  const fits = units.every(
    ({ referenceCode }, at) => below(above, numbers[at] ?? 0).referenceCode === referenceCode,
  );
  return fits ? numbers : undefined;
}
