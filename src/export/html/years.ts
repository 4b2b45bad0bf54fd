import type { Component } from '../../catalogue/component.ts';
import { once } from '../../catalogue/once.ts';
import { firstYear, lastYear } from '../../dates/index.ts';

/** The years that a unit covers; a side that is open or unknown is left out. */
export interface Years {
  readonly first?: number;
  readonly last?: number;
}

const yearsOfEdtf = once((edtf: string): Years => {
  const [first, last] = [firstYear(edtf), lastYear(edtf)];
  return { ...(first !== undefined && { first }), ...(last !== undefined && { last }) };
});

/** The years of all dates of a unit but the bulk dates; undefined where none is known. */
export function yearsOf({ dates }: Component): Years | undefined {
  const known = dates.flatMap(({ type, edtf }) =>
    type === 'bulk' || edtf === undefined ? [] : [yearsOfEdtf(edtf)],
  );
  const [only] = known;
  if (known.length === 1 && only !== undefined)
    return only.first === undefined && only.last === undefined ? undefined : only;
  const first = outermost(
    known.map((years) => years.first),
    Math.min,
  );
  const last = outermost(
    known.map((years) => years.last),
    Math.max,
  );
  if (first === undefined && last === undefined) return undefined;
  return { ...(first !== undefined && { first }), ...(last !== undefined && { last }) };
}

/** A side that is open in one date is open in all of them together. */
const outermost = (ends: readonly (number | undefined)[], pick: (...years: number[]) => number) => {
  const known = ends.filter((year) => year !== undefined);
  return known.length < ends.length || known.length === 0 ? undefined : pick(...known);
};

/** As the page carries it for its script: 1911/1922, /1866, 1867/. */
export const yearsText = ({ first, last }: Years): string =>
  first === last ? `${first}` : `${first ?? ''}/${last ?? ''}`;
