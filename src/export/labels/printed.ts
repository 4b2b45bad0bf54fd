import { asWritten, csvRecord } from '../../catalogue/csv-cell.ts';
import { CatalogueError } from '../../catalogue/finding.ts';
import { readTable } from '../../intake/csv.ts';
import { notReadable } from './findings.ts';
import type { Label } from './labels-of.ts';

/** The file in the catalogue folder that says which labels were printed before, and with what on them. */
export const PRINTED_FILE = 'labels-printed.csv';

const HEADINGS = ['label', 'text'] as const;

/** What stood on each label when it was last printed, by its key. */
export type Printed = ReadonlyMap<string, string>;

/** Labels by what became of them since the last printing. */
interface SinceThen {
  fresh: Label[];
  changed: Label[];
  /** Printed before with the same words. */
  before: Label[];
}

/** Everything that stands on a label, in one text. */
export function textOf({
  type,
  number,
  part,
  box,
  folders,
  care,
  title,
  thing,
  dates,
  series,
  collection,
  codes,
}: Label): string {
  const words = [
    `${type} ${number}`,
    part,
    box === undefined ? undefined : `${box.type} ${box.number}`,
    folders,
    care,
    title,
    thing,
    dates,
    series.join(' / '),
    collection,
    codes,
  ];
  // One line, as the reader of tables will give it back.
  return words
    .filter((text) => text !== undefined && text !== '')
    .join(' | ')
    .replace(/\s+/g, ' ')
    .trim();
}

/** Which labels are not yet printed, which have other words on them since, and which are as they were. */
export function newLabels(labels: readonly Label[], printed: Printed): SinceThen {
  const since: SinceThen = { fresh: [], changed: [], before: [] };
  for (const label of labels) {
    const text = printed.get(label.key);
    since[text === undefined ? 'fresh' : text === textOf(label) ? 'before' : 'changed'].push(label);
  }
  return since;
}

/**
 * What is printed now that these labels have been.
 * @param all every label there is; what is no longer among them is forgotten
 */
export function printedNow(all: readonly Label[], labels: readonly Label[], before: Printed): Printed {
  const now = new Map(labels.map((label) => [label.key, textOf(label)]));
  return new Map(
    all.flatMap(({ key }) => {
      const text = now.get(key) ?? before.get(key);
      return text === undefined ? [] : [[key, text] as const];
    }),
  );
}

/** `labels-printed.csv` (RFC 4180, UTF-8 with a byte order mark for spreadsheets). */
export function printedCsv(printed: Printed): string {
  return `\uFEFF${csvRecord(HEADINGS)}${[...printed].map((row) => csvRecord(row)).join('')}`;
}

/**
 * Reads `labels-printed.csv`.
 * @throws CatalogueError where it is no such table
 */
export function readPrinted(bytes: Uint8Array, file = PRINTED_FILE): Printed {
  const { table, findings } = readTable(bytes, file, (text) => HEADINGS.some((heading) => heading === text));
  const [label, text] = HEADINGS.map((heading) => table?.headings.indexOf(heading) ?? -1);
  if (table === undefined || label === undefined || text === undefined || label < 0 || text < 0)
    throw new CatalogueError([notReadable(file)]);
  const printed = new Map<string, string>();
  for (const { cells } of table.rows)
    printed.set(asWritten(cells[label] ?? ''), asWritten(cells[text] ?? ''));
  const musts = [...findings, ...table.oddities()].filter(({ weight }) => weight === 'must');
  if (musts.length > 0) throw new CatalogueError([notReadable(file)]);
  return printed;
}
