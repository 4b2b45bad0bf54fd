import { once } from '../catalogue/once.ts';
import type { Thing } from '../catalogue/thing.ts';
import { counts, type ReadyWord, readyWord } from './danger-counts.ts';
import { hazardOfFilm, isNegatives } from './danger-film.ts';
import type { HazardName } from './danger-hazards.ts';
import { ROUNDS, roundsIn } from './danger-rounds.ts';
import type { DangerColumn, DangerWord } from './danger-words.ts';
import { type Met, wordFinder } from './word-finder.ts';

/** What is found of a thing, and under which heading it stands. */
type HazardsOfThing = ReadonlyMap<HazardName, string>;

const noHazards: HazardsOfThing = new Map();
const rounds = readyWord(ROUNDS);
// In any language of the tables.
const NITRATE = /nitr[ao]|zellulose|celluloid|zelluloid/i;
const OF_NITRATE: ReadonlySet<HazardName> = new Set(['nitrate-film', 'nitrate-negatives']);

/** Finds what a row of the list says of dangers and decay, by a table of words and by kind and date. */
export function finderOfHazards(words: readonly DangerWord[]): (thing: Thing) => HazardsOfThing {
  const ofTable = wordFinder(words.map(readyWord));
  const inText = (text: string): readonly Met<ReadyWord>[] => {
    const more = roundsIn(text, rounds);
    return more.length === 0 ? ofTable(text) : [...ofTable(text), ...more];
  };
  // Cells that many rows share; titles, descriptions and notes seldom are.
  const inSharedText = once(inText);

  return (thing) => {
    const { kind, title, description, size, condition, note, familyNote, extra } = thing;
    let found: Map<HazardName, string> | undefined;
    const look = (column: DangerColumn, met: readonly Met<ReadyWord>[], heading: string = column) => {
      for (const word of met) {
        if (!counts(word, column, thing)) continue;
        const hazard = said(word.row.hazard, thing);
        if (found?.has(hazard)) continue;
        found ??= new Map();
        found.set(hazard, heading);
      }
    };
    if (kind !== undefined) look('kind', inSharedText(kind));
    look('title', inText(title));
    if (condition !== undefined) look('condition', inSharedText(condition));
    if (note !== undefined) look('note', inText(note));
    if (familyNote !== undefined) look('note', inText(familyNote), 'family note');
    if (description !== undefined) look('description', inText(description));
    if (size !== undefined) look('size', inSharedText(size));
    // What the program does not know the meaning of may say where a thing was found: only this is plain in any column.
    for (const { heading, text } of extra) {
      if (!NITRATE.test(text)) continue;
      look(
        'note',
        inText(text).filter(({ row }) => OF_NITRATE.has(row.hazard)),
        heading,
      );
    }

    const film = hazardOfFilm(thing);
    if (film !== undefined && !isSaid(film, found)) {
      found ??= new Map();
      found.set(film, kind === undefined ? 'title' : 'kind');
    }
    return found ?? noHazards;
  };
}

/** "Nitrate" is one word, and what to do about a reel and about negatives differs. */
const said = (hazard: HazardName, thing: Thing): HazardName =>
  hazard === 'nitrate-film' && isNegatives(thing) ? 'nitrate-negatives' : hazard;

/** What the list says of a film goes before what its date makes likely. */
function isSaid(film: HazardName, found: HazardsOfThing = noHazards): boolean {
  const saysNitrate = found.has('nitrate-film') || found.has('nitrate-negatives');
  return found.has(film) || saysNitrate || (film === 'acetate-film' && found.has('vinegar'));
}
