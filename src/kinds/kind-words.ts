import { fold } from '../catalogue/fold.ts';
import { once } from '../catalogue/once.ts';
import { FURTHER_WORDS } from './further-words.ts';
import { headWords } from './head-words.ts';
import { heldIn } from './held-in.ts';
import { KINDS, type Kind } from './kinds.ts';
import { KINDS_ABROAD } from './kinds-abroad.ts';
import { misleads } from './misleading-heads.ts';
import { OBJECT_WORDS } from './object-words.ts';
import { pluralOf } from './plural.ts';

/** A word of the list's kind column, understood. */
interface KindReading {
  kind: Kind;
  /** Whether the list uses the word for several of them ("letters"), so that a missing quantity is not one. */
  plural: boolean;
  /** Where it says more than the kind that it is counted as: "violin" more than "object", "love letter" than "letter". */
  thing?: Pick<Kind, 'one' | 'many'>;
}

const known = new Map<string, KindReading>();
for (const kind of KINDS) {
  for (const word of kind.also) known.set(fold(word), { kind, plural: false });
}
for (const kind of KINDS) {
  known.set(fold(kind.many), { kind, plural: true });
  known.set(fold(kind.one), { kind, plural: false });
}
for (const kind of KINDS) {
  for (const word of kind.also) {
    const many = fold(pluralOf(word));
    if (many !== fold(word) && (known.get(many)?.kind ?? kind) === kind)
      known.set(many, { kind, plural: true });
  }
}
/** In English; heads of several words are looked up here only, for "mountain pass" is no passport. */
const english = new Map(known);
for (const { kind: unit, one, many } of KINDS_ABROAD) {
  const kind = KINDS.find((row) => row.one === unit);
  if (kind === undefined) continue;
  for (const word of many) known.set(fold(word), { kind, plural: true });
  for (const word of one) known.set(fold(word), { kind, plural: false });
}

for (const { kind: unit, things } of [...OBJECT_WORDS, ...FURTHER_WORDS]) {
  const kind = KINDS.find((row) => row.one === unit);
  if (kind === undefined) continue;
  const add = (word: string, plural: boolean, thing: KindReading['thing'] & {}) => {
    for (const one of [fold(word), fold(word.replaceAll('’', "'"))]) {
      const reading = { kind, plural, thing };
      if (!known.has(one)) known.set(one, reading);
      if (!english.has(one)) english.set(one, reading);
    }
  };
  for (const { one, many } of things) add(one, false, { one, many });
  for (const { one, many, alsoMany } of things)
    for (const word of [many, ...alsoMany]) add(word, true, { one, many });
}

/** The kind that a word of the list names as it stands, or undefined where the tables of kinds do not hold it. */
export const readWholeKind = (word: string): KindReading | undefined => known.get(fold(word));

/**
 * The kind that a word of the list names, or undefined where the tables of kinds do not hold it. What stands behind a
 * comma only tells it more closely ("photograph, mounted"), and what stands before the last word of the thing itself
 * does so too: "love letters", "old photographs of the ferry".
 */
export const readKind = once((word: string): KindReading | undefined => {
  const whole = readWholeKind(word);
  if (whole !== undefined) return whole;
  const comma = word.indexOf(',');
  return (
    (comma < 0 ? undefined : readWholeKind(word.slice(0, comma))) ?? readContainer(word) ?? readHead(word)
  );
});

const HELD = heldIn('stack tin roll strip sheet wallet bag sleeve jar bottle basket album case chest trunk');

/** A tin of buttons is a tin. What holds papers or pictures is none of them: who counts boxes does not count letters. */
function readContainer(word: string): KindReading | undefined {
  const [, container = '', content = ''] = HELD.exec(word.trim()) ?? [];
  return isObject(readKindOf(content)) && isObject(readWholeKind(container))
    ? readWholeKind(container)
    : undefined;
}

const isObject = (reading: KindReading | undefined) => reading?.kind.group === 'Textiles and objects';
const readKindOf = (content: string) => readWholeKind(content) ?? readHead(content);
const MOST_WORDS = 3;
/** How many there are is no part of what they are. */
const COUNTS =
  /\d|\b(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|twenty|dozen|hundred|couple|some|several|few|many|more|other|various|assorted|the|a|an)\b/i;

function readHead(word: string): KindReading | undefined {
  if (HELD.test(word.trim())) return undefined;
  const words = headWords(word);
  const folded = words.map(fold);
  for (let from = Math.max(0, words.length - MOST_WORDS); from < words.length; from++) {
    const reading = english.get(folded.slice(from).join(' '));
    if (reading === undefined) continue;
    // Where it stands alone before an "of", too: "record of service".
    const alone = from === words.length - 1 && misleads(['of', ...folded].slice(-2));
    return alone
      ? undefined
      : withMore(reading, folded.slice(from).join(' '), words.slice(0, from).join(' '));
  }
  return undefined;
}

/** "Love letter", where the word for the thing is that for the kind itself; other words are counted as the kind. */
function withMore(reading: KindReading, word: string, before: string): KindReading {
  const { kind, thing } = reading;
  const isItself = thing === undefined && [kind.one, kind.many].some((own) => fold(own) === word);
  if (!isItself || before === '' || COUNTS.test(before)) return reading;
  return { ...reading, thing: { one: `${before} ${kind.one}`, many: `${before} ${kind.many}` } };
}
