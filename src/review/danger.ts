import type { Finding } from '../catalogue/finding.ts';
import { once } from '../catalogue/once.ts';
import type { Thing } from '../catalogue/thing.ts';
import { hazardOfFilm } from './danger-film.ts';
import { HAZARDS, type Hazard, type HazardName } from './danger-hazards.ts';
import { DANGER_WORDS, type DangerColumn, type DangerWord } from './danger-words.ts';
import type { Rules } from './index.ts';
import { materialOf, materialSaid } from './material.ts';
import { sayThings } from './said-together.ts';
import { isBeside, isDenied, isEnclosed, isOfItsBody, isStory, isToldOf } from './word-context.ts';
import { type Met, wordFinder } from './word-finder.ts';

interface Hit {
  row: number;
  title: string;
  column: DangerColumn;
}

/** What can hurt somebody or decays, by kind and date and by the words of the list. */
export const reviewDanger: Rules = dangerRules(DANGER_WORDS);

/** The rules on danger and decay with a word table of one's own. */
export function dangerRules(words: readonly DangerWord[]): Rules {
  const hazardsOf = finderOfHazards(words);
  return ({ things }) => {
    const hits = new Map<HazardName, Hit[]>();
    for (const thing of things) {
      for (const [name, column] of hazardsOf(thing)) {
        const hit = { row: thing.row, title: thing.title, column };
        const others = hits.get(name);
        if (others === undefined) hits.set(name, [hit]);
        else others.push(hit);
      }
    }
    return HAZARDS.flatMap((hazard) => findingsOn(hazard, hits.get(hazard.name) ?? []));
  };
}

function findingsOn(hazard: Hazard, hits: readonly Hit[]): Finding[] {
  const together = hazard.alone === true ? hits.map((hit) => [hit]) : [hits];
  return together.flatMap((things): Finding[] => {
    const [first] = things;
    if (first === undefined) return [];
    return [
      {
        rule: `danger.${hazard.name}`,
        weight: 'caution',
        place: { file: 'list.csv', row: first.row, column: first.column },
        found: `${hazard.says}: ${sayThings(things)}. ${hazard.because}`,
        advice: hazard.advice,
        source: hazard.source,
      },
    ];
  });
}

type HazardsOfThing = ReadonlyMap<HazardName, DangerColumn>;

const noHazards: HazardsOfThing = new Map();

function finderOfHazards(words: readonly DangerWord[]): (thing: Thing) => HazardsOfThing {
  const inText = wordFinder(words.map((row) => ({ ...row, harmless: new Set(row.unless) })));
  // Cells that many rows share; titles, descriptions and notes seldom are.
  const inSharedText = once(inText);

  return (thing) => {
    const { kind, title, description, size, condition, note } = thing;
    let found: Map<HazardName, DangerColumn> | undefined;
    const look = (column: DangerColumn, met: ReturnType<typeof inText>) => {
      for (const word of met) {
        const { hazard } = word.row;
        if (found?.has(hazard) || !counts(word, column, thing)) continue;
        found ??= new Map();
        found.set(hazard, column);
      }
    };
    if (kind !== undefined) look('kind', inSharedText(kind));
    look('title', inText(title));
    if (condition !== undefined) look('condition', inSharedText(condition));
    if (note !== undefined) look('note', inText(note));
    if (description !== undefined) look('description', inText(description));
    if (size !== undefined) look('size', inSharedText(size));

    const film = hazardOfFilm(thing);
    if (film !== undefined && !isSaid(film, found)) {
      found ??= new Map();
      found.set(film, kind === undefined ? 'title' : 'kind');
    }
    return found ?? noHazards;
  };
}

/** What the list says of a film goes before what its date makes likely. */
function isSaid(film: HazardName, found: HazardsOfThing = noHazards): boolean {
  return found.has(film) || found.has('nitrate-film') || (film === 'acetate-film' && found.has('vinegar'));
}

/** Whether a word that was met means that the thing is, or has, what it says. */
function counts(
  met: Met<DangerWord & { harmless: ReadonlySet<string> }>,
  column: DangerColumn,
  thing: Thing,
): boolean {
  const { columns, of, harmless } = met.row;
  if (!columns.includes(column) || isBeside(met, harmless) || isDenied(met)) return false;
  let material = thing.kind === undefined ? 'unknown' : materialOf(thing.kind);
  if (material === 'unknown') {
    material = column === 'title' ? materialSaid(met.text, met.at, met.end) : materialSaid(thing.title);
  }
  if (material === 'digital') return false;
  const isThing = columns.includes('kind');
  const tells = material === 'paper' || material === 'picture' || material === 'film' || material === 'sound';
  if (column === 'condition') return of?.includes(material) !== false || (isThing && isEnclosed(met));
  if (column !== 'kind' && column !== 'size' && isToldOf(met, column === 'note')) return false;
  if (of?.includes(material) === false) return isThing && column !== 'title' && isEnclosed(met);
  if (isThing) return (column !== 'description' && column !== 'note') || !isStory(met);
  if (column === 'description' && tells) return isOfItsBody(met);
  // A picture's title says what it shows: "mouldy hay", but "mouldy photographs".
  if (column === 'title' && material === 'picture') return materialSaid(met.text, 0, met.end) !== 'unknown';
  return true;
}
