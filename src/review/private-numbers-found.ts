import type { Finding } from '../catalogue/finding.ts';
import type { Thing } from '../catalogue/thing.ts';
import { findNumbers } from './private-numbers.ts';
import { sayThings } from './said-together.ts';

interface Hit {
  thing: Thing;
  column: string;
}

/**
 * Numbers by which people or their money can be got at, written out in the list. An access condition does not help
 * here: it closes the thing, while the list goes into the finding aid. No finding repeats the number.
 */
export function reviewNumbers(things: readonly Thing[]): Finding[] {
  const hits = new Map<string, { about: 'identity' | 'money'; source: string; rows: Hit[] }>();
  for (const thing of things) {
    for (const [column, text] of cellsOf(thing)) {
      for (const { rule } of findNumbers(text)) {
        const { name, about, source } = rule;
        const of = hits.get(name) ?? { about, source, rows: [] };
        hits.set(name, of);
        if (of.rows.every((hit) => hit.thing !== thing)) of.rows.push({ thing, column });
      }
    }
  }
  return [...hits].map(
    ([name, { about, source, rows }]): Finding => ({
      rule: `private.${about}-number`,
      weight: 'should',
      place: {
        file: 'list.csv',
        ...(rows[0] !== undefined && { row: rows[0].thing.row, column: rows[0].column }),
      },
      found: `What looks like ${name} stands in the list: ${sayThings(
        rows.map(({ thing, column }) => ({ ...thing, beside: `column ${column}` })),
      )}.`,
      advice:
        'Take it out of the list, which goes into the finding aid and to whoever reads that; on copies, black it out. If it is some other number, leave it.',
      source,
    }),
  );
}

/** The cells that may hold one, under the headings of their columns. */
export function* cellsOf(thing: Thing): Generator<[column: string, text: string]> {
  const { title, occasion, description, condition, access, note, extra } = thing;
  yield ['title', title];
  if (description !== undefined) yield ['description', description];
  if (note !== undefined) yield ['note', note];
  if (occasion !== undefined) yield ['occasion', occasion];
  if (condition !== undefined) yield ['condition', condition];
  if (access !== undefined) yield ['access', access];
  for (const { heading, text } of extra) yield [heading, text];
}
