import { KINDS } from '../arrange/index.ts';
import type { Component } from '../catalogue/component.ts';
import { fold } from '../catalogue/fold.ts';
import { once } from '../catalogue/once.ts';
import type { Entry } from './entry.ts';
import type { FieldName } from './fields.ts';

/** What is said of a thing beside its title and the names, by field. @param groups the titles above it */
export function textsOf(thing: Component, groups: readonly string[]): Entry['texts'] {
  const { dates, accessPoints, extents, languages, generalNotes, accessConditions: access } = thing;
  const texts: Partial<Record<FieldName, string[]>> = {};
  const add = (field: FieldName, text: string | undefined) => {
    if (text === undefined) return;
    const known = texts[field];
    if (known === undefined) texts[field] = [text];
    else if (!known.includes(text)) known.push(text);
  };
  for (const { type, term } of accessPoints) {
    const field = type === 'genre' ? 'kind' : type === 'place' ? 'places' : 'occasion';
    add(field, term);
  }
  for (const { expression, written, edtf } of dates)
    for (const text of [expression, written, edtf]) add('dates', text);
  add('description', thing.scopeAndContent);
  add('description', thing.abstract);
  for (const { head, text } of generalNotes) {
    if (head === undefined) add('note', text);
    else add('other', `${head}: ${text}`);
  }
  for (const title of groups) add('group', title);
  add('condition', thing.physicalCharacteristics);
  add('size', thing.physicalDescription);
  for (const { type, unit, dimensions } of extents) {
    if (type === 'materialtype' && saysMore(unit)) add('kind', unit);
    add('size', dimensions);
  }
  for (const { name } of languages) add('language', name);
  add('other', access?.statement);
  return texts;
}

/** With what only a finding aid of others says of its units, under `other`: also codes that hold blanks, word by word. */
export function withFurtherTexts(texts: Entry['texts'], unit: Component): Entry['texts'] {
  const { biographicalHistory, custodialHistory, acquisition, arrangement, useConditions } = unit;
  const {
    referenceCode,
    otherIdentifiers,
    originals,
    copies,
    relatedMaterial,
    separatedMaterial,
    publications,
  } = unit;
  const codes = [referenceCode, ...otherIdentifiers.map(({ value }) => value)];
  const further = [
    ...codes.filter((code) => code?.includes(' ')),
    ...[biographicalHistory, custodialHistory, acquisition, arrangement, useConditions],
    ...[originals, copies, relatedMaterial, separatedMaterial, publications],
  ].filter((text) => text !== undefined);
  return further.length === 0 ? texts : { ...texts, other: [...(texts.other ?? []), ...further] };
}

const kinds = new Map(KINDS.map((kind) => [fold(kind.many), kind]));

const plain = new Set(KINDS.flatMap(({ one, many }) => [fold(one), fold(many)]));

/** Whether a unit that is counted says more than the kind of the thing: love letters, violins. */
const saysMore = once((unit: string): boolean => !plain.has(fold(unit)));

/** Other words for a kind. */
export const otherKindWords = once((term: string): readonly string[] => {
  const kind = kinds.get(fold(term));
  return kind === undefined ? [] : kind.also;
});

/** All that a kind is called: as the finding aid has it, one of it, and other words for it. */
export function namesOfKind(term: string): readonly string[] {
  const kind = kinds.get(fold(term));
  return kind === undefined ? [term] : [term, kind.one, ...kind.also];
}
