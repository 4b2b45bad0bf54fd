import { KINDS } from '../arrange/index.ts';
import type { Component } from '../catalogue/component.ts';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import { fold } from '../catalogue/fold.ts';
import { once } from '../catalogue/once.ts';
import { displayDate, firstYear, lastYear } from '../dates/index.ts';
import type { Above, Entry, Findable, Findables } from './entry.ts';
import type { FieldName } from './fields.ts';
import { namesOf, type PeopleMet, peopleMetIn } from './people-met.ts';
import { aboveOf, whereaboutsOf } from './whereabouts.ts';

/** The things of a finding aid that was made from a list, with all that they can be found by. */
export function findablesOf({ collection, people }: FindingAid): Findables {
  const places = new Map(people.map(({ id }, place) => [id, place]));
  const names = people.map(namesOf);
  const met = peopleMetIn(names);
  function* below(unit: Component, groups: readonly string[], outer: readonly Above[]): Generator<Findable> {
    const above = unit === collection ? outer : [...outer, aboveOf(unit)];
    if (unit.level !== 'file') {
      const inner = unit === collection ? groups : [...groups, unit.title];
      for (const child of unit.children) yield* below(child, inner, above);
      return;
    }
    const lies = whereaboutsOf(unit);
    for (const thing of unit.children)
      yield findable(thing, groups, { places, met, where: lies(thing), above });
  }
  return { things: below(collection, [], []), people: names };
}

interface Known {
  places: ReadonlyMap<string, number>;
  met: PeopleMet;
  where: ReturnType<ReturnType<typeof whereaboutsOf>>;
  above: readonly Above[];
}

function findable(
  thing: Component,
  groups: readonly string[],
  { places, met, where, above }: Known,
): Findable {
  const { title, referenceCode = thing.id, accessConditions: access, otherIdentifiers } = thing;
  const placesOf = (links: Component['people']) => links.flatMap(({ agent }) => places.get(agent) ?? []);
  const texts = textsOf(thing, groups);
  const [creators, people] = [placesOf(thing.creators), placesOf(thing.people)];
  const known = new Set([...creators, ...people]);
  const mentioned = met([title, ...(texts.description ?? []), ...(texts.note ?? [])]);
  const dates = thing.dates.map(({ expression }) => expression).join(', ');
  const years = yearsOf(thing.dates);
  const entry: Entry = {
    referenceCode,
    title,
    ...(dates !== '' && { dates }),
    ...(years !== undefined && { years }),
    ...where,
    ...(access?.restricted && { restricted: sayRestriction(access) }),
    above,
    creators,
    people,
    mentioned: mentioned.filter((place) => !known.has(place)),
    texts,
  };
  return {
    entry,
    codes: [referenceCode, ...otherIdentifiers.map(({ value }) => value)],
    kindWords: (texts.kind ?? []).flatMap(otherKindWords),
  };
}

function textsOf(thing: Component, groups: readonly string[]): Entry['texts'] {
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
  for (const { head, text } of generalNotes) {
    if (head === undefined) add('note', text);
    else add('other', `${head}: ${text}`);
  }
  for (const title of groups) add('group', title);
  add('condition', thing.physicalCharacteristics);
  add('size', thing.physicalDescription);
  for (const { dimensions } of extents) add('size', dimensions);
  for (const { name } of languages) add('language', name);
  add('other', access?.statement);
  return texts;
}

const kinds = new Map(KINDS.map((kind) => [fold(kind.many), kind]));

const otherKindWords = once((term: string): readonly string[] => {
  const kind = kinds.get(fold(term));
  return kind === undefined ? [] : kind.also;
});

function sayRestriction({ statement, until }: NonNullable<Component['accessConditions']>): string {
  if (until === undefined || statement.includes(until)) return statement;
  const shown = displayDate(until);
  return statement.includes(shown) ? statement : `${statement} (until ${shown})`;
}

const yearsIn = once((edtf: string): NonNullable<Entry['years']> | undefined => {
  const [first, last] = [firstYear(edtf), lastYear(edtf)];
  return first === undefined && last === undefined ? undefined : [first ?? null, last ?? null];
});

function yearsOf(dates: Component['dates']): Entry['years'] {
  const spans = dates.flatMap(({ edtf }) => {
    const years = edtf === undefined ? undefined : yearsIn(edtf);
    return years === undefined ? [] : [years];
  });
  const [first, ...others] = spans;
  if (first === undefined) return undefined;
  return others.reduce(
    ([from, to], [start, end]) => [
      from === null || start === null ? null : Math.min(from, start),
      to === null || end === null ? null : Math.max(to, end),
    ],
    first,
  );
}
