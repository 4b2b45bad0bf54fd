import { comparable } from '../intake/columns.ts';
import { type ListColumn, unitedColumns } from './list-columns.ts';
import { cellText, type ListRow, type ListTable } from './list-table.ts';
import { matchRows } from './match-rows.ts';
import { type LoneRow, type PerhapsOne, perhapsOne } from './perhaps-one.ts';

/** Two lists as one, and what is to be said of it. */
export interface MergedLists {
  headings: readonly string[];
  rows: readonly (readonly string[])[];
  /** How many rows are of things in both lists, and how many in one of them only. */
  inBoth: number;
  onlyInA: number;
  onlyInB: number;
  conflicts: readonly RowConflict[];
  /** Rows only in the second list whose number another thing of the first list has, so that they have none now. */
  withoutNumber: readonly { row: number; title: string; number: string }[];
  /** Rows of which each list has one, that may be of one thing; both were kept. */
  perhapsOne: readonly PerhapsOne[];
  /** Digital copies that only the second list names. */
  copiesOfB: readonly string[];
  /** What stands in the two files and is no row of a list, as sentences: a sum, a line above the headings. */
  leftOut: readonly string[];
}

/** A row on which the two lists do not agree. */
interface RowConflict {
  /** In the merged list, as a spreadsheet counts it. */
  row: number;
  title: string;
  cells: readonly CellConflict[];
}

/** A cell on which they do not agree; `kept` is blank where the number of the second list is taken in the first. */
interface CellConflict {
  column: string;
  kept: string;
  other: string;
}

/** The column for what the second list says otherwise. */
const DIFFERS: ListColumn = { heading: 'Differs', key: `other ${comparable('Differs')}` };

/**
 * Makes one list of two: the rows of A in their order, then those that only B has; the columns of A, then those that
 * only B has. A cell that A leaves blank is filled from B. Where both say something and not the same, that of A stays,
 * and that of B goes into the column “Differs”, with its heading and the name of its list. Nothing is lost.
 */
export function mergeLists(a: ListTable, b: ListTable): MergedLists {
  const pairs = matchRows(a, b);
  const columns = withDiffers(unitedColumns(a.columns, b.columns, b.name));
  const differsAt = columns.findIndex(({ key }) => key === DIFFERS.key);
  const titleAt = columns.findIndex(({ key }) => key === 'title');
  const [atA, atB] = [places(columns, a), places(columns, b)];
  const numberAt = a.columns.findIndex(({ key }) => key === 'number');
  const numbersOfA = new Set(numberAt < 0 ? [] : a.rows.map(({ cells }) => cellText(cells, numberAt)));

  const joined = (one?: ListRow, other?: ListRow) => {
    const differing: CellConflict[] = [];
    const cells = columns.map(({ heading, key }, at) => {
      const mine = one?.cells[atA[at] ?? -1] ?? '';
      const theirs = other?.cells[atB[at] ?? -1] ?? '';
      const [kept, said] = [mine.trim(), theirs.trim()];
      if (said === '' || said === kept) return mine;
      // What earlier mergings found is kept from both.
      if (at === differsAt) return onLines([mine, theirs]);
      if (kept === '' && !(key === 'number' && numbersOfA.has(said))) return theirs;
      differing.push({ column: heading, kept, other: said });
      return mine;
    });
    const said = differing.map(({ column, other }) => `${column} (${b.name}): ${other}`);
    if (said.length > 0) cells[differsAt] = onLines([cells[differsAt] ?? '', ...said]);
    return { cells, differing };
  };

  const onlyB = b.rows.filter((other) => pairs.inA(other) === undefined);
  const rows = [
    ...a.rows.map((one) => joined(one, pairs.inB(one))),
    ...onlyB.map((other) => joined(undefined, other)),
  ];
  const conflicts = rows.flatMap(({ cells, differing }, at): RowConflict[] =>
    differing.length === 0 ? [] : [{ row: at + 2, title: cellText(cells, titleAt), cells: differing }],
  );
  const lone = ({ date }: ListRow, at: number): LoneRow => ({
    row: at + 2,
    title: cellText(rows[at]?.cells ?? [], titleAt),
    ...(date !== undefined && { date }),
  });
  const onlyA = a.rows.flatMap((one, at) => (pairs.inB(one) === undefined ? [lone(one, at)] : []));
  const used = columns.flatMap((column, at) =>
    column !== DIFFERS || rows.some(({ cells }) => cells[at] !== '') ? [at] : [],
  );
  return {
    headings: used.map((at) => columns[at]?.heading ?? ''),
    rows: rows.map(({ cells }) => used.map((at) => cells[at] ?? '')),
    inBoth: pairs.size,
    onlyInA: onlyA.length,
    onlyInB: onlyB.length,
    conflicts: conflicts.filter(({ row }) => row < a.rows.length + 2),
    // Such a row has nothing to differ from but the number of another thing.
    withoutNumber: conflicts
      .filter(({ row }) => row >= a.rows.length + 2)
      .map(({ row, title, cells }) => ({ row, title, number: cells[0]?.other ?? '' })),
    perhapsOne: perhapsOne(
      onlyA,
      onlyB.map((other, at) => lone(other, a.rows.length + at)),
    ),
    copiesOfB: b.rows.flatMap((other) => {
      const [mine, theirs] = [copyOf(pairs.inA(other), a), copyOf(other, b)];
      return theirs === '' || theirs === mine ? [] : [theirs];
    }),
    leftOut: [a, b].flatMap(({ name, leftOut }) => leftOut.map((says) => `${name}, ${says}`)),
  };
}

const copyOf = (row: ListRow | undefined, { columns }: ListTable): string =>
  cellText(
    row?.cells ?? [],
    columns.findIndex(({ key }) => key === 'copy'),
  );

/** And a column for what differs, where neither has it from an earlier merging. */
const withDiffers = (columns: readonly ListColumn[]): ListColumn[] =>
  columns.some(({ key }) => key === DIFFERS.key) ? [...columns] : [...columns, DIFFERS];

/** For each column, where a list has it; -1 where it does not. */
function places(columns: readonly ListColumn[], list: ListTable): number[] {
  const at = new Map(list.columns.map(({ key }, index) => [key, index]));
  return columns.map(({ key }) => at.get(key) ?? -1);
}

/** Texts on lines of their own, each once. */
const onLines = (texts: readonly string[]): string =>
  [...new Set(texts.filter((text) => text.trim() !== ''))].join('\n');
