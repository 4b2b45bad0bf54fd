import { readKind } from '../arrange/index.ts';
import type { Component } from '../catalogue/component.ts';
import type { Weight } from '../catalogue/finding.ts';
import type { Settings } from '../catalogue/settings.ts';
import type { Thing } from '../catalogue/thing.ts';

/** Something that a standard asks of the description of the whole. */
interface Requirement {
  rule: string;
  weight: Weight;
  /** Whether the requirement is met. */
  met: (settings: Settings, things: readonly Thing[], collection: Component) => boolean;
  found: string;
  advice: string;
  source: string;
}

/**
 * What DACS requires (must), recommends (should) or has where it is known (consider) at the top of a multilevel
 * description. Reference code, title and extent are not here: there is no catalogue without them.
 */
export const REQUIREMENTS: readonly Requirement[] = [
  {
    rule: 'description.creator',
    weight: 'must',
    met: ({ creators }) => creators.length > 0,
    found: 'Nobody is named as creator of the collection.',
    advice: 'Name the family or the people whose papers these are under “creators”, if it is known.',
    source: 'DACS 2.6',
  },
  {
    rule: 'description.dates',
    weight: 'must',
    met: (_, things, { dates }) => things.length === 0 || dates.some(({ edtf }) => edtf !== undefined),
    found: 'The collection has no date: the settings give none, and no date of the list can be read.',
    advice: 'Give at least the decade of some things, or “dates” for the whole, such as about 1880-1960.',
    source: 'DACS 2.4, ISAD(G) 3.1.3',
  },
  {
    rule: 'description.language',
    weight: 'must',
    met: (_, __, { languages }) => languages.some(({ code }) => code !== 'und'),
    found: 'The language of the material is not known from the list or the settings.',
    advice: 'Name it under “languages”, such as English.',
    source: 'DACS 4.5, ISAD(G) 3.4.3',
  },
  {
    rule: 'description.repository-place',
    weight: 'must',
    met: ({ repository }) => (repository.address ?? []).length > 0,
    found: 'The place where the collection is kept is not given.',
    advice: 'Add “address” under “repository”; the town is enough.',
    source: 'DACS 2.2',
  },
  {
    rule: 'description.scope',
    weight: 'must',
    met: ({ scope }) => scope !== undefined,
    found: 'The collection has no scope and content; a count of its things stands in for it.',
    advice: 'Say under “scope” in two or three sentences what is in it, about whom, and from when.',
    source: 'DACS 3.1, ISAD(G) 3.3.1',
  },
  {
    rule: 'description.access',
    weight: 'must',
    met: ({ access }) => access !== undefined,
    found: 'Nothing is said on who may see the collection.',
    advice: 'Say it under “access”, even where everybody may.',
    source: 'DACS 4.1, ISAD(G) 3.4.1',
  },
  {
    rule: 'description.rights',
    weight: 'must',
    met: ({ rights }) => rights !== undefined,
    found: 'Nothing is said on the rights in the description itself.',
    advice: 'Name the licence under “rights”, such as CC0 1.0 Universal, or say that you reserve them.',
    source: 'DACS 8.2',
  },
  {
    rule: 'description.history',
    weight: 'should',
    met: ({ history }) => history !== undefined,
    found: 'The collection has no biographical history.',
    advice: 'Tell the story of the family in a few paragraphs under “history”.',
    source: 'DACS 2.7, ISAD(G) 3.2.2',
  },
  {
    rule: 'description.author',
    weight: 'should',
    met: ({ author }) => author !== undefined,
    found: 'Nobody is named as author of the description.',
    advice: 'Add your name under “author”.',
    source: 'DACS 8.1.5, ISAD(G) 3.7.1',
  },
  {
    rule: 'description.custody',
    weight: 'consider',
    met: ({ custody }) => custody !== undefined,
    found: 'Nothing is said on who kept these things before.',
    advice: 'Say under “custody” through whose hands they came.',
    source: 'DACS 5.1, ISAD(G) 3.2.3',
  },
  {
    rule: 'description.acquisition',
    weight: 'consider',
    met: ({ acquisition }) => acquisition !== undefined,
    found: 'Nothing is said on how its keeper came by the collection.',
    advice:
      'Say under “acquisition” from whom it came, when, and whether as a gift, a loan or an inheritance.',
    source: 'DACS 5.2, ISAD(G) 3.2.4',
  },
  {
    rule: 'description.use',
    weight: 'consider',
    met: ({ use }) => use !== undefined,
    found: 'Nothing is said on copying and copyright.',
    advice: 'Say under “use” what is known; owning a letter is not owning its copyright.',
    source: 'DACS 4.4, ISAD(G) 3.4.2',
  },
  {
    rule: 'description.technical',
    weight: 'consider',
    met: ({ technical }, things) => technical !== undefined || !things.some(needsMachine),
    found: 'There are things that need a machine to be seen or heard, and nothing is said on that.',
    advice: 'Say under “technical” what is needed, and whether the family has it.',
    source: 'DACS 4.3, ISAD(G) 3.4.4',
  },
  {
    rule: 'description.access-points',
    weight: 'consider',
    met: ({ subjects, people }, things) =>
      subjects.length > 0 ||
      people.length > 0 ||
      things.some((thing) => thing.people.length + thing.places.length > 0),
    found: 'No person, place or subject is named by which the collection could be found.',
    advice:
      'Fill in the columns for people and places, or name under “subjects” what the collection is about.',
    source: 'DACS chapter 1 (optimum)',
  },
];

const MACHINE_GROUPS: ReadonlySet<string> = new Set(['Film and sound', 'Digital files']);

const needsMachine = ({ kind }: Thing) =>
  kind !== undefined && MACHINE_GROUPS.has(readKind(kind)?.kind.group ?? '');
