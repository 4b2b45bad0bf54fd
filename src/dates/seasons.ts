/** A part of a year that is neither month nor day, with the months it is taken to cover. */
interface Season {
  readonly code: number;
  /** As DACS 2.4.13 places it: `1852 spring`. */
  readonly name: string;
  readonly first: number;
  readonly last: number;
}

/**
 * ISO 8601-2, 4.8, table 2. The standard gives the seasons no months: those here are an assumption, the three
 * whole months that weather services count, on the northern hemisphere for 21 to 24. A season that runs over New
 * Year (24, 28, 30) may mean either end of the year it is named after, so its bounds are that whole year.
 */
export const SEASONS: readonly Season[] = [
  { code: 21, name: 'spring', first: 3, last: 5 },
  { code: 22, name: 'summer', first: 6, last: 8 },
  { code: 23, name: 'autumn', first: 9, last: 11 },
  { code: 24, name: 'winter', first: 1, last: 12 },
  { code: 25, name: 'northern spring', first: 3, last: 5 },
  { code: 26, name: 'northern summer', first: 6, last: 8 },
  { code: 27, name: 'northern autumn', first: 9, last: 11 },
  { code: 28, name: 'northern winter', first: 1, last: 12 },
  { code: 29, name: 'southern spring', first: 9, last: 11 },
  { code: 30, name: 'southern summer', first: 1, last: 12 },
  { code: 31, name: 'southern autumn', first: 3, last: 5 },
  { code: 32, name: 'southern winter', first: 6, last: 8 },
  { code: 33, name: 'first quarter', first: 1, last: 3 },
  { code: 34, name: 'second quarter', first: 4, last: 6 },
  { code: 35, name: 'third quarter', first: 7, last: 9 },
  { code: 36, name: 'fourth quarter', first: 10, last: 12 },
  { code: 37, name: 'first third', first: 1, last: 4 },
  { code: 38, name: 'second third', first: 5, last: 8 },
  { code: 39, name: 'last third', first: 9, last: 12 },
  { code: 40, name: 'first half', first: 1, last: 6 },
  { code: 41, name: 'second half', first: 7, last: 12 },
];

/** The season of an EDTF code from 21 to 41; undefined for any other number. */
export const seasonMonths = (code: number): Season | undefined => SEASONS[code - 21];
