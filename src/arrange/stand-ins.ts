import type { LanguageUse } from '../catalogue/component.ts';
import type { SortSettings } from '../catalogue/settings.ts';
import type { Thing } from '../catalogue/thing.ts';
import { type Count, countByKind, unitFor } from '../kinds/extents.ts';

// DACS chapter 1 requires these at the top of every description. Where collection.yaml is silent, the finding aid
// says only what is certain; `check` asks for better words.

/** How a scope ends that nobody wrote. */
export const COUNTED_SCOPE = 'This summary was counted from the list of the collection.';

/** Scope and content (DACS 3.1) as far as the list itself tells: how many of what. */
export const scopeFromList = (things: readonly Thing[]): string => scopeFromCounts(countByKind(things));

/** @param counts the most frequent first */
export function scopeFromCounts(counts: readonly Count[]): string {
  const said = counts
    .slice(0, 8)
    .map((count) =>
      count.number === 0
        ? `${count.unit.many} that are not counted`
        : `${count.approximate ? 'about ' : ''}${count.number} ${unitFor(count)}`,
    );
  const rest = counts.length > said.length ? ', and other kinds' : '';
  return `The collection holds ${said.join(', ')}${rest}. ${COUNTED_SCOPE}`;
}

const FOLDERS: Record<SortSettings['folders'], string> = {
  year: 'one folder for each year',
  decade: 'one folder for each decade',
  occasion: 'one folder for each occasion',
  person: 'one folder for each person',
  folder: 'folders as the list names them',
  group: 'one folder for each group',
};

/** System of arrangement (DACS 3.2) as it follows from the way of sorting. */
export function arrangementFrom({ groups, order, folders }: SortSettings, series: number): string {
  const by = groups.map((key) => (key === 'series' ? 'series named in the list' : key)).join(', then by ');
  return (
    `Arranged by ${by}, in ${series} series, with ${FOLDERS[folders]}. ` +
    `Within a folder the order is by ${order.map((key) => (key === 'list' ? 'place in the list' : key)).join(', then by ')}` +
    `${order.includes('date') ? ', earliest to latest, with what is undated last' : ''}.`
  );
}

/** Conditions governing access (DACS 4.1) where nobody has stated any. */
export const UNSTATED_ACCESS =
  'No conditions governing access have been stated for the collection as a whole. Ask its keeper before using it.';

/** Rights statement for the description (DACS 8.2) where nobody has made one. */
export const UNSTATED_RIGHTS = 'No rights in this description have been stated.';

/** Languages of the material (DACS 4.5) where neither the settings nor the list name one: ISO 639-2 `und`. */
export const UNSTATED_LANGUAGE: LanguageUse = { code: 'und', name: 'Undetermined' };
