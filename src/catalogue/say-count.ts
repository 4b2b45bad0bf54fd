/** A number with its word: 1 thing, 3 boxes. */
export const sayCount = (number: number, one: string, many = `${one}s`): string =>
  `${number} ${number === 1 ? one : many}`;

/** In how many rows besides the one that is named, to follow it: (and in 2 more rows). */
export const sayMoreRows = (rows: number): string =>
  rows < 2 ? '' : ` (and in ${rows - 1} more ${rows === 2 ? 'row' : 'rows'})`;
