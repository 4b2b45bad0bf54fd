import type { Thing } from '../catalogue/thing.ts';
import { columnOf, comparable, nameByLetters } from '../intake/columns.ts';
import type { Row } from '../intake/csv-rows.ts';
import { withoutExample } from '../intake/example-row.ts';
import type { ListTable as OpenTable } from '../intake/open-list.ts';
import { withoutTotal } from '../intake/total-row.ts';
import { columnsOf, isOfTheFamily, type ListColumn, properColumn } from './list-columns.ts';
import type { ListRow } from './list-table.ts';
import { sayRow } from './say-left-out.ts';

/** One table of a list: of a text, or of one sheet. */
export interface SheetAsTable {
  /** Its name; blank where it has none. */
  sheet: string;
  columns: readonly ListColumn[];
  rows: readonly ListRow[];
  leftOut: readonly string[];
}

/**
 * @param things that were read from this table; they say of each row its date, and the series that a sheet is
 */
export function sheetAsTable(
  { table, layout, file, sheet = '' }: OpenTable,
  things: readonly Thing[],
): SheetAsTable {
  const left: { row: Row; why: string }[] = [];
  const all = [...table.rows];
  const byRow = new Map(all.map((row) => [row.row, row]));
  const note = (row: number, why: string) => {
    const one = byRow.get(row);
    if (one !== undefined) left.push({ row: one, why });
  };
  const rows = [
    ...withoutTotal(
      withoutExample({ rows: all }, (say) => {
        note(say(file).place.row ?? 0, 'the example of a new list');
      }),
      layout,
      (row) => note(row, 'a sum'),
    ),
  ];
  const width = rows.reduce((most, { cells }) => Math.max(most, cells.length), 0);
  const own = columnsOf(table.headings, layout, width);
  const columns = [...own];
  const place = (column: ListColumn): number => {
    const at = columns.findIndex(({ key }) => key === column.key);
    return at < 0 ? columns.push(column) - 1 : at;
  };
  const known = new Map(things.map((thing) => [thing.row, thing]));
  const made = rows.map(({ row, cells, remarks = [] }): ListRow => {
    const full = [...cells];
    const add = (column: ListColumn, text: string) => {
      const at = place(column);
      while (full.length <= at) full.push('');
      full[at] = [full[at] ?? '', text].filter((one) => one.trim() !== '').join('\n');
    };
    for (const { index, what, text } of remarks) {
      const on = own[index];
      const isPrivate = on !== undefined && isOfTheFamily(on);
      const heading = on?.heading ?? nameByLetters(index);
      add(isPrivate ? properColumn('family note') : remarkColumn(heading, what), text);
    }
    const { series, date } = known.get(row) ?? {};
    // The name of a sheet is the series of what stands in it, where a row names none.
    if (series !== undefined && (full[columns.findIndex(({ key }) => key === 'series')] ?? '').trim() === '')
      add(properColumn('series'), series);
    return { row, cells: full, ...(date?.reading.kind === 'date' && { date: date.reading.edtf }) };
  });
  return {
    sheet,
    columns,
    rows: made,
    leftOut: [
      ...(table.above ?? []).map((row) => sayRow(file, row, 'above the headings')),
      ...left.map(({ row, why }) => sayRow(file, row, why)),
    ],
  };
}

/** Under the headings by which the reader of lists keeps them. */
function remarkColumn(of: string, what: 'comment' | 'time of day'): ListColumn {
  const heading = what === 'comment' ? `Comment on ${of}` : `${of}, time of day`;
  const plain = columnOf(heading) === undefined ? heading : `Also in the list: ${heading}`;
  return { heading: plain, key: `other ${comparable(plain)}` };
}
