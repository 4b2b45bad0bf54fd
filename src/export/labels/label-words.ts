import type { Component } from '../../catalogue/component.ts';
import { displayDate, firstYear, inclusiveDates, lastYear } from '../../dates/index.ts';

export const titleOf = ({ title }: Component): string => title;

/** The dates of a unit as its description has them; a date in words only is shortened where it is long. */
export const datesOf = ({ dates }: Component): string =>
  dates.map(({ expression, edtf }) => (edtf === undefined ? shortened(expression) : expression)).join(', ');

// DACS 2.4.16: "undated", never "n.d." or "s.d."
const UNDATED = 'undated';
// Letters of a date in words that find room on a label beside a title, and beside years.
const MOST = 60;
const MOST_BESIDE = 40;

const shortened = (words: string): string =>
  words.length <= MOST ? words : `${words.slice(0, MOST).replace(/\s+\S*$/, '')}…`;

/** A year with the mark that it may have: `1910~`. */
const YEAR = /^\d{4}[~?%]?$/;

/**
 * The dates of several units taken together: their years, and behind those what has none: "1911-1940 and undated"
 * (common practice). What the list has in words stands in words as long as it is short.
 */
export function yearsOf(units: readonly Component[]): string | undefined {
  const dates = units.flatMap((unit) => unit.dates);
  const years = yearsKnown(dates.flatMap(({ edtf }) => (edtf === undefined ? [] : [edtf])));
  const unread = dates.flatMap(({ edtf, expression }) => (edtf === undefined ? [expression] : []));
  const words = [...new Set(unread.filter((one) => one !== UNDATED))];
  const undated = unread.includes(UNDATED) ? [UNDATED] : [];
  if (years === undefined) {
    const said = words.length > 3 ? ['dates in words only'] : words;
    return said.length + undated.length === 0 ? undefined : [...said.map(shortened), ...undated].join('; ');
  }
  const beside = words.join('; ');
  const more = [years, ...(beside.length > MOST_BESIDE ? ['dates in words'] : words)];
  return [more.join('; '), ...undated].join(' and ');
}

/** Years taken together (DACS 2.4.7, inclusive dates), with "circa" where an end is approximate (2.4.12). */
function yearsKnown(known: readonly string[]): string | undefined {
  const [start = '', end = start] = (inclusiveDates(known) ?? '').replace(/(?<=[\dX])-\d\d/g, '').split('/');
  const ends = [start.replace('X', '0'), end.replace('X', '9')];
  if (ends.every((year) => YEAR.test(year))) {
    const [from, to] = ends.map((year) => year.slice(0, 4));
    // One year, certain at one end and not at the other: the mark goes with it.
    return displayDate(from === to ? (ends.toSorted().at(-1) ?? start) : ends.join('/'));
  }
  // "before 1900" is not 1899, and beside other dates it stands as it does in the finding aid.
  if (known.some(isBefore)) return displayDate(inclusiveDates(known) ?? '');
  const years = known
    .flatMap((edtf) => [firstYear(edtf), lastYear(edtf)])
    .filter((year) => year !== undefined);
  if (years.length === 0) return undefined;
  const [first, last] = [years.reduce((a, b) => Math.min(a, b)), years.reduce((a, b) => Math.max(a, b))];
  return first === last ? String(first) : `${first}-${last}`;
}

const isBefore = (edtf: string) => firstYear(edtf) === undefined && lastYear(edtf) !== undefined;

/** The first and the last reference code of units in their order. */
export function codesOf(units: readonly Component[]): string | undefined {
  const codes = units.flatMap(({ referenceCode }) => (referenceCode === undefined ? [] : [referenceCode]));
  const [first, last] = [codes.at(0), codes.at(-1)];
  return first === undefined || last === undefined || first === last ? first : `${first} to ${last}`;
}
