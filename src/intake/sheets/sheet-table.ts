import type { Finding } from '../../catalogue/finding.ts';
import { forbiddenCharacter } from '../../catalogue/text.ts';
import { type HowToRead, type Table, tidyHeading } from '../csv.ts';
import { HEADINGS_WITHIN, headingRowAmong } from '../heading-row.ts';
import { empty, forbidden, noSuchRow } from '../table-findings.ts';
import { fillMerged } from './fill-merged.ts';
import type { Merged, Sheet, SheetRow } from './sheet.ts';

/** A sheet as a table, and what only a spreadsheet has. */
export interface SheetTable extends Table {
  rows: readonly SheetRow[];
  filled: readonly Merged[];
  /** Rows with a comment and nothing else, and the comments on the headings and above. */
  remarked: readonly SheetRow[];
  hiddenColumns: ReadonlySet<number>;
}

const isFilled = ({ cells, troubles }: SheetRow) =>
  troubles !== undefined || cells.some((cell) => cell.trim() !== '');

/** Makes a table of a sheet; `file` names the sheet too, where that helps. */
export function sheetTable(
  sheet: Sheet,
  file: string,
  { columnOf, headingRow }: HowToRead,
): { table?: SheetTable; findings: Finding[] } {
  const filled = fillMerged(sheet.rows, sheet.merged);
  const rows = sheet.rows.filter(isFilled);
  const at =
    headingRow === undefined
      ? headingRowAmong(rows.slice(0, HEADINGS_WITHIN), columnOf)
      : rows.findIndex(({ row }) => row >= headingRow);
  const head = rows[at];
  if (head === undefined) return { findings: [rows.length === 0 ? empty(file) : noSuchRow(file)] };
  const below = rows.slice(at + 1);
  // A format put on a whole row makes cells of nothing as far as the sheet goes.
  const width = head.cells.findLastIndex((cell) => cell.trim() !== '') + 1;
  const headings = head.cells.slice(0, width).map(tidyHeading);
  for (const row of below)
    while (row.cells.length > width && row.cells.at(-1)?.trim() === '') row.cells.pop();
  const dirty = below.some(({ cells }) => cells.some((cell) => forbiddenCharacter(cell) !== undefined));
  const table: SheetTable = {
    headings,
    headingRow: head.row,
    rows: below,
    ...(at > 0 && { above: rows.slice(0, at) }),
    oddities: () => [],
    filled: filled.filter(({ row }) => row > head.row),
    remarked: [...rows.slice(0, at + 1), ...sheet.rows.filter((row) => !isFilled(row))].filter(
      ({ remarks }) => remarks?.some(({ what }) => what === 'comment') ?? false,
    ),
    hiddenColumns: sheet.hiddenColumns,
  };
  return { table, findings: dirty ? forbidden(below, headings, file) : [] };
}
