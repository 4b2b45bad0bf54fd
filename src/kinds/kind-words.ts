import { fold } from '../catalogue/fold.ts';
import { once } from '../catalogue/once.ts';
import { KINDS, type Kind } from './kinds.ts';
import { KINDS_ABROAD } from './kinds-abroad.ts';
import { OBJECT_WORDS } from './object-words.ts';

/** A word of the list's kind column, understood. */
interface KindReading {
  kind: Kind;
  /** Whether the list uses the word for several of them ("letters"), so that a missing quantity is not one. */
  plural: boolean;
  /** Where it is a word for one of many things that are counted as objects: "violin" says more than "object". */
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
    if ((known.get(many)?.kind ?? kind) === kind) known.set(many, { kind, plural: true });
  }
}
for (const { kind: unit, one, many } of KINDS_ABROAD) {
  const kind = KINDS.find((row) => row.one === unit);
  if (kind === undefined) continue;
  for (const word of many) known.set(fold(word), { kind, plural: true });
  for (const word of one) known.set(fold(word), { kind, plural: false });
}

for (const { kind: unit, words } of OBJECT_WORDS) {
  const kind = KINDS.find((row) => row.one === unit);
  if (kind === undefined) continue;
  const add = (word: string, plural: boolean, thing: KindReading['thing'] & {}) => {
    for (const one of [fold(word), fold(word.replaceAll('’', "'"))]) {
      if (!known.has(one)) known.set(one, { kind, plural, thing });
    }
  };
  const things = words.map((one) => ({ one, many: pluralOf(one) }));
  for (const thing of things) add(thing.one, false, thing);
  for (const thing of things) add(thing.many, true, thing);
}

/** Several of them, in English: bank books, bodies, boxes; orders of service. */
function pluralOf(words: string): string {
  const [head = '', ...rest] = words.split(/(?= (?:of|for|in) )/);
  const many = /[^aeiou]y$/.test(head)
    ? `${head.slice(0, -1)}ies`
    : `${head}${/(?:s|x|ch|sh)$/.test(head) ? 'es' : 's'}`;
  return [many, ...rest].join('');
}

/** The kind that a word of the list names as it stands, or undefined where the tables of kinds do not hold it. */
export const readWholeKind = (word: string): KindReading | undefined => known.get(fold(word));

/**
 * The kind that a word of the list names, or undefined where the tables of kinds do not hold it. What stands behind a
 * comma only tells it more closely: "photograph, mounted", "letter, copy".
 */
export const readKind = once((word: string): KindReading | undefined => {
  const whole = readWholeKind(word);
  if (whole !== undefined) return whole;
  const comma = word.indexOf(',');
  return comma < 0 ? undefined : readWholeKind(word.slice(0, comma));
});
