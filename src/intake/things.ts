import type { Finding } from '../catalogue/finding.ts';
import type { Thing } from '../catalogue/thing.ts';
import type { DateContext } from '../dates/index.ts';
import type { Table } from './csv.ts';
import { readDates } from './dates.ts';
import type { Layout } from './layout.ts';
import { numbersOnly } from './list-findings.ts';
import { nameReader } from './name-cells.ts';
import { type Gathered, thingReader } from './thing-of-row.ts';

/** What collection.yaml says that helps to read the list. */
export interface Known {
  /** The names of people; they help to part several in one cell. */
  names?: readonly string[];
  dates?: DateContext;
}

/** Makes a thing of every row of the list, and says what was found in doing so. */
export function readThings(
  table: Table,
  layout: Layout,
  file: string,
  { names: knownNames = [], dates = {} }: Known,
): { things: Thing[]; findings: Finding[] } {
  const gathered: Gathered = { findings: [], dated: [], onlyNumber: [] };
  const { findings, dated, onlyNumber } = gathered;
  const names = nameReader(knownNames, file);
  const read = thingReader(table, layout, file, names, gathered);
  const things: Thing[] = [];
  for (const row of table.rows) {
    const thing = read(row);
    if (thing !== undefined) things.push(thing);
  }
  // Read last: the languages of the list tell in which languages its dates may be.
  for (const finding of readDates(dated, dates, file)) findings.push(finding);
  findings.push(...names.findings());
  if (onlyNumber.length > 0) findings.push(numbersOnly(file, onlyNumber));
  return { things, findings };
}
