import type { Met } from './word-finder.ts';

// A word is not yet a thing: "no mould", "a letter about the pistol". What stands around it in its sentence decides.
// All of it is common practice of reading lists, in the languages in which the word tables are written.

type Place = Pick<Met<unknown>, 'text' | 'at' | 'end'>;

// The point of "9.5 mm" and of ".303" ends no sentence.
const SENTENCE_END = /^(?:[;:!?\n()–—]|\.(?!\d))/;

const endsAt = (text: string, at: number) => SENTENCE_END.test(text.slice(at, at + 2));

/** The words before and after, as far as the sentence goes. */
export function sentenceAround({ text, at, end }: Place): { before: string; after: string } {
  let from = at;
  while (from > 0 && !endsAt(text, from - 1)) from -= 1;
  let to = end;
  while (to < text.length && !endsAt(text, to)) to += 1;
  return { before: text.slice(from, at), after: text.slice(end, to) };
}

const NO =
  "no|not|never|nor|neither|without|cannot|\\p{L}+n't|free (?:of|from)|kein\\p{L}*|nicht|ohne|sans|pas de|sin|senza|uten|ingen|ikke|utan|uden|inte|geen|zonder";
const NOT_DENYING = 'doubt|sure|certain|only|just|idea|wonder|telling';
// "Not opened because of the mould", "never with the pistol that lies in it": the denial ends before the word.
const ENDS_DENIAL =
  /\b(?:because|since|as|for|due|owing|if|whether|until|till|when|by|with|from|than|that|which|who|may|and|but|yet|though|except)\b/u;
const DENIED = new RegExp(
  `(?<!\\p{L})(?:${NO})(?! (?:${NOT_DENYING})\\b)((?:[ ,/]+[\\p{L}'-]+){0,5}[ ,/]+)$`,
  'u',
);
const GONE_AFTER =
  /^(?:[ -]free|(?: (?:was|were|is|are|has|have|been|all|now|already|since))* (?:removed|taken (?:out|off|away)|gone|missing|lost|replaced))(?!\p{L})/u;
const GONE_BEFORE =
  /\b(?:removed|took (?:out|off)|taken (?:out|off)|replaced|lost|missing)(?: (?:the|all|its|their|some|\d+|rusty|old))*[ :]+$/u;

/** Whether the text says that it is not there, or not any more: "no mould", "acid-free", "staples removed". */
export function isDenied(place: Place): boolean {
  const { before, after } = sentenceAround(place);
  if (GONE_AFTER.test(after) || GONE_BEFORE.test(before)) return true;
  const between = DENIED.exec(before)?.[1];
  if (between === undefined || ENDS_DENIAL.test(between)) return false;
  // "No mould, rust or silverfish" denies all three; "no cover, mould inside" only the cover.
  const afterComma = between.lastIndexOf(',');
  if (afterComma === -1) return true;
  return (
    /\b(?:or|nor)\b/.test(between.slice(afterComma)) || /^(?:,?[ ]?\p{L}+){0,3},? (?:or|nor) /u.test(after)
  );
}

const TELLS =
  /\b(?:about|concerning|regarding|mention\w*|describ\w+|tells?|telling|told|asks?|asking|writes?|wrote|complain\w*|thank\w*|advert\w*|(?:price|cost|story|history|legend|poem|song|picture) of|(?:bill|receipt|recipe|order|licen[cs]e|permit) for|named after|called|like an?|in the shape of|shaped like)\b/;
const TELLS_IN_A_NOTE =
  /\b(?:mentions?|mentioned|describes?|tells|writes|wrote|complains?|(?:talks?|speaks?|all|is|news|story|letter) (?:about|of)|like an?|in the shape of|shaped like)\b/;

/** Whether the sentence tells of a thing rather than names it. In a note "ask about the mould" tells of nothing else. */
export function isToldOf(place: Place, inNote: boolean): boolean {
  return (inNote ? TELLS_IN_A_NOTE : TELLS).test(sentenceAround(place).before);
}

const STORY = /\b(?:he|she|they|we|who|when|where|while|used to|during|after|before)\b/;
const PRESENT =
  /\b(?:still|inside|in it|in them|left in|contains?|containing|holds?|live|loaded|full of|says?)\b/;

/** Whether the sentence tells what once happened: "she wore it when the guns came home". */
export function isStory(place: Place): boolean {
  const { before, after } = sentenceAround(place);
  return STORY.test(before) && !PRESENT.test(`${before} ${after}`);
}

const ENCLOSED =
  /\b(?:enclosed|enclosing|encloses|tucked|wrapped in|in the envelope|still in it|still inside|stuck inside|came with it|attached)\b/;

/** Whether the sentence says that something lies in with a paper: "two pills still in the envelope". */
export function isEnclosed(place: Place): boolean {
  const { before, after } = sentenceAround(place);
  return ENCLOSED.test(before) || ENCLOSED.test(after);
}

const PHYSICAL =
  /\b(?:pages?|leaf|leaves|sheets?|cover|covers|binding|spine|boards?|card|mount|mounted|mounts|frame|framed|corners?|edges?|surface|emulsion|paper|envelope|packet|bundle|can|tin|smells?)\b/;

/** Whether the sentence speaks of the thing as a thing: "the leaves brittle at the edges", not "the mill falling apart". */
export function isOfItsBody(place: Place): boolean {
  const { before, after } = sentenceAround(place);
  return PHYSICAL.test(before) || PHYSICAL.test(after);
}

/** Whether one of these words stands beside it, with two words between at most: "adoption of the rules". */
export function isBeside(place: Place, words: ReadonlySet<string>): boolean {
  if (words.size === 0) return false;
  const { before, after } = sentenceAround(place);
  const near = [
    ...(before.match(/[\p{L}\p{N}]+/gu) ?? []).slice(-3),
    ...(after.match(/[\p{L}\p{N}]+/gu) ?? []).slice(0, 3),
  ];
  return near.some((word) => words.has(word));
}
