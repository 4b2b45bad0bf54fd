import { type Arrangement, groupTitles, leftOver } from '../arrange/index.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Finding } from '../catalogue/finding.ts';
import { fold } from '../catalogue/fold.ts';
import { nearest } from '../catalogue/nearest.ts';
import type { Settings } from '../catalogue/settings.ts';
import { maskNumbers } from './private-numbers.ts';

/** The column that a group key is read from, where it bears another name. */
const COLUMN: Partial<Record<string, string>> = { person: 'people', decade: 'date', year: 'date' };

/** Things that fit no group, and words in `collection.yaml` for groups that are none. */
export const reviewGroups = ({ settings }: Catalogue, { sorted }: Arrangement): Finding[] => [
  ...[...leftOver(sorted)].map(({ thing, key }): Finding => {
    const column = COLUMN[key] ?? key;
    return {
      rule: 'groups.left-over',
      weight: 'should',
      place: { file: 'list.csv', row: thing.row, column },
      found: `“${maskNumbers(thing.title)}” fits no group, since its ${column} is not noted.`,
      advice: 'Note it there; until then the thing stands in a group of its own at the end.',
      source: 'common practice',
    };
  }),
  ...unusedGroups(settings.groups, groupTitles(sorted)),
];

function unusedGroups(groups: Settings['groups'], titles: readonly string[]): Finding[] {
  const known = new Set(titles.map(fold));
  return Object.keys(groups)
    .filter((name) => !known.has(fold(name)))
    .map((name) => {
      const meant = nearest(name, titles);
      return {
        rule: 'groups.unused-words',
        weight: 'consider',
        place: { file: 'collection.yaml' },
        found: `There are words for a group “${name}”, but no group has this title.`,
        advice:
          meant === undefined ? 'Compare the titles that kinfonds arrange prints.' : `Is “${meant}” meant?`,
      };
    });
}
