import type { Finding } from '../catalogue/finding.ts';
import type { Table } from './csv.ts';
import type { Row } from './csv-rows.ts';
import type { Layout } from './layout.ts';

// In UTF-16 units. Few cells are as short, and fewer begin with a sign or a letter that a ditto mark has.
const LONGEST = 16;
const BEGIN = new Set('"″〃“”„–—-dDiI\' \t\n');
const MARKS = '[\\s"″〃“”„–—\'-]*';
/** A ditto mark, or the word for it in several languages (common practice), perhaps between dashes: ", 〃, do., – " –. */
const DITTO = new RegExp(
  `^(?:${MARKS}(?:["″〃“”„]|'')${MARKS}|${MARKS}(?:d[ot]o?\\.|id\\.|dit?to\\.?|idem)${MARKS})$`,
  'i',
);

/**
 * The rows of a list with what a ditto mark stands for in its place: the cell above, that of the last row that holds
 * anything. A number is never repeated.
 * @param said is called once for each row with ditto marks, with the headings of their columns
 */
export function* withoutDittos(
  { rows, headings }: Pick<Table, 'rows' | 'headings'>,
  { at }: Pick<Layout, 'at'>,
  said: (row: number, columns: string[]) => void,
): Generator<Row> {
  const number = at.get('number');
  let above: readonly string[] = [];
  for (const row of rows) {
    let cells: string[] | undefined;
    for (let index = 0; index < row.cells.length; index++) {
      const cell = row.cells[index] ?? '';
      if (cell.length > LONGEST || !BEGIN.has(cell.charAt(0)) || index === number) continue;
      if (!DITTO.test(cell)) continue;
      const meant = above[index] ?? '';
      if (meant.trim() === '') continue;
      cells ??= [...row.cells];
      cells[index] = meant;
    }
    above = cells ?? row.cells;
    if (cells === undefined) yield row;
    else {
      const changed = cells;
      said(
        row.row,
        headings.filter((_, index) => changed[index] !== row.cells[index]),
      );
      yield { ...row, cells };
    }
  }
}

/** What to say of the rows with ditto marks, all at once. */
export function sayDittos(file: string, rows: readonly { row: number; columns: string[] }[]): Finding[] {
  const [first, ...others] = rows;
  if (first === undefined) return [];
  const columns = [...new Set(rows.flatMap((one) => one.columns))].map((column) => `“${column}”`);
  const elsewhere = others.length === 1 ? `row ${others[0]?.row}` : `${others.length} more rows`;
  const marks = others.length === 0 ? 'A mark' : `Marks here and in ${elsewhere}`;
  return [
    {
      rule: 'list.ditto',
      weight: 'should',
      place: { file, row: first.row },
      found: `${marks} for “the same as above” (${columns.join(', ')}) ${others.length === 0 ? 'was' : 'were'} read as what stands above.`,
      advice: 'Write it out: once the rows are sorted otherwise, such a mark means something else.',
      source: 'common practice',
    },
  ];
}
