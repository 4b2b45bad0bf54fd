import { fold } from '../catalogue/fold.ts';
import { once } from '../catalogue/once.ts';
import { KINDS, type Kind } from './kinds.ts';
import { KINDS_ABROAD } from './kinds-abroad.ts';

/** A word of the list's kind column, understood. */
export interface KindReading {
  kind: Kind;
  /** Whether the list uses the word for several of them ("letters"), so that a missing quantity is not one. */
  plural: boolean;
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
    if ((known.get(many)?.kind ?? kind) === kind) known.set(many, { kind, plural: true });
  }
}
for (const { kind: unit, one, many } of KINDS_ABROAD) {
  const kind = KINDS.find((row) => row.one === unit);
  if (kind === undefined) continue;
  for (const word of many) known.set(fold(word), { kind, plural: true });
  for (const word of one) known.set(fold(word), { kind, plural: false });
}

/** Several of them, in English: bank books, bodies, boxes; orders of service. */
function pluralOf(words: string): string {
  const [head = '', ...rest] = words.split(/(?= (?:of|for|in) )/);
  const many = /[^aeiou]y$/.test(head)
    ? `${head.slice(0, -1)}ies`
    : `${head}${/(?:s|x|ch|sh)$/.test(head) ? 'es' : 's'}`;
  return [many, ...rest].join('');
}

/** The kind that a word of the list names, or undefined where the table of kinds does not hold it. */
export const readKind = once((word: string): KindReading | undefined => known.get(fold(word)));
