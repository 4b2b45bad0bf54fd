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
  for (const word of kind.also) {
    const others = known.get(fold(`${word}s`));
    if (others?.kind === kind) known.set(fold(`${word}s`), { kind, plural: true });
  }
}
for (const { kind: unit, one, many } of KINDS_ABROAD) {
  const kind = KINDS.find((row) => row.one === unit);
  if (kind === undefined) continue;
  for (const word of many) known.set(fold(word), { kind, plural: true });
  for (const word of one) known.set(fold(word), { kind, plural: false });
}

/** The kind that a word of the list names, or undefined where the table of kinds does not hold it. */
export const readKind = once((word: string): KindReading | undefined => known.get(fold(word)));
