import type { AgentLink } from '../catalogue/agent.ts';
import type {
  AccessConditions,
  AccessPoint,
  Component,
  Extent,
  LanguageUse,
} from '../catalogue/component.ts';
import { languageUse } from '../catalogue/languages.ts';
import { once } from '../catalogue/once.ts';
import type { SortSettings } from '../catalogue/settings.ts';
import type { Thing } from '../catalogue/thing.ts';
import { type Count, countOf, extentsOf } from '../kinds/extents.ts';
import { readKind } from '../kinds/kind-words.ts';
import { isOpen } from './access.ts';
import type { Agents } from './agents.ts';
import { notesOf } from './item-notes.ts';
import type { UnitCode } from './reference-codes.ts';
import { datesOf } from './statements-of-date.ts';

/** Makes what a thing of the list becomes in the finding aid. */
type ThingDescriber = (thing: Thing, code: UnitCode) => Component;

/**
 * A describer of the things of one list. What rows have in common (a cell that holds the same, a date) is worked out
 * and kept once for all of them.
 */
export function thingDescriber(agents: Agents, { groups, folders }: SortSettings): ThingDescriber {
  const links = once((names: readonly string[]) => linksTo(names, agents));
  const othersThan = once((creators: readonly AgentLink[]) => {
    const made = new Set(creators.map(({ agent }) => agent));
    return once((named: readonly AgentLink[]) => named.filter(({ agent }) => !made.has(agent)));
  });
  const single = once((unit: Count['unit']) =>
    once((size: string | undefined) => extentsWithSize({ unit, number: 1, approximate: false }, size)),
  );
  const dates = once(datesOf);
  const languages = once(languagesOf);
  const points = {
    place: once(point('place')),
    subject: once(point('subject')),
    genre: once(point('genre')),
  };
  const pointsOf = once((places: readonly string[]) =>
    once((occasion: string | undefined) =>
      once((kind: string | undefined): AccessPoint[] => [
        ...places.map(points.place),
        ...(occasion === undefined ? [] : [points.subject(occasion)]),
        ...(kind === undefined ? [] : [points.genre(kind)]),
      ]),
    ),
  );
  const nobody = once((names: readonly string[]) => names.filter((name) => agents.idOf(name) === undefined));

  return (thing, code) => {
    const count = countOf(thing);
    const counted = thing.kind !== undefined && count.number > 0;
    const creators = links(thing.creators);
    // One literal with every field, absent or not: a hundred thousand objects of one shape are small and quick.
    return {
      id: code.id,
      // ISAD(G), glossary: an item is the smallest unit that is intellectually indivisible; a bundle is a file.
      level: count.number > 1 || count.approximate ? 'file' : 'item',
      referenceCode: code.referenceCode,
      otherIdentifiers:
        thing.number === undefined ? none : [{ type: 'number in the list', value: thing.number }],
      title: thing.title,
      dates: dates(thing.date),
      extents: !counted
        ? none
        : count.number === 1 && !count.approximate
          ? single(count.unit)(thing.size)
          : extentsWithSize(count, thing.size),
      physicalDescription: counted ? undefined : thing.size,
      creators,
      languages: languages(thing.languages),
      containers: none,
      physicalLocation: undefined,
      digitalCopies:
        thing.copies.length === 0 ? none : thing.copies.map((file) => ({ file, origin: 'derived' })),
      scopeAndContent: thing.description,
      accessConditions: accessConditionsOf(thing),
      physicalCharacteristics: thing.condition,
      generalNotes: notesOf(thing, nobody, {
        series: groups.includes('series') ? undefined : thing.series,
        folder: folders === 'folder' ? undefined : thing.folder,
      }),
      people: othersThan(creators)(links(thing.people)),
      accessPoints: pointsOf(thing.places)(thing.occasion)(thing.kind),
      children: none,
    };
  };
}

const point =
  (type: 'place' | 'subject' | 'genre') =>
  (term: string): AccessPoint => ({
    type,
    term: type === 'genre' ? (readKind(term)?.kind.many ?? term) : term,
  });

/** One empty list for all the things that have nothing there. */
const none: never[] = [];

function extentsWithSize(count: Count, dimensions: string | undefined): Extent[] {
  const extents = extentsOf([count]);
  return dimensions === undefined ? extents : extents.map((extent) => ({ ...extent, dimensions }));
}

function languagesOf(languages: readonly string[]): LanguageUse[] {
  return languages.map(languageUse).filter((use) => use !== undefined);
}

function linksTo(names: readonly string[], agents: Agents): AgentLink[] {
  const ids = new Set(names.map((name) => agents.idOf(name)));
  return [...ids].flatMap((agent) => (agent === undefined ? [] : [{ agent }]));
}

/** DACS 4.1. Without a word in the list there is nothing to say at this level. */
function accessConditionsOf({ access, until }: Thing): AccessConditions | undefined {
  if (access === undefined && until === undefined) return undefined;
  const end = until?.reading.kind === 'date' ? until.reading.edtf : undefined;
  return {
    statement: access ?? `Closed until ${until?.written}`,
    restricted: !isOpen(access),
    ...(end !== undefined && { until: end }),
  };
}
