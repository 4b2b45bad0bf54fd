import { fold } from '../catalogue/fold.ts';
import { isMoved, type Settled } from '../catalogue/settled.ts';
import type { Thing } from '../catalogue/thing.ts';
import { groupTitle } from './devised-titles.ts';
import type { Group } from './sort.ts';

/** A thing that would now be sorted elsewhere than where it was settled. */
export interface Move {
  thing: Thing;
  from: Settled;
  to: Filing;
}

/** Where something is filed: the titles of its groups, outermost first, and what its folder is filed under. */
export interface Filing {
  groups: readonly string[];
  filedUnder: string | undefined;
}

/** The settled things that would be filed elsewhere if nothing were settled, in the order of that sorting. */
export function movesWanted(sorted: readonly Group[], settled: readonly Settled[]): Move[] {
  if (settled.length === 0) return [];
  const rows = new Map(settled.flatMap((row) => (isMoved(row) ? [] : [[row.number, row] as const])));
  return [...filings(sorted, [])].flatMap(({ thing, to }) => {
    const from = thing.number === undefined ? undefined : rows.get(thing.number);
    return from === undefined || sameFiling(from, to) ? [] : [{ thing, from, to }];
  });
}

/** Where each thing would be filed if nothing were settled. */
export function* filings(
  groups: readonly Group[],
  above: readonly string[],
): Generator<{ thing: Thing; to: Filing }> {
  for (const group of groups) {
    const titles = [...above, groupTitle(group)];
    yield* filings(group.groups, titles);
    for (const { label, things } of group.folders) {
      for (const thing of things) yield { thing, to: { groups: titles, filedUnder: label } };
    }
  }
}

const sameFiling = (a: Filing | Settled, b: Filing) =>
  fold(a.filedUnder ?? '') === fold(b.filedUnder ?? '') &&
  a.groups.map(fold).join('\n') === b.groups.map(fold).join('\n');
