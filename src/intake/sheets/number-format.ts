import type { Grain } from './sheet.ts';

/** What a number format makes of a number: a date, as many figures as it has zeros, or nothing special. */
export type NumberFormat = { date: Grain } | { zeros: number } | undefined;

/**
 * The formats that have a number and are written nowhere (ECMA-376 Part 1, 18.8.30): 14 to 22 and 45 to 47; 27 to 36
 * and 50 to 58 are dates in the languages of East Asia.
 */
export const BUILT_IN: Readonly<Record<number, Grain>> = {
  14: 'day',
  15: 'day',
  16: 'no year',
  17: 'month',
  18: 'time',
  19: 'time',
  20: 'time',
  21: 'time',
  22: 'day',
  45: 'time',
  46: 'time',
  47: 'time',
  ...Object.fromEntries(
    [27, 28, 29, 30, 31, 34, 35, 36, 50, 51, 52, 53, 54, 57, 58].map((id) => [id, 'day']),
  ),
  32: 'time',
  33: 'time',
  55: 'time',
  56: 'time',
};

/** Reads a number format such as `dd/mm/yyyy;@` or `000` (ECMA-376 Part 1, 18.8.31). */
export function readNumberFormat(code: string): NumberFormat {
  const [first = ''] = code
    // Words between quotation marks, signs behind a backslash, blanks as wide as a sign, and repeated signs say nothing.
    .replace(/"[^"]*"|\\.|[_*]./g, '')
    // A length of time in hours, minutes or seconds, such as [h]:mm.
    .replace(/\[(h+|m+|s+)\]/gi, 'h')
    .replace(/\[[^\]]*\]/g, '')
    .split(';');
  const letters = first.toLowerCase();
  if (/^0+$/.test(letters)) return letters.length > 1 ? { zeros: letters.length } : undefined;
  if (letters === 'general' || letters === 'standard' || !/[dmyhsbge]/.test(letters)) return undefined;
  // An e beside figures is the exponent of a number, not the year of an emperor; g, then, is no era either.
  if (/[0#?]/.test(letters) && !/[dmyhs]/.test(letters)) return undefined;
  return { date: grainOf(/[dy]|e|h|s|m/.test(letters) ? letters : '') };
}

function grainOf(letters: string): Grain {
  const withoutNames = letters.replace(/am\/pm|a\/p/g, '');
  const day = withoutNames.includes('d');
  const year = /[yeb]/.test(withoutNames);
  const time = /[hs]/.test(withoutNames);
  if (day) return year ? 'day' : 'no year';
  if (year) return withoutNames.includes('m') ? 'month' : 'year';
  if (time) return 'time';
  return withoutNames.includes('m') ? 'no year' : 'time';
}
