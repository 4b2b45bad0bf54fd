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

const size = (group: SortingSummary['largest']) =>
  group === undefined ? '' : `${group.things} ${short(group.title)}`;

const short = (title: string) => (title.length > 28 ? `${title.slice(0, 27)}…` : title);
