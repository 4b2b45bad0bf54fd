import { referenceCodes } from '../arrange/index.ts';
import { addTo } from '../catalogue/add-to.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Finding } from '../catalogue/finding.ts';
import { fold } from '../catalogue/fold.ts';
import { once } from '../catalogue/once.ts';
import type { Settled } from '../catalogue/settled.ts';
import type { Thing } from '../catalogue/thing.ts';

/** One title at another number may be chance, or the end of a row that was entered twice; two are none. */
const BY_CHANCE = 1;

/** So many are named; the rest are counted. */
const NAMED = 3;

/** A title that was settled at one number and stands at another now. */
interface Changed {
  row: Settled;
  thing: Thing;
}

/**
 * Whether titles have changed places between settled numbers, as they do when a list is sorted and its number column
 * filled anew: the numbers in pencil would then be those of other things. A title that is new is no such change.
 */
export function changedPlaces({ things, settled, settings }: Catalogue): Finding[] {
  const changed = settled.length === 0 ? [] : titlesMoved(things, settled);
  const [first] = changed;
  if (first === undefined || changed.length <= BY_CHANCE) return [];
  const codeOf = referenceCodes(settings);
  const named = changed
    .slice(0, NAMED)
    .map(
      ({ row, thing }) =>
        `“${row.title}” was settled as number ${row.number} (${codeOf(row.place)}) and is number ${thing.number} now`,
    );
  const more = changed.length - named.length;
  return [
    {
      rule: 'numbers.changed-places',
      weight: 'must',
      place: { file: 'list.csv', row: first.thing.row, column: 'number' },
      found: `The list seems to have been numbered anew: ${named.join('; ')}${more > 0 ? `; and ${more} more` : ''}.`,
      advice:
        'Write the numbers that the things had into the list again; numbers.csv has the number of each title. A new row needs none. If the numbers are right and only titles were put right, write the new titles into numbers.csv as well.',
    },
  ];
}

function titlesMoved(things: readonly Thing[], settled: readonly Settled[]): Changed[] {
  const folded = once(fold);
  const now = new Map(things.map((thing) => [thing.number, thing]));
  const was = new Map(settled.flatMap((row) => (row.gone === undefined ? [[row.number, row]] : [])));
  const saysTheSame = (thing: Thing | undefined, row: Settled | undefined) =>
    thing !== undefined && row !== undefined && folded(thing.title) === folded(row.title);
  const borne = new Map<string, number>();
  for (const { title } of [...things, ...was.values()]) {
    borne.set(folded(title), (borne.get(folded(title)) ?? 0) + 1);
  }
  const left = new Map<string, Settled[]>();
  for (const row of was.values()) {
    if (saysTheSame(now.get(row.number), row)) continue;
    addTo(left, folded(row.title), row);
  }
  return things.flatMap((thing): Changed[] => {
    if (thing.number === undefined) return [];
    const there = was.get(thing.number);
    const title = folded(thing.title);
    if (saysTheSame(thing, there)) return [];
    // At a number that was not settled, a title that several bear may be that of a new thing; and of a title whose
    // number is missing from the list altogether, `lookAlikes` speaks.
    if (there === undefined && borne.get(title) !== 2) return [];
    const row = left.get(title)?.shift();
    if (row === undefined || (there === undefined && !now.has(row.number))) return [];
    return [{ row, thing }];
  });
}
