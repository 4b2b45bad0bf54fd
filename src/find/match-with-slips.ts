import { addTerm, type Match, NEARNESS } from './match.ts';
import type { Index } from './open-index.ts';
import type { Unit } from './question.ts';
import { slipsAllowed, slipsAtMost, spellings, wordsNear } from './slips.ts';
import { otherForms } from './word-forms.ts';

/** Words with one slip more, where the word is long; or a slip or two from another form of it, as letters from leter. */
function farFrom({ terms }: Index, word: string): ReturnType<typeof wordsNear> {
  const [allowed, most] = [slipsAllowed(word), slipsAtMost(word)];
  if (allowed === 0) return [];
  const further = otherForms(word).flatMap((form) => wordsNear(terms, form, most));
  return [...(most > allowed ? wordsNear(terms, word, most) : []), ...further];
}

/** The things that match as it was typed, and with them those that have the word with a slip or two. */
export function matchWithSlips(index: Index, { words, optional }: Unit, typed: Match): Match {
  const [word] = words;
  if (word === undefined || words.length > 1 || optional) return typed;
  const allowed = slipsAllowed(word);
  const byEar = (allowed === 0 ? [] : spellings(word)).flatMap((other) =>
    [other, ...otherForms(other)].flatMap((form) => index.terms.find(form) ?? []),
  );
  const near = [...byEar.map((term) => ({ term, slips: 1 })), ...wordsNear(index.terms, word, allowed)];
  // Far off only where the word is nowhere: a grandmother is no godmother.
  if (near.length === 0 && typed.having === 0) near.push(...farFrom(index, word));
  if (near.length === 0) return typed;
  const match = { ...typed, strength: typed.strength.slice(), words: new Map(typed.words) };
  for (const { term, slips } of near) addTerm(index, term, NEARNESS.slips[slips] ?? 0, match);
  return match;
}
