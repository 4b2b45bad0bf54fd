import type { Arrangement } from '../arrange/index.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import { NOT_BOXED } from '../housing/shelf-list.ts';
import { isAbout } from './answers.ts';
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

const BEFORE_BOXING = new Map(
  HAZARDS.flatMap(({ name, notBoxed, advice }, rank) =>
    notBoxed === undefined ? [] : [[name, { notBoxed, advice, rank }] as const],
  ),
);

/**
 * What is not to be boxed, by reference code, the most urgent first. What `collection.yaml` answers has been looked
 * at, and is left out.
 */
export function notToBeBoxed(
  { settings, things }: Pick<Catalogue, 'settings' | 'things'>,
  { groups }: Pick<Arrangement, 'groups'>,
): ReadonlyMap<string, NotBoxed> {
  const hazards = hazardsByRow(things, wordTables(settings).danger);
  const codes = codesByRow(groups, settings);
  const found: { code: string; rank: number; one: NotBoxed }[] = [];
  for (const thing of things) {
    const code = codes.get(thing.row);
    const isAnswered = (name: HazardName) =>
      settings.check.answers.some(
        (answer) =>
          answer.rule === `danger.${name}` && (answer.of === undefined || isAbout(thing, code)(answer.of)),
      );
    const left = (hazards.get(thing.row) ?? []).flatMap((name) => {
      const known = BEFORE_BOXING.get(name);
      return known === undefined || isAnswered(name) ? [] : [known];
    });
    const [first] = left;
    if (first === undefined || code === undefined) continue;
    const has = left.map(({ notBoxed }) => notBoxed).join(', ');
    const one = { thing: sayThings([thing]), has, advice: left.map(({ advice }) => advice) };
    found.push({ code, rank: first.rank, one });
  }
  return new Map(found.sort((a, b) => a.rank - b.rank).map(({ code, one }) => [code, one]));
}

/** The words that stand beside such a thing wherever it gets a place in a box. */
export const sayNotBoxed = ({ has }: Pick<NotBoxed, 'has'>): string => `${NOT_BOXED}: ${has}`;
