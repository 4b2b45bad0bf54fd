import type { Finding } from '../catalogue/finding.ts';
import type { Thing } from '../catalogue/thing.ts';
import { columnOf, layoutOf } from './columns.ts';
import { readTable } from './csv.ts';
import { noThings, sameNumber } from './list-findings.ts';
import { type Known, readThings } from './things.ts';

/** Things of a list in the order of its rows, and everything that was found in reading it. */
export interface List {
  things: readonly Thing[];
  findings: readonly Finding[];
}

/**
 * Reads the list of a catalogue. Where a finding weighs `must`, the things are not to be used.
 * @param bytes the content of list.csv
 * @param file the name for messages
 */
export function readList(bytes: Uint8Array, file: string, known: Known = {}): List {
  const { table, findings } = readTable(bytes, file, (heading) => columnOf(heading) !== undefined);
  if (table === undefined) return { things: [], findings };
  const { headings, headingRow } = table;
  const layout = layoutOf(headings, { file, row: headingRow });
  // Without a title no row is a thing, but the rows may still hold what must be said.
  const read = layout.at.has('title') ? readThings(table, layout, file, known) : nothingFrom(table.rows);
  const all = [...findings, ...layout.findings, ...table.oddities(), ...read.findings];
  if (read.things.length === 0 && !all.some(({ weight }) => weight === 'must')) {
    all.push(noThings(file, headingRow));
  }
  all.push(...sameNumbers(read.things, file));
  // The order in which a person goes down the list.
  all.sort((one, other) => (one.place.row ?? 0) - (other.place.row ?? 0));
  return { things: read.things, findings: all };
}

function nothingFrom(rows: Iterable<unknown>): { things: Thing[]; findings: Finding[] } {
  for (const _ of rows);
  return { things: [], findings: [] };
}

function sameNumbers(things: readonly Thing[], file: string): Finding[] {
  const rows = new Map<string, number | number[]>();
  for (const { row, number } of things) {
    if (number === undefined) continue;
    const before = rows.get(number);
    if (before === undefined) rows.set(number, row);
    else if (typeof before === 'number') rows.set(number, [before, row]);
    else before.push(row);
  }
  return [...rows].flatMap(([number, at]) => (typeof at === 'number' ? [] : [sameNumber(file, number, at)]));
}
