import { INCH } from './measures.ts';
import { PHOTOGRAPH_INCHES } from './photograph-sizes.ts';
import type { MeasureGroup } from './size-groups.ts';

/** Millimetres of the unit that measures without one most likely have, and why, in a sentence. */
export function likelyUnit({ measures }: MeasureGroup): { mm: number; why: string } {
  const values = measures.map(({ value }) => value).sort((one, other) => other - one);
  const [long = 0, short = long] = values;
  const written = measures.map(({ value }) => Number(value.toFixed(3))).join(' x ');
  if (PHOTOGRAPH_INCHES.has(`${short} x ${long}`))
    return { mm: INCH, why: `“${written}” has no unit; it is a usual size in inches.` };
  // Halves and quarters are parts of an inch; metric measures are written in tenths.
  if (values.some((value) => !Number.isInteger(value * 10) && Number.isInteger(value * 16)))
    return { mm: INCH, why: `“${written}” has no unit; for its fractions, inches are assumed.` };
  // A photograph or a sheet is seldom over 150 cm and seldom under 10 mm.
  if (long > 150 || (short >= 100 && long > 100))
    return { mm: 1, why: `“${written}” has no unit; millimetres are assumed.` };
  return { mm: 10, why: `“${written}” has no unit; centimetres are assumed.` };
}
