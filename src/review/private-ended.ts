import { isOpen } from '../arrange/index.ts';
import type { Finding } from '../catalogue/finding.ts';
import type { Thing } from '../catalogue/thing.ts';
import { bounds } from '../dates/index.ts';
import { sayThings } from './said-together.ts';

/**
 * Restrictions that have ended by their own date: exports go on telling them, for nothing opens by itself.
 * @param today YYYY-MM-DD
 * @param closedLonger of what has to be closed for longer another rule speaks
 */
export function reviewEnded(
  things: readonly Thing[],
  today: string,
  closedLonger: ReadonlySet<Thing>,
): Finding[] {
  const ended = things.filter((thing) => hasEnded(thing, today) && !closedLonger.has(thing));
  const [first] = ended;
  if (first === undefined) return [];
  const said = ended.map((thing) => ({ ...thing, beside: `until ${thing.until?.written}` }));
  return [
    {
      rule: 'private.restriction-ended',
      weight: 'consider',
      place: { file: 'list.csv', row: first.row, column: 'until' },
      found: `Restrictions that have ended, and that the list still calls restrictions: ${sayThings(said)}.`,
      advice:
        'Where the reason has passed as well, empty “access” and “until”; else put a later year under “until”. Nothing opens by itself: until you change the row, every export tells it as restricted.',
      source: 'common practice',
    },
  ];
}

function hasEnded({ access, until }: Thing, today: string): boolean {
  if (until?.reading.kind !== 'date' || isOpen(access)) return false;
  const { latest } = bounds(until.reading.edtf);
  return latest !== undefined && latest < today;
}
