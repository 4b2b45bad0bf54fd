import { isOpen } from '../arrange/index.ts';
import type { Finding } from '../catalogue/finding.ts';
import type { Thing } from '../catalogue/thing.ts';
import { endSaid } from './end-said.ts';
import { sayThings } from './said-together.ts';

/** The end that the access of a thing names, while its own column is blank. */
export const endInAccess = ({ access, until }: Thing, today: string) =>
  until !== undefined || isOpen(access) ? undefined : endSaid(access, Number(today.slice(0, 4)));

/**
 * Ends that stand under “access” only: no program reads them there, so that exports tell no end.
 * @param today YYYY-MM-DD
 */
export function reviewEnds(things: readonly Thing[], today: string): Finding[] {
  const found = things.flatMap((thing) => {
    const end = endInAccess(thing, today);
    if (end === undefined) return [];
    return [{ ...thing, beside: end.year === undefined ? 'no year is named' : `read as ${end.year}` }];
  });
  const [first] = found;
  if (first === undefined) return [];
  return [
    {
      rule: 'access.end-not-under-until',
      weight: 'should',
      place: { file: 'list.csv', row: first.row, column: 'access' },
      found: `What is said under “access” names an end, and “until” is blank, so that no export can tell when it ends: ${sayThings(found)}.`,
      advice:
        'Put the year into the column “until”. From so many years work it out; where it ends with a life or an event, put the latest year that can be.',
      source: 'DACS 4.1.5, from memory',
    },
  ];
}
