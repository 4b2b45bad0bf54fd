import type { Arrangement } from '../arrange/index.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Finding } from '../catalogue/finding.ts';
import { rowsNotBoxed } from './not-to-be-boxed.ts';
import { maskNumbers } from './private-numbers.ts';

/** What fits into no box. Of what is not to be boxed at all before somebody has looked at it, no box is asked for. */
export function reviewUnboxed({ settings }: Catalogue, { boxes, groups }: Arrangement): Finding[] {
  const packages = boxes.flatMap(({ type, number, units }) => {
    const things = units.flatMap((unit) => unit.things.map(({ thing }) => thing));
    return type === 'box' || things.length === 0 ? [] : [{ number, things }];
  });
  if (packages.length === 0) return [];
  const held = rowsNotBoxed({ settings, things: packages.flatMap(({ things }) => things) }, { groups });
  return packages.flatMap(({ number, things }): Finding[] => {
    const [thing] = things;
    if (thing === undefined || things.some(({ row }) => held.has(row))) return [];
    return [
      {
        rule: 'housing.no-box',
        weight: 'should',
        place: { file: 'list.csv', row: thing.row },
        found: `“${maskNumbers(thing.title)}” fits into none of the boxes, and becomes package ${number}.`,
        advice:
          'Name a box for it under “housing” in collection.yaml, or wrap it in acid-free paper and lay it flat.',
        source: 'common practice',
      },
    ];
  });
}
