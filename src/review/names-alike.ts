import type { AgentType } from '../catalogue/agent.ts';
import { DROPPED, SHORT_FORMS, TELLING } from './name-words.ts';
import { plainWords } from './plain-words.ts';
import { slipsBetween, typingSlips } from './typing-slip.ts';

/** A name taken apart, as it is compared with others. */
export interface NameRead {
  type: AgentType;
  /** In the order in which one says them, the family name last. */
  words: readonly string[];
  /** Words that make two people of one name: junior, Mrs. */
  telling: string;
  /** Names can only be alike that have the same key. */
  key: string;
}

const DROP = new Set(DROPPED.words);
const TELL = new Set(TELLING.words);
const LONG_FORM = new Map(SHORT_FORMS.flatMap(({ words, as }) => words.map((word) => [word, as ?? word])));
/** From so many letters on a name is known by its beginning: Sam, Samuel. */
const SHORT_NAME = 3;

/** Takes a name apart; “Quill, Ada” is Ada Quill. */
export function readName(name: string, type: AgentType): NameRead {
  const [, family, given] = type === 'person' ? (/^([^,]+),\s*([^,]+)$/.exec(name) ?? []) : [];
  const all = plainWords(family === undefined ? name : `${given} ${family}`).split(' ');
  const words = all
    .filter((word) => !DROP.has(word) && !TELL.has(word))
    .map((word) => (type === 'corporateBody' ? (LONG_FORM.get(word) ?? word) : word));
  const telling = all
    .filter((word) => TELL.has(word))
    .sort()
    .join(' ');
  // Neither a slip nor a short form changes the first letters.
  const ends = [words[0]?.[0] ?? '', words.at(-1)?.[0] ?? ''].sort().join('');
  return {
    type,
    words,
    telling,
    key: type === 'person' ? `${ends}` : `${type} ${words[0]?.[0]} ${words.length}`,
  };
}

/**
 * Whether two names may be one: the same but for points and accents, turned round, with an initial or a short form for
 * the given name, without a middle name, or with a slip of the keyboard in one of them.
 */
export function namesAlike(one: NameRead, other: NameRead): boolean {
  if (one.type !== other.type || one.telling !== other.telling) return false;
  if (one.words.join(' ') === other.words.join(' ')) return true;
  if (one.type !== 'person') return slipsBetween(one.words, other.words, 1) !== undefined;
  // A single word is too little to go by.
  if (one.words.length < 2 || other.words.length < 2) return false;
  return (
    isTurned(one.words, other.words) || isShorter(one.words, other.words) || isShorter(other.words, one.words)
  );
}

const isTurned = (one: readonly string[], other: readonly string[]) =>
  one.length === 2 && one[0] === other[1] && one[1] === other[0];

/** Whether the one may stand for the other in fewer or other letters; of family name and given name one must be right. */
function isShorter(one: readonly string[], other: readonly string[]): boolean {
  const [given, its] = [one[0] ?? '', other[0] ?? ''];
  const ofFamily = typingSlips(one.at(-1) ?? '', other.at(-1) ?? '');
  if (ofFamily === undefined || !areMiddlesAlike(one.slice(1, -1), other.slice(1, -1))) return false;
  if (given === its) return true;
  return (
    ofFamily === 0 &&
    (isInitial(given, its) || isBeginning(given, its) || typingSlips(given, its) !== undefined)
  );
}

const isInitial = (one: string, other: string) => one.length === 1 && other.startsWith(one);
const isBeginning = (one: string, other: string) => one.length >= SHORT_NAME && other.startsWith(one);

/** Middle names may be left out, or be initials. */
const areMiddlesAlike = (one: readonly string[], other: readonly string[]) =>
  one.length === 0 ||
  other.length === 0 ||
  (one.length === other.length &&
    one.every((word, at) => {
      const its = other[at] ?? '';
      return word === its || isInitial(word, its) || isInitial(its, word);
    }));
