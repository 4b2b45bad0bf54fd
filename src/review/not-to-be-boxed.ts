import type { Arrangement } from '../arrange/index.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import { NOT_BOXED } from '../housing/shelf-list.ts';
import { isAnswered } from './answers.ts';
import { codesByRow } from './codes-by-row.ts';
import { hazardsByRow } from './danger.ts';
import { HAZARDS, type HazardName } from './danger-hazards.ts';
import { wordTables } from './own-words.ts';
import { sayThings } from './said-together.ts';

/** A thing that is not to be boxed before somebody has looked at it. */
export interface NotBoxed {
  /** The thing as reports name it: “Grenade” (no. 9, row 10). */
  thing: string;
  /** What it has of danger or decay: ammunition, mould. */
  has: string;
  /** What to do about each of these. */
  advice: readonly string[];
}

interface BeforeBoxing {
  notBoxed: string;
  advice: string;
  rank: number;
}

const BEFORE_BOXING: ReadonlyMap<HazardName, BeforeBoxing> = new Map(
  HAZARDS.flatMap(({ name, notBoxed, advice }, rank) =>
    notBoxed === undefined ? [] : [[name, { notBoxed, advice, rank }] as const],
  ),
);

/**
 * What each row has that is not to be boxed, the most urgent first; rows without any are left out. What
 * `collection.yaml` answers has been looked at, and is left out too.
 * @param codes reference codes by row
 */
function beforeBoxing(
  { settings, things }: Pick<Catalogue, 'settings' | 'things'>,
  codes: ReturnType<typeof codesByRow>,
): ReadonlyMap<number, BeforeBoxing[]> {
  const hazards = hazardsByRow(things, wordTables(settings).danger);
  const found = new Map<number, BeforeBoxing[]>();
  for (const thing of things) {
    const code = codes.get(thing.row);
    const left = (hazards.get(thing.row) ?? []).flatMap((name) => {
      const known = BEFORE_BOXING.get(name);
      return known === undefined || isAnswered(settings, `danger.${name}`, thing, code) ? [] : [known];
    });
    if (left.length > 0) found.set(thing.row, left);
  }
  return found;
}

/** The rows of those things that are not to be boxed. */
export const rowsNotBoxed = (
  catalogue: Pick<Catalogue, 'settings' | 'things'>,
  { groups }: Pick<Arrangement, 'groups'>,
): ReadonlySet<number> => new Set(beforeBoxing(catalogue, codesByRow(groups, catalogue.settings)).keys());

/** What is not to be boxed, by reference code, the most urgent first. */
export function notToBeBoxed(
  catalogue: Pick<Catalogue, 'settings' | 'things'>,
  { groups }: Pick<Arrangement, 'groups'>,
): ReadonlyMap<string, NotBoxed> {
  const codes = codesByRow(groups, catalogue.settings);
  const left = beforeBoxing(catalogue, codes);
  const found: { code: string; rank: number; one: NotBoxed }[] = [];
  for (const thing of catalogue.things) {
    const code = codes.get(thing.row);
    const [first, ...others] = left.get(thing.row) ?? [];
    if (first === undefined || code === undefined) continue;
    const all = [first, ...others];
    const has = all.map(({ notBoxed }) => notBoxed).join(', ');
    const one = { thing: sayThings([thing]), has, advice: all.map(({ advice }) => advice) };
    found.push({ code, rank: first.rank, one });
  }
  return new Map(found.sort((a, b) => a.rank - b.rank).map(({ code, one }) => [code, one]));
}

/** The words that stand beside such a thing wherever it gets a place in a box. */
export const sayNotBoxed = ({ has }: Pick<NotBoxed, 'has'>): string => `${NOT_BOXED}: ${has}`;
