import type { Component } from '../../catalogue/component.ts';
import { once } from '../../catalogue/once.ts';
import { readKind } from '../../kinds/kind-words.ts';
import { type DcmiType, KIND_TYPES } from './dcmi-types.ts';
import type { Value } from './value.ts';

const typeOfKind = new Map(KIND_TYPES.map(({ kind, type }) => [kind, type]));

/** The DCMI type of a term for a kind of material ("letters"); undefined where no single term is surely right. */
export const typeOfTerm = once(
  (term: string): DcmiType | undefined => typeOfKind.get(readKind(term)?.kind.one ?? '') ?? undefined,
);

/**
 * `type`: one term of the DCMI Type Vocabulary, or none. Groups are collections: "a collection is an aggregation of
 * resources". A file or an item is what all its kinds are; a file whose kinds differ or are not told is a collection,
 * an item of that sort has no type.
 */
export function dcmiType({ level, accessPoints, children }: Component): Value[] {
  const isGroup = level !== 'item' && level !== 'file' && (level !== 'otherlevel' || children.length > 0);
  const types = isGroup
    ? []
    : accessPoints.filter(({ type }) => type === 'genre').map(({ term }) => typeOfTerm(term));
  const [first] = types;
  const agreed = types.every((type) => type === first) ? first : undefined;
  const type = agreed ?? (isGroup || level === 'file' ? 'Collection' : undefined);
  return type === undefined ? [] : [{ text: type, scheme: 'DCMIType' }];
}
