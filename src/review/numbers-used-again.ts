import { type Arrangement, referenceCodes } from '../arrange/index.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Finding } from '../catalogue/finding.ts';
import { isMoved, type Settled } from '../catalogue/settled.ts';
import type { Thing } from '../catalogue/thing.ts';
import { wordsInCommon } from './plain-words.ts';
import { maskNumbers } from './private-numbers.ts';

// Bounds of our own: a title may be put right or reworded, and is then still like what it was.
/** Below this share of words in common, a thing at a number that was marked as gone is another than the one before. */
const LIKE = 0.25;

/**
 * Numbers that were settled for one thing and that the list gives to another. What was once given is given to nothing
 * else, so that an old note still leads where it led (common practice). A thing whose number is not marked as gone is
 * taken for another only where it shares no word with the title settled and would be filed elsewhere too.
 */
export function usedAgain(catalogue: Catalogue, { moves }: Pick<Arrangement, 'moves'>): Finding[] {
  const { settled, settings } = catalogue;
  if (settled.length === 0) return [];
  const codeOf = referenceCodes(settings);
  const filedElsewhere = new Set(moves.map(({ thing }) => thing));
  const rows = new Map(settled.flatMap((row) => (isMoved(row) ? [] : [[row.number, row] as const])));
  return catalogue.things.flatMap((thing): Finding[] => {
    const row = thing.number === undefined ? undefined : rows.get(thing.number);
    if (row === undefined || !isAnother(thing, row, filedElsewhere)) return [];
    const was = `Number ${row.number} (${codeOf(row.place)}) was settled for “${maskNumbers(row.title)}”`;
    const now = `“${maskNumbers(thing.title)}”`;
    return [
      {
        rule: 'numbers.used-again',
        weight: 'must',
        place: { file: 'list.csv', row: thing.row, column: 'number' },
        found:
          row.gone === undefined
            ? `${was}; the list gives it to ${now}, which shares no word with that and would be filed elsewhere.`
            : `${was}, which is noted as ${row.gone}; the list gives it to ${now}.`,
        advice: `If it is another thing, clear its cell of the column “number”: settling gives it a number of its own, and the old one is explained. If it is the same thing under a new title, write that title into its row of numbers.csv${row.gone === undefined ? '' : ' and clear “gone” there'}.`,
        source: 'common practice',
      },
    ];
  });
}

function isAnother(thing: Thing, row: Settled, filedElsewhere: ReadonlySet<Thing>): boolean {
  const common = wordsInCommon(thing.title, row.title);
  return row.gone === undefined ? common === 0 && filedElsewhere.has(thing) : common < LIKE;
}
