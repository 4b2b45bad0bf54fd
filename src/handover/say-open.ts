import { sayCommand } from '../catalogue/say-command.ts';
import { sayList } from '../catalogue/say-list.ts';
import type { Thing } from '../catalogue/thing.ts';
import { maskNumbers } from '../review/private-numbers.ts';

/** So many things are named; the rest are counted. */
const MOST = 5;

/**
 * What is private, goes, and is not held back: a warning and no more, for it is the family’s to decide. Undefined where
 * there is none.
 * @param folder the catalogue folder
 */
export function sayOpen(open: readonly Pick<Thing, 'row' | 'title'>[], folder: string): string | undefined {
  if (open.length === 0) return undefined;
  const named = open.slice(0, MOST).map(({ row, title }) => `“${maskNumbers(title)}” (row ${row})`);
  if (open.length > MOST) named.push(`${open.length - MOST} more`);
  const what =
    open.length === 1
      ? 'One thing in it is private, as far as words tell, and is'
      : `${open.length} things in it are private, as far as words tell, and are`;
  return `${what} not held back: ${sayList(named)}. See what is said of ${open.length === 1 ? 'it' : 'them'} with ${sayCommand('check', folder)}, and decide before you give the package away.`;
}
