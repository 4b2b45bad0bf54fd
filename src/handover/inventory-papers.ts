import { capitalised } from '../catalogue/capitalised.ts';
import { numbersIn } from '../catalogue/containers.ts';
import { csvRecord } from '../catalogue/csv-cell.ts';
import { sayCount as sayNumber } from '../catalogue/say-count.ts';
import { sayBoxes } from '../housing/say-boxes.ts';
import type { InventoryRow } from './inventory.ts';
import { type Block, heading, lines, type Paper, text } from './papers/paper.ts';
import { sayNotSettled } from './say-not-settled.ts';
import type { Summary } from './summary.ts';

const HEADINGS = ['box', 'folder', 'reference code', 'title', 'dates', 'things', 'caution', 'received'];

/** The inventory as a table to sign for: `inventory.csv`, RFC 4180. */
export function* inventoryToCsv(rows: readonly InventoryRow[]): Generator<string> {
  yield `\uFEFF${csvRecord(HEADINGS)}`;
  for (const { box, folder, code, title, dates, caution, ...counted } of rows) {
    const where = box === undefined ? '' : box.type === 'box' ? box.number : `${box.type} ${box.number}`;
    yield csvRecord([where, folder, code, title, dates, sayCount(counted), caution, '']);
  }
}

/** The same as a paper with a table for each box, to be ticked and signed at the door. */
export function inventoryPaper(summary: Summary): Paper {
  const { title, rows, copies } = summary;
  const there = copies.filter(({ name }) => name !== undefined).length;
  const tables = [...rowsByBox(rows)].flatMap(([name, content]): Block[] => [
    heading(name),
    {
      kind: 'table',
      headings: ['Folder', 'Reference code', 'Title', 'Dates', 'Things'],
      rows: content.map(({ folder, code, title: what, dates, caution, ...counted }) => [
        folder ?? 'apart',
        code,
        caution === undefined ? what : `${what} (${caution})`,
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
        `Box by box, what is handed over: ${sayTotals(rows, there)}. Tick each line when it has been seen. “Apart” means that the thing lies by itself and not in its folder, for its size or its material.`,
      ),
      ...sayNotSettled(summary).map(text),
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
    const name = box === undefined ? none : `${capitalised(box.type)} ${box.number}`;
    const known = boxes.get(name);
    if (known === undefined) boxes.set(name, [row]);
    else known.push(row);
  }
  return boxes;
}

/** What is handed over, counted: 4 boxes and 1 package, 61 folders, 812 things, 9 digital copies. */
export function sayTotals(rows: readonly InventoryRow[], copies: number): string {
  const boxes = new Map(
    rows.flatMap(({ box }) => (box === undefined ? [] : [[`${box.type} ${box.number}`, box.type]])),
  );
  const folders = rows.reduce((sum, { folder }) => sum + foldersIn(folder), 0);
  const things = rows.reduce((sum, row) => sum + (row.things ?? 0), 0);
  const units = rows.filter(({ isUnit }) => isUnit).length;
  const about = rows.some(({ approximate }) => approximate) ? 'about ' : '';
  return [
    said(units, 'unit of the finding aid', 'units of the finding aid'),
    sayHolders([...boxes.values()]),
    said(folders, 'folder', 'folders'),
    `${things === 0 ? '' : about}${said(things, 'thing', 'things')}`,
    said(copies, 'digital copy', 'digital copies'),
  ]
    .filter((part) => part !== '')
    .join(', ');
}

const said = (number: number, one: string, many: string) =>
  number === 0 ? '' : sayNumber(number, one, many);

/** Boxes and packages; where others also have reels or cases, all of them together as containers. */
function sayHolders(types: readonly string[]): string {
  const packages = types.filter((type) => type === 'package').length;
  const boxes = types.filter((type) => type === 'box').length;
  if (boxes + packages === types.length) return sayBoxes(boxes, packages);
  return sayNumber(types.length, 'container', 'containers');
}

/** How many folders the numbers of a row name. */
export const foldersIn = (folder: string | undefined): number =>
  folder === undefined ? 0 : numbersIn(folder).length;

/** How many things are in a row, in words. */
export const sayCount = ({ things, approximate }: Pick<InventoryRow, 'things' | 'approximate'>) =>
  things === undefined
    ? ''
    : things === 0
      ? 'goes on from before'
      : `${approximate ? 'about ' : ''}${things}`;
