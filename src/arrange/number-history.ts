import { addTo } from '../catalogue/add-to.ts';
import type { Component } from '../catalogue/component.ts';
import { foldersText } from '../catalogue/numbers-file.ts';
import { isMoved, MOVED, type Settled } from '../catalogue/settled.ts';
import type { PlacedGroup } from '../housing/placed.ts';

type CodeOf = (place: readonly number[]) => string;

/** A settled number at which nothing lies any more. */
export interface Gap {
  place: readonly number[];
  why: string;
  /** The number written on its folder, or the numbers of several, where the folder is not there any more either. */
  folder?: string;
}

/** What became of settled numbers, so that no gap looks like a loss and a thing is found under the code it once had. */
export interface NumberHistory {
  /** The reference codes that the thing of a number of the list had before it was moved, earliest first. */
  former(number: string | undefined): readonly string[];
  /** The numbers of folders that are not there any more, to be told at the nearest group above that is. */
  emptied(group: readonly number[]): readonly Gap[];
}

/** The history of the numbers of placed things. */
export function numberHistory(
  groups: readonly PlacedGroup[],
  settled: readonly Settled[],
  codeOf: CodeOf,
): NumberHistory {
  const former = new Map<string, string[]>();
  for (const row of settled) {
    if (isMoved(row)) former.set(row.number, [...(former.get(row.number) ?? []), codeOf(row.place)]);
  }
  const emptied = settled.length === 0 ? new Map<string, Gap[]>() : gapsAbove(groups, settled);
  return {
    former: (number) => former.get(number ?? '') ?? [],
    emptied: (group) => emptied.get(group.join('/')) ?? [],
  };
}

function gapsAbove(groups: readonly PlacedGroup[], settled: readonly Settled[]): Map<string, Gap[]> {
  const units = new Set(placesIn(groups, []));
  const gaps = new Map<string, Gap[]>();
  for (const row of settled) {
    let above = row.place.slice(0, -1);
    if (units.has(above.join('/'))) continue;
    while (above.length > 0 && !units.has(above.join('/'))) above = above.slice(0, -1);
    const at = above.join('/');
    const folder = foldersText(row);
    const gap = { place: row.place, why: row.gone ?? 'removed', ...(folder !== '' && { folder }) };
    addTo(gaps, at, gap);
  }
  return gaps;
}

/** The places of groups and folders that are there. */
const placesIn = (groups: readonly PlacedGroup[], above: readonly number[]): string[] =>
  groups.flatMap((group) => {
    const here = [...above, group.number];
    const folders = group.folders.map(({ number }) => [...here, number].join('/'));
    return [here.join('/'), ...folders, ...placesIn(group.groups, here)];
  });

/** The note on numbers that are not used any more: none where there is no gap. */
export function notesOnGaps(gaps: readonly Gap[], codeOf: CodeOf): Component['generalNotes'] {
  if (gaps.length === 0) return [];
  const text = runsOf(gaps).map(([first, last]) => {
    const codes = first === last ? codeOf(first.place) : `${codeOf(first.place)} to ${codeOf(last.place)}`;
    const { folder } = first;
    const held = folder === undefined ? '' : `, folder${/^\d+$/.test(folder) ? '' : 's'} ${folder}`;
    return `${codes}${held} (${sayGone(first.why, codeOf)})`;
  });
  return [{ head: 'Numbers no longer used', text: text.join('; ') }];
}

/** Gaps that follow each other in a folder and have one reason, by the first and the last of each run. */
function runsOf(gaps: readonly Gap[]): [Gap, Gap][] {
  const runs: [Gap, Gap][] = [];
  for (const gap of gaps) {
    const run = runs.at(-1);
    if (run !== undefined && follows(run[1], gap)) run[1] = gap;
    else runs.push([gap, gap]);
  }
  return runs;
}

const follows = (one: Gap, next: Gap): boolean =>
  one.why === next.why &&
  one.folder === next.folder &&
  one.place.slice(0, -1).join('/') === next.place.slice(0, -1).join('/') &&
  next.place.at(-1) === (one.place.at(-1) ?? 0) + 1;

const MOVED_TO = new RegExp(`^${MOVED} to (\\d+(?:/\\d+)+)$`);

/** Why a number is not used any more; where its thing was moved, with the whole reference code it has now. */
export function sayGone(why: string, codeOf: CodeOf): string {
  const place = MOVED_TO.exec(why)?.[1];
  return place === undefined ? why : `${MOVED} to ${codeOf(place.split('/').map(Number))}`;
}
