import type { Column, Thing } from '../catalogue/thing.ts';
import { columnOf, comparable } from './columns.ts';
import { type Row, textAt } from './csv-rows.ts';
import type { Layout } from './layout.ts';

/** Reads the columns that are for the family alone, and tells which they are: nothing of them may go into the notes. */
export interface FamilyReader {
  has(index: number): boolean;
  read(cells: readonly string[], remarks?: Row['remarks']): Pick<Thing, 'stays' | 'familyNote'>;
}

const NOTHING = {};

/** Words by which a cell says that a thing does not stay; FALSE is an empty box to tick, as spreadsheets save it. */
const NO = new Set(['no', 'n', 'false', '0']);

/**
 * A reader of the columns `stays` and `family note`. Where several headings mean the same, all of them are the family's,
 * and so are remarks on their cells.
 */
export function familyReader(
  at: Readonly<Record<Column, number>>,
  { extra }: Pick<Layout, 'extra'>,
): FamilyReader {
  const columns = (column: Column) => [
    ...(at[column] < 0 ? [] : [at[column]]),
    ...extra.filter(({ heading }) => columnOf(heading) === column).map(({ index }) => index),
  ];
  const [stays, notes] = [columns('stays'), columns('family note')];
  const all = new Set([...stays, ...notes]);
  const textsOf = (cells: readonly string[], indexes: readonly number[]) =>
    indexes.map((index) => textAt(cells, index)).filter((text) => text !== '');
  return {
    has: (index) => all.has(index),
    read(cells, remarks = []) {
      if (all.size === 0) return NOTHING;
      const [mark] = textsOf(cells, stays).filter((text) => !NO.has(comparable(text)));
      const note = [
        ...textsOf(cells, notes),
        ...remarks.filter(({ index }) => all.has(index)).map(({ text }) => text),
      ];
      return {
        ...(mark !== undefined && { stays: mark }),
        ...(note.length > 0 && { familyNote: note.join('\n') }),
      };
    },
  };
}
