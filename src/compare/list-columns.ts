import type { COLUMNS, Column } from '../catalogue/thing.ts';
import { columnOf, comparable, nameByLetters } from '../intake/columns.ts';
import type { Layout } from '../intake/layout.ts';

/** A column of a list. */
export interface ListColumn {
  heading: string;
  /** The same for columns of two lists that hold the same: what they mean, or else their heading. */
  key: string;
}

/** For the family alone: under no other heading may they stand than one that says so. */
const OF_THE_FAMILY: ReadonlySet<string> = new Set<Column>(['stays', 'family note']);

/**
 * The columns of a table, under headings that mean by themselves what they mean in this list: where collection.yaml
 * had to say it, the merged list, which may go elsewhere, has the proper heading.
 * @param width how many cells the widest row has: cells may stand below no heading, or beyond the last
 */
export function columnsOf(headings: readonly string[], { at, extra }: Layout, width: number): ListColumn[] {
  const meanings = new Map([...at].map(([column, index]): [number, Column] => [index, column]));
  const doubled = new Set(extra.map(({ index }) => index));
  const times = new Map<string, number>();
  return Array.from({ length: Math.max(width, headings.length) }, (_, index): ListColumn => {
    // They get one, so that nothing is lost.
    const written = headings[index] || nameByLetters(index);
    const meaning = meanings.get(index);
    const key = meaning ?? `other ${comparable(written) || written}`;
    const time = (times.get(key) ?? 0) + 1;
    times.set(key, time);
    const heading =
      meaning === undefined ? beside(written, at, doubled.has(index)) : ownHeading(written, meaning);
    return { heading, key: time === 1 ? key : `${key} ${time}` };
  });
}

const ownHeading = (written: string, meaning: Column) => (columnOf(written) === meaning ? written : meaning);

/** A heading that is to mean nothing here, although its word does; a second one of a meaning stays what it is. */
function beside(written: string, at: Layout['at'], isExtra: boolean): string {
  const column = columnOf(written);
  return column === undefined || (isExtra && at.has(column)) ? written : nothingElse(written);
}

/** Under this no column is known, so that its cells are kept in the notes. */
const nothingElse = (written: string) => `Also in the list: ${written}`;

/**
 * The columns of A, then those that only B has. No two have one heading: a list in which one stands twice could not be
 * read again.
 */
export function unitedColumns(
  a: readonly ListColumn[],
  b: readonly ListColumn[],
  nameOfB: string,
): ListColumn[] {
  const keys = new Set(a.map(({ key }) => key));
  const columns = [...a];
  for (const column of b.filter(({ key }) => !keys.has(key)))
    columns.push({ ...column, heading: headingBeside(column, columns, nameOfB) });
  const seconds = new Set(columns.flatMap(({ heading, key }) => secondOf(heading, key) ?? []));
  // Of two that mean the same, the first is known by its proper heading.
  return columns.map((column) => (seconds.has(column.key) ? { ...column, heading: column.key } : column));
}

/** What a column means that another column means already. */
function secondOf(heading: string, key: string): string | undefined {
  const meaning = columnOf(heading);
  return meaning !== undefined && OF_THE_FAMILY.has(meaning) && key !== meaning ? meaning : undefined;
}

function headingBeside({ heading, key }: ListColumn, others: readonly ListColumn[], nameOfB: string): string {
  const taken = new Set(others.map((one) => comparable(one.heading)));
  const meaning = columnOf(heading);
  const isSecond = meaning !== undefined && key !== meaning && others.some((one) => one.key === meaning);
  if (!isSecond && !taken.has(comparable(heading))) return heading;
  // What stands in brackets does not count, so that this still says for whom it is.
  if (meaning !== undefined && OF_THE_FAMILY.has(meaning))
    return freeOf((count) => `${meaning} (${nameOfB}${count})`, taken);
  const other = meaning === undefined ? `${heading}, ${nameOfB}` : nothingElse(heading);
  return freeOf((count) => `${other}${count}`, taken);
}

/** @param named makes a heading with what tells it from others: nothing at first, then a number */
function freeOf(named: (count: string) => string, taken: ReadonlySet<string>): string {
  let free = named('');
  for (let count = 2; taken.has(comparable(free)); count++) free = named(` ${count}`);
  return free;
}

/** Whether what is beside a cell of this column is for the family alone, as the cell is. */
export const isOfTheFamily = ({ heading, key }: ListColumn): boolean =>
  OF_THE_FAMILY.has(key) || OF_THE_FAMILY.has(columnOf(heading) ?? '');

/** The column of a key, under its proper heading where the list has none. */
export const properColumn = (column: (typeof COLUMNS)[number]): ListColumn => ({
  heading: column,
  key: column,
});
