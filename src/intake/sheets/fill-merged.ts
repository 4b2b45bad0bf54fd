import type { Merged, SheetRow } from './sheet.ts';

// Steps in all; a workbook in which everything is merged with everything says nothing.
const MOST_STEPS = 2_000_000;

/**
 * Gives what stands in cells that are merged downwards to every row they span, save rows that hold nothing of their
 * own; cells merged across keep their one text where it stands.
 * @returns what was given where: the row and column in which it stands, and the last row that got it
 */
export function fillMerged(rows: readonly SheetRow[], merged: readonly Merged[]): Merged[] {
  const at = new Map(rows.map(({ row }, index) => [row, index]));
  const own = new Map<SheetRow, boolean>();
  const filled: Merged[] = [];
  let steps = 0;
  const down = merged.filter(({ row, lastRow }) => lastRow > row);
  for (const range of down) {
    const from = at.get(range.row);
    const text = from === undefined ? '' : (rows[from]?.cells[range.column] ?? '');
    if (from === undefined || text.trim() === '') continue;
    let last = range.row;
    for (let index = from + 1; index < rows.length && steps < MOST_STEPS; index++, steps++) {
      const row = rows[index];
      if (row === undefined || row.row > range.lastRow) break;
      if (!own.has(row))
        own.set(
          row,
          row.cells.some((cell) => cell.trim() !== ''),
        );
      if (own.get(row) !== true || (row.cells[range.column] ?? '') !== '') continue;
      while (row.cells.length < range.column) row.cells.push('');
      row.cells[range.column] = text;
      last = row.row;
    }
    if (last > range.row) filled.push({ ...range, lastRow: last, lastColumn: range.column });
  }
  return filled;
}
