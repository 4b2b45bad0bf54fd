import type { Catalogue } from '../catalogue/catalogue.ts';
import { CatalogueError } from '../catalogue/finding.ts';
import type { Column } from '../catalogue/thing.ts';
import { columnOf, comparable, layoutOf, nameByLetters } from '../intake/columns.ts';
import { readTable } from '../intake/csv.ts';

/** A column of a list. */
export interface ListColumn {
  heading: string;
  /** The same for columns of two lists that hold the same: what they mean, or else their heading. */
  key: string;
}

/** A row of a list. */
export interface ListRow {
  /** As a spreadsheet counts it, from 1. */
  row: number;
  /** A cell for each column; blank ones may be missing at the end. */
  cells: readonly string[];
  /** Its date in EDTF, where it has one that could be read. */
  date?: string;
}

/** A list as it is merged with another. */
export interface ListTable {
  /** How it is called where one must be told from the other. */
  name: string;
  columns: readonly ListColumn[];
  rows: readonly ListRow[];
}

/**
 * The list of a catalogue with its cells as they were written.
 * @throws CatalogueError where it is no list of comma-separated values
 */
export function listTable({ list, things }: Pick<Catalogue, 'list' | 'things'>, name: string): ListTable {
  const { table, findings } = readTable(list, name, (heading) => columnOf(heading) !== undefined);
  if (table === undefined) throw new CatalogueError(findings);
  const { headings } = table;
  const { at } = layoutOf(headings, {});
  const meanings = new Map([...at].map(([column, index]): [number, Column] => [index, column]));
  const dates = new Map(
    things.flatMap(({ row, date }): [number, string][] =>
      date?.reading.kind === 'date' ? [[row, date.reading.edtf]] : [],
    ),
  );
  const rows = [...table.rows].map(({ row, cells }): ListRow => {
    const date = dates.get(row);
    return { row, cells, ...(date !== undefined && { date }) };
  });
  const width = rows.reduce((most, { cells }) => Math.max(most, cells.length), headings.length);
  const times = new Map<string, number>();
  const columns = Array.from({ length: width }, (_, index): ListColumn => {
    // Cells may stand below no heading, or beyond the last: they get one, so that nothing is lost.
    const heading = headings[index] || nameByLetters(index);
    const key = meanings.get(index) ?? `other ${comparable(heading) || heading}`;
    const time = (times.get(key) ?? 0) + 1;
    times.set(key, time);
    return { heading, key: time === 1 ? key : `${key} ${time}` };
  });
  return { name, columns, rows };
}

/** What a cell says, without blanks around it. */
export const cellText = (cells: readonly string[], index: number | undefined): string =>
  index === undefined ? '' : (cells[index] ?? '').trim();
