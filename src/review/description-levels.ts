import type { Agent } from '../catalogue/agent.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Component } from '../catalogue/component.ts';
import type { Finding } from '../catalogue/finding.ts';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import { fold } from '../catalogue/fold.ts';
import { sayThings } from './said-together.ts';

/** A series of fewer things is told by its list. */
const FEW = 10;

/** What is missing below the top: of series, of the people who made the papers, and of single things. */
export function reviewLevels({ settings, things }: Catalogue, aid: FindingAid): Finding[] {
  const blank = things.filter(({ date }) => date === undefined);
  const kindless = settings.sort.groups.includes('kind')
    ? []
    : things.filter(({ kind }) => kind === undefined);
  return [
    ...seriesWithoutScope(aid.collection),
    ...strangers(
      settings.creators,
      aid.people.slice(0, settings.people.length),
      settings.history !== undefined,
    ),
    ...together(blank.length < things.length ? blank : [], {
      rule: 'description.no-date',
      weight: 'consider',
      place: { file: 'list.csv', column: 'date' },
      found: 'Nothing is said on the date of',
      advice:
        'Give at least the decade, or before or after what it was; where nobody can tell, write undated.',
      source: 'DACS 2.4, ISAD(G) 3.1.3',
    }),
    ...together(kindless.length < things.length ? kindless : [], {
      rule: 'description.no-kind',
      weight: 'consider',
      place: { file: 'list.csv', column: 'kind' },
      found: 'Nothing is said on the kind of',
      advice: 'Note what it is (letter, photograph, diary): the extent of its group is counted from it.',
      source: 'DACS 2.5, ISAD(G) 3.1.5',
    }),
  ];
}

/** One finding for all things that lack the same. */
function together(things: Catalogue['things'], finding: Finding): Finding[] {
  const [first] = things;
  if (first === undefined) return [];
  const place = { ...finding.place, row: first.row };
  return [{ ...finding, place, found: `${finding.found} ${sayThings(things)}.` }];
}

function seriesWithoutScope(collection: Component): Finding[] {
  const bare = seriesIn(collection).filter((series) => {
    return series.scopeAndContent === undefined && thingsIn(series) >= FEW;
  });
  const [first] = bare;
  if (first === undefined) return [];
  const named = bare.map((series) => `“${series.title}” (${thingsIn(series)} things)`);
  return [
    {
      rule: 'description.series-scope',
      weight: 'consider',
      place: { component: first.referenceCode ?? first.title },
      found: `${bare.length === 1 ? 'This group has' : 'These groups have'} no scope and content: ${named.join(', ')}.`,
      advice:
        'Say under “groups” in collection.yaml, below the title of each, what is in it and what is not.',
      source: 'DACS 3.1, ISAD(G) 3.3.1',
    },
  ];
}

const seriesIn = ({ children }: Component): Component[] =>
  children
    .filter(({ level }) => level === 'series' || level === 'subseries')
    .flatMap((child) => [child, ...seriesIn(child)]);

const thingsIn = ({ level, children }: Component): number =>
  children.length === 0 && level !== 'series' ? 1 : children.reduce((sum, child) => sum + thingsIn(child), 0);

/** Creators of whom no more than the name is known. What is to be said of a family, the collection's history says. */
function strangers(creators: readonly string[], known: readonly Agent[], isHistoryTold: boolean): Finding[] {
  const names = known.flatMap(({ name, variants = [], authorizedForm }) => [
    name,
    ...variants,
    authorizedForm ?? name,
  ]);
  const folded = new Set(names.map(fold));
  return creators
    .filter((name) => !folded.has(fold(name)) && !(isHistoryTold && /\bfamily$/i.test(name)))
    .map((name) => ({
      rule: 'description.creator-unknown',
      weight: 'consider',
      place: { file: 'collection.yaml' },
      found: `“${name}” is named as a creator of the collection, but stands nowhere under “people”.`,
      advice:
        'Add the name there, with the dates of birth and death and a few words on the life, as far as they are known.',
      source: 'DACS 2.6, 2.7, ISAD(G) 3.2.1',
    }));
}
