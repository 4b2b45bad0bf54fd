import { MOVED, type Settled } from '../catalogue/settled.ts';
import type { Thing } from '../catalogue/thing.ts';
import { type Arrangement, arrangement, type ToArrange } from './arrangement.ts';
import { settledFrom } from './settled-from.ts';

/** Everything that settling changes, worked out before anything is written. */
export interface Settling extends Arrangement {
  /** Numbers for the rows of the list that have none. */
  given: ReadonlyMap<number, string>;
  /** The new content of `numbers.csv`. */
  rows: readonly Settled[];
}

/**
 * Fixes where everything lies: what is settled stays, what is new is settled now.
 * @param move whether things that would now be sorted elsewhere are to be moved there
 * @param today as for `arrange`
 */
export function settle(catalogue: ToArrange, move: boolean, today: string): Settling {
  const { settled = [] } = catalogue;
  const { things, given } = numbered(catalogue.things, settled);
  const wanted = move ? arrangement({ ...catalogue, things, settled }, today).moves : [];
  const moving = new Set(wanted.map(({ from }) => from));
  const before = settled.map((row) => (moving.has(row) ? { ...row, gone: MOVED } : row));
  const arranged = arrangement({ ...catalogue, things, settled: before }, today);
  return { ...arranged, given, rows: settledFrom(arranged.groups, before) };
}

/** The numbers that things without one would get, in the order of the list. */
export const freeNumbers = ({ things, settled = [] }: Pick<ToArrange, 'things' | 'settled'>): string[] => [
  ...numbered(things, settled).given.values(),
];

/** Things without a number take the next ones after the highest that was ever used, in the order of the list. */
function numbered(things: readonly Thing[], settled: readonly Settled[]) {
  let highest = 0;
  for (const { number } of [...things, ...settled]) {
    if (number !== undefined && /^\d{1,9}$/.test(number)) highest = Math.max(highest, Number(number));
  }
  const given = new Map<number, string>();
  const all = things.map((thing) => {
    if (thing.number !== undefined) return thing;
    highest += 1;
    given.set(thing.row, String(highest));
    return { ...thing, number: String(highest) };
  });
  return { things: all, given };
}
