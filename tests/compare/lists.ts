import { type ListTable, listTable } from '../../src/compare/list-table.ts';
import { readList } from '../../src/intake/list.ts';

/** A list as its owner wrote it, under the name of its folder. */
export function listOf(name: string, csv: string): ListTable {
  const list = new TextEncoder().encode(csv);
  return listTable({ list, things: readList(list, 'list.csv').things }, name);
}

/** Rows as comma-separated values; every cell is quoted. */
export const csvOf = (rows: readonly (readonly string[])[]): string =>
  rows.map((cells) => `${cells.map((cell) => `"${cell.replaceAll('"', '""')}"`).join(',')}\r\n`).join('');
