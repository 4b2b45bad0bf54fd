import { placedCodes } from '../arrange/index.ts';

/** The reference code that each row of the list has in the finding aid. */
export const codesByRow = (...placed: Parameters<typeof placedCodes>): ReadonlyMap<number, string> =>
  new Map([...placedCodes(...placed).things].map(([{ row }, code]) => [row, code]));
