import type { Finding, Weight } from '../catalogue/finding.ts';
import type { Settings } from '../catalogue/settings.ts';
import type { Rules } from './index.ts';

interface Requirement {
  rule: string;
  weight: Weight;
  /** Whether the requirement is met. */
  met: (settings: Settings) => boolean;
  found: string;
  advice: string;
  source: string;
}

/** What DACS requires (must) or recommends (should) at the top of a multilevel description, and the list cannot tell. */
const REQUIREMENTS: readonly Requirement[] = [
  {
    rule: 'description.creator',
    weight: 'must',
    met: ({ creators }) => creators.length > 0,
    found: 'Nobody is named as creator of the collection.',
    advice: 'Name the family or the people whose papers these are under "creators", if it is known.',
    source: 'DACS 2.6',
  },
  {
    rule: 'description.repository-place',
    weight: 'must',
    met: ({ repository }) => (repository.address ?? []).length > 0,
    found: 'The place where the collection is kept is not given.',
    advice: 'Add "address" under "repository"; the town is enough.',
    source: 'DACS 2.2',
  },
  {
    rule: 'description.scope',
    weight: 'must',
    met: ({ scope }) => scope !== undefined,
    found: 'The collection has no scope and content; a count of its things stands in for it.',
    advice: 'Say under "scope" in two or three sentences what is in it, about whom, and from when.',
    source: 'DACS 3.1, ISAD(G) 3.3.1',
  },
  {
    rule: 'description.access',
    weight: 'must',
    met: ({ access }) => access !== undefined,
    found: 'Nothing is said on who may see the collection.',
    advice: 'Say it under "access", even where everybody may.',
    source: 'DACS 4.1, ISAD(G) 3.4.1',
  },
  {
    rule: 'description.rights',
    weight: 'must',
    met: ({ rights }) => rights !== undefined,
    found: 'Nothing is said on the rights in the description itself.',
    advice: 'Name the licence under "rights", such as CC0 1.0 Universal, or say that you reserve them.',
    source: 'DACS 8.2',
  },
  {
    rule: 'description.history',
    weight: 'should',
    met: ({ history }) => history !== undefined,
    found: 'The collection has no biographical history.',
    advice: 'Tell the story of the family in a few paragraphs under "history".',
    source: 'DACS 2.7, ISAD(G) 3.2.2',
  },
  {
    rule: 'description.author',
    weight: 'should',
    met: ({ author }) => author !== undefined,
    found: 'Nobody is named as author of the description.',
    advice: 'Add your name under "author".',
    source: 'DACS 8.1.5, ISAD(G) 3.7.1',
  },
  {
    rule: 'description.custody',
    weight: 'consider',
    met: ({ custody }) => custody !== undefined,
    found: 'Nothing is said on who kept these things before.',
    advice: 'Say under "custody" through whose hands they came.',
    source: 'DACS 5.1, ISAD(G) 3.2.3',
  },
  {
    rule: 'description.use',
    weight: 'consider',
    met: ({ use }) => use !== undefined,
    found: 'Nothing is said on copying and copyright.',
    advice: 'Say under "use" what is known; owning a letter is not owning its copyright.',
    source: 'DACS 4.4, ISAD(G) 3.4.2',
  },
];

/** What the standards ask of the collection as a whole and `collection.yaml` does not say. */
export const reviewDescription: Rules = ({ settings, things }, aid) => [
  ...REQUIREMENTS.filter(({ met }) => !met(settings)).map(
    ({ met: _, ...finding }): Finding => ({ ...finding, place: { file: 'collection.yaml' } }),
  ),
  ...unstatedLanguage(aid.collection.languages),
  ...(things.some(({ kind }) => kind !== undefined) ? [] : [noKinds]),
];

const noKinds: Finding = {
  rule: 'description.kinds',
  weight: 'should',
  place: { file: 'list.csv', column: 'kind' },
  found: 'No thing of the list has a kind.',
  advice: 'Note for each what it is (letter, photograph, diary): the extent is counted from it.',
  source: 'DACS 2.5',
};

function unstatedLanguage(languages: readonly { code: string }[]): Finding[] {
  if (languages.some(({ code }) => code !== 'und')) return [];
  return [
    {
      rule: 'description.language',
      weight: 'must',
      place: { file: 'collection.yaml' },
      found: 'The language of the material is not known from the list or the settings.',
      advice: 'Name it under "languages", such as English.',
      source: 'DACS 4.5, ISAD(G) 3.4.3',
    },
  ];
}
