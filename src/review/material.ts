import { KINDS, readKind } from '../arrange/index.ts';
import { once } from '../catalogue/once.ts';
import type { Kind } from '../kinds/kinds.ts';
import { wordFinder } from './word-finder.ts';

/**
 * What a thing is made of, as far as its kind tells, for rules that must not take a letter on a gun for a gun; a plate is
 * a picture on glass or metal.
 */
export type Material =
  | 'paper'
  | 'picture'
  | 'plate'
  | 'film'
  | 'sound'
  | 'object'
  | 'textile'
  | 'digital'
  | 'unknown';

const OF_GROUP: Partial<Record<Kind['group'], Material>> = {
  'Maps and plans': 'picture',
  'Drawings and prints': 'picture',
  Photographs: 'picture',
  'Film and sound': 'sound',
  'Digital files': 'digital',
  'Textiles and objects': 'object',
};

const OF_KIND: Partial<Record<string, Material>> = {
  negative: 'film',
  slide: 'film',
  'film reel': 'film',
  'glass plate': 'plate',
  tintype: 'plate',
  ambrotype: 'plate',
  daguerreotype: 'plate',
  quilt: 'textile',
  textile: 'textile',
};

const materialOfKind = (kind: Kind): Material => OF_KIND[kind.one] ?? OF_GROUP[kind.group] ?? 'paper';

/** What a word of the kind column says of the material; a word that the table of kinds does not hold says nothing. */
export const materialOf = once((written: string): Material => {
  const kind = readKind(written)?.kind;
  return kind === undefined ? 'unknown' : materialOfKind(kind);
});

const kindWords = wordFinder(
  KINDS.map((kind) => ({ kind, words: [kind.one, kind.many, ...kind.also] })).filter(
    ({ kind }) => materialOfKind(kind) !== 'object' && materialOfKind(kind) !== 'textile',
  ),
);

/**
 * The kind that a title names, for a thing without a kind: the first one before the place `at` ("photo of a pistol"),
 * else the one right behind `end` ("pistol licence").
 */
export function kindSaid(title: string, at = title.length, end = at): Kind | undefined {
  const said = kindWords(title);
  const before = said.find((met) => met.at < at && met.end <= at);
  const behind = said.find((met) => met.at >= end && met.at - end <= 1);
  return (before ?? behind)?.row.kind;
}

/** The material of the kind that a title names; see `kindSaid`. */
export function materialSaid(title: string, at?: number, end?: number): Material {
  const kind = kindSaid(title, at, end);
  return kind === undefined ? 'unknown' : materialOfKind(kind);
}
