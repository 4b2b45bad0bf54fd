import { addTo } from '../catalogue/add-to.ts';
import { fold } from '../catalogue/fold.ts';
import { mayBeOne } from './likeness.ts';
import { cellText, type ListRow, type ListTable } from './list-table.ts';
import { joinByKey, joinInOrder, leftInA, leftInB, noPairs, type Pairs, soleByKey } from './pairs.ts';

/** In a row, what stands in the column of a key, without blanks around it. */
type CellOf = (row: ListRow, key: string) => string;

/** Of many rows that look alike, so many are held against one. */
const HELD = 50;

/**
 * Finds the rows of two lists that are of the same thing: by number, where title and date do not speak against it; by
 * equal cells; by title, date and kind. Of several rows with the same title, date and kind, only those are joined of
 * which no cell says something else: twenty photographs without a date are not one. In doubt both rows stay.
 */
export function matchRows(a: ListTable, b: ListTable): Pairs<ListRow> {
  const pairs = noPairs<ListRow>();
  const cell = cellsOf(a, b);
  const keys = [...new Set([...a.columns, ...b.columns].map(({ key }) => key))];
  const number = (row: ListRow) => cell(row, 'number') || undefined;
  const described = (row: ListRow) => ({ title: cell(row, 'title'), date: row.date });

  joinByKey(pairs, a.rows, b.rows, number, (one, other) => mayBeOne(described(one), described(other)));
  // Where both count together, another number is another thing.
  const numbered = pairs.size > 0;
  const fits = (one: ListRow, other: ListRow) => {
    const [these, those] = [number(one), number(other)];
    return !numbered || these === undefined || those === undefined || these === those;
  };
  joinInOrder(pairs, a.rows, b.rows, (row) => JSON.stringify(keys.map((key) => cell(row, key))), fits);

  const look = (row: ListRow) => lookOf(row, cell);
  const [inA, inB] = [soleByKey(a.rows, look), soleByKey(b.rows, look)];
  const sole = (row: ListRow) => {
    const key = look(row);
    return key === undefined || inA.get(key) === undefined || inB.get(key) === undefined ? undefined : key;
  };
  joinByKey(pairs, a.rows, b.rows, sole, fits);
  const agree = (one: ListRow, other: ListRow) =>
    keys.every((key) => {
      const [these, those] = [cell(one, key), cell(other, key)];
      return these === '' || those === '' || these === those;
    });
  joinAgreeing(pairs, a, b, look, (one, other) => fits(one, other) && agree(one, other));
  return pairs;
}

function cellsOf(a: ListTable, b: ListTable): CellOf {
  const [ofA, ofB] = [a, b].map(({ columns }) => new Map(columns.map(({ key }, index) => [key, index])));
  const rowsOfA = new Set(a.rows);
  return (row, key) => cellText(row.cells, (rowsOfA.has(row) ? ofA : ofB)?.get(key));
}

/** Title, kind and date of a row, however they are written; undefined where it has no title. */
function lookOf(row: ListRow, cell: CellOf): string | undefined {
  const title = cell(row, 'title');
  if (title === '') return undefined;
  const date = row.date ?? fold(cell(row, 'date'));
  return [fold(title), fold(cell(row, 'kind')), date].join('\n');
}

function joinAgreeing(
  pairs: Pairs<ListRow>,
  a: ListTable,
  b: ListTable,
  look: (row: ListRow) => string | undefined,
  agree: (one: ListRow, other: ListRow) => boolean,
): void {
  const waiting = new Map<string, ListRow[]>();
  for (const other of leftInB(pairs, b.rows)) {
    const key = look(other);
    if (key !== undefined) addTo(waiting, key, other);
  }
  for (const one of leftInA(pairs, a.rows)) {
    const candidates = waiting.get(look(one) ?? '') ?? [];
    const other = candidates.slice(0, HELD).find((row) => agree(one, row));
    if (other === undefined) continue;
    pairs.join(one, other);
    candidates.splice(candidates.indexOf(other), 1);
  }
}
