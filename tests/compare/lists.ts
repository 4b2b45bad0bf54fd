import { type ListTable, listTable } from '../../src/compare/list-table.ts';
import { readList } from '../../src/intake/list.ts';
import { someSettings } from '../support/catalogue.ts';

/** A list as its owner wrote it, under the name of its folder. */
export const listOf = (name: string, csv: string): ListTable =>
  listIn(name, 'list.csv', new TextEncoder().encode(csv));

/** The same of a file in any form; `list` is as `collection.yaml` would say it. */
export function listIn(
  name: string,
  listFile: string,
  bytes: Uint8Array,
  list: Record<string, unknown> = {},
): ListTable {
  const settings = someSettings({ list });
  const { things, sheets } = readList(bytes, listFile, {}, settings.list);
  return listTable({ list: bytes, listFile, things, sheets, settings }, name);
}

/** Rows as comma-separated values; every cell is quoted. */
export const csvOf = (rows: readonly (readonly string[])[]): string =>
  rows.map((cells) => `${cells.map((cell) => `"${cell.replaceAll('"', '""')}"`).join(',')}\r\n`).join('');
