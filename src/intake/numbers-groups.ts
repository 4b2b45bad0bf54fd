import type { Finding } from '../catalogue/finding.ts';
import { fold } from '../catalogue/fold.ts';
import { once } from '../catalogue/once.ts';
import type { Keyed } from './numbers-agree.ts';
import { disagree, groupAndFolder, type Said } from './numbers-findings.ts';

const folded = once(fold);

/** A group has one title and a title one group, within the group above; and no group is a folder as well. */
export function groupContradictions(rows: readonly Keyed[], file: string): Finding[] {
  const titleAt = new Map<string, Said>();
  const placeOf = new Map<string, Said>();
  const folders = new Map<string, number>();
  const findings: Finding[] = [];
  for (const { row, settled, folder } of onePerFolder(rows)) {
    if (!folders.has(folder)) folders.set(folder, row);
    const place = { file, row, column: 'groups' };
    let above = '';
    settled.groups.forEach((title, depth) => {
      const group = `${above}/${settled.place[depth]}`;
      const named = titleAt.get(group);
      if (named === undefined) titleAt.set(group, { row, value: title });
      else if (folded(named.value) !== folded(title))
        findings.push(disagree(place, `The title of the group at ${group}`, { row, value: title }, named));
      const key = `${above}\n${folded(title)}`;
      const known = placeOf.get(key);
      if (known === undefined) placeOf.set(key, { row, value: group });
      else if (known.value !== group)
        findings.push(disagree(place, `The place of the group “${title}”`, { row, value: group }, known));
      above = group;
    });
  }
  for (const [folder, row] of folders) {
    const group = titleAt.get(folder);
    if (group !== undefined) findings.push(groupAndFolder({ file, row, column: 'place' }, folder, group));
  }
  return findings;
}

/** The first row for each folder and the groups it is said to be in: all things of a folder say the same. */
function onePerFolder(rows: readonly Keyed[]): Keyed[] {
  const seen = new Set<string>();
  return rows.filter(({ settled, folder }) => {
    // What does not name a group for each number is a finding already.
    if (settled.place.length !== settled.groups.length + 2) return false;
    const key = `${folder}\n${settled.groups.join('\n')}`;
    return !seen.has(key) && seen.add(key);
  });
}
