import type { mistakes } from './mistakes.ts';
import type { WordReader } from './words.ts';

/** What a search found: the numbers of the texts, the best first, and the words in them that answered. */
export interface Answer {
  order: number[];
  words: Set<string>;
  /** Whether nothing had the words as typed, and this is what comes near. */
  isNear: boolean;
}

/** An index of texts by their words. */
interface Finder {
  /** Adds the next text, with the reference code of its own if it has one; the first one is number 0. */
  add(title: string, rest: string, code?: string): void;
  find(typed: string, isAllowed: (text: number) => boolean): Answer;
}

/** What it is made of. */
interface Parts {
  words: WordReader;
  mistakes: typeof mistakes;
}

/**
 * Makes an empty index. This function goes into the page as it is written, so it leans on nothing outside itself but
 * what it is given. Every word typed must be in a text, or begin a word in it. Where nothing has them all, one mistake
 * is forgiven in a word of four letters or more and two in a word of eight or more. Where a whole reference code is
 * typed, its unit answers, and what is in that.
 */
export function makeFinder(parts: Parts): Finder {
  const TITLE = 5;
  const { fold, wordsOf } = parts.words;
  /** For each word, pairs of text and weight. */
  const occurrences = new Map<string, number[]>();
  const codes: string[] = [];
  const known = new Set<string>();
  let size = 0;

  function note(word: string, weight: number): void {
    const list = occurrences.get(word);
    if (list === undefined) occurrences.set(word, [size, weight]);
    else if (list[list.length - 2] === size)
      list[list.length - 1] = Math.max(weight, list[list.length - 1] ?? 0);
    else list.push(size, weight);
  }

  /** The words of the index that answer a typed one, each with how well it does, from 0 to 1. */
  function answering(typed: string, isForgiving: boolean): Map<string, number> {
    const found = new Map<string, number>();
    const most = typed.length >= 8 ? 2 : typed.length >= 4 ? 1 : 0;
    for (const word of occurrences.keys()) {
      if (word === typed) found.set(word, 1);
      else if (word.startsWith(typed)) found.set(word, 0.5 + (0.4 * typed.length) / word.length);
      else if (isForgiving && most > 0 && word.length >= typed.length - most) {
        const made = parts.mistakes(typed, word, most);
        if (made <= most) found.set(word, (0.4 / made) * Math.min(1, typed.length / word.length));
      }
    }
    return found;
  }

  function rank(answers: readonly Map<string, number>[], isAllowed: (text: number) => boolean): number[] {
    const total = new Float32Array(size);
    const met = new Uint16Array(size);
    for (const answer of answers) {
      const best = new Float32Array(size);
      for (const [word, likeness] of answer) {
        const list = occurrences.get(word) ?? [];
        const rarity = Math.log(1 + (2 * size) / list.length);
        for (let at = 0; at < list.length; at += 2) {
          const text = list[at] ?? 0;
          best[text] = Math.max(best[text] ?? 0, likeness * rarity * (list[at + 1] ?? 0));
        }
      }
      for (const [text, score] of best.entries()) {
        if (score === 0) continue;
        total[text] = (total[text] ?? 0) + score;
        met[text] = (met[text] ?? 0) + 1;
      }
    }
    const order: number[] = [];
    for (const [text, count] of met.entries())
      if (count === answers.length && isAllowed(text)) order.push(text);
    // Where two are as good, the one that stands first in the collection comes first: sorting keeps their order.
    return order.sort((one, other) => (total[other] ?? 0) - (total[one] ?? 0));
  }

  return {
    add(title, rest, code = '') {
      codes.push(fold(code));
      if (wordsOf(code).length > 1) known.add(fold(code));
      for (const word of wordsOf(title)) note(word, TITLE);
      for (const word of wordsOf(rest)) note(word, 1);
      size += 1;
    },
    find(typed, isAllowed) {
      const code = fold(typed.trim());
      // A unit stands before what is in it, so the order of the list is the right one.
      const inUnit = (at: string) =>
        at === code || (at.startsWith(code) && !/^[\p{L}\p{N}]/u.test(at.slice(code.length)));
      if (known.has(code)) {
        const order = [...codes.keys()].filter((at) => inUnit(codes[at] ?? '') && isAllowed(at));
        return { order, words: new Set(), isNear: false };
      }
      const words = [...new Set(wordsOf(typed))];
      const strict = words.map((word) => answering(word, false));
      let answers = strict;
      let order = rank(strict, isAllowed);
      const isNear = order.length === 0;
      if (isNear) {
        answers = words.map((word) => answering(word, true));
        order = rank(answers, isAllowed);
      }
      return { order, words: new Set(answers.flatMap((answer) => [...answer.keys()])), isNear };
    },
  };
}
