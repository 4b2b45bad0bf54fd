import { capitalised } from '../catalogue/capitalised.ts';
import { sayList } from '../catalogue/say-list.ts';
import type { FolderKey, GroupKey } from '../catalogue/settings.ts';
import { type Count, isUnnamed, unitFor } from '../kinds/extents.ts';
import type { Folder, Group } from './sort.ts';

/** What the group is called that holds the things which say nothing on the key they were sorted by. */
const LEFT_OVER: Record<GroupKey, string> = {
  kind: 'Things whose kind is not yet noted',
  person: 'Things of no person named',
  place: 'Things of no place named',
  occasion: 'Things of no occasion noted',
  decade: 'Undated things',
  year: 'Undated things',
  language: 'Things whose language is not noted',
  series: 'Things not yet put into a series',
};

/** The title of a group, as the key gives it. */
export function groupTitle({ key, place }: Pick<Group, 'key' | 'place'>): string {
  return place?.title ?? LEFT_OVER[key];
}

/**
 * The title devised for a folder: DACS 2.3.18, the nature of the materials. A year is no part of it, since the date
 * stands beside the title as an element of its own; an occasion or a person begins it; a name that the list itself
 * gives to the folder is the title.
 */
export function folderTitle(
  { label }: Pick<Folder, 'label'>,
  key: FolderKey,
  counts: readonly Count[],
  groupName: string,
): string {
  if (key === 'folder' && label !== undefined) return label;
  const nature = natureOf(counts) ?? groupName;
  if ((key !== 'occasion' && key !== 'person') || label === undefined) return capitalised(nature);
  return `${capitalised(label)}: ${nature}`;
}

/**
 * The nature of the materials of a folder: DACS 2.3.18. Up to three forms of material are named, the most predominant
 * first.
 * @param counts the most frequent first
 * @returns undefined where there are more, or where nothing is known of some; the folder is then called as its group is
 */
export function natureOf(counts: readonly Count[]): string | undefined {
  if (counts.some(isUnnamed)) return undefined;
  const forms = counts.map(unitFor);
  return forms.length === 0 || forms.length > 3 ? undefined : sayList(forms);
}
