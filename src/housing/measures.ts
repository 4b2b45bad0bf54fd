import type { Face } from './model.ts';

/** Millimetres in an inch. International yard and pound agreement, 1959. */
export const INCH = 25.4;

/** A face measured in inches. */
export const inches = (long: number, short: number): Face => mm(long * INCH, short * INCH);

/** A face measured in millimetres. */
export const mm = (long: number, short: number): Face => ({ long, short });

/** A face with so many millimetres more, or less, to each side. */
export const enlarged = ({ long, short }: Face, by: number): Face => mm(long + by, short + by);

/** Whether a face covers another, whichever way it is turned. */
export const covers = (face: Face, other: Face): boolean =>
  other.long <= face.long && other.short <= face.short;

/** In whole thousandths of a millimetre, so that a sum is the same in whatever order it is made. */
export const micrometres = (millimetres: number): number => Math.round(millimetres * 1000);
