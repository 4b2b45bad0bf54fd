import type { Component } from '../catalogue/component.ts';
import { once } from '../catalogue/once.ts';
import { firstYear, lastYear } from '../dates/index.ts';
import type { Entry } from './entry.ts';

const yearsIn = once((edtf: string): NonNullable<Entry['years']> | undefined => {
  const [first, last] = [firstYear(edtf), lastYear(edtf)];
  return first === undefined && last === undefined ? undefined : [first ?? null, last ?? null];
});

/** First and last year of some dates; null for a side that is open, undefined for what is undated. */
export function yearsOf(dates: Component['dates']): Entry['years'] {
  const spans = dates.flatMap(({ edtf }) => {
    const years = edtf === undefined ? undefined : yearsIn(edtf);
    return years === undefined ? [] : [years];
  });
  const [first, ...others] = spans;
  if (first === undefined) return undefined;
  return others.reduce(
    ([from, to], [start, end]) => [
      from === null || start === null ? null : Math.min(from, start),
      to === null || end === null ? null : Math.max(to, end),
    ],
    first,
  );
}
