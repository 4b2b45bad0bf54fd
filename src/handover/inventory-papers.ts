import { csvRecord } from '../catalogue/csv-cell.ts';
import type { InventoryRow } from './inventory.ts';
import { type Block, heading, lines, type Paper, text } from './papers/paper.ts';

const HEADINGS = ['box', 'folder', 'reference code', 'title', 'dates', 'things', 'received'];

/** The inventory as a table to sign for: `inventory.csv`, RFC 4180. */
export function* inventoryToCsv(rows: readonly InventoryRow[]): Generator<string> {
  yield `\uFEFF${csvRecord(HEADINGS)}`;
  for (const { box, folder, code, title, dates, ...counted } of rows) {
    const where = box === undefined ? '' : box.type === 'box' ? box.number : `${box.type} ${box.number}`;
    yield csvRecord([where, folder, code, title, dates, sayCount(counted), '']);
  }
}

/** The same as a paper with a table for each box, to be ticked and signed at the door. */
export function inventoryPaper(title: string, rows: readonly InventoryRow[], copies: number): Paper {
  const tables = [...rowsByBox(rows)].flatMap(([name, content]): Block[] => [
    heading(name),
    {
      kind: 'table',
      headings: ['Folder', 'Reference code', 'Title', 'Dates', 'Things'],
      rows: content.map(({ folder, code, title: what, dates, ...counted }) => [
        folder ?? 'apart',
        code,
        what,
        dates,
        sayCount(counted),
      ]),
      ticked: true,
    },
  ]);
  return {
    title: `Inventory: ${title}`,
    blocks: [
      text(
        `Box by box, what is handed over: ${sayTotals(rows, copies)}. Tick each line when it has been seen. “Apart” means that the thing lies by itself and not in its folder, for its size or its material.`,
      ),
      ...tables,
      heading('Handed over and received'),
      text('Write down here whatever was missing, damaged or added, before anybody signs.'),
      lines('Remarks', 'Place and day', 'Handed over by', 'Signature', 'Received by', 'Signature'),
    ],
  };
}

/** The rows of each box, under its name. */
export function rowsByBox(rows: readonly InventoryRow[]): Map<string, InventoryRow[]> {
  const boxes = new Map<string, InventoryRow[]>();
  for (const row of rows) {
    const { box, isUnit } = row;
    const none = isUnit ? 'The finding aid names no box' : 'In no box';
    const name =
      box === undefined ? none : `${box.type.charAt(0).toUpperCase()}${box.type.slice(1)} ${box.number}`;
    const known = boxes.get(name);
    if (known === undefined) boxes.set(name, [row]);
    else known.push(row);
  }
  return boxes;
}

/** What is handed over, counted: 4 boxes, 61 folders, 812 things, 9 digital copies. */
export function sayTotals(rows: readonly InventoryRow[], copies: number): string {
  const boxes = new Set(rows.flatMap(({ box }) => (box === undefined ? [] : [`${box.type} ${box.number}`])));
  const areBoxes = rows.every(({ box }) => box === undefined || /^(?:box|package)$/.test(box.type));
  const folders = rows.reduce((sum, { folder }) => sum + foldersIn(folder), 0);
  const things = rows.reduce((sum, row) => sum + (row.things ?? 0), 0);
  const units = rows.filter(({ isUnit }) => isUnit).length;
  const about = rows.some(({ approximate }) => approximate) ? 'about ' : '';
  const counts: [number, string, string, string][] = [
    [units, '', 'unit of the finding aid', 'units of the finding aid'],
    [boxes.size, '', areBoxes ? 'box' : 'container', areBoxes ? 'boxes' : 'containers'],
    [folders, '', 'folder', 'folders'],
    [things, about, 'thing', 'things'],
    [copies, '', 'digital copy', 'digital copies'],
  ];
  return counts
    .filter(([number]) => number > 0)
    .map(([number, before, one, many]) => `${before}${number} ${number === 1 ? one : many}`)
    .join(', ');
}

/** How many folders the numbers of a row name. */
export function foldersIn(folder: string | undefined): number {
  if (folder === undefined) return 0;
  const [first = 0, last = first] = folder.split('-').map(Number);
  const count = last - first + 1;
  // Others number them otherwise: 3a, oversize.
  return count >= 1 && count < 10_000 ? count : 1;
}

/** How many things are in a row, in words. */
export const sayCount = ({ things, approximate }: Pick<InventoryRow, 'things' | 'approximate'>) =>
  things === undefined
    ? ''
    : things === 0
      ? 'goes on from before'
      : `${approximate ? 'about ' : ''}${things}`;
