import type { Finding } from '../catalogue/finding.ts';
import { nearest } from '../catalogue/nearest.ts';
import { COLUMNS, type Column } from '../catalogue/thing.ts';
import { columnLetters } from './column-letters.ts';
import { BY_THEMSELVES, comparable, type Meanings, nameByLetters } from './columns.ts';

/** Where each column of the list is found, and which others are to be kept beside. */
export interface Layout {
  /** Position of each column that has a meaning. */
  at: ReadonlyMap<Column, number>;
  /** The remaining columns, with the heading to keep their cells under: a made one, where none is written. */
  extra: readonly { index: number; heading: string; made?: true }[];
  findings: readonly Finding[];
}

/** Decides which column of a list means what; two columns with one meaning are never chosen between in silence. */
export function layoutOf(
  headings: readonly string[],
  place: Finding['place'],
  { columnOf, isSettled }: Meanings = BY_THEMSELVES,
): Layout {
  const findings: Finding[] = [];
  const at = new Map<Column, number>();
  const extra: Layout['extra'][number][] = [];
  const keepBeside = (index: number) => {
    const heading = headings[index] ?? '';
    extra.push(heading === '' ? { index, heading: nameByLetters(index), made: true } : { index, heading });
  };

  findings.push(...repeated(headings).map(([heading, ...indexes]) => twice(place, heading, indexes)));
  for (const column of COLUMNS) {
    const candidates = headings.flatMap((heading, index) => (columnOf(heading) === column ? [index] : []));
    const settled = candidates.filter((index) => isSettled(headings[index] ?? ''));
    // Two that collection.yaml names for one column are no better than two that nobody named.
    const proper =
      settled.length > 0
        ? settled.find(() => settled.length === 1)
        : candidates.find((index) => comparable(headings[index] ?? '') === column);
    const chosen = proper ?? candidates[0];
    if (chosen === undefined) continue;
    at.set(column, chosen);
    const others = candidates.filter(
      (index) => index !== chosen && comparable(headings[index] ?? '') !== comparable(headings[chosen] ?? ''),
    );
    if (others.length === 0) continue;
    const words = candidates.map((index) => `“${headings[index]}”`).join(' and ');
    if (proper === undefined) {
      const found = `The headings ${words} ${candidates.length === 2 ? 'both' : 'all'} mean the column ${column}, and only one can be it.`;
      const advice = `Name the one to be used “${column}”; the other is then kept in the notes.`;
      findings.push({ rule: 'list.column-unclear', weight: 'must', place, found, advice });
    } else {
      const kept = others.map((index) => `“${headings[index]}”`).join(' and ');
      const found = `The headings ${words} mean the same column; “${headings[chosen]}” was used, ${kept} is kept in the notes.`;
      findings.push({ rule: 'list.column-doubled', weight: 'should', place, found });
      others.forEach(keepBeside);
    }
  }

  headings.forEach((heading, index) => {
    if (columnOf(heading) !== undefined) return;
    if (heading !== '' && headings.indexOf(heading) === index && !isSettled(heading))
      findings.push(unknown(place, heading));
    keepBeside(index);
  });
  if (!at.has('title')) findings.push(noTitle(place, headings));
  return { at, extra: extra.sort((one, other) => one.index - other.index), findings };
}

type Repeated = [heading: string, ...indexes: number[]];

function repeated(headings: readonly string[]): Repeated[] {
  const seen = new Map<string, Repeated>();
  headings.forEach((heading, index) => {
    const key = comparable(heading) || heading;
    if (key === '') return;
    const before = seen.get(key);
    if (before === undefined) seen.set(key, [heading, index]);
    else before.push(index);
  });
  return [...seen.values()].filter((entry) => entry.length > 2);
}

function twice(place: Finding['place'], heading: string, indexes: readonly number[]): Finding {
  const letters = indexes.map(columnLetters).join(' and ');
  const found = `The heading “${heading}” stands over ${indexes.length} columns, ${letters}.`;
  const advice = 'Give each column a heading of its own, or join them into one.';
  return { rule: 'list.column-twice', weight: 'must', place, found, advice };
}

function unknown(place: Finding['place'], heading: string): Finding {
  const near = nearest(comparable(heading), COLUMNS);
  const found = `The heading “${heading}” means no column that is known; what stands below it is kept in the notes.`;
  const advice = near === undefined ? {} : { advice: `Is “${near}” meant? Then write it so.` };
  return { rule: 'list.column-unknown', weight: 'consider', place, found, ...advice };
}

function noTitle(place: Finding['place'], headings: readonly string[]): Finding {
  const read = headings.filter((heading) => heading !== '').map((heading) => `“${heading}”`);
  const shown = read.slice(0, 12).join(', ') + (read.length > 12 ? ', …' : '');
  const near = headings.find((heading) => nearest(comparable(heading), ['title']) !== undefined);
  const found = `No column is headed “title” or another word for it, such as “what”, “thing” or “item”; the headings read are ${shown}.`;
  const advice =
    near === undefined
      ? 'Write “title” over the column that says what each thing is; if the list has no headings, put a first row with headings above it.'
      : `Is “${near}” meant to be “title”? Then write it so.`;
  return { rule: 'list.no-title-column', weight: 'must', place, found, advice };
}
