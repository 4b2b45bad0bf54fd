import { comparable } from './columns.ts';

const YES = new Set(['yes', 'y', 'x', 'true', '1']);
const NO = new Set(['no', 'n', 'false', '0', '']);
const ASKS_WHETHER = new Set(['private', 'restricted', 'restriction', 'restrictions', 'privacy']);

/**
 * A reader of the cells below a heading for access. Under a heading such as Private people tick, or write yes and
 * no: then the heading is the statement. Under any other heading a cell is taken as it is.
 */
export function accessReader(heading: string): (cell: string) => string | undefined {
  if (!ASKS_WHETHER.has(comparable(heading))) return (cell) => (cell === '' ? undefined : cell);
  return (cell) => {
    const word = comparable(cell);
    if (YES.has(word) || /^[✓✔☑]$/u.test(cell)) return heading;
    return NO.has(word) && /^[\p{L}\p{N}.\s-]*$/u.test(cell) ? undefined : cell;
  };
}
