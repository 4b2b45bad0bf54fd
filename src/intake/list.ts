import { addTo } from '../catalogue/add-to.ts';
import type { Finding } from '../catalogue/finding.ts';
import { type ListSettings, listSettings } from '../catalogue/list-settings.ts';
import type { Thing } from '../catalogue/thing.ts';
import { comparable } from './columns.ts';
import { sayDittos, withoutDittos } from './ditto-cells.ts';
import { withoutExample } from './example-row.ts';
import { languagesOfHeadings } from './headings-abroad.ts';
import { noThings, readAsGroups, sameNumber } from './list-findings.ts';
import { type ListTable, openList } from './open-list.ts';
import { type Known, readThings } from './things.ts';
import { sayTotal, withoutTotal } from './total-row.ts';

/** Things of a list in the order of its rows, and everything that was found in reading it. */
export interface List {
  things: readonly Thing[];
  findings: readonly Finding[];
  /** Where several sheets were read: the name of each for messages, and how many of the things are from it. */
  sheets: readonly { file: string; things: number }[];
}

const AS_IT_IS = listSettings.parse({});
// What spreadsheet programs call sheets by themselves in several languages; such a name is no title of a series.
const UNNAMED = /^(?:sheet|tabelle|feuille?|hoja|foglio|blad|ark|kalkylblad|planilha|table)[ _]?\d*$/i;

/**
 * Reads the list of a catalogue. Where a finding weighs `must`, the things are not to be used.
 * @param bytes the content of list.csv, list.xlsx or another form
 * @param file its name, which tells the form, and is used in messages
 */
export function readList(
  bytes: Uint8Array,
  file: string,
  known: Known = {},
  settings: ListSettings = AS_IT_IS,
): List {
  const { tables, findings } = openList(bytes, file, settings);
  const read = tables.map((table) => ({ table, ...readTable(table, tables.length > 1, known) }));
  const things = read.flatMap((one) => one.things);
  const ofTables = read.flatMap((one) => one.findings);
  const all = [...findings, ...ofTables];
  const [first] = tables;
  if (first !== undefined && things.length === 0 && !all.some(({ weight }) => weight === 'must'))
    all.push(noThings(first.file, first.table.headingRow));
  if (read.length > 1)
    all.push(
      readAsGroups(
        file,
        tables.map(({ sheet = '' }) => sheet),
      ),
    );
  all.push(...sameNumbers(read.map(({ table, things }) => ({ file: table.file, things }))));
  return {
    things,
    findings: inOrder(all, [file, ...tables.map((table) => table.file)]),
    sheets: read.length < 2 ? [] : read.map((one) => ({ file: one.table.file, things: one.things.length })),
  };
}

function readTable(
  { table, layout, file, sheet = '' }: ListTable,
  several: boolean,
  known: Known,
): { things: Thing[]; findings: Finding[] } {
  const findings: Finding[] = [...layout.findings];
  if (!layout.at.has('title')) {
    // Without a title no row is a thing, but the rows may still hold what must be said.
    for (const _ of table.rows);
    return { things: [], findings: [...findings, ...table.oddities()] };
  }
  const dittos: { row: number; columns: string[] }[] = [];
  const plain = withoutDittos(table, layout, (row, columns) => dittos.push({ row, columns }));
  const rows = withoutExample({ rows: plain }, (row) => findings.push(row(file)));
  const told = withoutTotal(rows, layout, (...total) => findings.push(sayTotal(file, ...total)));
  const abroad = languagesOfHeadings(table.headings.map(comparable));
  const dates = { ...known.dates, languages: [...(known.dates?.languages ?? []), ...abroad] };
  const read = readThings({ ...table, rows: told }, layout, file, { ...known, dates });
  if (several && !UNNAMED.test(sheet.trim())) {
    for (const thing of read.things) thing.series ??= sheet.trim();
  }
  findings.push(...sayDittos(file, dittos));
  return { things: read.things, findings: [...findings, ...table.oddities(), ...read.findings] };
}

/** The order in which a person goes through the list: sheet by sheet, and down the rows. */
function inOrder(findings: Finding[], files: readonly string[]): Finding[] {
  const rank = ({ place }: Finding) => Math.max(0, files.lastIndexOf(place.file ?? ''));
  return findings.sort(
    (one, other) => rank(one) - rank(other) || (one.place.row ?? 0) - (other.place.row ?? 0),
  );
}

function sameNumbers(lists: readonly { file: string; things: readonly Thing[] }[]): Finding[] {
  const places = new Map<string, { file: string; row: number }[]>();
  for (const { file, things } of lists) {
    for (const { row, number } of things) {
      if (number === undefined) continue;
      addTo(places, number, { file, row });
    }
  }
  return [...places].flatMap(([number, at]) => (at.length === 1 ? [] : [sameNumber(number, at)]));
}
