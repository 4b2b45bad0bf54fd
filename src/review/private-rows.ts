import { readKind } from '../arrange/index.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import { once } from '../catalogue/once.ts';
import type { Thing } from '../catalogue/thing.ts';
import type { Kind } from '../kinds/kinds.ts';
import { LIFETIME, type Life, type Lives, lastYearIn, lastYearOfWhole } from './living.ts';
import { kindSaid } from './material.ts';
import { MATTERS, type MatterName } from './private-matters.ts';
import type { PrivateColumn, PrivateWord } from './private-words.ts';
import { isBeside, isDenied } from './word-context.ts';
import { wordFinder } from './word-finder.ts';

/** A row with private matter of somebody who may be living. */
export interface PrivateRow {
  thing: Thing;
  matter: MatterName;
  column: PrivateColumn;
  /** Names of those who may be living; empty where the row names nobody. */
  living: readonly string[];
  /** The year until which it is usually closed; undefined where neither a birth nor a date is known. */
  until: number | undefined;
  /** From what that year is reckoned. */
  since?: string;
}

// What was printed for everybody, what shows rather than tells, and what is no writing at all.
const PUBLIC: ReadonlySet<Kind['group']> = new Set([
  'Recipes',
  'Printed matter',
  'Maps and plans',
  'Music',
  'Drawings and prints',
  'Photographs',
  'Textiles and objects',
]);

const KNOWN = new Map(MATTERS.map((matter) => [matter.name, matter]));

/** Who writes as a doctor or a teacher does not write of himself. */
const BY_TRADE = /^(?:dr|doctor|prof|professor|rev|reverend|nurse|judge|pastor|father|sister)\b/i;

/** The rows with private matter of people who may be living, each matter for itself. */
export function privateRows(
  { things }: Catalogue,
  aid: FindingAid,
  lives: Lives,
  { today, words }: { today: string; words: readonly PrivateWord[] },
): PrivateRow[] {
  const year = Number(today.slice(0, 4));
  const lastOfWhole = lastYearOfWhole(aid);
  const mattersIn = finderOfMatters(words);
  return things.flatMap((thing): PrivateRow[] => {
    const written = lastYearIn(thing.date);
    if ((written ?? lastOfWhole ?? year) + LIFETIME <= year) return [];
    const matters = mattersIn(thing);
    if (matters.size === 0) return [];
    return [...matters].flatMap(([matter, { column, ofOthers }]): PrivateRow[] => {
      const known = ofOthers ? [] : concerned(thing, lives);
      const { age = 0, keptOut = false } = KNOWN.get(matter) ?? {};
      const living = known.filter(({ mayLive }) => mayLive);
      if (known.length > 0 && living.length === 0) return [];
      const births = (living.length === 0 ? [undefined] : living).map((life) =>
        latestBirth(life, written, age),
      );
      const last = latestOf(births);
      const until = last === undefined ? undefined : last.year + LIFETIME;
      if (until !== undefined && until <= year) return [];
      const row = { thing, matter, column, living: living.map(({ name }) => name) };
      return [
        last === undefined || keptOut ? { ...row, until: undefined } : { ...row, until, since: last.since },
      ];
    });
  });
}

/** The latest of some years; undefined where one of them is not known. */
const latestOf = (years: readonly (Reckoned | undefined)[]): Reckoned | undefined =>
  years.reduce((a, b) => (a === undefined || b === undefined ? undefined : b.year > a.year ? b : a));

/** A year, and from what it is reckoned. */
interface Reckoned {
  year: number;
  since: string;
}

/** The last year in which a person can have been born, by what is noted, or by what names them and by the age they had. */
function latestBirth(life: Life | undefined, written: number | undefined, age: number): Reckoned | undefined {
  if (life?.born !== undefined) return { year: life.born, since: `born ${life.born}` };
  const known: Reckoned[] = [];
  if (life?.named !== undefined)
    known.push({ year: life.named, since: `named by ${life.named}, so born by then` });
  if (written !== undefined) {
    const since =
      age === 0 ? `born by ${written}` : `at least ${age} in ${written}, so born by ${written - age}`;
    known.push({ year: written - age, since });
  }
  return known.sort((a, b) => a.year - b.year)[0];
}

/** The single people whom a row is about, as far as the catalogue knows them. */
function concerned({ people, creators }: Thing, { lifeOf }: Lives): Life[] {
  const names = new Set([...people, ...creators.filter((name) => !BY_TRADE.test(name))]);
  return [...names].map(lifeOf).filter((life) => life !== undefined);
}

interface Where {
  column: PrivateColumn;
  ofOthers: boolean;
}

const noMatters: ReadonlyMap<MatterName, Where> = new Map();

function finderOfMatters(words: readonly PrivateWord[]): (thing: Thing) => ReadonlyMap<MatterName, Where> {
  const inText = wordFinder(words.map((row) => ({ ...row, harmless: new Set(row.unless) })));
  const inKind = once(inText);
  const groupOf = once((kind: string) => readKind(kind)?.kind.group);

  return ({ kind, title, description, note }) => {
    const group = kind === undefined ? undefined : groupOf(kind);
    if (group !== undefined && PUBLIC.has(group)) return noMatters;
    let found: Map<MatterName, Where> | undefined;
    const look = (column: PrivateColumn, met: ReturnType<typeof inText>) => {
      for (const word of met) {
        const { matter, columns, harmless, ofOthers = false } = word.row;
        if (columns?.includes(column) === false || found?.has(matter)) continue;
        if (isBeside(word, harmless) || isDenied(word)) continue;
        // Nobody noted a kind that is known: "cutting about the divorce" is printed all the same.
        const said = column === 'title' ? kindSaid(word.text, word.at, word.end) : kindSaid(title);
        if (group === undefined && said !== undefined && PUBLIC.has(said.group)) continue;
        found ??= new Map();
        found.set(matter, { column, ofOthers });
      }
    };
    if (kind !== undefined) look('kind', inKind(kind));
    look('title', inText(title));
    if (description !== undefined) look('description', inText(description));
    if (note !== undefined) look('note', inText(note));
    return found ?? noMatters;
  };
}
