import type { Finding } from '../catalogue/finding.ts';
import { languageUse } from '../catalogue/languages.ts';
import { once } from '../catalogue/once.ts';
import { COLUMNS, type Column, type Thing } from '../catalogue/thing.ts';
import type { DateContext } from '../dates/index.ts';
import { accessReader } from './access.ts';
import { type Layout, nameByLetters } from './columns.ts';
import { readCopyPath } from './copy-path.ts';
import type { Table } from './csv.ts';
import type { Row } from './csv-rows.ts';
import { dateFindings, dateReader } from './dates.ts';
import { familyReader } from './family-columns.ts';
import {
  badCopy,
  noHeading,
  noQuantity,
  noTitle,
  numbersOnly,
  perhapsTwo,
  tooLong,
} from './list-findings.ts';
import { maybeTwo, splitCell, splitLanguages, splitNames } from './names.ts';
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
  { headings, headingRow, rows }: Table,
  layout: Layout,
  file: string,
  { names: knownNames = [], dates = {} }: Known,
): { things: Thing[]; findings: Finding[] } {
  const findings: Finding[] = [];
  const known = new Set(knownNames.map((name) => name.toLowerCase()));
  // One reading and one string for all cells that hold the same: most columns repeat a few words.
  const people = once((cell: string) => splitNames(cell, known));
  const several = once(splitCell);
  const languages = once(splitLanguages);
  const share = once((text: string) => text);
  const quantities = once((kind: string) => once((cell: string) => readQuantity(cell, kind)));
  // Read last: the languages of the list tell in which languages its dates may be.
  const dated: { thing: Thing; column: 'date' | 'until'; cell: string }[] = [];
  const joined = new Map<Column, { row: number; name: string; rows: number }>();
  const onlyNumber: number[] = [];
  const told = new Set<number>();

  const at = Object.fromEntries(COLUMNS.map((column) => [column, layout.at.get(column) ?? -1])) as Record<
    Column,
    number
  >;
  const access = once(accessReader(headings[at.access] ?? ''));
  const family = familyReader(at, layout);

  const things: Thing[] = [];
  for (const row of rows) {
    const thing = read(row);
    if (thing !== undefined) things.push(thing);
  }
  readDates(dated, dates, file, findings);
  for (const [column, { row, name, rows }] of joined)
    findings.push(perhapsTwo(file, column, row, name, rows));
  if (onlyNumber.length > 0) findings.push(numbersOnly(file, onlyNumber));
  return { things, findings };

  function read({ row, cells, remarks }: Row): Thing | undefined {
    const title = onOneLine(text(cells, at.title));
    const number = onOneLine(text(cells, at.number));
    if (title === '') {
      const others = cells.filter((cell, index) => index !== at.number && cell.trim() !== '');
      if (others.length === 0) onlyNumber.push(row);
      else findings.push(noTitle(file, row, others));
      return undefined;
    }
    const extra = extras(row, cells, remarks);
    const thing: Thing = {
      row,
      title,
      people: names(row, cells, 'people'),
      creators: names(row, cells, 'creator'),
      places: several(text(cells, at.place)),
      copies: copies(row, cells),
      languages: languages(text(cells, at.language)),
      extra: NO_EXTRA,
    };
    if (number !== '') thing.number = number;
    for (const column of ['kind', 'occasion', 'size', 'series', 'folder', 'box'] as const) {
      const cell = onOneLine(text(cells, at[column]));
      if (cell !== '') thing[column] = share(cell);
    }
    for (const column of ['description', 'note'] as const) {
      const cell = text(cells, at[column]);
      if (cell !== '') thing[column] = cell;
    }
    const condition = text(cells, at.condition);
    if (condition !== '') thing.condition = share(condition);
    const conditions = access(text(cells, at.access));
    if (conditions !== undefined) thing.access = conditions;
    for (const column of ['date', 'until'] as const) {
      const cell = onOneLine(text(cells, at[column]));
      if (cell !== '') dated.push({ thing, column, cell });
    }
    const count = text(cells, at.quantity);
    if (count !== '') {
      const counted = quantities(thing.kind ?? '')(count);
      if (counted === undefined) {
        findings.push(noQuantity(file, row, count));
        thing.quantityUnread = true;
      } else {
        if (counted.quantity !== undefined) thing.quantity = counted.quantity;
        if (counted.quantity !== undefined && counted.approximate) thing.quantityApproximate = true;
        if (counted.sheets !== undefined) thing.sheets = counted.sheets;
      }
      // What a number does not say in full is kept to the letter.
      if (counted === undefined || counted.sheets !== undefined)
        extra.push({ heading: headings[at.quantity] ?? 'quantity', text: count });
    }
    if (extra.length > 0) thing.extra = extra;
    return Object.assign(thing, family.read(cells, remarks));
  }

  function names(row: number, cells: readonly string[], column: 'people' | 'creator'): readonly string[] {
    const found = people(text(cells, at[column]));
    for (const name of found) {
      if (!maybeTwo(name) || known.has(name.toLowerCase())) continue;
      const before = joined.get(column);
      if (before === undefined) joined.set(column, { row, name, rows: 1 });
      else before.rows++;
    }
    return found;
  }

  function copies(row: number, cells: readonly string[]): readonly string[] {
    const cell = text(cells, at.copy);
    if (cell === '') return NO_COPIES;
    return splitCell(cell).flatMap((written) => {
      const copy = readCopyPath(written);
      if ('path' in copy) return [copy.path];
      findings.push(badCopy(file, row, copy.trouble));
      return [];
    });
  }

  function extras(row: number, cells: readonly string[], remarks: Row['remarks'] = []): Extra[] {
    const extra: Extra[] = [];
    for (const { index, heading, made } of layout.extra) {
      const cell = text(cells, index);
      if (cell === '' || family.has(index)) continue;
      extra.push({ heading, text: cell });
      if (made && !told.has(index)) findings.push(noHeading(file, headingRow, heading, row));
      if (made) told.add(index);
    }
    const inside = extra.length;
    for (let index = headings.length; index < cells.length; index++) {
      const cell = text(cells, index);
      if (cell !== '') extra.push({ heading: nameByLetters(index), text: cell });
    }
    if (extra.length > inside) findings.push(tooLong(file, row, headings.length, extra.slice(inside)));
    for (const { index, what, text } of remarks) {
      if (family.has(index)) continue;
      const heading = headings[index] || nameByLetters(index);
      extra.push({ heading: what === 'comment' ? `Comment on ${heading}` : `${heading}, time of day`, text });
    }
    return extra;
  }
}

/** Reads the dates of all things, in the languages of the settings and of the list. */
function readDates(
  dated: readonly { thing: Thing; column: 'date' | 'until'; cell: string }[],
  context: DateContext,
  file: string,
  findings: Finding[],
): void {
  const words = new Set(dated.flatMap(({ thing }) => thing.languages));
  const spoken = [...words].map((word) => languageUse(word)?.code).filter((code) => code !== undefined);
  const languages = [...new Set([...(context.languages ?? []), ...spoken])];
  // A thing cannot be from tomorrow, but a restriction ends there.
  const { today: _, earliestYear: __, latestYear: ___, ...ahead } = context;
  const readers = { date: dateReader({ ...context, languages }), until: dateReader({ ...ahead, languages }) };
  for (const { thing, column, cell } of dated) {
    thing[column] = readers[column](cell);
    for (const finding of dateFindings(thing[column], column, file, thing.row)) findings.push(finding);
  }
}

function text(cells: readonly string[], index: number): string {
  return (cells[index] ?? '').trim();
}

/** A title, a name, a number or a date has no lines; a break in its cell is only there to fit the column. */
function onOneLine(text: string): string {
  return text.includes('\n') ? text.replace(/\s+/g, ' ') : text;
}
