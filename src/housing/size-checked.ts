import type { Face, Form, Size } from './model.ts';

/** What a phrase of the size column says. Measures in millimetres. */
export type SizeReading =
  | {
      kind: 'size';
      size: Size;
      /** What only things of such a size are: "cabinet card", "35 mm slide". */
      form?: Form;
      /** What was taken for granted, in sentences. */
      assumed?: string;
      /** The unit that was assumed for measures without one. */
      guessedUnit?: string;
    }
  /** Less than nothing, or nothing. */
  | { kind: 'impossible'; why: string }
  /** Larger or smaller than anything that is kept in a box. */
  | { kind: 'unlikely'; why: string }
  | { kind: 'unknown' };

// Nothing that a family keeps in a box, and hardly a map on its roller, is longer.
const LONGEST = 5000;

/** A size that has been read, unless nothing that is kept in a box has it. */
export function checked(size: Size, form: Form | undefined, assumed: string | undefined): SizeReading {
  const { long, short } = size;
  // Not more than 5 m, by the rounding of the measure; not NaN either.
  if (!(long <= LONGEST)) return { kind: 'unlikely', why: `${said(long)} is longer than 5 m.` };
  if (!(short >= 1)) return { kind: 'unlikely', why: `${said(short)} is less than 1 mm.` };
  return {
    kind: 'size',
    size,
    ...(form !== undefined && { form }),
    ...(assumed !== undefined && { assumed }),
  };
}

const said = (mm: number) =>
  mm < 1000 ? `A measure of ${Number(mm.toPrecision(2))} mm` : `A measure of ${Math.round(mm / 1000)} m`;

/** A size in words: `203 × 254 mm`. */
export const inWords = ({ long, short }: Face): string => `${Math.round(short)} × ${Math.round(long)} mm`;
