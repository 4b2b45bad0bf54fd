import type { Finding } from '../catalogue/finding.ts';
import type { ListSettings } from '../catalogue/list-settings.ts';
import type { Column, Thing } from '../catalogue/thing.ts';
import { displayDate } from '../dates/index.ts';
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
  /** How many things there are, and the first of them: what is read of each, by column. */
  things: number;
  first: readonly { row: number; cells: readonly (readonly [column: string, text: string])[] }[];
}

/**
 * How a list is understood: what each heading means, and the first things as they are read.
 * @param most things to show of each table
 */
export function previewList(
  bytes: Uint8Array,
  file: string,
  known: Known,
  settings: ListSettings,
  most = 5,
): { tables: Preview[]; findings: readonly Finding[] } {
  const { tables } = openList(bytes, file, settings);
  const { things, sheets, findings } = readList(bytes, file, known, settings);
  let from = 0;
  const previews = tables.map(({ table, layout, file: name }): Preview => {
    const count = sheets.find((sheet) => sheet.file === name)?.things ?? things.length;
    const here = things.slice(from, from + count);
    from += count;
    const columns = new Map([...layout.at].map(([column, index]) => [index, column]));
    return {
      file: name,
      headingRow: table.headingRow,
      headings: table.headings.flatMap((heading, index) => {
        const column = columns.get(index);
        if (heading === '' && column === undefined) return [];
        return [column === undefined ? { heading } : { heading, column }];
      }),
      things: count,
      first: here.slice(0, most).map((thing) => ({ row: thing.row, cells: cellsOf(thing) })),
    };
  });
  return { tables: previews, findings };
}

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
    ...thing.extra.map(({ heading, text }): [string, string] => [`notes: ${heading}`, text]),
  ];
  return cells.flatMap(([column, text]) => (text === undefined || text === '' ? [] : [[column, text]]));
}

/** A date as it is understood, and as it was written where that is something else. */
function dateOf(date: Thing['date']): string | undefined {
  if (date === undefined) return undefined;
  const { written, reading } = date;
  if (reading.kind === 'unreadable') return `${written} (in words only)`;
  if (reading.kind === 'date' && reading.edtf === written) return written;
  const read = reading.kind === 'undated' ? 'undated' : displayDate(reading.edtf);
  return read === written ? read : `${read} (written ${written})`;
}
