import type { Component } from '../../catalogue/component.ts';
import { displayDate, firstYear, inclusiveDates, lastYear } from '../../dates/index.ts';

export const titleOf = ({ title }: Component): string => title;

/** The dates of a unit as its description has them. */
export const datesOf = ({ dates }: Component): string => dates.map(({ expression }) => expression).join(', ');

/** A year with the mark that it may have: `1910~`. */
const YEAR = /^\d{4}[~?%]?$/;

/**
 * The years of several units taken together (DACS 2.4.7, inclusive dates), with "circa" where an end is approximate
 * (2.4.12); `undated` where no year is known of any.
 */
export function yearsOf(units: readonly Component[]): string | undefined {
  const dates = units.flatMap((unit) => unit.dates);
  const known = dates.flatMap(({ edtf }) => (edtf === undefined ? [] : [edtf]));
  const [start = '', end = start] = (inclusiveDates(known) ?? '').replace(/(?<=[\dX])-\d\d/g, '').split('/');
  const ends = [start.replace('X', '0'), end.replace('X', '9')];
  if (ends.every((year) => YEAR.test(year))) {
    const [from, to] = ends.map((year) => year.slice(0, 4));
    // One year, certain at one end and not at the other: the mark goes with it.
    return displayDate(from === to ? (ends.toSorted().at(-1) ?? start) : ends.join('/'));
  }
  const years = known
    .flatMap((edtf) => [firstYear(edtf), lastYear(edtf)])
    .filter((year) => year !== undefined);
  // DACS 2.4.16: "undated", never "n.d." or "s.d."
  if (years.length === 0) return dates.length === 0 ? undefined : 'undated';
  const [first, last] = [years.reduce((a, b) => Math.min(a, b)), years.reduce((a, b) => Math.max(a, b))];
  return first === last ? String(first) : `${first}-${last}`;
}

/** The first and the last reference code of units in their order. */
export function codesOf(units: readonly Component[]): string | undefined {
  const codes = units.flatMap(({ referenceCode }) => (referenceCode === undefined ? [] : [referenceCode]));
  const [first, last] = [codes.at(0), codes.at(-1)];
  return first === undefined || last === undefined || first === last ? first : `${first} to ${last}`;
}
