import type { Finding } from '../catalogue/finding.ts';
import { once } from '../catalogue/once.ts';
import { COLUMNS, type Column, type Thing } from '../catalogue/thing.ts';
import { accessReader } from './access.ts';
import { copiesIn } from './copy-cells.ts';
import type { Table } from './csv.ts';
import { type Row, textAt } from './csv-rows.ts';
import type { DateCell } from './dates.ts';
import { extraReader } from './extra-cells.ts';
import { familyReader } from './family-columns.ts';
import type { Layout } from './layout.ts';
import { noTitle } from './list-findings.ts';
import type { nameReader } from './name-cells.ts';
import { splitCell, splitLanguages } from './names.ts';
import { quantityReader } from './quantity-cells.ts';

/** What is gathered while the rows are read, to be seen to when all of them have been. */
export interface Gathered {
  findings: Finding[];
  dated: DateCell[];
  /** Rows that hold a number and nothing else. */
  onlyNumber: number[];
}

type Extra = Thing['extra'][number];

const NO_EXTRA: readonly Extra[] = [];

/** A reader of the rows of a list; a row without a title is no thing, and is said. */
export function thingReader(
  table: Table,
  layout: Layout,
  file: string,
  names: ReturnType<typeof nameReader>,
  { findings, dated, onlyNumber }: Gathered,
): (row: Row) => Thing | undefined {
  const { headings } = table;
  const at = Object.fromEntries(COLUMNS.map((column) => [column, layout.at.get(column) ?? -1])) as Record<
    Column,
    number
  >;
  // One reading and one string for all cells that hold the same: most columns repeat a few words.
  const several = once(splitCell);
  const languages = once(splitLanguages);
  const share = once((text: string) => text);
  const access = once(accessReader(headings[at.access] ?? ''));
  const family = familyReader(at, layout);
  const extras = extraReader(table, layout, family, file, findings);
  const noteQuantity = quantityReader(file, findings);

  return (whole) => {
    const { row, cells, remarks } = whole;
    const title = onOneLine(textAt(cells, at.title));
    const number = onOneLine(textAt(cells, at.number));
    if (title === '') {
      const others = cells.filter((cell, index) => index !== at.number && cell.trim() !== '');
      if (others.length === 0) onlyNumber.push(row);
      else findings.push(noTitle(file, row, others));
      return undefined;
    }
    const extra = extras(whole);
    // With every field, there or not: a hundred thousand objects of one shape are small and quick.
    const thing: Thing = {
      row,
      number: number === '' ? undefined : number,
      title,
      date: undefined,
      kind: undefined,
      people: names.read(row, textAt(cells, at.people), 'people'),
      creators: names.read(row, textAt(cells, at.creator), 'creator'),
      places: several(textAt(cells, at.place)),
      copies: copiesIn(textAt(cells, at.copy), file, row, findings),
      languages: languages(textAt(cells, at.language)),
      extra: NO_EXTRA,
      occasion: undefined,
      description: undefined,
      quantity: undefined,
      size: undefined,
      condition: undefined,
      access: undefined,
      until: undefined,
      note: undefined,
      series: undefined,
      folder: undefined,
      box: undefined,
    };
    noteTexts(thing, cells);
    for (const column of ['date', 'until'] as const) {
      const cell = onOneLine(textAt(cells, at[column]));
      if (cell !== '') dated.push({ thing, column, cell });
    }
    const count = textAt(cells, at.quantity);
    // What a number does not say in full is kept to the letter.
    if (count !== '' && noteQuantity(thing, count))
      extra.push({ heading: headings[at.quantity] ?? 'quantity', text: count });
    if (extra.length > 0) thing.extra = extra;
    return Object.assign(thing, family.read(cells, remarks));
  };

  /** Cells that hold one text each, and so go into the thing as they are. */
  function noteTexts(thing: Thing, cells: readonly string[]): void {
    for (const column of ['kind', 'occasion', 'size', 'series', 'folder', 'box'] as const) {
      const cell = onOneLine(textAt(cells, at[column]));
      if (cell !== '') thing[column] = share(cell);
    }
    for (const column of ['description', 'note'] as const) {
      const cell = textAt(cells, at[column]);
      if (cell !== '') thing[column] = cell;
    }
    const condition = textAt(cells, at.condition);
    if (condition !== '') thing.condition = share(condition);
    const conditions = access(textAt(cells, at.access));
    if (conditions !== undefined) thing.access = conditions;
  }
}

/** A title, a name, a number or a date has no lines; a break in its cell is only there to fit the column. */
function onOneLine(text: string): string {
  return text.includes('\n') ? text.replace(/\s+/g, ' ') : text;
}
