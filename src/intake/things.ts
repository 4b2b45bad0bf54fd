import type { Finding } from '../catalogue/finding.ts';
import { once } from '../catalogue/once.ts';
import { COLUMNS, type Column, type Thing } from '../catalogue/thing.ts';
import type { DateContext } from '../dates/index.ts';
import { accessReader } from './access.ts';
import { readCopyPath } from './copy-path.ts';
import type { Table } from './csv.ts';
import { type Row, textAt } from './csv-rows.ts';
import { type DateCell, readDates } from './dates.ts';
import { extraReader } from './extra-cells.ts';
import { familyReader } from './family-columns.ts';
import type { Layout } from './layout.ts';
import { badCopy, noQuantity, noTitle, numbersOnly } from './list-findings.ts';
import { nameReader } from './name-cells.ts';
import { splitCell, splitLanguages } from './names.ts';
import { readQuantity } from './quantity.ts';

/** What collection.yaml says that helps to read the list. */
export interface Known {
  /** The names of people; they help to part several in one cell. */
  names?: readonly string[];
  dates?: DateContext;
}

type Extra = Thing['extra'][number];

const NO_EXTRA: readonly Extra[] = [];
const NO_COPIES: readonly string[] = [];

/** Makes a thing of every row of the list, and says what was found in doing so. */
export function readThings(
  table: Table,
  layout: Layout,
  file: string,
  { names: knownNames = [], dates = {} }: Known,
): { things: Thing[]; findings: Finding[] } {
  const { headings, rows } = table;
  const findings: Finding[] = [];
  // One reading and one string for all cells that hold the same: most columns repeat a few words.
  const several = once(splitCell);
  const languages = once(splitLanguages);
  const share = once((text: string) => text);
  const quantities = once((kind: string) => once((cell: string) => readQuantity(cell, kind)));
  // Read last: the languages of the list tell in which languages its dates may be.
  const dated: DateCell[] = [];
  const onlyNumber: number[] = [];

  const at = Object.fromEntries(COLUMNS.map((column) => [column, layout.at.get(column) ?? -1])) as Record<
    Column,
    number
  >;
  const access = once(accessReader(headings[at.access] ?? ''));
  const names = nameReader(knownNames, file);
  const family = familyReader(at, layout);
  const extras = extraReader(table, layout, family, file, findings);

  const things: Thing[] = [];
  for (const row of rows) {
    const thing = read(row);
    if (thing !== undefined) things.push(thing);
  }
  for (const finding of readDates(dated, dates, file)) findings.push(finding);
  findings.push(...names.findings());
  if (onlyNumber.length > 0) findings.push(numbersOnly(file, onlyNumber));
  return { things, findings };

  function read(whole: Row): Thing | undefined {
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
    for (const column of ['date', 'until'] as const) {
      const cell = onOneLine(textAt(cells, at[column]));
      if (cell !== '') dated.push({ thing, column, cell });
    }
    const count = textAt(cells, at.quantity);
    if (count !== '') {
      const counted = quantities(thing.kind ?? '')(count);
      if (counted === undefined) findings.push(noQuantity(file, row, count));
      setQuantity(thing, counted);
      // What a number does not say in full is kept to the letter.
      if (counted === undefined || counted.sheets !== undefined)
        extra.push({ heading: headings[at.quantity] ?? 'quantity', text: count });
    }
    if (extra.length > 0) thing.extra = extra;
    return Object.assign(thing, family.read(cells, remarks));
  }
}

/** The paths in a cell that lead to copies; those that lead nowhere are said. */
function copiesIn(cell: string, file: string, row: number, findings: Finding[]): readonly string[] {
  if (cell === '') return NO_COPIES;
  return splitCell(cell).flatMap((written) => {
    const copy = readCopyPath(written);
    if ('path' in copy) return [copy.path];
    findings.push(badCopy(file, row, copy.trouble));
    return [];
  });
}

function setQuantity(thing: Thing, counted: ReturnType<typeof readQuantity>): void {
  if (counted === undefined) {
    thing.quantityUnread = true;
    return;
  }
  const { quantity, approximate, sheets } = counted;
  if (quantity !== undefined) thing.quantity = quantity;
  if (quantity !== undefined && approximate) thing.quantityApproximate = true;
  if (sheets !== undefined) thing.sheets = sheets;
}

/** A title, a name, a number or a date has no lines; a break in its cell is only there to fit the column. */
function onOneLine(text: string): string {
  return text.includes('\n') ? text.replace(/\s+/g, ' ') : text;
}
