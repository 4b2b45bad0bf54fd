import { leftOverThings } from '../arrange/index.ts';
import type { Component } from '../catalogue/component.ts';
import type { Finding } from '../catalogue/finding.ts';
import { languageUse } from '../catalogue/languages.ts';
import type { Rules } from './index.ts';

/** Things that fit no group, languages nobody can look up, and words in `collection.yaml` for groups that do not exist. */
export const reviewGroups: Rules = (catalogue, aid) => [
  ...leftOverThings(catalogue).map(
    ({ thing, key }): Finding => ({
      rule: 'groups.left-over',
      weight: 'should',
      place: { file: 'list.csv', row: thing.row, column: COLUMN[key] ?? key },
      found: `"${thing.title}" fits no group, since its ${COLUMN[key] ?? key} is not noted.`,
      advice: 'It is kept in a group of its own at the end.',
      source: 'common practice',
    }),
  ),
  ...unknownLanguages(catalogue),
  ...unusedGroups(catalogue.settings.groups, aid.collection),
];

/** The column that a group key is read from, where it bears another name. */
const COLUMN: Partial<Record<string, string>> = { person: 'people', decade: 'date', year: 'date' };

const unknownLanguages: (catalogue: Parameters<Rules>[0]) => Finding[] = ({ things }) =>
  things.flatMap(({ row, languages }) =>
    languages
      .filter((word) => languageUse(word) === undefined)
      .map((word) => ({
        rule: 'description.unknown-language',
        weight: 'should',
        place: { file: 'list.csv', row, column: 'language' },
        found: `"${word}" is not a language that ISO 639 knows by this name or code.`,
        advice:
          'Write its English name or its code, such as Norwegian or nor; until then it stands in a note.',
        source: 'ISO 639-2',
      })),
  );

function unusedGroups(groups: Parameters<Rules>[0]['settings']['groups'], collection: Component): Finding[] {
  const titles = new Set<string>();
  const walk = ({ title, children }: Component) => {
    titles.add(title.toLowerCase());
    children.forEach(walk);
  };
  collection.children.forEach(walk);
  return Object.entries(groups)
    .filter(([name, { title }]) => !titles.has((title ?? name).toLowerCase()))
    .map(([name]) => ({
      rule: 'groups.unused-words',
      weight: 'consider',
      place: { file: 'collection.yaml' },
      found: `There are words for a group "${name}", but no group has this title.`,
      advice: 'Compare the titles that `kinfonds arrange` prints.',
    }));
}
