import { textTable } from '../catalogue/text-table.ts';
import type { SortingSummary } from './compare.ts';

const HEADINGS = ['sorted by', 'groups', 'folders', 'largest', 'smallest', 'left over'];

/** Ways of sorting as a table of plain text, a line each; the way that is chosen now is marked with an arrow. */
export function sortingTable(summaries: readonly SortingSummary[]): string[] {
  const rows = summaries.map(({ groups, chosen, groupCount, folderCount, largest, smallest, leftOver }) => [
    `${chosen ? '→ ' : '  '}${groups.join(', then ')}`,
    String(groupCount),
    String(folderCount),
    size(largest),
    size(smallest),
    String(leftOver),
  ]);
  return textTable([[`  ${HEADINGS[0]}`, ...HEADINGS.slice(1)], ...rows]);
}

/** What the columns of the table mean, and how to choose one of its ways. */
export function sortingNotes(summaries: readonly SortingSummary[]): string[] {
  const others = summaries.filter(({ chosen }) => !chosen).toSorted((a, b) => a.leftOver - b.leftOver);
  // Of two words, so that it is seen how several are written.
  const named = others.find(({ groups }) => groups.length > 1) ?? others[0];
  const notes = [
    'Folders are the headings under which things are filed; how many folders and boxes they take, kinfonds arrange says.',
    'Left over are things of which the list does not say what they would be sorted by, such as a person.',
  ];
  if (named === undefined) return notes;
  const { groups } = named;
  return [
    ...notes,
    `To choose a way, such as “${groups.join(', then ')}”, write into collection.yaml the line sort: {groups: [${groups.join(', ')}]} (only “groups” where “sort” is there already).`,
  ];
}

const size = (group: SortingSummary['largest']) =>
  group === undefined ? '' : `${group.things} ${short(group.title)}`;

const short = (title: string) => (title.length > 28 ? `${title.slice(0, 27)}…` : title);
