import type { Finding } from '../catalogue/finding.ts';
import type { ListSettings } from '../catalogue/list-settings.ts';
import type { Column, Thing } from '../catalogue/thing.ts';
import { displayDate, sayDate } from '../dates/index.ts';
import type { Table } from './csv.ts';
import type { Layout } from './layout.ts';
import { readList } from './list.ts';
import { openList } from './open-list.ts';
import type { Known } from './things.ts';

/** How one table of a list is understood. */
export interface Preview {
  /** The file, and the sheet where several are read. */
  file: string;
  headingRow: number;
  /** Each heading in its order, and the column it means; without one, its cells go into the notes. */
  headings: readonly { heading: string; column?: Column }[];
  /** How many things there are, and the first of them. */
  things: number;
  first: readonly PreviewedRow[];
}

/** What is read of a row, by column; and the columns of which something else is understood than is written. */
interface PreviewedRow {
  row: number;
  cells: readonly (readonly [column: string, text: string])[];
  changed: readonly string[];
}

/** Of a list of up to so many things, all are shown; of a longer one the first few. */
const ALL = 50;
const FEW = 5;

/**
 * How a list is understood: what each heading means, and the things as they are read; of a long table, the first.
 */
export function previewList(
  bytes: Uint8Array,
  file: string,
  known: Known,
  settings: ListSettings,
): { tables: Preview[]; findings: readonly Finding[] } {
  const { tables } = openList(bytes, file, settings);
  const { things, sheets, findings } = readList(bytes, file, known, settings);
  let from = 0;
  const previews = tables.map(({ table, layout, file: name }): Preview => {
    const count = sheets.find((sheet) => sheet.file === name)?.things ?? things.length;
    const here = things.slice(from, from + count);
    from += count;
    const columns = new Map([...layout.at].map(([column, index]) => [index, column]));
    const shown = here.slice(0, count > ALL ? FEW : ALL);
    const written = cellsByRow(table, layout, shown.at(-1)?.row ?? 0);
    return {
      file: name,
      headingRow: table.headingRow,
      headings: table.headings.flatMap((heading, index) => {
        const column = columns.get(index);
        if (heading === '' && column === undefined) return [];
        return [column === undefined ? { heading } : { heading, column }];
      }),
      things: count,
      first: shown.map((thing) => previewed(thing, written.get(thing.row))),
    };
  });
  return { tables: previews, findings };
}

/** What is written in each row down to the last, by its column. */
function cellsByRow(
  { rows }: Table,
  { at: columns, extra }: Layout,
  last: number,
): Map<number, ReadonlySet<string>> {
  const names = new Map<number, string>([
    ...extra.map(({ index, heading }) => [index, noteUnder(heading)] as const),
    ...[...columns].map(([column, index]) => [index, column] as const),
  ]);
  const written = new Map<number, ReadonlySet<string>>();
  for (const { row, cells } of rows) {
    if (row > last) break;
    const texts = cells.map((cell, at) => asWritten(names.get(at) ?? '', cell));
    written.set(row, new Set(texts));
  }
  return written;
}

function previewed(thing: Thing, written: ReadonlySet<string> = new Set()): PreviewedRow {
  const cells = cellsOf(thing);
  const changed = cells.flatMap(([column, text]) => (written.has(asWritten(column, text)) ? [] : [column]));
  return { row: thing.row, cells, changed };
}

const noteUnder = (heading: string) => `notes: ${heading}`;

// Blanks and breaks of lines do not count.
const asWritten = (column: string, text: string) => `${column}\0${text.replace(/\s+/g, ' ').trim()}`;

function cellsOf(thing: Thing): [string, string][] {
  const { people, creators, places, languages, copies, quantity } = thing;
  const about = thing.quantityApproximate ? 'about ' : '';
  const cells: [string, string | undefined][] = [
    ['number', thing.number],
    ['title', thing.title],
    ['date', dateOf(thing.date)],
    ['kind', thing.kind],
    ['people', people.join('; ')],
    ['creator', creators.join('; ')],
    ['place', places.join('; ')],
    ['occasion', thing.occasion],
    ['description', thing.description],
    ['quantity', quantity === undefined ? undefined : `${about}${quantity}`],
    ['size', thing.size],
    ['condition', thing.condition],
    ['access', thing.access],
    ['until', dateOf(thing.until)],
    ['stays', thing.stays],
    ['note', thing.note],
    ['family note', thing.familyNote],
    ['copy', copies.join('; ')],
    ['series', thing.series],
    ['folder', thing.folder],
    ['box', thing.box],
    ['language', languages.join('; ')],
    ...thing.extra.map(({ heading, text }): [string, string] => [noteUnder(heading), text]),
  ];
  return cells.flatMap(([column, text]) => (text === undefined || text === '' ? [] : [[column, text]]));
}

/** A date as it is understood, and as it was written where that is something else. */
function dateOf(date: Thing['date']): string | undefined {
  if (date === undefined) return undefined;
  const { written, reading } = date;
  if (reading.kind === 'unreadable') return `${written} (in words only)`;
  if (reading.kind === 'date' && reading.edtf === written) return written;
  const read = reading.kind === 'undated' ? 'undated' : sayAll(reading.edtf, reading.alternatives);
  return read === written ? read : `${read} (written ${written})`;
}

/** A date in doubt is told by all that it may be, as `check` tells it. */
const sayAll = (edtf: string, alternatives?: readonly string[]): string =>
  alternatives?.map(sayDate).join(', or ') ?? displayDate(edtf);
