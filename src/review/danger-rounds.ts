import type { DangerWord } from './danger-words.ts';
import { listed } from './listed.ts';
import { sentenceAround } from './word-context.ts';
import { type Met, searchable } from './word-finder.ts';

// Calibres as families write them, from memory: .303 and 7.92 mm, 12 bore, 18-pounder, and the bare numbers that are
// hardly anything else.
const CALIBRE =
  '(?:\\.\\d{2,3}\\b|\\b(?:22|25|32|38|44|45|303|308|357|410|455|577|762|792)\\b|\\b\\d{1,3}(?:[.,]\\d{1,2})?[ -]?(?:mm|bore|gauge|pdr|pounder)\\b)(?:[ -]?(?:calib(?:re|er)|cal|inch|in)\\b\\.?)?';
// "Round" is also what a tin is: as a thing it ends its phrase, or something is told of it.
const ENDS =
  '(?=\\s*(?:$|[.,;:()?!–—]|(?:and|from|in|inside|enclosed|tucked|not|never|still|that|with|unfired|fired|live|found|brought|kept|left|was|is|of (?!golf|drinks|toast|cheese|applause))\\b))';
const ROUND = `(?:round${ENDS}|rounds|bullets?|shells?|shell[ -]cases?|cartridges?|cartridge[ -]cases?|ammunition|ammo|slugs?|projectiles?)\\b`;
const STATE =
  '\\b(?:live|fired|unfired|spent|empty|tracer|blank|dummy|inert|unexploded|rifle|pistol|revolver|machine[ -]gun)';

const WITH_CALIBRE = new RegExp(
  `(?:${STATE}[ -])?${CALIBRE}[ -](?:${STATE.slice(2)}[ -]|brass )?${ROUND}`,
  'gu',
);
const WITH_STATE = new RegExp(
  `${STATE}[ -](?:brass )?(?:round${ENDS}|rounds|shells?|slugs?|projectiles?)\\b`,
  'gu',
);
const OF_CALIBRE = new RegExp(`\\brounds? of (?:ammunition|ammo|${CALIBRE})`, 'gu');
// "He went round", "all round" and "the milk round" are none.
const ALONE = new RegExp(
  `(?<!\\b(?:went|go|goes|going|come|came|all|year|look|looked|turn|turned|way|walked|carried|pass|passed|handed|milk|paper|the) )\\b(?:round${ENDS}|rounds)\\b`,
  'gu',
);
const SOLDIERS = /\b(?:home guard|not fired|never fired|unfired|live|rifle|pistol|revolver|army)\b/u;
const MAY_HOLD = /\b(?:rounds?|bullets?|shells?|cartridges?|ammunition|ammo|slugs?|projectiles?)\b/iu;

/** What is met where a calibre, or the words around it, tell that a round is one of ammunition. */
export const ROUNDS: DangerWord = {
  hazard: 'ammunition',
  words: [],
  columns: ['kind', 'title', 'description', 'size', 'condition', 'note'],
  of: ['object', 'textile', 'unknown'],
  unless: listed(
    'sea, beach, shore, oyster, egg, eggs, conch, cowrie, snail, nut, nuts, toy, golf, boxing, cheese, sandwiches, postman, ink, toner, printer, printed',
  ),
  source: 'common practice; the calibres from memory',
};

/** Ammunition that no list of words can hold, since a calibre stands between them: "live .303 round", "9mm bullets". */
export function roundsIn<Row>(written: string, row: Row): Met<Row>[] {
  if (!MAY_HOLD.test(written)) return [];
  const text = searchable(written);
  const met = (pattern: RegExp) =>
    [...text.matchAll(pattern)].map(({ 0: { length }, index }) => ({
      row,
      text,
      at: index,
      end: index + length,
    }));
  const alone = met(ALONE).filter((place) => {
    const { before, after } = sentenceAround(place);
    return SOLDIERS.test(before) || SOLDIERS.test(after);
  });
  return [...met(WITH_CALIBRE), ...met(WITH_STATE), ...met(OF_CALIBRE), ...alone];
}
