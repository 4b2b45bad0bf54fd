import type { Component } from '../catalogue/component.ts';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import { unitsFrom } from '../catalogue/units.ts';
import { displayDate } from '../dates/index.ts';
import type { Above, Entry, Findable, Findables, Whereabouts } from './entry.ts';
import { namedPlace } from './named-place.ts';
import { namesOf, type PeopleMet, peopleMetIn } from './people-met.ts';
import { otherKindWords, textsOf, withFurtherTexts } from './texts-of.ts';
import { aboveOf, whereaboutsOf } from './whereabouts.ts';
import { wordsOf } from './words.ts';
import { yearsOf } from './years-of.ts';

/**
 * All that can be found in a finding aid: the things of a list; and of one that was taken in, every unit below the
 * collection, or the collection where it has no others.
 * @param base what was taken in, where the finding aid was made by adding to it
 */
export function findablesOf({ collection, people }: FindingAid, base?: FindingAid): Findables {
  const places = new Map(people.map(({ id }, place) => [id, place]));
  const names = people.map(namesOf);
  const known = { places, met: peopleMetIn(names) };
  const takenIn = new Set<string>();
  if (base !== undefined) for (const { id } of unitsFrom(base.collection)) takenIn.add(id);
  const isBare = base?.collection.children.length === 0;
  function* below(unit: Component, around: Around): Generator<Findable> {
    if (takenIn.has(unit.id)) {
      const isWhole = unit === collection;
      const where = isWhole && !isBare ? undefined : namedPlace(unit, around.units);
      if (where !== undefined) yield ofOthers(unit, around, where, known);
      const inner = isWhole ? NOTHING : within(around, unit, where?.named);
      const units = [...around.units, unit];
      for (const child of unit.children) yield* below(child, { ...inner, units });
      return;
    }
    const inner = unit === collection ? around : within(around, unit);
    if (unit.level !== 'file') {
      for (const child of unit.children) yield* below(child, inner);
      return;
    }
    const lies = whereaboutsOf(unit);
    for (const thing of unit.children)
      yield findable(thing, { ...inner, groups: around.groups }, lies(thing), known);
  }
  return { things: below(collection, NOTHING), people: names };
}

/** What a unit is part of. */
interface Around {
  /** The titles of groups by which what is in them is found as well. */
  groups: readonly string[];
  above: readonly Above[];
  /** The units of a finding aid that was taken in, from the collection on. */
  units: readonly Component[];
}

const NOTHING: Around = { groups: [], above: [], units: [] };

const within = ({ groups, above, units }: Around, unit: Component, lies?: string): Around => ({
  groups: [...groups, unit.title],
  above: [...above, aboveOf(unit, lies)],
  units,
});

interface Known {
  places: ReadonlyMap<string, number>;
  met: PeopleMet;
}

/** A unit of a finding aid that was taken in. */
function ofOthers(unit: Component, around: Around, where: Whereabouts, known: Known): Findable {
  const isGroup = unit.children.length > 0;
  // A group is found by its own words only, else each word of a series would find its subseries too.
  const found = findable(unit, isGroup ? { ...around, groups: [] } : around, where, known);
  const entry = { ...found.entry, texts: withFurtherTexts(found.entry.texts, unit) };
  // By a code of several parts (QF/2) what is in a group is found, as in a list, and not the group itself.
  const codes = isGroup ? found.codes.filter((code) => wordsOf(code).length === 1) : found.codes;
  return { ...found, entry, codes };
}

function findable(thing: Component, around: Around, where: Whereabouts, { places, met }: Known): Findable {
  const { title, referenceCode = thing.id, otherIdentifiers } = thing;
  const placesOf = (links: Component['people']) => links.flatMap(({ agent }) => places.get(agent) ?? []);
  const texts = textsOf(thing, around.groups);
  const [creators, people] = [placesOf(thing.creators), placesOf(thing.people)];
  const known = new Set([...creators, ...people]);
  const mentioned = met([title, ...(texts.description ?? []), ...(texts.note ?? [])]);
  const dates = thing.dates.map(({ expression }) => expression).join(', ');
  const years = yearsOf(thing.dates);
  const closed = closedBy(thing, around.units);
  const entry: Entry = {
    referenceCode,
    ...(thing.referenceCode === undefined && { uncoded: true }),
    title,
    ...(dates !== '' && { dates }),
    ...(years !== undefined && { years }),
    ...where,
    ...(closed !== undefined && { restricted: sayRestriction(closed) }),
    above: around.above,
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

type Access = NonNullable<Component['accessConditions']>;

/** Why it is closed: by itself, or by the nearest unit above it, save the collection, of which most may be open. */
function closedBy({ accessConditions: access }: Component, units: readonly Component[]): Access | undefined {
  if (access?.restricted) return access;
  return units.slice(1).findLast((unit) => unit.accessConditions?.restricted)?.accessConditions;
}

function sayRestriction({ statement, until }: Access): string {
  if (until === undefined || statement.includes(until)) return statement;
  const shown = displayDate(until);
  return statement.includes(shown) ? statement : `${statement} (until ${shown})`;
}
