import type { Arrangement } from '../arrange/index.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Finding } from '../catalogue/finding.ts';
import { covers } from '../housing/measures.ts';
import { foldersOf } from '../housing/placed.ts';
import { inWords } from '../housing/size-checked.ts';
import { sizeReading } from '../housing/usual-form.ts';
import { maskNumbers } from './private-numbers.ts';

/**
 * Things that were settled before their size was known, and are larger than the folder in which they have their place.
 * Only a size that the list states and that can be read is held against it.
 */
export function outgrown({ settled }: Catalogue, { groups }: Arrangement): Finding[] {
  const live = new Set(settled.flatMap(({ number, gone }) => (gone === undefined ? [number] : [])));
  return foldersOf(groups).flatMap(({ held, things }) => {
    if (held === undefined) return [];
    const { first, last, holder } = held;
    const folder = first === last ? `folder ${first}` : `folders ${first} to ${last}`;
    return things.flatMap(({ thing, piece, apart, units }): Finding[] => {
      const isSettled = thing.number !== undefined && live.has(thing.number);
      if (!isSettled || apart !== undefined || units.length === 0) return [];
      if (sizeReading(thing)?.kind !== 'size' || covers(holder.inside, piece.size)) return [];
      return [
        {
          rule: 'numbers.outgrown',
          weight: 'should',
          place: { file: 'list.csv', row: thing.row, column: 'size' },
          found: `“${maskNumbers(thing.title)}” is settled in ${folder}, ${last === first ? 'which takes' : 'which take'} ${inWords(holder.inside)}, and is larger: ${inWords(piece.size)}.`,
          advice:
            'Do not fold it. Keep it flat in a larger folder with the same code, and leave a slip in the smaller one that says where it lies. Or give it a new place: write “removed” under “gone” in its row of numbers.csv, empty its cell of the column “number” in the list, and settle again.',
          source: 'common practice',
        },
      ];
    });
  });
}
