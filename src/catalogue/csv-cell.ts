// What makes a spreadsheet run a cell (OWASP, "CSV injection"), also in full width, and also after an apostrophe of the
// text's own, which has to be told from the one that is put before it here.
const RUNS = /^'*[=+\-@\t\r\n\uFF0B\uFF0D\uFF1D\uFF20]/;

/** A row of a table: RFC 4180. */
export const csvRecord = (cells: readonly (string | undefined)[]): string =>
  `${cells.map((text = '') => csvCell(text)).join(',')}\r\n`;

/**
 * A cell of a table: RFC 4180. What a spreadsheet would run as a formula is made a text by an apostrophe in front;
 * whoever takes it away again (`asWritten`) has the text as it was.
 */
export function csvCell(text: string): string {
  const harmless = RUNS.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}

/** The text of a cell that `csvCell` wrote, once the table has been taken apart. */
export const asWritten = (cell: string): string =>
  RUNS.test(cell) && cell.startsWith("'") ? cell.slice(1) : cell;
