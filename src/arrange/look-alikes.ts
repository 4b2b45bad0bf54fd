import { addTo } from '../catalogue/add-to.ts';
import { fold } from '../catalogue/fold.ts';
import type { Settled } from '../catalogue/settled.ts';
import type { Thing } from '../catalogue/thing.ts';
import { type Filing, filings } from './moves.ts';
import { type Group, thingsOf } from './sort.ts';

/** A thing without a settled number that looks like one that has lost its number in the list. */
export interface LookAlike {
  thing: Thing;
  row: Settled;
}

/**
 * Pairs things that are not settled with settled numbers that are in the list no more, where the titles are the same
 * and the thing would be filed where the number was: `numbers.csv` holds no dates, and what a folder is filed under
 * is most often one.
 */
export function lookAlikes(sorted: readonly Group[], settled: readonly Settled[]): LookAlike[] {
  if (settled.length === 0) return [];
  const present = new Set(thingsOf(sorted).map(({ number }) => number));
  const missing = new Map<string, Settled[]>();
  for (const row of settled) {
    if (row.gone !== undefined || present.has(row.number)) continue;
    const key = likeness(row.title, row);
    addTo(missing, key, row);
  }
  if (missing.size === 0) return [];
  const known = new Set(settled.map(({ number }) => number));
  return [...filings(sorted, [])].flatMap(({ thing, to }) => {
    if (thing.number !== undefined && known.has(thing.number)) return [];
    const row = missing.get(likeness(thing.title, to))?.shift();
    return row === undefined ? [] : [{ thing, row }];
  });
}

const likeness = (title: string, { groups, filedUnder }: Filing | Settled): string =>
  [title, filedUnder ?? '', ...groups].map(fold).join('\n');
