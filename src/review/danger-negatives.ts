import type { Thing } from '../catalogue/thing.ts';
import { isDenied, isToldOf } from './word-context.ts';
import { searchable } from './word-finder.ts';

// All patterns are common practice of reading lists. Families write "negs"; one alone is "negative" only where a text
// begins with it, since an answer can be negative too.
const BEFORE =
  '(?:(?:an?|one|two|three|four|some|old|large|small|loose|lost|film|roll film|nitrate|black and white|colou?r|original|family|\\d+(?:[.,]\\d+)?(?: ?(?:mm|cm|in))?|strips?|rolls?|box|tin|packet|envelope|bag|wallet|bundle|set|lot|of|x) +)*';
const BEGINS = new RegExp(
  `^\\W*${BEFORE}(?:negatives|negs|neg(?:ative)? (?:of|from|strips?)\\b|neg(?:ative)?$)`,
  'u',
);
const ANYWHERE = /\b(?:negatives|negs|neg(?:ative)? strips?)\b/gu;
// "Packet of negatives", "with the negatives": they lie in with a paper. A letter about them holds none.
const LIES_WITH =
  /\b(?:with|and|plus|contain(?:s|ing)?|holds?|enclos(?:ed|ing)|(?:packet|box|envelope|tin|strips?|rolls?|bundle|album|wallet|set|sleeve|bag) of) (?:(?:the|its|their|some|old|loose|few|a|\d+) )*(?:\w+ )?$/u;
const ENCLOSED_AFTER = /^ (?:are |still )*(?:enclosed|inside|in it|attached|in the envelope)\b/u;
// "Prints from the negatives", "list of negatives", "for the negatives" are something else.
const SOMETHING_ELSE =
  /\b(?:from|off|after|for|lists? of|index (?:of|to)|register of|cop(?:y|ies) of|prints? of|scans? of) (?:(?:the|its|old|some|her|his|their) )*(?:\w+ )?$/u;

/** Whether a text names negatives that are there, as the text of a thing that may hold them. */
function namesNegatives(written: string, { isNote, isPaper }: { isNote: boolean; isPaper: boolean }) {
  const text = searchable(written).replace(/\s+/g, ' ');
  const begins = BEGINS.exec(text);
  const places = [...text.matchAll(ANYWHERE)].map(({ 0: { length }, index }) => ({
    at: index,
    end: index + length,
  }));
  // "Negative of the ferry" is one word of one thing.
  if (places.length === 0) return begins !== null;
  return places.some(({ at, end }) => {
    const place = { text, at, end };
    if (isDenied(place)) return false;
    if (begins !== null && at < begins[0].length) return true;
    const before = text.slice(0, at);
    if (SOMETHING_ELSE.test(before) || isToldOf(place, isNote)) return false;
    return !isPaper || LIES_WITH.test(before) || ENCLOSED_AFTER.test(text.slice(end));
  });
}

const MAY_NAME = /\bneg(?:s|ative|atives)?\b/i;

/** Whether some column of a row names negatives that lie in with the thing, whatever its kind. */
export function hasNegatives(thing: Thing, isPaper: boolean): boolean {
  const {
    kind = '',
    title,
    size = '',
    condition = '',
    description = '',
    note = '',
    familyNote = '',
    extra,
  } = thing;
  const cells = [kind, title, size, condition, description].map((text) => ({ text, isNote: false }));
  cells.push(...[note, familyNote].map((text) => ({ text, isNote: true })));
  return (
    cells.some(({ text, isNote }) => MAY_NAME.test(text) && namesNegatives(text, { isNote, isPaper })) ||
    // A column that the program does not know may say where a thing lay: "in the box of negatives".
    extra.some(({ text }) => MAY_NAME.test(text) && BEGINS.test(searchable(text)))
  );
}
